// What a FHIR file from elsewhere gives the desk to begin with. The files here are invented; their shapes are
// those of HL7's own R4 examples (from memory).
#include "sync/export/fhir_import.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <random>

#include "sync/export/fhir_bundle.h"
#include "tests/sync/export/history_maker.h"

namespace newel {
namespace {

using nlohmann::json;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

json patient() {
  return json::parse(R"({
    "resourceType": "Patient", "id": "p1",
    "identifier": [{"system": "urn:invented", "value": "12345"}],
    "name": [{"use": "official", "family": "Specimen", "given": ["Dora", "Maria"]}, {"use": "nickname", "given": ["Dee"]}],
    "telecom": [{"system": "email", "value": "d@example.org"}, {"system": "phone", "value": "555 0142", "use": "mobile"}],
    "gender": "female", "birthDate": "1958-03-09",
    "address": [{"city": "Nowhere"}],
    "communication": [{"language": {"coding": [{"system": "urn:ietf:bcp:47", "code": "es"}]}, "preferred": true},
                      {"language": {"coding": [{"system": "urn:ietf:bcp:47", "code": "en"}]}}]
  })");
}

json request() {
  return json::parse(R"({
    "resourceType": "ServiceRequest", "id": "r1", "status": "active", "intent": "order",
    "code": {"coding": [{"system": "urn:invented", "code": "x", "display": "Balance training"}]},
    "subject": {"reference": "Patient/p1"}, "authoredOn": "2026-11-20",
    "requester": {"reference": "Practitioner/9", "display": "Dr. Invented"},
    "reasonCode": [{"text": "New prosthesis"}], "bodySite": [{"text": "left leg"}],
    "occurrenceTiming": {"repeat": {"frequency": 3, "period": 1, "periodUnit": "wk"}},
    "patientInstruction": "Hold on to something firm.", "note": [{"text": "Go slowly."}],
    "quantityQuantity": {"value": 10}
  })");
}

json bundleOf(const std::vector<json>& resources) {
  json bundle = {{"resourceType", "Bundle"}, {"type", "collection"}, {"entry", json::array()}};
  for (const auto& one : resources)
    bundle["entry"].push_back({{"fullUrl", "https://example.org/" + std::string(one["resourceType"]) + "/" +
                                               one.value("id", "none")},
                               {"resource", one}});
  return bundle;
}

FhirImport imported(const json& file) {
  auto import = importFhir(file.dump());
  EXPECT_TRUE(import.ok()) << import.status();
  return import.ok() ? *std::move(import) : FhirImport();
}

std::string refusal(const json& file) { return std::string(importFhir(file.dump()).status().message()); }

TEST(FhirImport, takesWhoItIs) {
  const FhirImport import = imported(patient());
  EXPECT_EQ(import.identity.given_name(), "Dora Maria");
  EXPECT_EQ(import.identity.family_name(), "Specimen");
  EXPECT_EQ(import.identity.birth_date(), "1958-03-09");
  EXPECT_EQ(import.identity.phone(), "555 0142");
  EXPECT_EQ(import.person.language(), "es");
  EXPECT_TRUE(import.requests.empty());
  EXPECT_TRUE(import.warnings.empty());
}

TEST(FhirImport, listsWhatItHasNoPlaceFor) {
  const FhirImport import = imported(patient());
  for (const char* path :
       {"identifier: not taken over", "name[1]: not taken over", "telecom[0]: not taken over",
        "gender: not taken over", "address: not taken over", "communication[1]: not taken over"}) {
    EXPECT_THAT(import.not_taken, Contains(path));
  }
  EXPECT_EQ(import.not_taken.size(), 6U) << testing::PrintToString(import.not_taken);
}

