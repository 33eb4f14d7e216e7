// What the FHIR bundle says of a history. That it is good FHIR: fhir_outside_test.cpp.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>

#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"
#include "sync/export/fhir_codes.h"
#include "tests/sync/export/fhir_fixture.h"
#include "tests/sync/export/history_maker.h"

namespace newel {
namespace {

using nlohmann::json;
using test::bundleOf;
using test::ofType;

// R4's rule, and the Patient says nothing of who it is.
TEST(FhirBundle, thePersonIsPseudonymous) {
  const json bundle = json::parse(bundleOf(test::anyHistory(5)));
  const auto patients = ofType(bundle, "Patient");
  ASSERT_EQ(patients.size(), 1U);
  for (const auto& [key, value] : patients[0].items())
    EXPECT_TRUE(key == "resourceType" || key == "id" || key == "identifier") << key;
}

// Nobody's free words and no therapist's name without being asked; all of them when asked.
TEST(FhirBundle, freeWordsAndNamesComeOnlyWhenAskedFor) {
  PersonHistory history = test::yearOfHistory(1);
  const std::string mark = "QUITE-UNLIKELY";
  v1::Programme& programme = history.programmes[0].programme;
  programme.set_signer_name(mark + "1");
  programme.set_advice(mark + "2");
  programme.set_changes(mark + "3");
  programme.mutable_entries(0)->set_note(mark + "4");
  v1::Override& given = *programme.mutable_entries(0)->add_overrides();
  given.set_rule_id("any");
  given.set_reason(mark + "5");
  history.practices[0].set_note(mark + "6");
  history.practices[0].mutable_entries(0)->set_skipped_words(mark + "7");
  v1::HoldOrder order;
  order.set_id("0193a1c0-0000-7000-8000-000000000008");
  order.set_reason(mark + "8");
  order.set_signer_name(mark + "9");
  history.holds.push_back({order, "", "", {}});
  v1::Message message;
  message.set_id("0193a1c0-0000-7000-8000-000000000009");
  message.set_sender(v1::SENDER_CLINIC);
  message.set_text(mark + "10");
  message.set_sender_name(mark + "11");
  history.messages.push_back({message, {}});
  v1::Measure measure;
  measure.set_id("0193a1c0-0000-7000-8000-000000000010");
  measure.set_kind("timed-up-and-go");
  measure.set_unit("s");
  measure.set_local_day("2026-01-05");
  measure.set_note(mark + "12");
  history.measures.push_back(measure);
  v1::WearPlan& plan = *programme.mutable_wear_plan();
  plan.set_id("0193a1c0-0000-7000-8000-000000000011");
  plan.set_number(1);
  plan.set_person_id(programme.person_id());
  plan.set_clinic_id(programme.clinic_id());
  plan.set_signer_id(programme.signer_id());
  *plan.mutable_issued_at() = programme.issued_at();
  plan.set_effective_day(programme.effective_day());
  plan.set_zone(programme.zone());
  plan.set_redness_min(10);
  plan.set_redness_action(v1::REDNESS_ACTION_STAY_OFF);
  plan.set_signer_name(mark + "13");
  plan.set_note(mark + "14");
  v1::WearStep& step = *plan.add_steps();
  step.set_days(1);
  step.set_all_day(true);
  step.set_activity(mark + "15");
  history.phones.push_back(
      {"0193a1c0-0000-7000-8000-000000000012", mark + "16", "1", history.as_of, {}, false});
  EXPECT_EQ(bundleOf(history).find(mark), std::string::npos);
  ExportOptions options;
  options.with_words = true;
  const std::string asked = bundleOf(history, options);
  for (int i = 1; i <= 16; ++i) EXPECT_NE(asked.find(mark + std::to_string(i)), std::string::npos) << i;
}

TEST(FhirBundle, theSameHistoryGivesTheSameBytes) {
  EXPECT_EQ(bundleOf(test::anyHistory(12)), bundleOf(test::anyHistory(12)));
}

// Done, part, not done, excused and no data are told apart, and each occasion is told of once.
TEST(FhirBundle, everyOccasionIsWhatItIs) {
  std::map<std::string, int> seen;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    const PersonHistory history = test::anyHistory(seed);
    const json bundle = json::parse(bundleOf(history));
    std::map<std::string, std::set<std::string>> told;  // by entry, day and window: status
    std::map<std::string, std::string> entry_of;        // ServiceRequest to entry
    for (const auto& request : ofType(bundle, "ServiceRequest"))
      entry_of["urn:uuid:" + std::string(request["id"])] = request["identifier"][0]["value"];
    for (const auto& procedure : ofType(bundle, "Procedure")) {
      const json& parts = procedure["extension"][0]["extension"];
      const std::string key = entry_of[procedure["basedOn"][0]["reference"]] + " " +
                              std::string(parts[0]["valueDate"]) + " " + parts[1]["valueInteger"].dump();
      const std::string reason = procedure.contains("statusReason")
                                     ? procedure["statusReason"]["coding"][0].value("code", "")
                                     : std::string();
      told[key].insert(std::string(procedure["status"]) + " " + reason);
    }
    const auto adherence = adherenceIn(history);
    ASSERT_TRUE(adherence.ok());
    for (const auto& occasion : adherence->occasions) {
      if (occasion.any_day_of_week) continue;  // told of where it was done
      const std::string key = occasion.ref.entry_id() + " " + occasion.ref.local_day() + " " +
                              std::to_string(occasion.ref.window());
      using State = OccasionResult::State;
      const auto& statuses = told[key];
      const auto has = [&](const std::string& start) {
        return std::any_of(statuses.begin(), statuses.end(),
                           [&](const std::string& one) { return one.rfind(start, 0) == 0; });
      };
      switch (occasion.state) {
        case State::Done:
          EXPECT_TRUE(has("completed") || has("stopped")) << seed << " " << key;
          ++seen["done"];
          break;
        case State::Part:
          EXPECT_TRUE(has("stopped")) << seed << " " << key;
          ++seen["part"];
          break;
        case State::NotDone:
          EXPECT_TRUE(has("not-done")) << seed << " " << key;
          EXPECT_FALSE(has("not-done excused")) << seed << " " << key;
          ++seen["not done"];
          break;
        case State::Excused:
          EXPECT_FALSE(statuses.empty()) << seed << " " << key;
          EXPECT_FALSE(has("not-done nothing-told")) << seed << " " << key;
          ++seen["excused"];
          break;
        case State::NoData:
        case State::Coming:
          EXPECT_TRUE(statuses.empty()) << seed << " " << key << " " << *statuses.begin();
          ++seen["nothing"];
          break;
      }
    }
  }
  for (const char* kind : {"done", "part", "not done", "excused", "nothing"})
    EXPECT_GT(seen[kind], 20) << kind;
}

// The CarePlans of one kind: "programme" or "wear-plan".
std::vector<json> plansOf(const json& bundle, const std::string& kind) {
  std::vector<json> plans;
  for (const auto& plan : ofType(bundle, "CarePlan")) {
    if (plan["identifier"][0]["system"] == identifierUrl(kind)) plans.push_back(plan);
  }
  return plans;
}

// Programme N replaces N - 1, and who signed it is Provenance with the signature that the hub keeps.
TEST(FhirBundle, programmesAreChainedAndSigned) {
  int chained = 0;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const PersonHistory history = test::anyHistory(seed);
    const json bundle = json::parse(bundleOf(history));
    const auto plans = plansOf(bundle, "programme");
    ASSERT_EQ(plans.size(), history.programmes.size());
    for (std::size_t i = 0; i < plans.size(); ++i) {
      EXPECT_EQ(plans[i]["meta"]["versionId"], std::to_string(i + 1));
      EXPECT_EQ(plans[i].contains("replaces"), i > 0);
      if (i == 0) continue;
      EXPECT_EQ(plans[i]["replaces"][0]["reference"], "urn:uuid:" + std::string(plans[i - 1]["id"]));
      ++chained;
    }
    const auto signatures = ofType(bundle, "Provenance");
    ASSERT_EQ(signatures.size(), history.programmes.size());
    for (std::size_t i = 0; i < signatures.size(); ++i)
      EXPECT_EQ(signatures[i].contains("signature"), !history.programmes[i].signature.empty());
  }
  EXPECT_GT(chained, 20);
}

