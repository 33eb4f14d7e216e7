#!/usr/bin/env python3
"""Every screen of the phone as a person meets it, in one language, through the real program and a real hub.

The words that are pressed are taken from the translation catalogue, so a screen that lacks its translation stops the
tour. A picture of each screen is left in --out, to be looked at. The last line says passed or failed.
"""

import argparse
import os
import re
import shutil
import subprocess
import sys
import time
import traceback
import xml.etree.ElementTree

from driven import Driven, Refused

TOP = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
NAMES = {"en": "English", "es": "Español", "ar": "العربية"}
PAGES = {"Language", "TextSize", "SoundCheck", "Pair", "Scan", "Paired", "AskReminders", "Calls", "About", "Today",
         "Programme", "HowItGoes", "Wear", "Help", "Advice", "Write", "Settings", "Drawn", "Reminders", "TakeAlong",
         "Erase", "TellLater", "Question", "Pain", "GetReady", "LeaveOut", "Practice", "Unfinished", "WhatHappened",
         "Verdict", "Rating", "Close"}


def source(*path):
    with open(os.path.join(TOP, *path), encoding="utf-8") as file:
        return file.read()


class Words:
    """What a sentence of the screens may be called in a language; several screens may say it differently."""

    def __init__(self, language):
        self.language = language
        self.said = {}
        if language != "en":
            tree = xml.etree.ElementTree.fromstring(source("qml", "home", "i18n", f"newel_{language}.ts"))
            for message in tree.iter("message"):
                text = message.find("translation").text
                if text:
                    self.said.setdefault(message.find("source").text, set()).add(text)

    def of(self, english):
        found = set(self.said.get(english, ()))
        if self.language == "en":
            found.add(english)
        if not found:
            raise AssertionError(f"no {self.language} words for: {english}")
        return found

    def number(self, value):
        digits = str(value)
        return {digits, "".join(chr(0x0660 + int(d)) for d in digits)} if self.language == "ar" else {digits}

    def fine(self):
        """Every ready-check answer that lets a practice go on."""
        english = source("core", "safety", "questions", "ready_check.textproto")
        ids = re.findall(r'choices \{ id: "([^"]+)" fine: true', english)
        if self.language == "en":
            return set(re.findall(r'fine: true words \{ key: "en" value: "([^"]+)"', english))
        own = source("core", "safety", "words", self.language, "questions.textproto")
        return {text for key, text in re.findall(r'choices \{ key: "([^"]+)" value: "([^"]+)"', own) if key in ids}

    def title(self, exercise):
        return re.search(r'title: "([^"]+)"', source("core", "library", "words", self.language, f"{exercise}.textproto"))[1]


