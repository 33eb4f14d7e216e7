#include <google/protobuf/util/message_differencer.h>

#include <algorithm>
#include <initializer_list>
#include <utility>

#include "core/library/counted.h"
#include "core/library/wording.h"
#include "core/review/review.h"

namespace newel {
namespace {

using google::protobuf::util::MessageDifferencer;

const v1::Entry* find(const v1::Programme& programme, const std::string& id) {
  const auto found = std::find_if(programme.entries().begin(), programme.entries().end(),
                                  [&id](const v1::Entry& entry) { return entry.id() == id; });
  return found == programme.entries().end() ? nullptr : &*found;
}

std::string titleOf(const v1::Entry& entry, const Catalogue& catalogue, const std::string& language) {
  const v1::ExerciseWords* words =
      wordsOrEnglish(catalogue, entry.exercise_id(), language, entry.exercise_revision());
  return words == nullptr ? entry.exercise_id() : words->title();
}

// A sentence's parts in one language: the asked one, or English as a whole.
class Sentences {
 public:
  Sentences(const Catalogue& catalogue, const std::string& language) : m_catalogue(catalogue) {
    for (const std::string& tried : {language, language.substr(0, language.find('-')), std::string("en")}) {
      m_language = tried;
      if (!phrase("change.new").empty()) return;
    }
  }

  std::string phrase(const std::string& key) const { return m_catalogue.phrase(key, m_language); }
  std::string count(const std::string& key, std::uint64_t n) const {
    return counted(m_catalogue, key, static_cast<std::int64_t>(n), m_language);
  }
  // The phrase with its braces filled.
  std::string filled(const std::string& key,
                     std::initializer_list<std::pair<const char*, std::string>> values) const {
    std::string text = phrase("change." + key);
    for (const auto& [name, value] : values) {
      const std::string mark = "{" + std::string(name) + "}";
      const std::size_t at = text.find(mark);
      if (at != std::string::npos) text.replace(at, mark.size(), value);
    }
    return text;
  }
  std::string named(const std::string& group, const std::string& value, const std::string& prefix) const {
    return phrase(phraseKey(group, value, prefix));
  }
  std::string title(const v1::Entry& entry) const { return titleOf(entry, m_catalogue, m_language); }
  std::string title(const v1::AdviceEntry& card) const {
    const v1::AdviceWords* words = cardWordsOrEnglish(m_catalogue, card.card_id(), m_language);
    return words == nullptr ? card.card_id() : words->title();
  }

  // A whole sentence about the programme.
  void say(const std::string& sentence) { m_said.push_back(sentence); }
  std::vector<std::string> take() { return std::move(m_said); }

 private:
  const Catalogue& m_catalogue;
  std::string m_language;
  std::vector<std::string> m_said;
};

std::string daysWords(const v1::Schedule& schedule, const Sentences& words) {
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek)
    return words.count("change.times-a-week", schedule.times_per_week());
  std::vector<int> days(schedule.weekdays().days().begin(), schedule.weekdays().days().end());
  if (days.size() == 7) return words.phrase("change.every-day");
  std::sort(days.begin(), days.end());
  std::string said;
  for (const int day : days) {
    said += (said.empty() ? "" : words.phrase("change.comma")) +
            words.named("weekday", v1::Weekday_Name(static_cast<v1::Weekday>(day)), "WEEKDAY_");
  }
  return said;
}

std::string timeWords(std::uint32_t minutes) {
  const std::string hour = std::to_string(minutes / 60);
  const std::string minute = std::to_string(minutes % 60);
  return std::string(hour.size() < 2 ? "0" : "") + hour + ":" + (minute.size() < 2 ? "0" : "") + minute;
}

std::string windowWords(const v1::Schedule& schedule, const Sentences& words) {
  std::string said;
  for (const auto& window : schedule.windows()) {
    said +=
        (said.empty() ? "" : words.phrase("change.comma")) +
        words.filled("window", {{"from", timeWords(window.from_min())}, {"to", timeWords(window.to_min())}});
  }
  return said;
}

// What changed of one entry, said with both values so that the direction cannot be misread.
class Changes {
 public:
  Changes(std::string title, Sentences& sentences) : m_title(std::move(title)), m_sentences(sentences) {}

