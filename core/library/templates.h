// Templates that programmes begin from: whether one fits the catalogue and a person, what an entry of it is
// once the person is known, and the template that a draft leaves behind.
// Not here: what safety says of it for that person (core/review/start_from.h), keeping a clinic's own
// (sync/hub/clinic_library.h).
#pragma once

#include <absl/status/status.h>

#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/library/exercise_checks.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/template.pb.h"

namespace newel {

// What is wrong beyond check(): exercises, rungs and cards that do not exist; a dose of another kind than the
// exercise's, or outside what its own dose and its ladder span; a support, side policy or use of the
// prosthesis that the exercise does not have.
std::vector<CatalogueProblem> problemsOfTemplate(const v1::ProgrammeTemplate& programme_template,
                                                 const Catalogue& catalogue);

// The same for a clinic's own, whose doses a therapist chose: they may leave the ladder, not their kind.
// kInvalidArgument names the first field.
absl::Status fitsCatalogue(const v1::ProgrammeTemplate& programme_template, const Catalogue& catalogue);

// True when the levels, the mobility level and how many limbs are lost are what the template is for, and,
// before the first prosthesis, the person has none. An absent fit is for everybody.
bool fitsPerson(const v1::ProgrammeTemplate& programme_template, const v1::Person& person);

// The entry for this person: what the template says, else the rung, else defaultEntry(). A side policy that
// needs a sound limb is left to defaultEntry() when there is none. No id. `exercise` is the newest revision.
v1::Entry entryFrom(const v1::TemplateEntry& from, const v1::Exercise& exercise, const v1::Person& person);

// The template's wearing time as a plan of this programme's person from its first day on; the number, signer
// and day of signing are the hub's. Only for a template that has one.
v1::WearPlan wearFor(const v1::ProgrammeTemplate& from, const v1::Programme& programme);
// Asks for the template's measures, by days counted from the programme's first one, after those that are
// asked for already: each kind once, at most 10.
void askMeasures(const v1::ProgrammeTemplate& from, v1::Programme& programme);

// What may be kept of `draft` for anybody: exercises (each once), doses, support, days, rungs, progression,
// cards, length, which measures after how many weeks, and the steps of its wearing time from the first one.
// Never what was written to or about the person: notes, advice, reasons, pictures, pain limits. Left and
// right become the prosthetic or the sound side of `person`, and are left out when both limbs are lost. No
// id, author or revision. Days that are none give 4 weeks.
v1::ProgrammeTemplate templateOf(const v1::Programme& draft, const v1::Person& person,
                                 const std::string& name, const std::string& language);

// The words in `language`, its base language, English, or whatever there is; nullptr when there are none.
const v1::TemplateWords* wordsOf(const v1::ProgrammeTemplate& programme_template,
                                 const std::string& language);

}  // namespace newel
