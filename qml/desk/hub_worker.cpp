#include "qml/desk/hub_worker.h"

namespace newel::desk {
namespace {

constexpr int kShowAfterMs = 1000;

}  // namespace

HubWorker::HubWorker(QObject* parent) : QObject(parent) {
  m_second.setSingleShot(true);
  m_second.setInterval(kShowAfterMs);
  connect(&m_second, &QTimer::timeout, this, [this] {
    m_busy_words = m_running_words;
    emit busyChanged();
  });
  m_thread = std::thread([this] { loop(); });
}

HubWorker::~HubWorker() {
  {
    const std::lock_guard<std::mutex> lock(m_mutex);
    m_stopping = true;
  }
  m_changed.notify_all();
  m_thread.join();
}

void HubWorker::push(Job job, Turn turn) {
  if (turn == Turn::Now) ++m_waiting;
  {
    const std::lock_guard<std::mutex> lock(m_mutex);
    (turn == Turn::Now ? m_now : m_later).push_back(std::move(job));
  }
  m_changed.notify_all();
}

void HubWorker::watch() {
  if (m_client == nullptr) return;
  // The client ends in loop(), before this object does, so `this` outlives every call.
  m_client->watch([this](const std::string& person_id) {
    QMetaObject::invokeMethod(
        this, [this, id = QString::fromStdString(person_id)] { emit nudged(id); }, Qt::QueuedConnection);
  });
}

void HubWorker::dropLater() {
  const std::lock_guard<std::mutex> lock(m_mutex);
  m_later.clear();
}

void HubWorker::loop() {
  while (true) {
    Job job;
    bool awaited = false;
    {
      std::unique_lock<std::mutex> lock(m_mutex);
      m_changed.wait(lock, [this] { return m_stopping || !m_now.empty() || !m_later.empty(); });
      if (m_stopping) break;
      awaited = !m_now.empty();
      auto& queue = awaited ? m_now : m_later;
      job = std::move(queue.front());
      queue.pop_front();
    }
    if (awaited)
      QMetaObject::invokeMethod(
          this, [this, words = job.words] { begun(words); }, Qt::QueuedConnection);
    auto done = job.work();
    QMetaObject::invokeMethod(
        this,
        [this, awaited, done = std::move(done)] {
          ended(awaited);
          done();
        },
        Qt::QueuedConnection);
  }
  // The client's own threads end here, on the thread that made them.
  m_client.reset();
}

void HubWorker::begun(const QString& words) {
  m_running_words = words;
  m_second.start();
}

void HubWorker::ended(bool awaited) {
  if (!awaited) return;
  --m_waiting;
  m_second.stop();
  if (m_busy_words.isEmpty()) return;
  m_busy_words.clear();
  emit busyChanged();
}

}  // namespace newel::desk
