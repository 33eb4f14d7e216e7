// One open gRPC stream from the hub, fed from any thread and holding none while it waits.
#pragma once

#include <grpcpp/support/server_callback.h>

#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <utility>

#include "sync/common/grpc_status.h"
#include "sync/hub/nudge_board.h"

namespace newel {

// Owns itself from make() until gRPC says it is done.
template <typename Nudge>
class StreamReactor : public grpc::ServerWriteReactor<Nudge>, public NudgeStream<Nudge> {
 public:
  // `done` is called once, at the end.
  static std::shared_ptr<StreamReactor> make(std::function<void()> done) {
    auto reactor = std::shared_ptr<StreamReactor>(new StreamReactor(std::move(done)));
    reactor->m_self = reactor;
    return reactor;
  }

  void push(const Nudge& nudge) override {
    {
      const std::lock_guard lock(m_mutex);
      if (m_closing) return;
      if (m_queue.size() >= kMostQueued) {
        // Somebody who does not read. The stream ends; the next one begins with a look at everything.
        m_closing = true;
        m_status = grpc::Status(grpc::StatusCode::UNAVAILABLE, "too slow");
      } else {
        m_queue.push_back(nudge);
      }
    }
    advance();
  }

  void close(const absl::Status& why) override {
    {
      const std::lock_guard lock(m_mutex);
      if (m_closing) return;
      m_closing = true;
      m_status = toGrpc(why);
    }
    advance();
  }

  // Runs `what` unless the stream is ending: what belongs to the call is there and nobody else uses it
  // meanwhile.
  void whileOpen(const std::function<void()>& what) {
    const std::lock_guard lock(m_mutex);
    if (!m_finished) what();
  }

  void OnWriteDone(bool ok) override {
    {
      const std::lock_guard lock(m_mutex);
      m_writing = false;
      if (!ok) m_closing = true;
    }
    advance();
  }

  void OnCancel() override { close(absl::CancelledError("the other side went away")); }

  void OnDone() override {
    if (m_done) m_done();
    m_self.reset();  // may be the last hold on this object
  }

 private:
  // Orders are few, nudges carry nothing: a queue this long is a dead reader.
  static constexpr std::size_t kMostQueued = 256;

  explicit StreamReactor(std::function<void()> done) : m_done(std::move(done)) {}

  // Starts what is next. gRPC may call back from within StartWrite and Finish, so never under the lock.
  void advance() {
    // Keeps this object alive through a call that may end it.
    std::shared_ptr<StreamReactor> self;
    bool finish = false;
    {
      const std::lock_guard lock(m_mutex);
      if (m_writing || m_finished) return;
      self = m_self;
      if (m_closing) {
        m_finished = finish = true;
      } else if (!m_queue.empty()) {
        m_current = std::move(m_queue.front());
        m_queue.pop_front();
        m_writing = true;
      } else {
        return;
      }
    }
    if (finish) {
      this->Finish(m_status);
    } else {
      this->StartWrite(&m_current);
    }
  }

  const std::function<void()> m_done;
  std::shared_ptr<StreamReactor> m_self;
  std::mutex m_mutex;
  std::deque<Nudge> m_queue;
  Nudge m_current;
  bool m_writing = false;
  bool m_closing = false;
  bool m_finished = false;
  grpc::Status m_status;
};

}  // namespace newel
