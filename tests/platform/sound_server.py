"""A real PulseAudio server of a test's own with a sink named "nowhere", and waiting for what it does."""
import contextlib
import os
import shutil
import subprocess
import sys
import tempfile
import time

SKIPPED = 77
WAIT_S = 8


def until(what, test, seconds=WAIT_S):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if test():
            return
        time.sleep(0.05)
    sys.exit("waited in vain: " + what)


def leave_without(*programs):
    """Skips the test where one of these is missing."""
    if not all(shutil.which(name) for name in programs):
        print("skipped: no PulseAudio (pulseaudio, pulseaudio-utils)")
        sys.exit(SKIPPED)


@contextlib.contextmanager
def sound_server(*modules):
    """The environment in which programs play into it, and a folder that is gone afterwards."""
    with tempfile.TemporaryDirectory() as folder:
        socket = os.path.join(folder, "socket")
        env = dict(os.environ, HOME=folder, XDG_RUNTIME_DIR=folder, PULSE_SERVER="unix:" + socket,
                   PULSE_RUNTIME_PATH=folder, DBUS_SESSION_BUS_ADDRESS="disabled:")
        loaded = ["module-native-protocol-unix auth-anonymous=1 socket=" + socket,
                  "module-null-sink sink_name=nowhere", *modules]
        server = subprocess.Popen(["pulseaudio", "-n", "--daemonize=no", "--exit-idle-time=-1", "--disable-shm=true",
                                   "--use-pid-file=no", *(word for module in loaded for word in ("-L", module))],
                                  env=env, stderr=subprocess.DEVNULL)
        try:
            until("the sound server", lambda: os.path.exists(socket))
            yield env, folder
        finally:
            server.kill()
            server.wait()


def start_ours(program, env):
    """Our program with the sound device open, told what to do by lines."""
    process = subprocess.Popen([program], env=env, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
    said = process.stdout.readline().strip()
    if said != "warm":
        sys.exit("our program has no sound: " + said)
    return process
