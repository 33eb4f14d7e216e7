// What was done: the ready check, one Procedure for each entry, and what was counted and felt.
#include <absl/strings/str_cat.h>
#include <absl/strings/str_replace.h>

#include <cmath>
#include <set>
#include <utility>

#include "core/progress/occasion_facts.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/text_codes.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// Told later: the moment of telling says nothing about when it was done; its day does.
Json periodOf(const v1::Practice& practice) {
  if (practice.origin() == v1::ORIGIN_TOLD_LATER)
    return {{"start", practice.local_day()}, {"end", practice.local_day()}};
  Json period = {{"start", isoInstantIn(toTime(practice.started_at()), practice.zone())}};
  // A wall clock that was set back meanwhile: what began after it ended has no end that can be said.
  if (toTime(practice.ended_at()) >= toTime(practice.started_at()))
    period["end"] = isoInstantIn(toTime(practice.ended_at()), practice.zone());
  return period;
}

Json occasionExtension(const v1::OccasionRef& ref) {
  return partsExtension("occasion", Json::array({part("local_day", "valueDate", ref.local_day()),
                                                 part("window", "valueInteger", ref.window())}));
}

Json reasonConcept(v1::StopReason reason) {
  const std::string word = enumWord(v1::StopReason_descriptor(), reason);
  return codeConcept(codeSystemUrl("reason"), word, absl::StrReplaceAll(word, {{"-", " "}}));
}

const char* endWords(v1::PracticeEnd end) {
  switch (end) {
    case v1::PRACTICE_END_RED_FLAG:
      return "A safety rule ended the practice";
    case v1::PRACTICE_END_HELD:
      return "A hold order ended the practice";
    case v1::PRACTICE_END_INTERRUPTED:
      return "The practice was interrupted and not taken up again";
    case v1::PRACTICE_END_REFUSED:
      return "The ready check said not today";
    case v1::PRACTICE_END_STOPPED:
      return "The person stopped the practice";
    default:
      return "Left out";
  }
}

// The one leg that all sets worked; nothing for both.
std::string legOf(const v1::EntryDone& done) {
  std::set<int> sides;
  for (const auto& set : done.sets()) sides.insert(set.side());
  if (sides.size() != 1 || *sides.begin() == v1::SIDE_UNSPECIFIED) return "";
  return enumWord(v1::Side_descriptor(), *sides.begin()) + " leg";
}

Json notDoneReason(const v1::Practice& practice, const v1::EntryDone& done) {
  if (done.skipped() != v1::STOP_REASON_UNSPECIFIED) return reasonConcept(done.skipped());
  if (practice.stop_reason() != v1::STOP_REASON_UNSPECIFIED) return reasonConcept(practice.stop_reason());
  return codeConcept(codeSystemUrl("practice-end"), enumWord(v1::PracticeEnd_descriptor(), practice.end()),
                     endWords(practice.end()));
}

class PracticeWriter {
 public:
  PracticeWriter(FhirWork& work, const v1::Practice& practice)
      : m_work(work),
        m_practice(practice),
        m_programme(programmeOf(work, practice.programme_number())),
        m_whole_period(periodOf(practice).contains("end")),
        m_period(written(periodOf(practice))) {}

  void write() {
    for (int i = 0; i < m_practice.entries_size(); ++i) entry(i, m_practice.entries(i));
    group();
    readyCheck();
  }

 private:
  std::string idOf(int index, const std::string& what) const {
    return derivedId(m_practice.id(), absl::StrCat("entry/", index, what.empty() ? "" : "/", what));
  }

