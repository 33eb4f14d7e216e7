"""What a therapist does at the desk, in the words on its screens."""

from driven import Driven, offscreen


class Desk:
    def __init__(self, programs, data, log, pictures):
        self.programs = programs
        self.data = data
        self.log = log
        self.pictures = pictures
        self.app = None

    def open(self, day, hub, pin, user, password):
        self.app = Driven("desk", [f"{self.programs}/newel-desk", "--data", self.data, "--hub", hub, "--fingerprint",
                                   pin, "--drive", "-"], offscreen(day, "1280x720"), self.log)
        self.app.ask("size", 1280, 720)
        self.app.wait("User name")
        self.app.type("User name", user)
        self.app.type("Password", password)
        self.shot("desk-sign-in")
        self.app.click("Sign in")
        self.app.wait("New person", 15000)

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
                       "Someone within call: yes", "Can get up from the floor: yes", "Low vision: no",
                       "Hard of hearing: no", "Language: English"):
            app.click(choice)
        for _ in range(2):
            app.click("More: Sturdy chairs without wheels")
        app.type("Height", "172")
        app.type("Time zone", "Etc/UTC")
        self.shot("desk-new-person")
        app.click("Save record")
        app.wait("Write the first programme", 15000)
        self.shot("desk-person")

    def open_person(self, name):
        self.app.wait(f"Open {name}", 15000)
        self.app.click(f"Open {name}")
        self.app.wait("What was done", 15000)
