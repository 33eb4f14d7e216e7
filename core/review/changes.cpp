#include <google/protobuf/util/message_differencer.h>

#include <algorithm>

#include "core/library/wording.h"
#include "core/review/review.h"
#include "core/safety/facts.h"

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

std::string spaced(std::string word) {
  std::replace(word.begin(), word.end(), '-', ' ');
  return word;
}

std::string supportWords(v1::Support support) {
  switch (support) {
    case v1::SUPPORT_TWO_HANDS:
      return "both hands hold on";
    case v1::SUPPORT_ONE_HAND:
      return "one hand holds on";
    case v1::SUPPORT_FINGERTIPS:
      return "fingertips only";
    case v1::SUPPORT_NO_HANDS:
      return "no hands";
    case v1::SUPPORT_LYING:
      return "lying";
    case v1::SUPPORT_SEATED:
      return "seated";
    default:
      return "not known";
  }
}

std::string counted(std::uint64_t count, const std::string& one, const std::string& many) {
  return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string daysWords(const v1::Schedule& schedule) {
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek) {
    return counted(schedule.times_per_week(), "time a week", "times a week");
  }
  std::vector<int> days(schedule.weekdays().days().begin(), schedule.weekdays().days().end());
  if (days.size() == 7) return "every day";
  std::sort(days.begin(), days.end());
  std::string words;
  for (const int day : days) {
    std::string name = wordOf(*v1::Weekday_descriptor(), day);
    name[0] = static_cast<char>(name[0] - 'a' + 'A');
    words += (words.empty() ? "" : ", ") + name;
  }
  return words;
}

std::string timeWords(std::uint32_t minutes) {
  const std::string hour = std::to_string(minutes / 60);
  const std::string minute = std::to_string(minutes % 60);
  return std::string(hour.size() < 2 ? "0" : "") + hour + ":" + (minute.size() < 2 ? "0" : "") + minute;
}

std::string windowWords(const v1::Schedule& schedule) {
  std::string words;
  for (const auto& window : schedule.windows()) {
    words += (words.empty() ? "" : ", ") + timeWords(window.from_min()) + " to " + timeWords(window.to_min());
  }
  return words;
}

// One number that changed, said so that the direction cannot be misread.
class Changes {
 public:
  Changes(std::string title, std::vector<std::string>& sentences)
      : m_title(std::move(title)), m_sentences(sentences) {}

  void number(std::uint64_t before, std::uint64_t now, const std::string& one, const std::string& many) {
    if (before != now) say(counted(now, one, many) + " instead of " + std::to_string(before));
  }
  void words(const std::string& what, const std::string& before, const std::string& now) {
    if (before != now) say(what + " " + now + " instead of " + before);
  }
  void say(const std::string& what) { m_sentences.push_back(m_title + ": " + what + "."); }

 private:
  std::string m_title;
  std::vector<std::string>& m_sentences;
};

void compareSets(const v1::SetsDose& before, const v1::SetsDose& now, Changes& changes) {
  changes.number(before.sets(), now.sets(), "set", "sets");
  changes.number(before.repetitions(), now.repetitions(), "repetition", "repetitions");
  changes.number(before.hold_s(), now.hold_s(), "second of hold", "seconds of hold");
  changes.number(before.move_s(), now.move_s(), "second to move", "seconds to move");
  changes.number(before.return_s(), now.return_s(), "second to come back", "seconds to come back");
  changes.number(before.repetition_rest_s(), now.repetition_rest_s(), "second between repetitions",
                 "seconds between repetitions");
  changes.number(before.rest_s(), now.rest_s(), "second of rest", "seconds of rest");
}

void compareMinutes(const v1::MinutesDose& before, const v1::MinutesDose& now, Changes& changes) {
  changes.number(before.minutes(), now.minutes(), "minute", "minutes");
  changes.number(before.bouts(), now.bouts(), "bout", "bouts");
  changes.number(before.rest_s(), now.rest_s(), "second of rest", "seconds of rest");
}

std::string lengthWords(const v1::PassesDose& dose) {
  if (dose.length_case() == v1::PassesDose::kDistanceM) {
    return counted(dose.distance_m(), "metre", "metres");
  }
  return counted(dose.step_count(), "step", "steps");
}

void comparePasses(const v1::PassesDose& before, const v1::PassesDose& now, Changes& changes) {
  changes.number(before.passes(), now.passes(), "pass", "passes");
  changes.words("each pass", lengthWords(before), lengthWords(now));
  changes.number(before.step_s(), now.step_s(), "second a step", "seconds a step");
  changes.number(before.rest_s(), now.rest_s(), "second of rest", "seconds of rest");
}