TEST(FhirImport, doesNotGuessWhichOfSeveral) {
  json file = patient();
  file["name"] = {{{"family", "A"}, {"given", {"B"}}}, {{"family", "C"}, {"given", {"D"}}}};
  file["telecom"] = {{{"system", "phone"}, {"value", "1"}}, {{"system", "phone"}, {"value", "2"}}};
  file["birthDate"] = "1958-03";
  file["communication"][0].erase("preferred");
  const FhirImport import = imported(file);
  EXPECT_EQ(import.identity.given_name(), "");
  EXPECT_EQ(import.identity.phone(), "");
  EXPECT_EQ(import.identity.birth_date(), "");
  EXPECT_EQ(import.person.language(), "");
  for (const char* path : {"name: not taken over", "telecom: not taken over", "birthDate: not taken over",
                           "communication: not taken over"}) {
    EXPECT_THAT(import.not_taken, Contains(path));
  }
  file["telecom"][1]["rank"] = 1;
  file["telecom"][0]["rank"] = 2;
  file["communication"][0]["preferred"] = false;
  file["communication"][1]["preferred"] = true;
  const FhirImport ranked = imported(file);
  EXPECT_EQ(ranked.identity.phone(), "2");
  EXPECT_EQ(ranked.person.language(), "en");
  EXPECT_THAT(ranked.not_taken, Contains("telecom[0]: not taken over"));
  EXPECT_THAT(ranked.not_taken, Contains("communication[0]: not taken over"));
}

TEST(FhirImport, aRequestFromElsewhereIsShownInItsOwnWords) {
  const FhirImport import = imported(bundleOf({patient(), request()}));
  ASSERT_EQ(import.requests.size(), 1U);
  const ImportedRequest& taken = import.requests[0];
  EXPECT_EQ(taken.path, "entry[1].resource");
  EXPECT_EQ(taken.title, "Balance training");
  EXPECT_EQ(taken.instruction, "Hold on to something firm.");
  EXPECT_EQ(taken.reason, "New prosthesis");
  EXPECT_EQ(taken.body_site, "left leg");
  EXPECT_EQ(taken.requester, "Dr. Invented");
  EXPECT_EQ(taken.authored_on, "2026-11-20");
  EXPECT_EQ(taken.notes, std::vector<std::string>{"Go slowly."});
  EXPECT_EQ(taken.entry, -1) << "which exercise it means is the therapist's to say";
  EXPECT_EQ(import.draft.entries_size(), 0);
  EXPECT_THAT(import.not_taken, Contains("entry[1].resource.quantityQuantity: not taken over"));
  EXPECT_THAT(import.not_taken, Contains("entry[1].resource.occurrenceTiming: not taken over"));
}

json catalogueRequest(const json& timing) {
  json file = request();
  file["instantiatesCanonical"] = {"http://newel.invalid/fhir/ActivityDefinition/sit-to-stand|1"};
  file["occurrenceTiming"] = timing;
  return file;
}

struct Timing {
  const char* json;
  std::vector<int> days;  // of the week; empty: not weekdays
  std::uint32_t times_per_week = 0;
  bool taken = true;
};