// A plan that two programmes carry is there once and part of both, and its steps stand where the rule of
// wearing says that the person is.
TEST(FhirBundle, aWearPlanIsThereOnceWithWhereThePersonIs) {
  int carried = 0;
  int under_way = 0;
  int stopped = 0;
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    const PersonHistory history = test::anyHistory(seed);
    const json bundle = json::parse(bundleOf(history));
    std::map<std::string, std::set<std::string>> wholes;  // plan to programmes
    std::map<std::string, v1::WearPlan> plans;
    for (const auto& kept : history.programmes) {
      if (!kept.programme.has_wear_plan()) continue;
      const v1::WearPlan& plan = kept.programme.wear_plan();
      wholes[plan.id()].insert("urn:uuid:" + kept.programme.id());
      plans[plan.id()] = plan;
    }
    const auto found = plansOf(bundle, "wear-plan");
    ASSERT_EQ(found.size(), plans.size()) << seed;
    for (const auto& json_plan : found) {
      const v1::WearPlan& plan = plans.at(json_plan["id"]);
      std::set<std::string> parts;
      for (const auto& part : json_plan["partOf"]) parts.insert(part["reference"]);
      EXPECT_EQ(parts, wholes.at(plan.id())) << seed;
      carried += parts.size() > 1 ? 1 : 0;
      ASSERT_EQ(json_plan["activity"].size(), static_cast<std::size_t>(plan.steps_size()));
      if (json_plan["status"] != "active" && json_plan["status"] != "on-hold") continue;
      const auto day = wearDay(plan, history.wear_blocks, *parseLocalDay(localDayOf(history, history.as_of)));
      ASSERT_TRUE(day.ok()) << day.status();
      EXPECT_EQ(json_plan["status"] == "on-hold", day->gate == WearGate::StayOff) << seed;
      if (day->gate == WearGate::NotBegun) continue;
      const std::string here = json_plan["activity"][day->step]["detail"]["status"];
      EXPECT_EQ(here, day->gate == WearGate::StayOff ? "on-hold" : "in-progress") << seed;
      under_way += here == "in-progress" ? 1 : 0;
      stopped += here == "on-hold" ? 1 : 0;
      for (std::size_t i = plan.first_step(); i < day->step; ++i)
        EXPECT_EQ(json_plan["activity"][i]["detail"]["status"], "completed") << seed;
    }
  }
  EXPECT_GT(carried, 10);
  EXPECT_GT(under_way, 10);
  EXPECT_GT(stopped, 3);
}

