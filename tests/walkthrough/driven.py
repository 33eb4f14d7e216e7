"""A real program with a window, driven from outside through its --drive channel (see qml/parts/driver.h)."""

import json
import os
import queue
import signal
import subprocess
import threading
import time


class Refused(Exception):
    """The program answered "error ...", or not at all."""


def quoted(word):
    text = str(word).replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")
    return f'"{text}"'


class Driven:
    def __init__(self, name, arguments, environment, log):
        self.name = name
        self.log = log
        self.process = subprocess.Popen(arguments, stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                        stderr=subprocess.STDOUT, env=environment, text=True, bufsize=1)
        self.answers = queue.Queue()
        threading.Thread(target=self._read, daemon=True).start()

    def _read(self):
        for line in self.process.stdout:
            line = line.rstrip("\n")
            self.log(f"  {self.name} < {line}")
            if line == "ok" or line.startswith(("ok ", "error ")):
                self.answers.put(line)
        self.answers.put(None)

    def ask(self, command, *words, seconds=30):
        """One command; the JSON that came with "ok", or None."""
        line = " ".join([command, *(quoted(word) for word in words)])
        self.log(f"  {self.name} > {line}")
        try:
            self.process.stdin.write(line + "\n")
            self.process.stdin.flush()
            answer = self.answers.get(timeout=seconds)
        except (BrokenPipeError, queue.Empty):
            raise Refused(f"{self.name}: no answer to: {line}") from None
        if answer is None:
            raise Refused(f"{self.name} ended during: {line}")
        if answer.startswith("error"):
            raise Refused(f"{self.name}: {line}: {answer[6:]}")
        return json.loads(answer[3:]) if len(answer) > 3 else None

    def click(self, name, nth=1):
        self.ask("click", name, nth)

    def press(self, name):
        self.ask("press", name)

    def type(self, name, text):
        self.ask("type", name, text)

    def wait(self, name, ms=8000):
        self.ask("wait", name, ms, seconds=ms / 1000 + 10)

    def gone(self, name, ms=8000):
        self.ask("gone", name, ms, seconds=ms / 1000 + 10)

    def until(self, key, value, ms=8000):
        self.ask("until", key, value, ms, seconds=ms / 1000 + 10)

    def sees(self, name):
        return any(n == name or (name.endswith("*") and n.startswith(name[:-1])) for n in self.ask("list"))

    def read(self, name):
        return self.ask("read", name)

    def state(self):
        return self.ask("state")

    def shot(self, path):
        self.ask("shot", path)

    def sleep(self, ms):
        self.ask("sleep", ms, seconds=ms / 1000 + 10)

    def kill(self):
        """As a flat battery would: nothing is asked, nothing is flushed."""
        self.process.send_signal(signal.SIGKILL)
        self.process.wait(timeout=10)

    def quit(self):
        if self.process.poll() is not None:
            return
        try:
            self.ask("quit", seconds=5)
        except Refused:
            self.process.terminate()
        try:
            self.process.wait(timeout=10)
        except subprocess.TimeoutExpired:
            self.process.kill()
            self.process.wait(timeout=10)


def offscreen(day_offset, size):
    """The environment of a program that needs no display, its wall clock moved by whole days."""
    environment = dict(os.environ)
    environment.update(QT_QPA_PLATFORM="offscreen", NEWEL_WALL_OFFSET_S=str(day_offset * 86400), LANG="C.UTF-8",
                       NEWEL_WINDOW_SIZE=size, QT_LOGGING_RULES="*.debug=false")
    return environment


def wait_for_file(path, seconds):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if os.path.exists(path) and os.path.getsize(path) > 0:
            return
        time.sleep(0.02)
    raise Refused(f"{path} did not appear")