TEST(FhirImport, takesOnlyDaysThatOurScheduleCanSay) {
  const std::vector<Timing> timings = {
      {R"({"frequency":1,"period":1,"periodUnit":"d","dayOfWeek":["mon","wed","fri"]})", {1, 3, 5}},
      {R"({"frequency":1,"period":1,"periodUnit":"d"})", {1, 2, 3, 4, 5, 6, 7}},
      {R"({"frequency":2,"period":1,"periodUnit":"d","timeOfDay":["08:00:00","18:00:00"]})",
       {1, 2, 3, 4, 5, 6, 7}},
      {R"({"frequency":3,"period":1,"periodUnit":"wk"})", {}, 3},
      {R"({"frequency":2,"period":1,"periodUnit":"wk","dayOfWeek":["tue","sun"]})", {2, 7}},
      {R"({"frequency":3,"period":1,"periodUnit":"wk","dayOfWeek":["tue","sun"]})", {}, 0, false},
      {R"({"frequency":2,"period":1,"periodUnit":"d"})", {}, 0, false},
      {R"({"frequency":9,"period":1,"periodUnit":"wk"})", {}, 0, false},
      {R"({"frequency":1,"period":2,"periodUnit":"d"})", {}, 0, false},
      {R"({"frequency":1,"period":1,"periodUnit":"mo"})", {}, 0, false},
      {R"({"frequency":1,"period":1,"periodUnit":"d","count":10})", {}, 0, false},
      {R"({"frequency":1,"period":1,"periodUnit":"d","when":["MORN"]})", {}, 0, false},
      {R"({"frequency":1,"frequencyMax":3,"period":1,"periodUnit":"d"})", {}, 0, false},
      {R"({"boundsPeriod":{"start":"2026-12-01"}})", {}, 0, false},
  };
  for (const auto& timing : timings) {
    const FhirImport import = imported(catalogueRequest({{"repeat", json::parse(timing.json)}}));
    ASSERT_EQ(import.draft.entries_size(), 1) << timing.json;
    const v1::Schedule& schedule = import.draft.entries(0).schedule();
    std::vector<int> days(schedule.weekdays().days().begin(), schedule.weekdays().days().end());
    EXPECT_EQ(days, timing.days) << timing.json;
    EXPECT_EQ(schedule.times_per_week(), timing.times_per_week) << timing.json;
    EXPECT_EQ(schedule.windows_size(), 0) << "a time is no window";
    EXPECT_EQ(import.draft.entries(0).has_schedule(), timing.taken) << timing.json;
    const bool listed = std::any_of(import.not_taken.begin(), import.not_taken.end(), [](const auto& line) {
      return line.find("occurrenceTiming") != std::string::npos;
    });
    const bool has_time = std::string(timing.json).find("timeOfDay") != std::string::npos;
    if (!timing.taken) {
      EXPECT_THAT(import.not_taken, Contains("occurrenceTiming: not taken over"))
          << timing.json << " as a whole";
    }
    EXPECT_EQ(listed, !timing.taken || has_time) << timing.json << testing::PrintToString(import.not_taken);
  }
}

TEST(FhirImport, anUnknownExerciseOrRevisionIsNoEntry) {
  for (const char* address : {"http://newel.invalid/fhir/ActivityDefinition/sit-to-stand",
                              "http://newel.invalid/fhir/ActivityDefinition/sit-to-stand|99",
                              "http://newel.invalid/fhir/ActivityDefinition/no-such|1",
                              "http://example.org/ActivityDefinition/sit-to-stand|1",
                              "http://newel.invalid/fhir/ActivityDefinition/sit-to-stand|-1", "|"}) {
    json file = request();
    file["instantiatesCanonical"] = {address};
    const FhirImport import = imported(file);
    EXPECT_EQ(import.draft.entries_size(), 0) << address;
    EXPECT_EQ(import.requests.at(0).entry, -1);
    EXPECT_THAT(import.not_taken, Contains("instantiatesCanonical: not taken over"));
  }
}

// A request that says what is not to be done must never be read as one that is; and R4 forbids to go on where
// there is a modifier that is not understood.
TEST(FhirImport, aModifierStopsARequest) {
  json file = request();
  file["doNotPerform"] = true;
  FhirImport import = imported(file);
  EXPECT_TRUE(import.requests.empty());
  EXPECT_THAT(import.warnings, Contains(HasSubstr("\"Balance training\" is NOT to be done")));
  for (const char* key : {"modifierExtension", "implicitRules"}) {
    file = request();
    file[key] = json::array({{{"url", "urn:x"}, {"valueBoolean", true}}});
    import = imported(file);
    EXPECT_TRUE(import.requests.empty());
    EXPECT_EQ(import.warnings.size(), 1U);
    json who = patient();
    who[key] = file[key];
    EXPECT_THAT(refusal(who), HasSubstr("modifier"));
  }
}