  void entry(int index, const v1::EntryDone& done) {
    const v1::OccasionRef& ref = done.occasion();
    m_work.practised.insert({ref.entry_id(), ref.local_day(), ref.window()});
    const double dose = doseShareOf(done);
    Json json = resource("Procedure", idOf(index, ""));
    json["extension"] = Json::array({occasionExtension(ref)});
    const std::string request = requestIdOf(m_work, m_practice.programme_number(), ref.entry_id());
    if (!request.empty()) json["basedOn"] = Json::array({reference(request)});
    json["status"] = dose >= 1 ? "completed" : dose > 0 ? "stopped" : "not-done";
    if (dose <= 0) {
      json["statusReason"] = notDoneReason(m_practice, done);
    } else if (dose < 1 && done.skipped() != v1::STOP_REASON_UNSPECIFIED) {
      json["statusReason"] = reasonConcept(done.skipped());
    }
    json["code"] = exerciseConcept(done.exercise_id(), done.exercise_revision(), m_programme);
    json["subject"] = m_work.patient;
    json["performedPeriod"] = m_period;
    json["performer"] = Json::array({{{"actor", m_work.patient}}});
    const std::string leg = legOf(done);
    if (!leg.empty()) json["bodySite"] = Json::array({textConcept(leg)});
    const std::string words = fhirText(freeWords(m_work, done.skipped_words()));
    if (!words.empty()) json["note"] = Json::array({annotation(words, toTime(m_practice.ended_at()))});
    m_work.bundle.add(json);
    if (dose > 0) doseDone(index, done);
    if (done.has_pain_before_0_10())
      rating(index, "pain-before", "Pain before, 0 to 10", kLoincPain, done.pain_before_0_10());
    if (done.has_pain_after_0_10())
      rating(index, "pain-after", "Pain after, 0 to 10", kLoincPain, done.pain_after_0_10());
    if (done.has_effort_0_10()) rating(index, "effort", "Effort, 0 to 10", kLoincEffort, done.effort_0_10());
  }

  Json memberOf(int index, const std::string& what, const char* category, Json code) {
    Json json = observation(m_work, idOf(index, what), category, std::move(code));
    json["effectivePeriod"] = m_period;
    json["performer"] = m_work.patients;
    json["partOf"] = Json::array({reference(idOf(index, ""))});
    return json;
  }

  void keep(const Json& json) {
    m_members.push_back(reference(json.at("id").get<std::string>()));
    m_work.bundle.add(json);
  }

  void rating(int index, const char* what, const char* words, const char* loinc, std::uint32_t value) {
    Json json = memberOf(index, what, "survey", eventConcept(m_work, what, words, loinc));
    json["valueQuantity"] = quantity(value, "score", "{score}");
    keep(json);
  }

  // Minutes under way, with what was counted beside what was asked.
  void doseDone(int index, const v1::EntryDone& done) {
    Json json = memberOf(index, "dose", "activity", codeConcept(kLoinc, kLoincDuration, "Time exercised"));
    if (m_work.options.us_profiles) claimMeasure(json);
    // Told later nobody timed it; minutes are then those of the dose that was said to be done.
    const std::int64_t ms =
        m_practice.origin() == v1::ORIGIN_TOLD_LATER ? done.done().active_ms() : done.elapsed_ms();
    json["valueQuantity"] = quantity(std::round(static_cast<double>(ms) / 600) / 100, "min", "min");
    Json components = Json::array();
    const auto add = [this, &components](const char* code, const char* words, double value,
                                         const char* ucum) {
      components.push_back({{"code", eventConcept(m_work, code, words)},
                            {"valueQuantity", quantity(value, ucum[0] == '{' ? "" : ucum, ucum)}});
    };
    add("repetitions-done", "Repetitions, passes or bouts done", done.done().repetitions(), "{#}");
    add("repetitions-asked", "Repetitions, passes or bouts asked", done.asked().repetitions(), "{#}");
    add("hold-done", "Time held", static_cast<double>(done.done().hold_ms()) / 1000, "s");
    add("active-done", "Time moving and holding", static_cast<double>(done.done().active_ms()) / 1000, "s");
    for (const auto& set : done.sets()) {
      const std::string side = enumWord(v1::Side_descriptor(), set.side());
      const std::string words =
          absl::StrCat("Repetitions of set ", set.set(), side.empty() ? "" : ", ", side);
      components.push_back({{"code", eventConcept(m_work, "set-repetitions", words)},
                            {"valueQuantity", quantity(set.done().repetitions(), "", "{#}")}});
    }
    json["component"] = std::move(components);
    keep(json);
  }