void compareDose(const v1::Dose& before, const v1::Dose& now, Changes& changes) {
  if (before.kind_case() != now.kind_case()) {
    changes.say("the dose is counted in another way");
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
  if (!MessageDifferencer::Equals(left, right)) changes.say("the days off have changed");
}

void compareMedia(const std::string& what, bool had, bool has, bool same, Changes& changes) {
  if (had && has && !same) changes.say("another " + what + " goes with it");
  if (!had && has) changes.say("a " + what + " goes with it");
  if (had && !has) changes.say("the " + what + " is gone");
}

void compareEntries(const v1::Entry& before, const v1::Entry& now, Changes& changes) {
  if (before.exercise_id() != now.exercise_id()) {
    changes.say("this exercise takes the place of another");
    return;
  }
  compareDose(before.dose(), now.dose(), changes);
  changes.words("support:", supportWords(before.support()), supportWords(now.support()));
  changes.words("prosthesis", wordOf(*v1::ProsthesisUse_descriptor(), before.prosthesis()),
                wordOf(*v1::ProsthesisUse_descriptor(), now.prosthesis()));
  changes.words("sides:", spaced(wordOf(*v1::SidePolicy_descriptor(), before.side_policy())),
                spaced(wordOf(*v1::SidePolicy_descriptor(), now.side_policy())));
  changes.words("days:", daysWords(before.schedule()), daysWords(now.schedule()));
  changes.words("time of day:", windowWords(before.schedule()), windowWords(now.schedule()));
  comparePauses(before.schedule(), now.schedule(), changes);
  if (!MessageDifferencer::Equals(before.thresholds(), now.thresholds())) {
    changes.say("when to stop for pain has changed");
  }
  if (before.pacing() != now.pacing()) changes.say("the pace is set in another way");
  compareMedia("photo", before.has_photo(), now.has_photo(),
               MessageDifferencer::Equals(before.photo(), now.photo()), changes);
  compareMedia("clip", before.has_clip(), now.has_clip(),
               MessageDifferencer::Equals(before.clip(), now.clip()), changes);
  if (before.note() != now.note()) changes.say("the therapist's note has changed");
}

std::string cardTitle(const v1::AdviceEntry& card, const Catalogue& catalogue, const std::string& language) {
  const v1::AdviceWords* words = cardWordsOrEnglish(catalogue, card.card_id(), language);
  return words == nullptr ? card.card_id() : words->title();
}

const v1::AdviceEntry* findCard(const v1::Programme& programme, const std::string& card_id) {
  for (const auto& card : programme.cards()) {
    if (card.card_id() == card_id) return &card;
  }
  return nullptr;
}

void compareCards(const v1::Programme& last, const v1::Programme& draft, const Catalogue& catalogue,
                  const std::string& language, std::vector<std::string>& sentences) {
  for (const auto& card : draft.cards()) {
    const std::string title = cardTitle(card, catalogue, language);
    const v1::AdviceEntry* before = findCard(last, card.card_id());
    if (before == nullptr) {
      sentences.push_back("New card: " + title + ".");
    } else if (!MessageDifferencer::Equals(before->days(), card.days()) || before->note() != card.note()) {
      sentences.push_back("The card has changed: " + title + ".");
    }
  }
  for (const auto& card : last.cards()) {
    if (findCard(draft, card.card_id()) == nullptr)
      sentences.push_back("No longer: " + cardTitle(card, catalogue, language) + ".");
  }
}

}  // namespace

namespace {

// By what a person would notice; who signed a plan and when is no change of it.
void compareWear(const v1::Programme& last, const v1::Programme& draft, std::vector<std::string>& sentences) {
  const v1::WearPlan& before = last.wear_plan();
  const v1::WearPlan& now = draft.wear_plan();
  if (!draft.has_wear_plan()) {
    if (last.has_wear_plan()) sentences.emplace_back("No longer: the wear plan.");
    return;
  }
  if (!last.has_wear_plan()) {
    sentences.emplace_back("New: a wear plan.");
    return;
  }
  MessageDifferencer differ;
  for (const char* field :
       {"id", "number", "person_id", "clinic_id", "signer_id", "signer_name", "issued_at", "zone"})
    differ.IgnoreField(v1::WearPlan::descriptor()->FindFieldByName(field));
  if (!differ.Compare(before, now)) sentences.emplace_back("The wear plan has changed and begins anew.");
}

}  // namespace

std::vector<std::string> changesBetween(const v1::Programme& last, const v1::Programme& draft,
                                        const Catalogue& catalogue, const std::string& language) {
  std::vector<std::string> sentences;
  for (const auto& entry : draft.entries()) {
    const std::string title = titleOf(entry, catalogue, language);
    const v1::Entry* before = find(last, entry.id());
    if (before == nullptr) {
      sentences.push_back("New: " + title + ".");
      continue;
    }
    Changes changes(title, sentences);
    compareEntries(*before, entry, changes);
  }
  for (const auto& entry : last.entries()) {
    if (find(draft, entry.id()) == nullptr) {
      sentences.push_back("No longer: " + titleOf(entry, catalogue, language) + ".");
    }
  }
  if (!MessageDifferencer::Equals(last.thresholds(), draft.thresholds())) {
    sentences.push_back("When to stop for pain: over " + std::to_string(draft.thresholds().pain_stop_0_10()) +
                        " of 10, or " + std::to_string(draft.thresholds().pain_rise_0_10()) +
                        " more than at the start.");
  }
  compareCards(last, draft, catalogue, language, sentences);
  compareWear(last, draft, sentences);
  if (last.advice() != draft.advice()) sentences.emplace_back("The general advice has changed.");
  return sentences;
}

}  // namespace newel
