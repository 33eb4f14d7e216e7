"""Tones of ours on a real PulseAudio server of the test's own, into a null sink, whose output is recorded: every tone that
is played comes out, also minutes after the device was opened, and the device stays silent in between. Skipped (77) without PulseAudio."""
import array
import subprocess
import sys
import threading
import time

from sound_server import leave_without, sound_server, start_ours, until

RATE = 48000
LOUD = 500  # of 32767
TONES = 6
PAUSE_S = 0.8  # a tone has ended by then


class Recorder:
    def __init__(self, env):
        self.process = subprocess.Popen(["parec", "--device=nowhere.monitor", "--format=s16le", "--channels=1",
                                         f"--rate={RATE}", "--latency-msec=20", "--raw"], env=env,
                                        stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
        self.samples = array.array("h")
        self.thread = threading.Thread(target=self.read, daemon=True)
        self.thread.start()

    def read(self):
        rest = b""
        while True:
            chunk = self.process.stdout.read1(4096)
            if not chunk:
                return
            rest += chunk
            whole = len(rest) // 2 * 2
            self.samples.frombytes(rest[:whole])
            rest = rest[whole:]

    def loud_since(self, start):
        return sum(1 for sample in self.samples[start:] if abs(sample) > LOUD)


def check(program, env):
    recorder = Recorder(env)
    until("the recorder", lambda: len(recorder.samples) > RATE // 5)
    ours = start_ours(program, env)
    until("the first tone", lambda: recorder.loud_since(0) > RATE // 50)
    for number in range(TONES):
        time.sleep(PAUSE_S)
        start = len(recorder.samples)
        time.sleep(0.2)
        if recorder.loud_since(start):
            sys.exit("the device is not silent between tones")
        # Every other time after the program was busy longer than the device has samples for.
        ours.stdin.write("busy\nplay\n" if number % 2 else "play\n")
        ours.stdin.flush()
        until(f"tone {number + 2}", lambda: recorder.loud_since(start) > RATE // 50, 3)
    ours.stdin.close()
    ours.wait()
    recorder.process.kill()
    print(f"{TONES + 1} tones heard")


def main():
    leave_without("pulseaudio", "parec")
    with sound_server() as (env, _):
        check(sys.argv[1], env)


main()