  // The profile wants a period with both its ends.
  void claimMeasure(Json& json) const {
    if (!m_whole_period) return;
    json["meta"] = {{"profile", Json::array({usProfile("pa-observation-activity-measure")})}};
    json["category"].push_back(codeConcept(kUsActivityCodes, "PhysicalActivity", ""));
  }

  void group() {
    Json json = observation(m_work, m_practice.id(), "activity",
                            codeConcept(codeSystemUrl("event"), "practice", "Practice at home"));
    Json list = Json::array(
        {extension("origin", "valueCode", enumWord(v1::Origin_descriptor(), m_practice.origin())),
         extension("practice-end", "valueCode", enumWord(v1::PracticeEnd_descriptor(), m_practice.end()))});
    for (const int doubt : m_practice.doubts())
      list.push_back(extension("clock-doubt", "valueCode", enumWord(v1::ClockDoubt_descriptor(), doubt)));
    json["extension"] = std::move(list);
    if (m_programme != nullptr) json["basedOn"] = Json::array({reference(m_programme->id())});
    json["effectivePeriod"] = m_period;
    json["performer"] = m_work.patients;
    const std::string words = fhirText(freeWords(m_work, m_practice.note()));
    if (!words.empty()) json["note"] = Json::array({annotation(words, toTime(m_practice.ended_at()))});
    putList(json, "hasMember", std::move(m_members));
    m_work.bundle.add(json);
  }

  void readyCheck() {
    if (m_practice.ready_answers().empty()) return;
    Json json = resource("QuestionnaireResponse", derivedId(m_practice.id(), "ready-check"));
    json["partOf"] = Json::array({reference(m_practice.id())});
    json["questionnaire"] = absl::StrCat(kReadyCheckUrl, "|", readyCheckVersion(m_work.rules));
    json["status"] = "completed";
    json["subject"] = m_work.patient;
    json["authored"] = isoInstantIn(toTime(m_practice.started_at()), m_practice.zone());
    json["source"] = m_work.patient;
    Json items = Json::array();
    for (const auto& answer : m_practice.ready_answers()) {
      Json item = {{"linkId", answer.question_id()}};
      const auto* question = m_work.rules.question(answer.question_id());
      if (question != nullptr) putText(item, "text", newel::wordsOf(*question, "en").question());
      item["answer"] = Json::array({answerCoding(m_work.rules, answer.question_id(), answer.answer_id())});
      items.push_back(std::move(item));
    }
    json["item"] = std::move(items);
    m_work.bundle.add(json);
  }

  FhirWork& m_work;
  const v1::Practice& m_practice;
  const v1::Programme* m_programme;
  bool m_whole_period;
  Json m_period;  // written()
  Json m_members = Json::array();
};

// Known not to have been done, or excused, and no practice says a word of it.
void addMissedOne(FhirWork& work, const OccasionResult& occasion) {
  const v1::OccasionRef& ref = occasion.ref;
  const KeptProgramme* kept = programmeOn(work.history, ref.local_day());
  const std::uint32_t number = kept != nullptr ? kept->programme.number() : 0;
  const v1::Entry* entry = entryIn(work.history, number, ref.entry_id());
  if (entry == nullptr) return;
  Json json = resource(
      "Procedure", derivedId(ref.entry_id(), absl::StrCat("occasion/", ref.local_day(), "/", ref.window())));
  json["extension"] = Json::array({occasionExtension(ref)});
  const std::string request = requestIdOf(work, number, ref.entry_id());
  if (!request.empty()) json["basedOn"] = Json::array({reference(request)});
  json["status"] = "not-done";
  const bool excused = occasion.state == OccasionResult::State::Excused;
  json["statusReason"] = codeConcept(codeSystemUrl("reason"), excused ? "excused" : "nothing-told",
                                     excused ? "Excused by the clinic: a pause or a hold order"
                                             : "Nothing was told of it, and the phone was heard from since");
  json["code"] = exerciseConcept(entry->exercise_id(), entry->exercise_revision(),
                                 kept != nullptr ? &kept->programme : nullptr);
  json["subject"] = work.patient;
  const absl::CivilDay day = *parseLocalDay(ref.local_day());
  // On any day of the week: nobody said that it was to be this one.
  const absl::CivilDay from = occasion.any_day_of_week ? mondayOf(day) : day;
  const absl::CivilDay to = occasion.any_day_of_week ? from + 6 : day;
  json["performedPeriod"] = {{"start", formatLocalDay(from)}, {"end", formatLocalDay(to)}};
  work.bundle.add(json);
}

}  // namespace

