#include "sync/desk/hub_watch.h"

#include <absl/time/time.h>

#include <utility>

#include "sync/common/everybody.h"
#include "sync/common/pinned_channel.h"
#include "sync/common/retry_rule.h"

namespace newel {
namespace {

constexpr absl::Duration kFirstRetry = absl::Milliseconds(500);
constexpr absl::Duration kLongestRetry = absl::Seconds(30);
constexpr absl::Duration kConnectWait = absl::Seconds(8);

}  // namespace

std::string HubWatch::session() const {
  const std::lock_guard lock(m_mutex);
  return m_session;
}

void HubWatch::setSession(const std::string& session) {
  {
    const std::lock_guard lock(m_mutex);
    m_session = session;
    if (m_stream != nullptr) m_stream->TryCancel();  // it was opened with the former one
  }
  m_condition.notify_all();
}

void HubWatch::start(std::function<void(const std::string& person_id)> changed) {
  stop();
  m_stop = false;
  m_thread = std::thread([this, changed = std::move(changed)] { run(changed); });
}

void HubWatch::stop() {
  {
    const std::lock_guard lock(m_mutex);
    m_stop = true;
    if (m_stream != nullptr) m_stream->TryCancel();
  }
  m_condition.notify_all();
  if (m_thread.joinable()) m_thread.join();
}

void HubWatch::run(const std::function<void(const std::string& person_id)>& changed) {
  int failures = 0;
  std::unique_lock lock(m_mutex);
  while (!m_stop) {
    m_condition.wait(lock, [this] { return m_stop || !m_session.empty(); });
    if (m_stop) return;
    const std::string used = m_session;
    lock.unlock();
    failures = readUntilEnd(changed) ? 1 : failures + 1;
    const absl::Duration wait = backOff(failures, kFirstRetry, kLongestRetry, *m_random);
    lock.lock();
    // A new session need not wait for the old one's failures.
    m_condition.wait_for(lock, absl::ToChronoMilliseconds(wait),
                         [this, &used] { return m_stop || m_session != used; });
  }
}

bool HubWatch::readUntilEnd(const std::function<void(const std::string& person_id)>& changed) {
  awaitConnection(*m_channel, kConnectWait, [this] {
    const std::lock_guard lock(m_mutex);
    return m_stop;
  });
  grpc::ClientContext context;
  {
    const std::lock_guard lock(m_mutex);
    if (m_stop || m_session.empty()) return false;
    context.AddMetadata("authorization", "Bearer " + m_session);
    m_stream = &context;
  }
  const auto stream = m_stub->Watch(&context, v1::WatchRequest());
  bool any = false;
  v1::DeskNudge nudge;
  while (stream->Read(&nudge)) {
    // What changed while no stream was open is not known, so the first word means everything.
    const bool everybody = !any || nudge.person_id() == kEverybody;
    if (everybody || !nudge.person_id().empty()) changed(everybody ? "" : nudge.person_id());
    any = true;
  }
  // Why it ended does not matter: it is opened again in any case.
  stream->Finish();
  const std::lock_guard lock(m_mutex);
  m_stream = nullptr;
  return any;
}

}  // namespace newel
