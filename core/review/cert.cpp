#include "core/review/cert.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/library/wording.h"
#include "core/records/check.h"
#include "core/safety/facts.h"

namespace newel {
namespace {

using Args = std::map<std::string, std::string>;

class CertReader {
 public:
  CertReader(const CertInput& input, const Catalogue& catalogue) : m_input(input), m_catalogue(catalogue) {}

  CertResult read(const v1::CertLine& line) {
    m_result = CertResult();
    m_result.line = line;
    m_result.state = lookUp(line);
    for (const auto& statement : m_input.statements.statements()) {
      if (statement.line() != line.id()) continue;
      m_result.state = CertState::Stated;
      m_result.statement = statement.text();
      say("cert.by-clinic", {}, true);
    }
    return std::move(m_result);
  }

 private:
  CertState lookUp(const v1::CertLine& line) {
    switch (line.from()) {
      case v1::CERT_FROM_DESIGN:
        m_result.statement = line.by_design();
        say("cert.by-design", {}, true);
        return CertState::Stated;
      case v1::CERT_FROM_EQUIPMENT:
        return ofEntries([this](const auto& entry) { return equipment(entry); });
      case v1::CERT_FROM_EXERCISES:
        return ofEntries([this](const auto& entry) { return words(entry); });
      case v1::CERT_FROM_PROGRESSION:
        return ofEntries([this](const auto& entry) { return progression(entry); });
      case v1::CERT_FROM_DOSE:
        return ofEntries([this](const auto& entry) { return dose(entry); });
      case v1::CERT_FROM_TAILORING:
        return ofEntries([this](const auto& entry) { return tailoring(entry); });
      case v1::CERT_FROM_ADVICE:
        return advice();
      case v1::CERT_FROM_CHANGES:
        return changes();
      case v1::CERT_FROM_EVENTS:
        return events();
      case v1::CERT_FROM_ADHERENCE:
        return adherence();
      case v1::CERT_FROM_SETTING:
        return setting();
      default:
        return CertState::Missing;  // the clinic's to say
    }
  }

  bool say(const std::string& key, Args args, bool good) {
    m_result.found.push_back({key, std::move(args), good});
    return good;
  }

  // Stated only when every entry states it; the evidence names those that do not.
  template <typename Ask>
  CertState ofEntries(Ask ask) {
    bool all = !m_input.programme.entries().empty();
    for (const auto& entry : m_input.programme.entries()) all = ask(entry) && all;
    return all ? CertState::Stated : CertState::Missing;
  }

  const v1::Exercise* exerciseOf(const v1::Entry& entry) {
    const auto* exercise = m_catalogue.find(entry.exercise_id(), entry.exercise_revision());
    if (exercise == nullptr) say("cert.exercise-unknown", {{"exercise", entry.exercise_id()}}, false);
    return exercise;
  }

  bool equipment(const v1::Entry& entry) {
    const auto* exercise = exerciseOf(entry);
    if (exercise == nullptr) return false;
    std::string list;
    for (const int item : exercise->equipment()) {
      list += (list.empty() ? "" : ", ") + wordOf(*v1::Equipment_descriptor(), item);
    }
    if (list.empty()) return say("cert.no-equipment", {{"exercise", exercise->id()}}, true);
    return say("cert.equipment", {{"exercise", exercise->id()}, {"equipment", list}}, true);
  }

  bool words(const v1::Entry& entry) {
    const auto* exercise = exerciseOf(entry);
    if (exercise == nullptr) return false;
    const auto* words = wordsOrEnglish(m_catalogue, exercise->id(), m_input.person.language());
    if (words == nullptr) return say("cert.words-missing", {{"exercise", exercise->id()}}, false);
    return say("cert.words", {{"exercise", exercise->id()}, {"language", words->language()}}, true);
  }

  bool progression(const v1::Entry& entry) {
    const bool given = entry.has_progression();
    return say(given ? "cert.progression" : "cert.progression-missing", {{"exercise", entry.exercise_id()}},
               given);
  }

  bool dose(const v1::Entry& entry) {
    const bool given = check(entry.dose()).ok() && check(entry.schedule()).ok();
    return say(given ? "cert.dose" : "cert.dose-missing", {{"exercise", entry.exercise_id()}}, given);
  }

  bool tailoring(const v1::Entry& entry) {
    if (entry.side_policy() == v1::SIDE_POLICY_UNSPECIFIED || entry.support() == v1::SUPPORT_UNSPECIFIED) {
      return say("cert.tailoring-missing", {{"exercise", entry.exercise_id()}}, false);
    }
    return say("cert.tailoring",
               {{"exercise", entry.exercise_id()},
                {"sides", wordOf(*v1::SidePolicy_descriptor(), entry.side_policy())},
                {"support", wordOf(*v1::Support_descriptor(), entry.support())},
                {"rung", entry.rung_id()},
                {"reasons", std::to_string(entry.overrides_size())}},
               true);
  }