const Json& eventConcept(FhirWork& work, const std::string& code, const std::string& words,
                         const std::string& loinc) {
  Json& kept = work.kept[absl::StrCat(code, "/", words)];
  if (!kept.is_null()) return kept;
  Json coding = Json::array();
  if (!loinc.empty()) coding.push_back({{"system", kLoinc}, {"code", loinc}});
  coding.push_back({{"system", codeSystemUrl("event")}, {"code", code}});
  kept = written({{"coding", std::move(coding)}, {"text", words}});
  return kept;
}

Json observation(FhirWork& work, const std::string& id, const char* category, Json code) {
  Json json = resource("Observation", id);
  json["status"] = "final";
  json["category"] = Json::array({codeConcept(kObservationCategory, category, "")});
  json["code"] = std::move(code);
  json["subject"] = work.patient;
  return json;
}

std::string readyCheckVersion(const RuleBook& rules) {
  std::string content;
  for (const auto& question : rules.questions()) {
    absl::StrAppend(&content, question.id(), "\n", wordsOf(question, "en").question(), "\n");
    for (const auto& choice : question.choices())
      absl::StrAppend(&content, choice.id(), "\t", wordsOf(choice, "en"), "\n");
  }
  return toHex(sha256(content)).substr(0, 12);
}

Json answerCoding(const RuleBook& rules, const std::string& question_id, const std::string& answer_id) {
  Json coding = {{"system", codeSystemUrl("answer")}, {"code", answer_id}};
  const auto* question = rules.question(question_id);
  if (question != nullptr) {
    for (const auto& choice : question->choices()) {
      if (choice.id() == answer_id) putText(coding, "display", wordsOf(choice, "en"));
    }
  }
  return {{"valueCoding", std::move(coding)}};
}

void addQuestionnaire(FhirWork& work) {
  const std::string version = readyCheckVersion(work.rules);
  Json json = resource("Questionnaire", derivedId(work.history.person.id(), "ready-check/" + version));
  json["url"] = kReadyCheckUrl;
  json["version"] = version;
  json["title"] = "Ready check before a practice";
  json["status"] = "active";
  json["subjectType"] = Json::array({"Patient"});
  Json items = Json::array();
  for (const auto& question : work.rules.questions()) {
    Json item = {{"linkId", question.id()}};
    putText(item, "text", wordsOf(question, "en").question());
    item["type"] = "choice";
    Json options = Json::array();
    for (const auto& choice : question.choices())
      options.push_back(answerCoding(work.rules, question.id(), choice.id()));
    item["answerOption"] = std::move(options);
    items.push_back(std::move(item));
  }
  json["item"] = std::move(items);
  work.bundle.add(json);
}

void addPractice(FhirWork& work, const v1::Practice& practice) { PracticeWriter(work, practice).write(); }

absl::Status addMissed(FhirWork& work) {
  const auto adherence = adherenceIn(work.history);
  if (!adherence.ok()) return adherence.status();
  for (const auto& occasion : adherence->occasions) {
    const bool known =
        occasion.state == OccasionResult::State::NotDone || occasion.state == OccasionResult::State::Excused;
    const v1::OccasionRef& ref = occasion.ref;
    if (known && !work.practised.contains({ref.entry_id(), ref.local_day(), ref.window()}))
      addMissedOne(work, occasion);
  }
  return absl::OkStatus();
}

}  // namespace newel
