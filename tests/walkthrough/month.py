"""The second half of the loop: a known kind of person, a template, four weeks of practices, the next step.

Another person of the same clinic. The programme comes from a template; the weeks are led by the phone's own practice
session with a clock that runs ahead (newel_test_month); then the therapist looks, follows the rules' advice, signs, and
takes out what leaves the clinic.
"""

import os
import subprocess

PERSON = "Odin Larkspur"  # invented, like everybody here
TEMPLATE = "Walking at home, above the knee"
SIGNED_ON = 1  # days from now, after the first half
DAYS = 26
TODAY = SIGNED_ON + DAYS + 1
DOCUMENTS = ("Handout to take home", "Progress report", "Wallet card", "Practice times for a calendar",
             "Record for another system (FHIR)", "Tables (CSV)")
LED_BY_RULE = ("Step forward and back", "All of it, three in a row")


class Month:
    def __init__(self, walk, phone):
        self.walk = walk
        self.desk = walk.desk
        self.phone = phone
        self.person_id = None

    def programme_from_template(self):
        walk, desk = self.walk, self.desk
        walk.say("9. A known kind of person: the programme comes from a template")
        walk.end_day()
        walk.start_day(SIGNED_ON)
        self.person_id = desk.new_person(*PERSON.split())
        acts = desk.begin_from(TEMPLATE, picture="desk-template")
        walk.check(desk.app.state()["may_sign"] is True, "nothing in the template speaks against this person")
        desk.preview("desk-template-preview")
        desk.lead_by_rule(*LED_BY_RULE)
        acts += desk.sign("desk-sign-template", PERSON)
        walk.check(acts <= 6, f"from the person's page to the signature: {acts} clicks")
        address, code = desk.pairing_code()
        self.phone.open(SIGNED_ON)
        self.phone.pair(address, code)
        self.phone.signs_agree()
        self.phone.app.until("programme", "1", 20000)
        self.phone.see_programme("phone-template-programme")
        desk.back()
        desk.app.wait("Programme 1, Seen *", 20000)
        walk.check(True, "it has arrived and was seen")
        self.phone.app.quit()

    def four_weeks(self):
        walk = self.walk
        walk.say("10. Four weeks of practices, every beat of them led, then sent")
        walk.end_day()
        walk.start_hub(TODAY)
        done = subprocess.run([walk.month_program, "--data", self.phone.data, "--days", str(DAYS)],
                              env=walk.environment(TODAY), text=True, capture_output=True, check=False, timeout=600)
        walk.log(done.stdout + done.stderr)
        walk.check(done.returncode == 0, "every practice was led to its end and is at the clinic")
        last = done.stdout.split("\n")[-2].split()
        self.practices = int(last[1])
        walk.check(self.practices >= 20, f"{self.practices} practices in {DAYS} days")

    def triage_and_progress(self):
        walk, desk = self.walk, self.desk
        walk.say("11. Who needs me today, and what the rules say")
        desk.open(TODAY, walk.address, walk.pin, walk.user, walk.password)
        desk.shot("desk-triage")
        desk.open_person(PERSON)
        desk.practices_seen(self.practices)
        desk.shot("desk-month-person")
        desk.app.click("What was done")
        desk.app.click("Show: 8 weeks")
        desk.app.wait(f"{self.practices} practices, newest first", 15000)
        desk.shot("desk-month-done")
        desk.back()
        desk.follow_advice("desk-progress")
        desk.sign("desk-sign-next", PERSON)
        made = desk.documents(DOCUMENTS, "desk-documents")
        walk.check(made == len(DOCUMENTS), f"{made} documents made at the desk")
        desk.back()
        self.phone.open(TODAY)
        self.phone.app.until("programme", "2", 20000)
        self.phone.see_programme("phone-next-programme")
        self.phone.look_back()
        self.phone.app.quit()
        walk.check(True, "the next programme is on the phone")

    def documents(self):
        walk = self.walk
        walk.say("12. What leaves the clinic: report, handout, card; FHIR, iCalendar, CSV")
        for kind, language in (("report", "en"), ("handout", "en"), ("handout", "ar"), ("card", "es")):
            walk.print_sheet(kind, self.person_id, TODAY, language, f"month-{kind}-{language}")
        for kind, name in (("fhir", "month-fhir.json"), ("ical", "month.ics"), ("csv", "month-csv")):
            walk.hub_command("export", "--data", f"{walk.data}/hub", "--person", self.person_id, "--format", kind,
                             "--out", f"{walk.reports}/{name}", day=TODAY)
        with open(f"{walk.reports}/month-fhir.json", encoding="utf-8") as file:
            bundle = file.read()
        walk.check('"resourceType":"Bundle"' in bundle.replace(" ", ""), "the record as a FHIR bundle")
        walk.check(PERSON.split()[1] not in bundle, "with no name in it")
        with open(f"{walk.reports}/month.ics", encoding="utf-8") as file:
            walk.check(file.read().startswith("BEGIN:VCALENDAR"), "the plan as a calendar")
        tables = os.listdir(f"{walk.reports}/month-csv")
        walk.check(len(tables) >= 12, f"{len(tables)} tables")

    def walk_on(self):
        for step in (self.programme_from_template, self.four_weeks, self.triage_and_progress, self.documents):
            step()