  CertState advice() {
    bool stated = false;
    if (!m_input.programme.advice().empty()) stated = say("cert.advice", {}, true);
    for (const auto& entry : m_input.programme.entries()) {
      const auto* exercise = m_catalogue.find(entry.exercise_id(), entry.exercise_revision());
      if (exercise == nullptr || exercise->purpose() != v1::PURPOSE_LIMB_CARE) continue;
      stated = say("cert.limb-care", {{"exercise", exercise->id()}}, true);
    }
    if (!stated) say("cert.advice-missing", {}, false);
    return stated ? CertState::Stated : CertState::Missing;
  }

  CertState changes() {
    if (m_input.programme.number() <= 1) {
      say("cert.first-programme", {}, false);
      return CertState::NotYet;
    }
    const bool given = !m_input.programme.changes().empty();
    say(given ? "cert.changes" : "cert.changes-missing",
        {{"number", std::to_string(m_input.programme.number())}}, given);
    return given ? CertState::Stated : CertState::Missing;
  }

  CertState events() {
    if (!m_input.counts || m_input.counts->practices == 0) return noPractice();
    const CertCounts& counts = *m_input.counts;
    say("cert.events",
        {{"practices", std::to_string(counts.practices)},
         {"red_flags", std::to_string(counts.red_flags)},
         {"falls", std::to_string(counts.falls)},
         {"pain", std::to_string(counts.stops_for_pain)},
         {"skin", std::to_string(counts.stops_for_skin)},
         {"other", std::to_string(counts.other_stops)}},
        true);
    return CertState::Stated;
  }

  CertState adherence() {
    if (!m_input.counts || m_input.counts->due == 0) return noPractice();
    say("cert.adherence",
        {{"done", std::to_string(m_input.counts->done)}, {"due", std::to_string(m_input.counts->due)}}, true);
    return CertState::Stated;
  }

  CertState noPractice() {
    say("cert.no-practice", {}, false);
    return CertState::NotYet;
  }

  CertState setting() {
    if (!m_input.person.has_home()) {
      say("cert.setting-missing", {}, false);
      return CertState::Missing;
    }
    const auto& home = m_input.person.home();
    say("cert.setting",
        {{"rails", wordOf(*v1::Rails_descriptor(), home.rails())},
         {"chairs", std::to_string(home.sturdy_chairs())},
         {"someone_near", wordOf(*v1::Answer_descriptor(), home.someone_near())}},
        true);
    return CertState::Stated;
  }

  const CertInput& m_input;
  const Catalogue& m_catalogue;
  CertResult m_result;
};

// Reasons that lie in the body and have no count of their own. No time, tired, interrupted and the like are
// no events.
bool isOtherEvent(v1::StopReason reason) {
  switch (reason) {
    case v1::STOP_REASON_DIZZY:
    case v1::STOP_REASON_UNSTEADY:
    case v1::STOP_REASON_CHEST_PAIN:
    case v1::STOP_REASON_BREATHLESS:
    case v1::STOP_REASON_WEAKNESS_OR_SPEECH:
    case v1::STOP_REASON_LIMB_SWELLING:
    case v1::STOP_REASON_FELT_UNWELL:
      return true;
    default:
      return false;
  }
}

}  // namespace

CertCounts countEvents(const std::vector<v1::Practice>& practices) {
  CertCounts counts;
  for (const auto& practice : practices) {
    ++counts.practices;
    if (practice.end() == v1::PRACTICE_END_RED_FLAG) ++counts.red_flags;
    std::set<v1::StopReason> reasons = {practice.stop_reason()};
    for (const auto& entry : practice.entries()) reasons.insert(entry.skipped());
    counts.falls += reasons.contains(v1::STOP_REASON_FALL) ? 1 : 0;
    counts.stops_for_pain += reasons.contains(v1::STOP_REASON_PAIN) ? 1 : 0;
    counts.stops_for_skin += reasons.contains(v1::STOP_REASON_SKIN) ? 1 : 0;
    counts.other_stops += std::any_of(reasons.begin(), reasons.end(), isOtherEvent) ? 1 : 0;
  }
  return counts;
}

std::vector<CertResult> certOf(const CertInput& input, const Catalogue& catalogue,
                               const v1::CertTable& table) {
  CertReader reader(input, catalogue);
  std::vector<CertResult> results;
  for (const auto& line : table.lines()) results.push_back(reader.read(line));
  return results;
}

CertSummary summaryOf(const std::vector<CertResult>& results) {
  CertSummary summary;
  for (const CertResult& result : results) {
    summary.stated += result.state == CertState::Stated ? 1 : 0;
    summary.missing += result.state == CertState::Missing ? 1 : 0;
    summary.not_yet += result.state == CertState::NotYet ? 1 : 0;
  }
  return summary;
}

const std::vector<std::string>& certKeys() {
  static const std::vector<std::string> kKeys = {
      "cert.by-clinic",           "cert.by-design",   "cert.equipment",       "cert.no-equipment",
      "cert.exercise-unknown",    "cert.words",       "cert.words-missing",   "cert.progression",
      "cert.progression-missing", "cert.dose",        "cert.dose-missing",    "cert.tailoring",
      "cert.tailoring-missing",   "cert.advice",      "cert.limb-care",       "cert.advice-missing",
      "cert.first-programme",     "cert.changes",     "cert.changes-missing", "cert.events",
      "cert.adherence",           "cert.no-practice", "cert.setting",         "cert.setting-missing",
  };
  return kKeys;
}

}  // namespace newel