// A rule of progression is a goal that its entry and its programme name, with the number that the judge of
// practices would hold it to.
TEST(FhirBundle, aRuleOfProgressionIsAGoal) {
  PersonHistory history = test::yearOfHistory(2);
  v1::Programme& programme = history.programmes[0].programme;
  v1::Entry& entry = *programme.mutable_entries(1);
  entry.mutable_dose()->mutable_sets()->set_repetitions(8);
  entry.mutable_progression()->set_practices(3);
  entry.mutable_progression()->set_effort_at_most_0_10(4);
  entry.mutable_progression()->set_repetitions_over_goal(2);
  const auto goals = [&history] { return ofType(json::parse(bundleOf(history)), "Goal"); };
  ASSERT_EQ(goals().size(), 1U);
  EXPECT_EQ(goals()[0]["target"][0]["detailQuantity"]["value"], 10) << "8 of the dose, and 2";
  EXPECT_EQ(goals()[0]["lifecycleStatus"], "completed") << "its programme is over";
  EXPECT_FALSE(goals()[0].contains("achievementStatus")) << "nobody judged it";
  entry.mutable_progression()->set_goal_repetitions(12);
  EXPECT_EQ(goals()[0]["target"][0]["detailQuantity"]["value"], 14);
  const json bundle = json::parse(bundleOf(history));
  const std::string url = "urn:uuid:" + std::string(goals()[0]["id"]);
  EXPECT_EQ(plansOf(bundle, "programme")[0]["goal"][0]["reference"], url);
  const json named = ofType(bundle, "ServiceRequest")[1]["extension"].back();
  EXPECT_EQ(named["url"], kPertainsToGoal);
  EXPECT_EQ(named["valueReference"]["reference"], url);
}

// Who saw and changed what: by ids, a refusal told apart, a phone of the bundle named by its Device.
TEST(FhirBundle, theTrailSaysWhoDidWhat) {
  PersonHistory history = test::yearOfHistory(1);
  const std::string phone = "0193a1c0-0000-7000-8000-000000000012";
  const std::string account = "0193a1c0-0000-7000-8000-000000000013";
  using Who = AuditLine::Who;
  history.phones.push_back({phone, "Phone of Somebody", "1", history.as_of, history.as_of, true});
  history.audit = {{1, history.as_of, "person.see", Who::Account, account, "", ""},
                   {2, history.as_of, "phone.refused", Who::Phone, phone, "", "token"},
                   {3, history.as_of, "programme.sign", Who::Unknown, account, phone, ""},
                   {4, history.as_of, "quite.new", Who::Nobody, "", "", ""}};
  const json bundle = json::parse(bundleOf(history));
  const auto devices = ofType(bundle, "Device");
  ASSERT_EQ(devices.size(), 1U);
  EXPECT_EQ(devices[0]["status"], "inactive");
  EXPECT_FALSE(devices[0].contains("deviceName"));
  EXPECT_FALSE(devices[0].contains("serialNumber"));
  const auto events = ofType(bundle, "AuditEvent");
  ASSERT_EQ(events.size(), 4U);
  EXPECT_EQ(events[0]["action"], "R");
  EXPECT_EQ(events[0]["outcome"], "0");
  EXPECT_EQ(events[0]["agent"][0]["who"]["identifier"]["value"], account);
  EXPECT_EQ(events[1]["outcome"], "4");
  EXPECT_EQ(events[1]["agent"][0]["who"]["reference"], "urn:uuid:" + phone);
  EXPECT_EQ(events[1]["entity"][1]["detail"][0]["valueString"], "token");
  EXPECT_EQ(events[2]["action"], "C");
  EXPECT_EQ(events[2]["agent"][0]["altId"], account);
  EXPECT_EQ(events[2]["entity"][1]["what"]["identifier"]["value"], phone);
  EXPECT_FALSE(events[3].contains("action")) << "what it is nobody can say";
  EXPECT_FALSE(events[3]["agent"][0].contains("who"));
}