TEST(FhirImport, whatIsOverIsNotBegun) {
  for (const char* status : {"completed", "revoked", "entered-in-error", "unknown"}) {
    json file = request();
    file["status"] = status;
    const FhirImport import = imported(file);
    EXPECT_TRUE(import.requests.empty());
    EXPECT_THAT(import.not_taken, Contains(HasSubstr(status)));
  }
  json file = request();
  file["status"] = "on-hold";
  EXPECT_EQ(imported(file).warnings.size(), 1U);
  EXPECT_EQ(imported(file).requests.size(), 1U);
}

TEST(FhirImport, aRequestAboutSomebodyElseIsRefused) {
  json other = request();
  other["subject"]["reference"] = "Patient/p2";
  EXPECT_EQ(refusal(bundleOf({patient(), other})),
            "entry[1].resource.subject: is not the Patient of this file");
  other["subject"]["reference"] = "https://example.org/Patient/p1";
  EXPECT_EQ(refusal(bundleOf({patient(), other})), "");
}

TEST(FhirImport, twoPatientsAreRefused) {
  EXPECT_EQ(refusal(bundleOf({patient(), patient()})),
            "entry[1].resource: is a second Patient; a file is about one");
}

TEST(FhirImport, someoneWhoHasDiedIsSaidSo) {
  json file = patient();
  file["deceasedDateTime"] = "2026-01-01";
  EXPECT_THAT(imported(file).warnings, Contains(HasSubstr("has died")));
}

TEST(FhirImport, whatIsOfAnotherFormIsNamedByItsPath) {
  const auto after = [](json file, const char* pointer, json value) {
    file[json::json_pointer(pointer)] = std::move(value);
    return refusal(file);
  };
  EXPECT_EQ(after(patient(), "/name/0/family", 7), "name[0].family: is no string");
  EXPECT_EQ(after(patient(), "/name", "Dora"), "name: is no list");
  EXPECT_EQ(after(patient(), "/birthDate", "1958-02-30"), "birthDate: is no day");
  EXPECT_EQ(after(patient(), "/telecom/1", 3), "telecom[1]: is no object");
  EXPECT_EQ(
      after(patient(), "/name/0/family", std::string(300, 'x')).find("family_name") != std::string::npos,
      true);
  EXPECT_EQ(after(bundleOf({request()}), "/entry/0/resource/status", 1),
            "entry[0].resource.status: is no string");
  json file = request();
  file.erase("intent");
  EXPECT_EQ(refusal(file), "intent: is missing");
  file = catalogueRequest({{"repeat", {{"frequency", "often"}, {"period", 1}, {"periodUnit", "d"}}}});
  EXPECT_EQ(refusal(file), "occurrenceTiming.repeat.frequency: is no whole number");
  file = catalogueRequest(
      {{"repeat", {{"frequency", 1}, {"period", 1}, {"periodUnit", "d"}, {"dayOfWeek", {"monday"}}}}});
  EXPECT_EQ(refusal(file), "occurrenceTiming.repeat.dayOfWeek[0]: is no day of the week");
}

TEST(FhirImport, whatIsNoFhirSaysSo) {
  EXPECT_EQ(importFhir("").status().message(), "the file: is no JSON object");
  EXPECT_EQ(importFhir("[]").status().message(), "the file: is no JSON object");
  EXPECT_EQ(importFhir("{\"a\":").status().message(), "the file: is no JSON object");
  EXPECT_EQ(importFhir("{}").status().message(), "the file: has no resourceType, so it is no FHIR resource");
  EXPECT_EQ(refusal(bundleOf({})), "the file: holds neither a Patient nor a ServiceRequest");
  EXPECT_EQ(importFhir(std::string(kMostImportBytes + 1, ' ')).status().message(),
            "the file: is larger than 16 MiB");
  EXPECT_EQ(importFhir(std::string(100000, '[')).status().message(), "the file: is nested too deep");
}

