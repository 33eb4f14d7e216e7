#!/usr/bin/env python3
"""The whole loop, unattended, through the real programs: hub over TLS, desk and phone in offscreen windows.

Prescribe, practise, report, change: a new person, six entries (one rule asks and gets its reason, one blocks and is
refused), a paired phone, two practices on different days (one killed in the middle of a hold and taken up again), what
the desk makes of them, a second programme, a hold order during a practice, and the reports. Each step prints a line; the
last line says passed or failed. Pictures, the log and the reports are left in the folder of --out.
"""

import argparse
import os
import shutil
import signal
import subprocess
import sys
import time
import traceback

from desk import ENTRIES, Desk
from driven import Refused, wait_for_file
from month import Month
from phone import Phone

TOP = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
QUESTIONS = os.path.join(TOP, "core", "safety", "questions", "ready_check.textproto")
PERSON = "Marta Quill"  # invented, like everybody here
USER, PASSWORD = "demo.therapist", "walk-through-only"
CLINIC = "Harbour Street Limb Clinic (demo)"
HOLD = "Please stop. I want to look at your skin first. Phone me."


class Walk:
    def __init__(self, programs, month_program, out):
        self.programs = programs
        self.month_program = month_program
        self.user, self.password = USER, PASSWORD
        self.out = out
        self.pictures = os.path.join(out, "pictures")
        self.reports = os.path.join(out, "reports")
        self.data = os.path.join(out, "data")
        shutil.rmtree(out, ignore_errors=True)
        for folder in (self.pictures, self.reports, self.data):
            os.makedirs(folder)
        self.log_file = open(os.path.join(out, "session.log"), "w", encoding="utf-8")
        self.hub = None
        self.desk = Desk(programs, os.path.join(self.data, "desk"), self.log, self.pictures)
        self.phone = Phone(programs, os.path.join(self.data, "home"), QUESTIONS, self.log, self.pictures)
        self.checks = 0

    def log(self, text):
        self.log_file.write(text + "\n")
        self.log_file.flush()

    def say(self, text):
        print(text, flush=True)
        self.log(text)

    def check(self, good, text):
        if not good:
            raise AssertionError(text)
        self.checks += 1
        self.say(f"   ok: {text}")

    def environment(self, day=0):
        environment = dict(os.environ)
        environment.update(NEWEL_PASSWORD=PASSWORD, NEWEL_WALL_OFFSET_S=str(day * 86400), QT_QPA_PLATFORM="offscreen")
        return environment

    def hub_command(self, *arguments, day=0):
        done = subprocess.run([f"{self.programs}/newel-hub", *arguments], env=self.environment(day), text=True,
                              capture_output=True, check=False, timeout=60)
        self.log(f"  newel-hub {arguments[0]}: {done.returncode} {done.stdout.strip()} {done.stderr.strip()}")
        if done.returncode != 0:
            raise AssertionError(f"newel-hub {arguments[0]}: {done.stderr.strip()}")
        return done.stdout.strip()

    # ---- the clinic's side, started anew each day ----

    def start_hub(self, day):
        port_file = os.path.join(self.data, "port")
        if os.path.exists(port_file):
            os.remove(port_file)
        # The same port each day: the phone keeps the address that it was paired with.
        port = getattr(self, "port", "0")
        self.hub = subprocess.Popen([f"{self.programs}/newel-hub", "serve", "--data", f"{self.data}/hub", "--listen",
                                     f"127.0.0.1:{port}", "--port-file", port_file], env=self.environment(day),
                                    stdout=self.log_file, stderr=self.log_file)
        wait_for_file(port_file, 15)
        with open(port_file, encoding="ascii") as file:
            self.port = file.read().strip()
        self.address = f"127.0.0.1:{self.port}"

    def stop_hub(self):
        if self.hub is not None and self.hub.poll() is None:
            self.hub.send_signal(signal.SIGINT)
            self.hub.wait(timeout=10)
        self.hub = None

    def start_day(self, day):
        self.start_hub(day)
        self.desk.open(day, self.address, self.pin, USER, PASSWORD)

    def end_day(self):
        for program in (self.phone.app, self.desk.app):
            if program is not None:
                program.quit()
        self.stop_hub()

    # ---- the story ----

    def clinic(self):
        self.say("1. A clinic with its certificate, signing key and one therapist")
        self.hub_command("init", "--data", f"{self.data}/hub", "--clinic-name", CLINIC, "--phone", "555 0100",
                         "--emergency", "112", day=-2)
        self.hub_command("user", "add", "--data", f"{self.data}/hub", "--name", USER, day=-2)
        self.pin = self.hub_command("fingerprint", "--data", f"{self.data}/hub")
        self.check(len(self.pin) == 64, "the certificate has a fingerprint")

    def prescribe(self):
        self.say("2. The therapist writes a programme: transfemoral, left; six exercises")
        self.start_day(-2)
        self.desk.shot("desk-caseload-empty")
        self.person_id = self.desk.new_person(*PERSON.split())
        with_block, without_reason = self.desk.write_first_programme()
        self.check(with_block is False, "a blocked exercise cannot be signed")
        self.check(without_reason is False, "what a rule asks about cannot be signed without a reason")
        self.desk.sign("desk-sign", PERSON)
        state = self.desk.app.state()
        self.check(state["programmes"] == 1, "programme 1 is signed, the reason under the signature")

    def pair(self):
        self.say("3. The phone is paired with a code that works once")
        address, code = self.desk.pairing_code()
        self.phone.open(-2)
        signs = self.phone.pair(address, code)
        self.desk.app.wait("Paired: *", 15000)
        self.check(any(text.endswith(signs) for text in self.desk.app.ask("list")),
                   "both screens show the same signs of the clinic's certificate")
        self.phone.signs_agree()
        self.phone.app.until("programme", "1", 20000)
        self.phone.app.until("page", "Today")
        self.phone.shot("phone-today")
        self.phone.see_programme("phone-programme")
        self.check(self.phone.app.state()["due"] == len(ENTRIES), "six exercises are due today")
        self.desk.back()
        self.desk.settle()
        self.desk.app.wait("Programme 1, Seen *", 20000)
        self.desk.shot("desk-seen")
        self.check(True, "the desk shows that programme 1 has arrived and was seen")

    def practise_and_be_killed(self):
        self.say("4. First practice; the phone dies in the middle of a hold")
        phone = self.phone
        phone.app.click("Start")
        phone.answer_questions(pictures=("question", "pain"))
        phone.start_entry("phone-get-ready")
        phone.shot("phone-practice-ready")
        before = phone.wait_for_beat("hold")
        phone.shot("phone-practice-hold")
        phone.app.kill()
        self.log(f"  killed at {before}")
        phone.open(-2)
        phone.app.until("page", "Unfinished", 15000)
        phone.shot("phone-unfinished")
        phone.app.click("Go on")
        phone.app.until("page", "Practice")
        state = phone.app.state()
        self.check(state["beat"] == before["beat"] and state["exercise"] == before["exercise"],
                   "it waits before the very hold that was cut")
        phone.shot("phone-taken-up")
        phone.go_on()
        phone.finish_entries(pain=1, effort=3)
        phone.shot("phone-close")
        self.check(phone.app.state()["practices"] == 1, "one practice is closed, not two")
        phone.app.until("queued", "0", 20000)
        phone.app.wait("The clinic has it", 5000)
        phone.shot("phone-close-arrived")
        self.check(True, "the clinic has it, and the phone says so")

    def next_day(self):
        self.say("5. Second practice, the day after, with no network; then it is sent")
        self.end_day()
        self.phone.open(-1)
        phone = self.phone
        phone.app.until("page", "Today")
        phone.app.click("Start")
        phone.answer_questions()
        phone.finish_entries(pain=1, effort=4)
        phone.app.click("Back to today")
        phone.app.until("page", "Today")
        phone.shot("phone-kept")
        self.check(phone.app.state()["queued"] > 0, "the practice is kept on the phone while there is no network")
        self.start_day(-1)
        phone.app.until("queued", "0", 90000)
        self.check(True, "it is sent as soon as the hub is back")
        self.phone.look_back()

    def look_and_change(self):
        self.say("6. The desk shows what was done; the therapist changes the programme")
        desk = self.desk
        desk.app.click("Read again")
        desk.settle()
        desk.shot("desk-caseload")
        desk.open_person(PERSON)
        desk.practices_seen(2)
        desk.shot("desk-person")
        desk.app.click("What was done")
        desk.app.wait("2 practices, newest first", 15000)
        desk.shot("desk-done")
        texts = desk.app.ask("list")
        self.check(any("interrupted and taken up again once" in text for text in texts),
                   "the desk tells that the first practice was interrupted and taken up again")
        self.check(any("12 of 12" in text for text in texts), "adherence: 12 of 12 occasions done")
        desk.back()
        desk.app.click("Write the next programme")
        desk.app.wait("Edit Sit to stand")
        desk.app.click("Edit Sit to stand")
        desk.app.type("Repetitions, Sit to stand", 4)
        desk.app.ask("key", "Tab")
        desk.shot("desk-programme-2")
        desk.sign("desk-sign-2", PERSON, news="Sit to stand: four times now.")
        self.phone.app.until("programme", "2", 20000)
        self.phone.shot("phone-new-programme")
        self.check(True, "the phone has programme 2 before the next practice")
        self.phone.see_programme("phone-what-is-new")
        desk.app.wait("Programme 2, Seen *", 20000)
        self.check(True, "the desk shows that the person has seen it")

    def hold(self):
        self.say("7. A hold order during the next practice")
        self.end_day()
        self.start_day(0)
        phone, desk = self.phone, self.desk
        phone.open(0)
        phone.app.until("page", "Today")
        self.check(phone.app.state()["programme"] == 2, "the third day begins with programme 2")
        desk.open_person(PERSON)
        desk.hold_everything(HOLD)
        phone.app.click("Start")
        phone.answer_questions()
        phone.start_entry()
        phone.wait_for_beat("move", left_over_ms=200)
        sent = time.monotonic()
        desk.app.click("Send hold order")
        while phone.app.state().get("player") == "running":
            if time.monotonic() - sent > 5:
                break
        took = time.monotonic() - sent
        phone.shot("phone-held")
        self.check(phone.app.state()["page"] == "Verdict" and took < 1.0,
                   f"the practice stopped {took:.2f} s after the button was pressed")
        phone.app.click("I have read this")
        phone.app.until("queued", "0", 20000)
        phone.app.sleep(300)
        phone.shot("phone-after-hold")
        self.check(not phone.app.state()["mayStart"], "no practice can begin while the hold stands")
        desk.app.wait("What was done", 15000)
        desk.app.wait("Hold order, Seen *", 20000)
        desk.practices_seen(3)
        desk.shot("desk-held")
        self.check(True, "the desk shows that the hold arrived and was seen")

    def print_sheet(self, kind, person_id, day, language, name):
        path = f"{self.reports}/{name}.pdf"
        done = subprocess.run([f"{self.programs}/newel-desk", "--print", kind, "--person", person_id, "--hub",
                               self.address, "--fingerprint", self.pin, "--user", USER, "--out", path,
                               "--language", language],
                              env=self.environment(day), text=True, capture_output=True, check=False, timeout=60)
        self.log(done.stdout + done.stderr)
        self.check(done.returncode == 0 and os.path.getsize(path) > 10000, f"{name}.pdf is made")
        subprocess.run(["pdftoppm", "-r", "60", "-png", path, f"{self.reports}/{name}"], check=True)

    def reports_out(self):
        self.say("8. Reports")
        for kind in ("handout", "report", "card"):
            self.print_sheet(kind, self.person_id, 0, "en", kind)
        text = subprocess.run(["pdftotext", "-layout", f"{self.reports}/report.pdf", "-"], text=True,
                              capture_output=True, check=True).stdout
        self.check(PERSON in text and "transfemoral" in text, "the report says whose it is")
        sheet = f"{self.reports}/figures.png"
        done = subprocess.run([f"{self.programs}/newel-desk", "--sheet", sheet], env=self.environment(0), text=True,
                              capture_output=True, check=False, timeout=60)
        self.log(done.stdout + done.stderr)
        self.check(done.returncode == 0 and os.path.getsize(sheet) > 100000, "every exercise is drawn on one sheet")
        backup = f"{self.data}/backup.db"
        self.hub_command("backup", "--data", f"{self.data}/hub", "--to", backup)
        self.check(os.path.getsize(backup) > 0, "a backup was taken while the hub served")
        verified = self.hub_command("audit", "verify", "--data", f"{self.data}/hub")
        self.check(True, f"the audit trail holds: {verified}")

    def walk(self):
        for step in (self.clinic, self.prescribe, self.pair, self.practise_and_be_killed, self.next_day,
                     self.look_and_change, self.hold, self.reports_out):
            step()
        phone = Phone(self.programs, os.path.join(self.data, "second-phone"), QUESTIONS, self.log, self.pictures)
        Month(self, phone).walk_on()


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--programs", required=True,
                        help="folder of newel-hub, newel-desk and newel-home; newel_test_month is in ../tests")
    parser.add_argument("--out", required=True, help="folder for pictures, log and reports; emptied first")
    arguments = parser.parse_args()
    began = time.monotonic()
    programs = os.path.abspath(arguments.programs)
    walk = Walk(programs, os.path.join(programs, "..", "tests", "newel_test_month"), os.path.abspath(arguments.out))
    # A stop from outside ends what was started here, and nothing else.
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(143))
    passed = False
    try:
        walk.walk()
        passed = True
    except (AssertionError, Refused, OSError, StopIteration, subprocess.SubprocessError, KeyError) as error:
        walk.log(traceback.format_exc())
        walk.say(f"   FAILED: {error}")
        for program, name in ((walk.phone.app, "phone"), (walk.desk.app, "desk")):
            try:
                if program is not None and program.process.poll() is None:
                    program.shot(f"{walk.pictures}/failed-{name}.png")
                    walk.log(f"{name}: {program.ask('list')}")
            except Refused:
                pass
    finally:
        walk.end_day()
    walk.say(f"Pictures in {walk.pictures}, reports in {walk.reports}, log in {walk.out}/session.log")
    walk.say(f"The whole loop: {'passed' if passed else 'failed'} ({walk.checks} checks, {time.monotonic() - began:.0f} s)")
    return 0 if passed else 1


if __name__ == "__main__":
    sys.exit(main())
