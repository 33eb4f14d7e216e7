// When a desk that nobody touches has to lock. Pure: the time comes in, on a clock that nobody can set and
// that counts suspend, so a machine that slept is locked before its first picture. Not here: what counts as a
// touch (desk_lock.h) and what locking does (DeskModel).
#pragma once

#include <absl/time/time.h>

namespace newel::desk {

class IdleWatch {
 public:
  // WCAG 2.2.1: warned, with at least 20 s in which any touch is enough to go on.
  static constexpr absl::Duration kWarnBefore = absl::Seconds(20);

  // `limit` over zero.
  void begin(absl::Duration now, absl::Duration limit);
  void setLimit(absl::Duration limit) { m_limit = limit; }
  // False, and nothing is changed, when the time was over before this touch: that touch comes too late.
  bool used(absl::Duration now);
  bool due(absl::Duration now) const { return left(now) <= absl::ZeroDuration(); }
  absl::Duration left(absl::Duration now) const { return m_last + m_limit - now; }
  bool warns(absl::Duration now) const { return left(now) <= kWarnBefore; }
  absl::Duration lastUse() const { return m_last; }

 private:
  absl::Duration m_last;
  absl::Duration m_limit = absl::Minutes(5);
};

}  // namespace newel::desk
