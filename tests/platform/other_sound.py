"""Music plays on a real PulseAudio server of the test's own, into a null sink; a program of ours opens the device.
Checked: the music is lowered while ours is there (module-role-ducking, and what comes out of the sink measured), and
is as loud as before once ours ended, and once ours was killed with SIGKILL. Skipped (77) without PulseAudio."""
import array
import os
import signal
import subprocess
import sys

from sound_server import leave_without, sound_server, start_ours, until

LOUD = 8000


def level(env):
    """Half a second of what comes out of the sink, as the middle of the samples' sizes: ours is silent but for a
    tone at its start, so it is the music's. The server's own list of volumes leaves the lowering out."""
    recorder = subprocess.Popen(["parec", "--device=nowhere.monitor", "--format=s16le", "--channels=1",
                                 "--rate=44100", "--latency-msec=20"], env=env, stdout=subprocess.PIPE,
                                stderr=subprocess.DEVNULL)
    samples = array.array("h", recorder.stdout.read(44100))
    recorder.kill()
    recorder.wait()
    return sorted(abs(sample) for sample in samples)[len(samples) // 2] if samples else 0


def check(program, env):
    loud = LOUD * 0.9
    low = LOUD * 0.5
    until("the music", lambda: level(env) > loud)
    first = start_ours(program, env)
    until("the music is lowered", lambda: 0 < level(env) < low)
    first.stdin.close()
    first.wait()
    until("the music is back after an end", lambda: level(env) > loud)
    second = start_ours(program, env)
    until("the music is lowered again", lambda: 0 < level(env) < low)
    second.send_signal(signal.SIGKILL)
    second.wait()
    until("the music is back after a kill", lambda: level(env) > loud)
    print("lowered and given back twice")


def main():
    leave_without("pulseaudio", "parec", "pacat")
    ducking = "module-role-ducking trigger_roles=phone ducking_roles=music volume=-20dB"
    with sound_server(ducking) as (env, folder):
        # "Music" of one steady size, so that its loudness is a number.
        samples = os.path.join(folder, "music")
        with open(samples, "wb") as file:
            file.write(array.array("h", [LOUD, LOUD] * (44100 * 60)).tobytes())
        music = subprocess.Popen(["pacat", "--playback", "--property=media.role=music", "--format=s16le",
                                  "--rate=44100", "--channels=2", samples], env=env)
        try:
            check(sys.argv[1], env)
        finally:
            music.kill()
            music.wait()


main()