// Every action about a person that the hub's sources name says what was done, or that it was refused.
TEST(FhirBundle, everyActionOfTheHubIsKnown) {
  static const std::regex kAction(
      "\"((?:person|programme|hold|message|measure|media|practice|receipt|wear|device|pairing|phone|offer)s?"
      "\\.[a-z_]+)"
      "\"");
  std::set<std::string> actions;
  for (const auto& file : std::filesystem::directory_iterator(std::string(NEWEL_SOURCE_DIR) + "/sync/hub")) {
    if (file.path().extension() != ".cpp") continue;
    std::ifstream stream(file.path());
    const std::string text{std::istreambuf_iterator<char>(stream), {}};
    for (std::sregex_iterator at(text.begin(), text.end(), kAction), end; at != end; ++at)
      actions.insert((*at)[1]);
  }
  ASSERT_GT(actions.size(), 25U);
  PersonHistory history = test::yearOfHistory(1);
  for (const auto& action : actions)
    history.audit.push_back(
        {history.audit.size() + 1, history.as_of, action, AuditLine::Who::Nobody, "", "", ""});
  for (const auto& event : ofType(json::parse(bundleOf(history)), "AuditEvent")) {
    EXPECT_TRUE(event.contains("action") || event["outcome"] == "4") << event["type"];
    EXPECT_FALSE(event.contains("action") && event["outcome"] == "4") << event["subtype"];
  }
}

// What was told later was not timed: its day is known, the moment of telling says nothing.
TEST(FhirBundle, whatWasToldLaterHasADayAndNoTime) {
  int later = 0;
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    for (const auto& group : ofType(json::parse(bundleOf(test::anyHistory(seed))), "Observation")) {
      if (!group.contains("extension") || group["extension"][0]["url"] != extensionUrl("origin")) continue;
      const bool told = group["extension"][0]["valueCode"] == "told-later";
      EXPECT_EQ(std::string(group["effectivePeriod"]["start"]).size() == 10, told);
      later += told ? 1 : 0;
    }
  }
  EXPECT_GT(later, 10);
}

// Profiles are claimed under the switch alone: they pull US Core in.
TEST(FhirBundle, profilesStandUnderTheirSwitchAlone) {
  const PersonHistory history = test::yearOfHistory(1);
  EXPECT_EQ(bundleOf(history).find("\"profile\""), std::string::npos);
  ExportOptions options;
  options.us_profiles = true;
  const std::string claimed = bundleOf(history, options);
  EXPECT_NE(claimed.find("pa-careplan"), std::string::npos);
  EXPECT_NE(claimed.find("us-core-patient"), std::string::npos);
  EXPECT_NE(claimed.find("pa-observation-activity-measure"), std::string::npos);
}

TEST(FhirBundle, loincsNoticeGoesWithItsNumbers) {
  const std::string text = bundleOf(test::yearOfHistory(1));
  EXPECT_NE(text.find(kLoinc), std::string::npos);
  EXPECT_NE(text.find(kLoincNotice), std::string::npos);
  // And with the sources, for whoever only looks there.
  std::ifstream stream(std::string(NEWEL_SOURCE_DIR) + "/sync/export/LOINC.txt");
  std::string notice;
  std::getline(stream, notice);
  EXPECT_EQ(notice, kLoincNotice);
}

TEST(FhirBundle, onlyTheDaysAskedForAreToldOf) {
  PersonHistory history = test::yearOfHistory(1);
  history.first_day = "2026-03-02";
  history.last_day = "2026-03-08";
  const json bundle = json::parse(bundleOf(history));
  EXPECT_EQ(ofType(bundle, "Procedure").size(), 3U);
  EXPECT_EQ(ofType(bundle, "CarePlan").size(), 1U);
}

TEST(FhirBundle, longWorkCanBeLeft) {
  const PersonHistory history = test::yearOfHistory(1);
  int last = -1;
  const auto whole = fhirBundle(history, {}, [&](int percent) {
    EXPECT_GE(percent, last);
    last = percent;
    return true;
  });
  EXPECT_TRUE(whole.ok());
  EXPECT_EQ(last, 100);
  EXPECT_TRUE(absl::IsCancelled(fhirBundle(history, {}, [](int percent) { return percent < 40; }).status()));
}

}  // namespace
}  // namespace newel