  const Sentences& phrases() const { return m_sentences; }
  // A counted thing, "3 sets instead of 2".
  void number(std::uint64_t before, std::uint64_t now, const std::string& counted_key) {
    if (before != now) fill("instead", m_sentences.count(counted_key, now), std::to_string(before));
  }
  // Seconds, "5 s of rest instead of 3".
  void seconds(std::uint64_t before, std::uint64_t now, const std::string& key) {
    words(key, std::to_string(before), std::to_string(now));
  }
  void words(const std::string& key, const std::string& before, const std::string& now) {
    if (before != now) fill(key, now, before);
  }
  void say(const std::string& key) { add(m_sentences.phrase("change." + key)); }

 private:
  void fill(const std::string& key, const std::string& now, const std::string& before) {
    add(m_sentences.filled(key, {{"now", now}, {"before", before}}));
  }
  void add(const std::string& what) { m_sentences.say(m_title + ": " + what + "."); }

  std::string m_title;
  Sentences& m_sentences;
};

void compareSets(const v1::SetsDose& before, const v1::SetsDose& now, Changes& changes) {
  changes.number(before.sets(), now.sets(), "dose.sets");
  changes.number(before.repetitions(), now.repetitions(), "dose.repetitions");
  changes.seconds(before.hold_s(), now.hold_s(), "hold");
  changes.seconds(before.move_s(), now.move_s(), "move");
  changes.seconds(before.return_s(), now.return_s(), "return");
  changes.seconds(before.repetition_rest_s(), now.repetition_rest_s(), "between");
  changes.seconds(before.rest_s(), now.rest_s(), "rest");
}

void compareMinutes(const v1::MinutesDose& before, const v1::MinutesDose& now, Changes& changes) {
  changes.number(before.minutes(), now.minutes(), "dose.minutes");
  changes.number(before.bouts(), now.bouts(), "dose.bouts");
  changes.seconds(before.rest_s(), now.rest_s(), "rest");
}

std::string lengthWords(const v1::PassesDose& dose, const Sentences& words) {
  return dose.length_case() == v1::PassesDose::kDistanceM ? words.count("dose.metres", dose.distance_m())
                                                          : words.count("dose.steps", dose.step_count());
}

void comparePasses(const v1::PassesDose& before, const v1::PassesDose& now, Changes& changes) {
  changes.number(before.passes(), now.passes(), "dose.passes");
  changes.words("length", lengthWords(before, changes.phrases()), lengthWords(now, changes.phrases()));
  changes.seconds(before.step_s(), now.step_s(), "step");
  changes.seconds(before.rest_s(), now.rest_s(), "rest");
}

void compareDose(const v1::Dose& before, const v1::Dose& now, Changes& changes) {
  if (before.kind_case() != now.kind_case()) {
    changes.say("dose-kind");
  } else if (now.has_sets()) {
    compareSets(before.sets(), now.sets(), changes);
  } else if (now.has_minutes()) {
    compareMinutes(before.minutes(), now.minutes(), changes);
  } else if (now.has_passes()) {
    comparePasses(before.passes(), now.passes(), changes);
  }
}

void comparePauses(const v1::Schedule& before, const v1::Schedule& now, Changes& changes) {
  v1::Schedule left;
  v1::Schedule right;
  *left.mutable_pauses() = before.pauses();
  *right.mutable_pauses() = now.pauses();
  if (!MessageDifferencer::Equals(left, right)) changes.say("days-off");
}

void compareMedia(const std::string& what, bool had, bool has, bool same, Changes& changes) {
  if (had && has && !same) changes.say(what + "-another");
  if (!had && has) changes.say(what + "-new");
  if (had && !has) changes.say(what + "-gone");
}

std::string useWords(v1::ProsthesisUse use, const Sentences& words) {
  return words.phrase(use == v1::PROSTHESIS_USE_OFF ? "change.off" : "change.on");
}

void compareHow(const v1::Entry& before, const v1::Entry& now, Changes& changes) {
  const Sentences& words = changes.phrases();
  const auto support = [&words](v1::Support value) {
    return words.named("support", v1::Support_Name(value), "SUPPORT_");
  };
  const auto sides = [&words](v1::SidePolicy value) {
    return words.named("side-policy", v1::SidePolicy_Name(value), "SIDE_POLICY_");
  };
  changes.words("support", support(before.support()), support(now.support()));
  changes.words("prosthesis", useWords(before.prosthesis(), words), useWords(now.prosthesis(), words));
  changes.words("sides", sides(before.side_policy()), sides(now.side_policy()));
  changes.words("days", daysWords(before.schedule(), words), daysWords(now.schedule(), words));
  changes.words("time", windowWords(before.schedule(), words), windowWords(now.schedule(), words));
}

void compareEntries(const v1::Entry& before, const v1::Entry& now, Changes& changes) {
  if (before.exercise_id() != now.exercise_id()) {
    changes.say("another-exercise");
    return;
  }
  compareDose(before.dose(), now.dose(), changes);
  compareHow(before, now, changes);
  comparePauses(before.schedule(), now.schedule(), changes);
  if (!MessageDifferencer::Equals(before.thresholds(), now.thresholds())) changes.say("pain");
  if (before.pacing() != now.pacing()) changes.say("pace");
  compareMedia("photo", before.has_photo(), now.has_photo(),
               MessageDifferencer::Equals(before.photo(), now.photo()), changes);
  compareMedia("clip", before.has_clip(), now.has_clip(),
               MessageDifferencer::Equals(before.clip(), now.clip()), changes);
  if (before.note() != now.note()) changes.say("note");
}

const v1::AdviceEntry* findCard(const v1::Programme& programme, const std::string& card_id) {
  for (const auto& card : programme.cards()) {
    if (card.card_id() == card_id) return &card;
  }
  return nullptr;
}

void compareCards(const v1::Programme& last, const v1::Programme& draft, Sentences& sentences) {
  for (const auto& card : draft.cards()) {
    const v1::AdviceEntry* before = findCard(last, card.card_id());
    if (before == nullptr) {
      sentences.say(sentences.filled("card-new", {{"title", sentences.title(card)}}));
    } else if (!MessageDifferencer::Equals(before->days(), card.days()) || before->note() != card.note()) {
      sentences.say(sentences.filled("card-changed", {{"title", sentences.title(card)}}));
    }
  }
  for (const auto& card : last.cards()) {
    if (findCard(draft, card.card_id()) == nullptr)
      sentences.say(sentences.filled("gone", {{"title", sentences.title(card)}}));
  }
}

// By what a person would notice; who signed a plan and when is no change of it.
void compareWear(const v1::Programme& last, const v1::Programme& draft, Sentences& sentences) {
  if (!draft.has_wear_plan()) {
    if (last.has_wear_plan()) sentences.say(sentences.phrase("change.wear-gone"));
    return;
  }
  if (!last.has_wear_plan()) {
    sentences.say(sentences.phrase("change.wear-new"));
    return;
  }
  MessageDifferencer differ;
  for (const char* field :
       {"id", "number", "person_id", "clinic_id", "signer_id", "signer_name", "issued_at", "zone"})
    differ.IgnoreField(v1::WearPlan::descriptor()->FindFieldByName(field));
  if (!differ.Compare(last.wear_plan(), draft.wear_plan()))
    sentences.say(sentences.phrase("change.wear-changed"));
}

void compareAllEntries(const v1::Programme& last, const v1::Programme& draft, Sentences& sentences) {
  for (const auto& entry : draft.entries()) {
    const v1::Entry* before = find(last, entry.id());
    if (before == nullptr) {
      sentences.say(sentences.filled("new", {{"title", sentences.title(entry)}}));
      continue;
    }
    Changes changes(sentences.title(entry), sentences);
    compareEntries(*before, entry, changes);
  }
  for (const auto& entry : last.entries()) {
    if (find(draft, entry.id()) == nullptr)
      sentences.say(sentences.filled("gone", {{"title", sentences.title(entry)}}));
  }
}

}  // namespace

std::vector<std::string> changesBetween(const v1::Programme& last, const v1::Programme& draft,
                                        const Catalogue& catalogue, const std::string& language) {
  Sentences sentences(catalogue, language);
  compareAllEntries(last, draft, sentences);
  if (!MessageDifferencer::Equals(last.thresholds(), draft.thresholds())) {
    sentences.say(
        sentences.filled("limits", {{"stop", std::to_string(draft.thresholds().pain_stop_0_10())},
                                    {"rise", std::to_string(draft.thresholds().pain_rise_0_10())}}));
  }
  compareCards(last, draft, sentences);
  compareWear(last, draft, sentences);
  if (last.advice() != draft.advice()) sentences.say(sentences.phrase("change.advice"));
  return sentences.take();
}

}  // namespace newel
