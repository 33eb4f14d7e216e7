// One thread for the blocking calls to the hub. Jobs wait in two queues: what somebody waits for goes before
// what is read ahead. Results come back on the UI thread by queued call.
// Not here: what a job asks or what its answer means.
#pragma once

#include <QtCore/QObject>
#include <QtCore/QPointer>
#include <QtCore/QString>
#include <QtCore/QTimer>
#include <condition_variable>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <thread>
#include <utility>

#include "sync/desk/desk_client.h"

namespace newel::desk {

class HubWorker : public QObject {
  Q_OBJECT

 public:
  enum class Turn { Now, Later };

  explicit HubWorker(QObject* parent = nullptr);
  // Waits for the call under way, which has a deadline; the rest is dropped.
  ~HubWorker() override;
  HubWorker(const HubWorker&) = delete;
  HubWorker& operator=(const HubWorker&) = delete;

  // UI thread. Runs `job` on the worker's thread, then `done` with its result on the UI thread, unless
  // `owner` is gone by then. `words` say what is being done, for people; they show when it takes over a
  // second. The client is null before connectTo() succeeded and after forget().
  template <typename Job, typename Done>
  void run(QObject* owner, const QString& words, Job job, Done done, Turn turn = Turn::Now) {
    const QPointer<QObject> guard(owner);
    push({words,
          [this, guard, job = std::move(job), done = std::move(done)]() mutable {
            using Result = decltype(job(m_client.get()));
            auto result = std::make_shared<Result>(job(m_client.get()));
            return std::function<void()>([guard, result, done = std::move(done)]() mutable {
              if (guard) done(std::move(*result));
            });
          }},
         turn);
  }

  // On the worker's thread only, from within a job: the client that later jobs get.
  void useClient(std::unique_ptr<DeskClient> client) { m_client = std::move(client); }
  // On the worker's thread only, from within a job: from now on nudged() says whose record changed.
  void watch();
  // Drops what waits in the Later queue. UI thread.
  void dropLater();

  // What takes longer than a second right now; empty otherwise.
  QString busyWords() const { return m_busy_words; }
  // Jobs somebody waits for, running or queued.
  bool idle() const { return m_waiting == 0; }

 signals:
  void busyChanged();
  void nudged(const QString& person_id);  // empty: anybody's

 private:
  struct Job {
    QString words;
    std::function<std::function<void()>()> work;
  };

  void push(Job job, Turn turn);
  void loop();
  void begun(const QString& words);
  void ended(bool awaited);

  std::unique_ptr<DeskClient> m_client;  // worker's thread
  std::mutex m_mutex;
  std::condition_variable m_changed;
  std::deque<Job> m_now;
  std::deque<Job> m_later;
  bool m_stopping = false;
  int m_waiting = 0;        // UI thread
  QString m_running_words;  // UI thread
  QString m_busy_words;
  QTimer m_second;
  std::thread m_thread;  // last: begins when all else is there
};

}  // namespace newel::desk
