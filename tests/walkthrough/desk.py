"""What a therapist does at the desk, in the words on its screens."""

import os
import time

from driven import Driven, offscreen

SHORT = {"Sets": 1, "Repetitions": 2, "Rest between sets": 5, "Seconds out": 2, "Seconds back": 2}

# What the first programme is made of: title, words to find it by, the dose made short so that a walk takes minutes.
ENTRIES = [
    ("Sit to stand", "sit to stand", {**SHORT, "Hold seconds": 3}),
    ("Shift weight side to side", "weight side", {**SHORT, "Repetitions": 1, "Hold seconds": 3}),
    ("Stand with even weight", "even weight", {**SHORT, "Repetitions": 1, "Hold seconds": 8}),
    ("Stairs, both feet to each step", "stairs", {"Times there and back": 1, "Steps one way": 2, "Seconds a step": 2}),
    ("Bridge over a roll", "bridge", {**SHORT, "Hold seconds": 5}),
    ("Step through over the prosthesis", "step through", {**SHORT}),
]
BLOCKED = ("Stairs, one foot to each step", "stairs")
REASON = "Got up from the mat without help at two visits; a neighbour is in the flat."


class Desk:
    def __init__(self, programs, data, log, pictures):
        self.programs = programs
        self.data = data
        self.log = log
        self.pictures = pictures
        self.sheets = os.path.join(os.path.dirname(pictures), "reports", "desk")
        os.makedirs(self.sheets, exist_ok=True)
        self.app = None

    def open(self, day, hub, pin, user, password):
        self.app = Driven("desk", [f"{self.programs}/newel-desk", "--data", self.data, "--hub", hub, "--fingerprint",
                                   pin, "--sheets", self.sheets, "--drive", "-"], offscreen(day, "1280x720"), self.log)
        self.app.ask("size", 1280, 720)
        self.app.wait("User name")
        self.app.type("User name", user)
        self.app.type("Password", password)
        self.shot("desk-sign-in")
        self.app.click("Sign in")
        self.app.wait("New person", 15000)
        self.settle()

    def settle(self, ms=15000):
        """Until nothing is being fetched."""
        self.app.until("idle", "true", ms)
        self.app.until("loading", "false", ms)

    def shot(self, name):
        self.app.shot(f"{self.pictures}/{name}.png")

    def new_person(self, given, family):
        """Lost the left leg above the knee; a knee that swings freely; rails, chairs, a firm bed at home."""
        app = self.app
        app.click("New person")
        app.wait("Given name")
        app.type("Given name", given)
        app.type("Family name", family)
        for choice in ("Leg lost: left", "Level, left: transfemoral", "Has a prosthesis, left: yes",
                       "Prosthetic knee, left: swings freely", "Prosthetic foot, left: fixed ankle",
                       "Mobility level: K2", "Walking aid: one cane", "Asked: none of these",
                       "Stairs and rails: rails on both sides", "Ramp: yes", "Chair on wheels: no",
                       "Worktop or heavy table: yes", "Room to lie on the floor or a firm bed: yes",
                       "Someone within call: yes", "Can get up from the floor: not known", "Low vision: no",
                       "Hard of hearing: no", "Language: English"):
            app.click(choice)
        for _ in range(2):
            app.click("More: Sturdy chairs without wheels")
        app.type("Height", "172")
        app.type("Time zone", "Etc/UTC")
        self.shot("desk-new-person")
        app.click("Save record")
        app.wait("Write the first programme", 15000)
        self.shot("desk-person-new")
        return app.state()["person_id"]

    def open_person(self, name):
        self.app.wait(f"Open {name}", 15000)
        self.app.click(f"Open {name}")
        self.app.wait("What was done", 15000)
        self.settle()

    def back(self):
        """To the person's page, or from there to the caseload."""
        self.app.click("Back to *")

    # ---- writing a programme ----

    def add(self, title, words):
        self.app.click("Add exercise")
        self.app.wait("Find an exercise")
        self.app.type("Find an exercise", words)
        self.app.wait(f"Add {title}")
        self.app.click(f"Add {title}")
        self.app.wait(f"Remove, {title}")

    def dose(self, title, numbers):
        for what, number in numbers.items():
            self.app.type(f"{what}, {title}", number)
            self.app.ask("key", "Tab")

    def every_day(self, title):
        for day in ("Tue", "Thu", "Sat", "Sun"):
            self.app.click(f"Day, {title}: {day}")

    def write_first_programme(self):
        """Six entries; one rule blocks a seventh, which is taken out; one asks, and gets a written reason."""
        app = self.app
        app.click("Write the first programme")
        app.wait("Start from Nothing")
        for number, (title, words, numbers) in enumerate(ENTRIES):
            self.add(title, words)
            self.dose(title, numbers)
            if number == 0:  # the next ones begin with the days of the last
                self.every_day(title)
        self.shot("desk-programme")
        self.add(*BLOCKED)
        app.wait("Block: *")
        blocked_may_sign = app.state()["may_sign"]
        self.shot("desk-programme-blocked")
        app.click(f"Remove, {BLOCKED[0]}")
        app.gone("Block: *")
        ask_may_sign = app.state()["may_sign"]
        app.click("Edit Bridge over a roll")
        app.type("Reason, Bridge over a roll*", REASON)
        app.ask("key", "Tab")
        app.until("may_sign", "true")
        self.shot("desk-programme-reason")
        return blocked_may_sign, ask_may_sign

    def begin_from(self, template, picture):
        """From the person's page; how many clicks it took."""
        self.app.click("Write the first programme")
        self.app.wait(f"Start from {template}")
        self.app.click(f"Start from {template}")
        self.app.wait("Review and sign")
        self.app.until("may_sign", "true")
        self.shot(picture)
        return 2

    def preview(self, picture):
        """The phone beside the programme, played for a moment."""
        self.app.click("Play the preview in time")
        self.app.sleep(2500)
        self.shot(picture)
        self.app.click("Pause the preview")

    def lead_by_rule(self, title, rule):
        self.app.click(f"Edit {title}")
        self.app.click(f"When it may be ready, {title}: {rule}")

    def follow_advice(self, picture):
        """What the rules say, and the draft that follows from it."""
        self.app.click("Progress")
        self.app.wait("Progress: *")
        self.shot(picture)
        self.app.click("Make the draft: 1 exercise on the next step")
        self.app.wait("Review and sign")
        self.app.until("may_sign", "true")
        self.shot(picture + "-draft")

    def sign(self, picture, person, news=None):
        """How many clicks it took."""
        app = self.app
        app.click("Review and sign")
        app.wait(f"Sign for {person}: left, transfemoral")
        if news:
            app.type("What is new, for the person to read", news)
        self.shot(picture)
        app.click(f"Sign for {person}: left, transfemoral")
        app.wait("What was done", 20000)
        self.settle()
        return 2

    def documents(self, kinds, picture):
        """Made by a press each, into the desk's folder; how many files and folders there are then."""
        def made():
            return len([name for name in os.listdir(self.sheets) if not name.endswith(".part")])

        self.app.click("Documents: *")
        for number, kind in enumerate(kinds):
            self.app.click(f"Which document: {kind}")
            self.app.click("Make and save")
            self.app.gone("Give up making this document", 30000)
            end = time.monotonic() + 30
            while made() <= number and time.monotonic() < end:
                time.sleep(0.1)
        self.shot(picture)
        return made()

    # ---- pairing, holds, what was done ----

    def pairing_code(self):
        self.app.click("Pair a phone")
        self.app.wait("Code to type: *", 15000)
        state = self.app.state()
        self.shot("desk-pairing")
        return state["pairing_address"], state["typed_code"]

    def hold_everything(self, reason):
        """Up to the button that sends it; the caller presses that and takes the time."""
        self.app.click("Hold order")
        self.app.wait("Reason for the person")
        self.app.click("Hold everything")
        self.app.type("Reason for the person", reason)
        self.app.click("Look once more")
        self.app.wait("Send hold order")
        self.shot("desk-hold")

    def practices_seen(self, number, ms=20000):
        self.app.until("practices", number, ms)
        self.settle()
