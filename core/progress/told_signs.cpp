#include "core/progress/told_signs.h"

#include <algorithm>
#include <initializer_list>
#include <string_view>

#include "core/time/local_day.h"

namespace newel {
namespace {

using Names = std::initializer_list<std::string_view>;

bool isOneOf(std::string_view name, Names names) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

// `fine`: answers that tell of nothing.
std::string signOf(const v1::Practice& practice, v1::StopReason reason, Names questions, Names fine) {
  for (const auto& answer : practice.ready_answers()) {
    if (isOneOf(answer.question_id(), questions) && !isOneOf(answer.answer_id(), fine))
      return answer.answer_id();
  }
  const bool stopped =
      practice.stop_reason() == reason ||
      std::any_of(practice.entries().begin(), practice.entries().end(),
                  [reason](const v1::EntryDone& entry) { return entry.skipped() == reason; });
  return stopped ? "stopped" : "";
}

std::optional<ToldSign> lastSign(const std::vector<v1::Practice>& practices,
                                 std::string (*toldIn)(const v1::Practice&)) {
  std::optional<ToldSign> last;
  for (const auto& practice : practices) {
    const absl::Time at = toTime(practice.ended_at());
    if (last && at <= last->at) continue;
    std::string what = toldIn(practice);
    if (!what.empty()) last = ToldSign{at, std::move(what)};
  }
  return last;
}

}  // namespace

std::string fallToldIn(const v1::Practice& practice) {
  return signOf(practice, v1::STOP_REASON_FALL, {"fall"}, {"no"});
}

std::string skinSignToldIn(const v1::Practice& practice) {
  return signOf(practice, v1::STOP_REASON_SKIN, {"skin", "skin-and-foot"}, {"fine", "not-looked"});
}

std::optional<ToldSign> lastFall(const std::vector<v1::Practice>& practices) {
  return lastSign(practices, fallToldIn);
}

std::optional<ToldSign> lastSkinSign(const std::vector<v1::Practice>& practices) {
  return lastSign(practices, skinSignToldIn);
}

}  // namespace newel
