// Wakes the program at an instant of the wall clock, and at once when somebody sets that clock. One timer of
// the kernel, which waits without a wake-up and goes on counting while the machine sleeps. UI thread.
#pragma once

#include <absl/time/time.h>

#include <QtCore/QObject>
#include <QtCore/QSocketNotifier>
#include <memory>

#include "core/time/clock.h"

namespace newel::platform {

class WallAlarm : public QObject {
  Q_OBJECT

 public:
  explicit WallAlarm(const Clock& clock, QObject* parent = nullptr);
  ~WallAlarm() override;

  // In place of what was set before. InfiniteFuture: nothing is waited for but the clock being set.
  void wakeAt(absl::Time at);

 signals:
  void due();
  void clockSet();

 private:
  void read();

  const Clock& m_clock;
  int m_timer = -1;
  std::unique_ptr<QSocketNotifier> m_notifier;
};

}  // namespace newel::platform