// What we wrote comes back: exercise, dose, support, side, pacing, days and windows of every request that is
// still to be done.
TEST(FhirImport, ourOwnExportComesBack) {
  int compared = 0;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    const PersonHistory history = test::anyHistory(seed);
    const auto text = fhirBundle(history, {});
    ASSERT_TRUE(text.ok());
    const auto import = importFhir(*text);
    ASSERT_TRUE(import.ok()) << seed << ": " << import.status();
    std::vector<const v1::Entry*> expected;
    for (std::size_t i = 0; i < history.programmes.size(); ++i) {
      const ProgrammeState state = programmeState(history, i);
      if (state != ProgrammeState::Active && state != ProgrammeState::NotBegun) continue;
      for (const auto& entry : history.programmes[i].programme.entries()) expected.push_back(&entry);
    }
    ASSERT_EQ(import->draft.entries_size(), static_cast<int>(expected.size())) << seed;
    for (std::size_t i = 0; i < expected.size(); ++i) {
      const v1::Entry& read = import->draft.entries(static_cast<int>(i));
      const v1::Entry& wrote = *expected[i];
      EXPECT_EQ(read.exercise_id(), wrote.exercise_id());
      EXPECT_EQ(read.exercise_revision(), wrote.exercise_revision());
      EXPECT_EQ(read.dose().SerializeAsString(), wrote.dose().SerializeAsString()) << seed;
      EXPECT_EQ(read.support(), wrote.support());
      EXPECT_EQ(read.thresholds().pain_stop_0_10(), 5U);
      EXPECT_EQ(read.thresholds().pain_rise_0_10(), 2U);
      EXPECT_EQ(read.side_policy(), wrote.side_policy());
      EXPECT_EQ(read.prosthesis(), wrote.prosthesis());
      EXPECT_EQ(read.pacing(), wrote.pacing());
      // With pauses it went out as dates, which a schedule is not guessed from.
      EXPECT_EQ(read.has_schedule(), wrote.schedule().pauses().empty()) << seed;
      if (read.has_schedule()) {
        EXPECT_EQ(read.schedule().SerializeAsString(), wrote.schedule().SerializeAsString()) << seed;
      }
      ++compared;
    }
  }
  EXPECT_GT(compared, 100);
}

// Whatever is cut, put in or exchanged: an answer or an error with a path, and never an end of the program.
TEST(FhirImport, nothingBreaksIt) {
  std::mt19937 random(4);
  const std::vector<std::string> starts = {bundleOf({patient(), request()}).dump(),
                                           catalogueRequest({{"repeat", {{"period", 1}}}}).dump(),
                                           *fhirBundle(test::anyHistory(3), {})};
  const std::vector<json> odd = {nullptr,
                                 0,
                                 -1,
                                 1e300,
                                 "",
                                 "x",
                                 true,
                                 json::array(),
                                 json::object(),
                                 json::array({json::array()}),
                                 {{"resourceType", "Patient"}}};
  for (int round = 0; round < 3000; ++round) {
    const std::string& start = starts[random() % starts.size()];
    if (random() % 2 == 0) {
      std::string text = start.substr(0, 20000);
      for (int i = 0; i < 4; ++i) text[random() % text.size()] = static_cast<char>(random());
      importFhir(text).IgnoreError();
      continue;
    }
    json flat = json::parse(start).flatten();
    std::vector<std::string> keys;
    for (const auto& [key, value] : flat.items()) keys.push_back(key);
    json file = json::parse(start);
    for (int i = 0; i < 3; ++i) {
      json::json_pointer at(keys[random() % keys.size()]);
      if (random() % 2 == 0 && !at.empty()) at.pop_back();
      if (file.contains(at)) file[at] = odd[random() % odd.size()];
    }
    const auto import = importFhir(file.dump());
    if (!import.ok()) {
      EXPECT_THAT(std::string(import.status().message()), HasSubstr(": ")) << file.dump();
    }
  }
}

}  // namespace
}  // namespace newel
