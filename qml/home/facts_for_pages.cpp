#include "qml/home/facts_for_pages.h"

#include <QtCore/QLocale>
#include <algorithm>

#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"

namespace newel::home {

absl::TimeZone zoneOf(const HomeParts& parts) { return loadZone(parts.zone()).value_or(absl::UTCTimeZone()); }

absl::CivilDay todayOf(const HomeParts& parts) { return localDayAt(parts.clock->wall(), zoneOf(parts)); }

std::optional<absl::Time> clinicSpokeAt(const HomeEngine& engine) {
  std::optional<absl::Time> last;
  const auto take = [&last](const google::protobuf::Timestamp& at) {
    last = std::max(last.value_or(absl::InfinitePast()), toTime(at));
  };
  for (const v1::Message& message : engine.messages()) {
    if (message.sender() == v1::SENDER_CLINIC) take(message.written_at());
  }
  for (const v1::Programme& programme : engine.programmes()) take(programme.issued_at());
  return last;
}

std::vector<v1::Practice> practicesThatCount(const HomeParts& parts) {
  constexpr absl::Duration kLookBack = absl::Hours(24 * 60);  // ours, no source
  // The clinic's clock and the phone's may differ, and a practice begins before its record is made.
  constexpr absl::Duration kMargin = absl::Hours(48);
  const auto spoke = clinicSpokeAt(*parts.engine);
  if (spoke.has_value()) {
    auto recent = parts.engine->practicesSince(std::min(*spoke - kMargin, parts.clock->wall() - kLookBack));
    const bool any = std::any_of(recent.begin(), recent.end(), [](const v1::Practice& practice) {
      return practice.end() != v1::PRACTICE_END_REFUSED;
    });
    if (any) return recent;
  }
  return parts.engine->practices();
}

std::optional<v1::WearPlan> wearPlanOf(const HomeParts& parts) {
  const std::string today = formatLocalDay(todayOf(parts));
  const auto newest = parts.engine->programme();
  if (!newest.has_value()) return std::nullopt;
  if (newest->effective_day() <= today &&
      (!newest->has_wear_plan() || newest->wear_plan().effective_day() <= today)) {
    return newest->has_wear_plan() ? std::optional(newest->wear_plan()) : std::nullopt;
  }
  std::vector<v1::WearPlan> plans;
  for (const v1::Programme& programme : parts.engine->programmes()) {
    if (programme.has_wear_plan()) plans.push_back(programme.wear_plan());
  }
  const v1::WearPlan* plan = planInForce(plans, todayOf(parts));
  if (plan != nullptr) return *plan;
  return newest->has_wear_plan() ? std::optional(newest->wear_plan()) : std::nullopt;
}

bool prosthesisStaysOff(const HomeParts& parts) {
  const auto plan = wearPlanOf(parts);
  if (!plan.has_value()) return false;
  const auto day = wearDay(*plan, parts.engine->wearBlocks(), todayOf(parts));
  return !day.ok() || day->gate == WearGate::StayOff;
}

std::string pictureOf(const HomeEngine& engine, const v1::Entry& entry) {
  for (const v1::Programme& programme : engine.programmes()) {
    for (const v1::OwnExercise& own : programme.own_exercises()) {
      if (own.exercise().id() == entry.exercise_id() &&
          own.exercise().revision() == entry.exercise_revision())
        return own.picture();
    }
  }
  return {};
}

std::string languageOf(const HomeParts& parts) {
  std::string chosen = parts.language ? parts.language() : std::string();
  if (!chosen.empty()) return chosen;
  const std::optional<v1::Person> person = parts.engine->person();
  if (person.has_value() && !person->language().empty()) return person->language();
  return QLocale().name().section(QLatin1Char('_'), 0, 0).toStdString();
}

v1::Appearance appearanceOf(const HomeParts& parts) {
  return parts.appearance ? parts.appearance() : v1::Appearance();
}

std::vector<v1::OccasionRef> doneOccasions(const std::vector<v1::Practice>& practices) {
  std::vector<v1::OccasionRef> done;
  for (const v1::Practice& practice : practices) {
    for (const v1::EntryDone& entry : practice.entries()) {
      if (entry.done().repetitions() > 0 || entry.done().active_ms() > 0) done.push_back(entry.occasion());
    }
  }
  return done;
}

}  // namespace newel::home
