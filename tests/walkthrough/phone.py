"""What a person does with the phone, in the words on its screens."""

import re
import time

from driven import Driven, offscreen


def fine_answers(questions_file):
    """The words of every ready-check answer that lets the practice go on, from the questions themselves."""
    with open(questions_file, encoding="utf-8") as file:
        text = file.read()
    return set(re.findall(r'fine: true words \{ key: "en" value: "([^"]+)"', text))


class Phone:
    def __init__(self, programs, data, questions, log, pictures):
        self.programs = programs
        self.data = data
        self.fine = fine_answers(questions)
        self.log = log
        self.pictures = pictures
        self.app = None

    def open(self, day, size="412x915"):
        self.app = Driven("phone", [f"{self.programs}/newel-home", "--data", self.data, "--key-in-file", "--drive", "-"],
                          offscreen(day, size), self.log)
        width, height = size.split("x")
        self.app.ask("size", width, height)

    def shot(self, name):
        self.app.shot(f"{self.pictures}/{name}.png")

    def page(self):
        return self.app.state()["page"]

    def first_run(self):
        """From the very first page to the one that asks for the code, each page looked at."""
        for page in ("Language", "TextSize", "SoundCheck"):
            self.app.until("page", page)
            if page == "SoundCheck":
                self.app.click("Play a tone and the voice")
                self.app.click("No, nothing")
            self.shot(f"phone-first-{page.lower()}")
            self.app.click("Next")
        self.app.until("page", "Pair")

    def pair(self, address, code):
        self.first_run()
        self.app.wait("Address of the clinic")
        self.app.type("Address of the clinic", address)
        self.app.type("Code", code)
        self.shot("phone-pair")
        self.app.click("Connect")
        self.app.until("paired", "true", 20000)
        self.app.wait("Yes, the same")
        self.shot("phone-compare")
        signs = next(name for name in self.app.ask("list") if re.fullmatch(r"([0-9A-F]{4} ?){4}", name))
        return signs

    def signs_agree(self):
        self.app.click("Yes, the same")
        self.app.until("page", "AskReminders")
        self.app.click("Yes, remind me")
        self.shot("phone-first-reminders")
        self.app.click("Next")
        self.app.until("page", "Calls")
        self.shot("phone-first-calls")
        self.app.click("Next")
        self.app.until("page", "About")
        self.app.click("I have read this")
        self.app.until("page", "Today")

    def see_programme(self, picture):
        """Reads what is new, as a person would, and comes back."""
        if self.app.sees("See what is new"):
            self.app.click("See what is new")
        else:
            self.app.click("My programme")
        self.app.until("page", "Programme")
        self.app.sleep(500)
        self.shot(picture)
        self.app.click("Back")
        self.app.until("page", "Today")

    def look_back(self):
        """How it goes, Help and writing, each looked at; and back."""
        self.app.click("How it goes")
        self.app.until("page", "HowItGoes")
        self.shot("phone-how-it-goes")
        self.app.click("Back")
        self.app.click("Help")
        self.app.until("page", "Help")
        self.shot("phone-help")
        self.app.click("Write to your therapist")
        self.app.type("Your words", "The socket is fine today.")
        self.app.click("Send")
        self.app.wait("Kept. *")
        self.shot("phone-write")
        self.app.click("Back")
        self.app.click("Back")
        self.app.until("page", "Today")

    def go_on(self):
        """After a pause: the one button that goes on."""
        self.app.click("Go on")

    def answer_questions(self, pictures=()):
        """Ready check and pain, every answer the one that lets the practice go on."""
        number = 0
        while True:
            page = self.page()
            if page == "Question":
                number += 1
                names = self.app.ask("list")
                answer = next(name for name in names if name in self.fine)
                self.app.click(answer)
                if number == 1 and "question" in pictures:
                    self.shot("phone-question")
                self.app.click("Next")
            elif page == "Pain":
                self.app.click("0")
                if "pain" in pictures:
                    self.shot("phone-pain-before")
                self.app.click("Next")
            else:
                return
            self.app.sleep(60)

    def start_entry(self, picture=None):
        self.app.until("page", "GetReady")
        if picture:
            self.shot(picture)
        self.app.click("Support is there: start" if self.app.sees("Support is there: start") else "Start")
        self.app.until("page", "Practice")

    def rate(self, pain, effort, picture=None):
        self.app.until("page", "Rating", 120000)
        self.app.click(str(pain))
        if picture:
            self.shot(picture)
        self.app.click("Next")
        self.app.click(str(effort))
        self.app.click("Next")
        self.app.sleep(60)

    def wait_for_beat(self, kind, seconds=120, left_over_ms=1500):
        """Until a beat of that kind runs with some time left in it; the state then."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            state = self.app.state()
            if state.get("kind") == kind and state.get("player") == "running" and state["leftMs"] > left_over_ms:
                return state
            self.app.sleep(50)
        raise AssertionError(f"no {kind} beat within {seconds} s")

    def finish_entries(self, pain=1, effort=3, picture_at=()):
        """Leads through what is left, entry by entry, to the closing page."""
        while True:
            page = self.page()
            if page == "GetReady":
                self.start_entry()
            elif page == "Practice":
                state = self.app.state()
                name = f"phone-practice-{state['exercise']}"
                if state["kind"] in ("move", "hold") and name not in picture_at:
                    picture_at = (*picture_at, name)
                    self.shot(name)
                self.app.sleep(200)
            elif page == "Rating":
                self.rate(pain, effort)
            elif page == "Close":
                return
            else:
                raise AssertionError(f"did not expect the page {page}")
