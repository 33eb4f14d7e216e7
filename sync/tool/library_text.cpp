#include "sync/tool/library_text.h"

#include <functional>
#include <ostream>
#include <set>
#include <utility>

#include "core/library/default_entry.h"
#include "core/library/dose_words.h"
#include "core/library/settings.h"
#include "core/library/wording.h"
#include "core/practice/compile.h"

namespace newel::tool {
namespace {

// An entry that exists only on the command line, due any day.
constexpr char kEntryId[] = "00000000-0000-7000-8000-000000000002";

std::string count(std::uint32_t number) { return std::to_string(number); }

std::string lineOf(const std::vector<std::string>& parts) {
  std::string text;
  for (const auto& part : parts) text += (text.empty() ? "" : ", ") + part;
  return text;
}

template <typename List>
void printAll(const char* head, const List& list, const std::function<std::string(const std::string&)>& said,
              std::ostream& out) {
  if (list.empty()) return;
  out << head << '\n';
  for (const auto& text : list) out << "  " << said(text) << '\n';
}

}  // namespace

std::string doseText(const v1::Dose& dose) {
  std::vector<std::string> parts;
  const auto seconds = [&](const char* before, std::uint32_t value, const char* after) {
    if (value > 0) parts.push_back(before + count(value) + after);
  };
  if (dose.has_sets()) {
    const auto& sets = dose.sets();
    parts.push_back(count(sets.sets()) + (sets.sets() == 1 ? " set of " : " sets of ") +
                    count(sets.repetitions()));
    seconds("hold ", sets.hold_s(), " s");
    seconds("", sets.move_s(), " s out");
    seconds("", sets.return_s(), " s back");
    seconds("", sets.repetition_rest_s(), " s between");
    seconds("rest ", sets.rest_s(), " s");
  } else if (dose.has_minutes()) {
    const auto& minutes = dose.minutes();
    parts.push_back(count(minutes.bouts()) + " x " + count(minutes.minutes()) + " min");
    seconds("rest ", minutes.rest_s(), " s");
  } else if (dose.has_passes()) {
    const auto& passes = dose.passes();
    parts.push_back(count(passes.passes()) + " x " +
                    (passes.has_distance_m() ? count(passes.distance_m()) + " m"
                                             : count(passes.step_count()) + " steps"));
    seconds("", passes.step_s(), " s a step");
    seconds("rest ", passes.rest_s(), " s");
  }
  return lineOf(parts);
}

ExercisePage::ExercisePage(const v1::Exercise& exercise, const v1::Person& person, const Catalogue& catalogue,
                           std::string language, const std::vector<v1::Finding>& findings)
    : m_exercise(exercise),
      m_person(person),
      m_catalogue(catalogue),
      m_asked(std::move(language)),
      m_language(m_asked),
      m_findings(findings),
      m_words(wordsOrEnglish(catalogue, exercise.id(), m_language)),
      m_entry(defaultEntry(exercise, person)) {
  // What has no words in the asked language is shown whole in the one it has, never mixed.
  if (m_words != nullptr && !servesLanguage(m_words->language(), m_asked)) m_language = m_words->language();
  m_entry.set_id(kEntryId);
  m_entry.mutable_schedule()->set_times_per_week(7);
  m_entry.mutable_schedule()->add_windows()->set_to_min(1440);
  auto timeline = compileTimeline(m_entry, person, catalogue, m_language);
  if (timeline.ok()) {
    m_timeline = *std::move(timeline);
  } else {
    m_refused = std::string(timeline.status().message());
  }
}

std::string ExercisePage::said(const std::string& text) const {
  WordingContext context;
  context.catalogue = &m_catalogue;
  context.person = &m_person;
  context.entry = &m_entry;
  context.language = m_words->language();
  const auto resolved = resolveWords(text, context);
  return resolved.ok() ? *resolved : "[" + text + ": " + std::string(resolved.status().message()) + "]";
}

std::string ExercisePage::phrase(const std::string& key) const {
  for (const std::string& language :
       {m_language, m_language.substr(0, m_language.find('-')), std::string("en")}) {
    std::string text = m_catalogue.phrase(key, language);
    if (!text.empty()) return text;
  }
  return key;
}

void ExercisePage::printFit(std::ostream& out) const {
  std::vector<std::string> muscles, equipment, supports, levels;
  for (const auto& muscle : m_exercise.muscles()) muscles.push_back(phrase("muscle." + muscle));
  for (const int item : m_exercise.equipment())
    equipment.push_back(phrase("equipment." + shortName(v1::Equipment_descriptor(), item)));
  for (const int support : m_exercise.supports())
    supports.push_back(phrase("support." + shortName(v1::Support_descriptor(), support)));
  for (const int level : m_exercise.fit().usual_levels())
    levels.push_back(phrase("level." + shortName(v1::LimbLossLevel_descriptor(), level)));
  out << "group: " << phrase("purpose." + shortName(v1::Purpose_descriptor(), m_exercise.purpose()))
      << "; position: " << phrase("position." + shortName(v1::Position_descriptor(), m_exercise.position()))
      << '\n'
      << "works: " << lineOf(muscles) << '\n'
      << "needs: " << (equipment.empty() ? "nothing" : lineOf(equipment)) << "; prosthesis "
      << shortName(v1::ProsthesisUse_descriptor(), m_exercise.prosthesis()) << '\n'
      << "hands, most support first: " << lineOf(supports) << '\n'
      << "usual for: " << lineOf(levels) << "; from "
      << shortName(v1::MobilityLevel_descriptor(), m_exercise.fit().least_mobility())
      << "; both limbs lost: " << shortName(v1::BothSides_descriptor(), m_exercise.both_sides()) << '\n'
      << "dose: " << doseWords(m_exercise.default_dose(), m_entry.side_policy(), m_catalogue, m_language)
      << '\n';
}

// Each different thing that the phone says, once.
void ExercisePage::printTimeline(std::ostream& out) const {
  if (!m_refused.empty()) {
    out << "not led for this person: " << m_refused << '\n';
    return;
  }
  out << "led in " << clockText(m_timeline.total_ms()) << ":\n";
  std::set<std::string> seen;
  Table table({"  beat", "side", "screen", "voice"});
  for (const auto& beat : m_timeline.beats()) {
    if (!seen.insert(beat.screen() + '\n' + beat.spoken()).second) continue;
    table.row({"  " + shortName(v1::BeatKind_descriptor(), beat.kind()),
               shortName(v1::Side_descriptor(), beat.side()), beat.screen(), beat.spoken()});
  }
  table.print(out);
}

void ExercisePage::print(std::ostream& out) const {
  if (m_words == nullptr) {
    out << m_exercise.id() << ": no words\n";
    return;
  }
  const bool fell_back = !servesLanguage(m_words->language(), m_asked);
  out << said(m_words->title()) << " (" << m_exercise.id() << ", revision " << m_exercise.revision()
      << "), words in " << m_words->language() << (fell_back ? ", there are none in " + m_asked : "") << '\n'
      << said(m_words->purpose()) << '\n';
  printFit(out);
  out << "start: " << said(m_words->start()) << '\n' << "hands: " << said(m_words->support()) << '\n';
  printTimeline(out);
  const auto say = [this](const std::string& text) { return said(text); };
  printAll("good is:", m_words->good(), say, out);
  if (!m_words->faults().empty()) out << "faults:\n";
  for (const auto& fault : m_words->faults())
    out << "  " << said(fault.seen()) << " -> " << said(fault.mend()) << '\n';
  if (!m_words->breathing().empty()) out << "breathing: " << said(m_words->breathing()) << '\n';
  printAll("stop if:", m_words->stop_if(), say, out);
  printAll("take care:", m_words->cautions(), say, out);
  if (!m_findings.empty()) out << "the rules say for this person:\n";
  for (const auto& finding : m_findings) {
    out << "  " << shortName(v1::Effect_descriptor(), finding.effect()) << " (" << finding.rule_id()
        << "): " << finding.therapist() << '\n';
  }
  if (!m_exercise.ladder().empty()) out << "ladder, easiest first:\n";
  for (const auto& rung : m_exercise.ladder()) {
    out << "  " << rung.id() << ": "
        << phrase("support." + shortName(v1::Support_descriptor(), rung.support())) << "; "
        << doseWords(rung.dose(), m_entry.side_policy(), m_catalogue, m_language) << '\n';
  }
  out << "sources:\n";
  for (const auto& source : m_exercise.sources()) out << "  " << sourceText(source) << '\n';
}

void printCard(const v1::AdviceCard& card, const Catalogue& catalogue, const std::string& language,
               std::ostream& out) {
  const v1::AdviceWords* words = cardWordsOrEnglish(catalogue, card.id(), language);
  if (words == nullptr) {
    out << card.id() << ": no words\n";
    return;
  }
  const SettingValues settings = usualSettings(catalogue);
  const auto say = [&settings](const std::string& text) { return withSettings(text, settings); };
  const bool fell_back = !servesLanguage(words->language(), language);
  out << words->title() << " (" << card.id() << ", revision " << card.revision() << "), words in "
      << words->language() << (fell_back ? ", there are none in " + language : "") << '\n'
      << say(words->why()) << '\n';
  printAll("what to do:", words->steps(), say, out);
  printAll("whom to phone:", words->call_if(), say, out);
  if (!words->log_question().empty()) out << "to write down: " << words->log_question() << '\n';
  out << "sources:\n";
  for (const auto& source : card.sources()) out << "  " << sourceText(source) << '\n';
}

Json jsonOfCard(const v1::AdviceCard& card, const Catalogue& catalogue, const std::string& language) {
  const v1::AdviceWords* words = cardWordsOrEnglish(catalogue, card.id(), language);
  return {{"card", jsonOf(card)}, {"words", words == nullptr ? Json(nullptr) : jsonOf(*words)}};
}

Json ExercisePage::json() const {
  Json json = {{"exercise", jsonOf(m_exercise)}};
  json["words"] = m_words == nullptr ? Json(nullptr) : jsonOf(*m_words);
  json["timeline"] = m_refused.empty() ? jsonOf(m_timeline) : Json(nullptr);
  json["refused"] = m_refused;
  json["findings"] = Json::array();
  for (const auto& finding : m_findings) json["findings"].push_back(jsonOf(finding));
  return json;
}

}  // namespace newel::tool