class Tour:
    def __init__(self, programs, language, platform, out):
        self.programs = programs
        self.words = Words(language)
        self.platform = platform
        self.out = out
        shutil.rmtree(out, ignore_errors=True)
        os.makedirs(out)
        self.log_file = open(os.path.join(out, "session.log"), "w", encoding="utf-8")
        self.seen = set()
        self.pictures = 0
        self.app = None
        self.clinic = None

    def log(self, text):
        self.log_file.write(text + "\n")
        self.log_file.flush()

    # ---- the two programs ----

    def open_clinic(self, program):
        self.clinic = subprocess.Popen([program], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
        self.tickets = {}
        for line in self.clinic.stdout:
            key, _, rest = line.strip().partition(" ")
            if key == "ready":
                return
            if key == "wall":
                self.offset = int(rest) - int(time.time())
            else:
                self.tickets[key] = rest
        raise AssertionError("the clinic did not open")

    def open_phone(self):
        environment = dict(os.environ)
        environment.update(QT_QPA_PLATFORM=self.platform, QT_QUICK_BACKEND="software",
                           DBUS_SESSION_BUS_ADDRESS="disabled:", NEWEL_WALL_OFFSET_S=str(self.offset), LANG="C.UTF-8",
                           TZ="Europe/Berlin", XDG_RUNTIME_DIR=self.folder("run"), QT_LOGGING_RULES="*.debug=false",
                           XDG_CONFIG_HOME=self.folder("config"), XDG_DATA_HOME=self.folder("data"), HOME=self.folder("own"))
        os.chmod(environment["XDG_RUNTIME_DIR"], 0o700)
        self.app = Driven("phone", [f"{self.programs}/newel-home", "--data", self.folder("phone"), "--key-in-file",
                                    "--drive", "-"], environment, self.log)
        self.app.ask("frame", 30000, seconds=40)
        self.app.ask("size", 412, 915)

    def folder(self, name):
        path = os.path.join(self.out, "left", name)
        os.makedirs(path, exist_ok=True)
        return path

    def close(self):
        if self.app is not None:
            self.app.quit()
        if self.clinic is not None:
            self.clinic.stdin.close()
            self.clinic.wait(timeout=20)
        shutil.rmtree(os.path.join(self.out, "left"), ignore_errors=True)

    # ---- a hand ----

    def page(self):
        return self.app.state()["page"]

    def until(self, page, ms=15000):
        self.app.until("page", page, ms)

    def look(self, what=""):
        """The picture of the page in front."""
        page = self.page()
        self.seen.add(page)
        self.app.sleep(250)
        self.pictures += 1
        self.app.shot(os.path.join(self.out, f"{self.pictures:02d}-{page}{what}.png"))

    def visible(self, names):
        return next((name for name in self.app.ask("list") if name in names), None)

    def press(self, english, ms=8000, names=None):
        names = names or self.words.of(english)
        end = time.monotonic() + ms / 1000
        while time.monotonic() < end:
            name = self.visible(names)
            if name is not None:
                self.app.click(name)
                self.app.sleep(60)
                return
            self.app.sleep(100)
        raise AssertionError(f"nobody can press \"{english}\" ({names}) on {self.page()}")

    def aside(self, english, page, what=""):
        """Opens a page from the one in front and looks at it."""
        self.press(english)
        self.until(page)
        self.look(what)

    def back(self):
        self.press("Back")

    # ---- the way ----

    def first_run(self):
        self.until("Language")
        self.look()
        self.press(NAMES[self.words.language], names={NAMES[self.words.language]})
        self.press("Next")
        self.until("TextSize")
        self.look()
        self.press("Next")
        self.until("SoundCheck")
        self.press("Play a tone and the voice")
        self.press("No, nothing")
        self.look()
        self.press("Next")
        self.until("Pair")
        self.look()
        self.aside("Use the camera", "Scan")
        self.press("Type the code instead")
        self.until("Pair")
        for name in self.words.of("Text of the QR code"):
            self.app.type(name, self.tickets[self.words.language])
        self.press("Connect with this text")
        self.until("Paired", 30000)
        self.look()
        self.press("Go on")
        self.until("AskReminders")
        self.look()
        self.press("Yes, remind me")
        self.press("Next")
        self.until("Calls")
        self.look()
        self.press("Next")
        self.until("About")
        self.look()
        self.press("I have read this")
        self.until("Today")
        self.app.until("programme", "1", 20000)

    def today(self):
        self.look("-message")
        self.press("I have read this")
        self.aside("My programme", "Programme")
        self.back()
        self.until("Today")
        self.look()

    def wear(self):
        self.aside("Wearing time", "Wear", "-off")
        self.press("I have put it on")
        self.look("-on")
        self.press("I have taken it off")
        self.look("-look")
        self.press("Nothing: the skin looks as always")
        self.press("That is what I see")
        self.look("-rest")
        self.back()
        self.until("Today")
        self.aside("How it goes", "HowItGoes")
        self.back()
        self.until("Today")

    def help(self):
        self.aside("Help", "Help")
        self.aside("After a fall", "Advice")
        self.back()
        self.until("Help")
        self.aside("Write to your therapist", "Write")
        for name in self.words.of("Your words"):
            self.app.type(name, "555 0100")
        self.press("Send")
        self.look("-kept")
        self.back()
        self.until("Help")
        self.back()
        self.until("Today")

    def settings(self):
        self.aside("Settings", "Settings")
        for english, page in (("How you are drawn", "Drawn"), ("When to remind me", "Reminders"),
                              ("Save everything about me", "TakeAlong"), ("Erase this phone …", "Erase")):
            self.aside(english, page)
            if page == "TakeAlong":
                self.press("Save for other programs (JSON)")
                self.app.sleep(1500)
                self.look("-saved")
            self.back()
            self.until("Settings")
        self.back()
        self.until("Today")

    def tell_later(self):
        self.aside("I did this away from the phone", "TellLater")
        self.press("an exercise", names={self.words.title("weight-shift-side")})
        self.look("-how-much")
        self.press("About half")
        self.press("a number for pain", names=self.words.number(2))
        self.look("-pain")
        self.press("Next")
        self.press("a number for effort", names=self.words.number(4))
        self.press("Next")
        self.look("-happened")
        self.press("No, nothing")
        self.look("-told")
        self.press("Back to today")
        self.until("Today")

    def answer(self):
        """The ready check and pain, everything fine."""
        while (page := self.page()) in ("Question", "Pain"):
            names = self.words.fine() if page == "Question" else self.words.number(1)
            self.press("a fine answer", names=names)
            if page not in self.seen:
                self.look()
            self.press("Next")
            self.app.sleep(150)

    def begin_entry(self):
        self.until("GetReady")
        first = "GetReady" not in self.seen
        self.look()
        if first:
            self.aside("Leave this exercise out", "LeaveOut")
            self.back()
            self.until("GetReady")
        self.press("Support is there: start")
        self.until("Practice")

    def wait_for(self, kinds, seconds=60):
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            state = self.app.state()
            if state.get("kind") in kinds and state.get("player") == "running" and state["leftMs"] > 500:
                return
            self.app.sleep(50)
        raise AssertionError(f"no beat of {kinds}")

    def practise(self):
        self.press("Start")
        self.app.sleep(200)
        self.answer()
        self.begin_entry()
        self.look("-ready")
        self.wait_for({"move", "hold"})
        self.look("-move")
        self.press("Pause")
        self.look("-paused")
        self.app.kill()
        self.open_phone()
        self.until("Unfinished", 30000)
        self.look()
        self.press("Go on")
        self.until("Practice")
        self.look("-taken-up")
        self.press("Go on")
        self.until("Rating", 120000)
        self.look("-pain")
        self.press("a number", names=self.words.number(1))
        self.press("Next")
        self.look("-effort")
        self.press("a number", names=self.words.number(3))
        self.press("Next")
        self.begin_entry()
        self.press("Stop")
        self.until("WhatHappened")
        self.look()
        self.press("Dizzy")
        self.app.sleep(300)
        for _ in range(6):
            page = self.page()
            if page == "Close":
                break
            self.look()
            if page == "Rating":
                self.press("a number", names=self.words.number(2))
                self.press("Next")
            else:
                self.press("I have read this")
            self.app.sleep(300)
        self.until("Close")
        self.app.sleep(1500)
        self.look()
        self.press("Back to today")
        self.until("Today")
        self.look("-after")

    def walk(self, clinic):
        self.open_clinic(clinic)
        self.open_phone()
        for step in (self.first_run, self.today, self.wear, self.help, self.settings, self.tell_later, self.practise):
            step()
        missing = PAGES - self.seen
        if missing:
            raise AssertionError(f"never seen: {sorted(missing)}")


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--programs", required=True)
    parser.add_argument("--clinic", required=True)
    parser.add_argument("--language", choices=sorted(NAMES), required=True)
    parser.add_argument("--platform", choices=["offscreen", "xcb"], default="offscreen")
    parser.add_argument("--out", required=True)
    arguments = parser.parse_args()
    if arguments.platform == "xcb" and not os.environ.get("DISPLAY"):
        if shutil.which("xvfb-run") is None:
            print("skipped: xvfb-run (package xvfb) is not installed")
            return 77
        os.execvp("xvfb-run", ["xvfb-run", "-a", "-s", "-screen 0 1000x1000x24", sys.executable, *sys.argv])
    tour = Tour(arguments.programs, arguments.language, arguments.platform, arguments.out)
    began = time.monotonic()
    try:
        tour.walk(arguments.clinic)
    except (AssertionError, Refused) as failure:
        try:
            tour.look("-failed")
        except (Refused, AssertionError):
            pass
        traceback.print_exc(file=tour.log_file)
        print(f"failed: {failure}; see {tour.out}/session.log")
        return 1
    finally:
        tour.close()
    print(f"passed: {len(tour.seen)} pages, {tour.pictures} pictures, {time.monotonic() - began:.0f} s")
    return 0


if __name__ == "__main__":
    sys.exit(main())
