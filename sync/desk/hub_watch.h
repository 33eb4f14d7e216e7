// The desk's open stream: says whose record changed. Opens again by itself after a back-off.
#pragma once

#include <grpcpp/channel.h>
#include <grpcpp/client_context.h>

#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <string>
#include <thread>
#include <utility>

#include "core/records/random.h"
#include "sync/protocol/desk_service.grpc.pb.h"

namespace newel {

// Thread-safe.
class HubWatch {
 public:
  // `stub`, made on `channel`, and `random` outlive this.
  HubWatch(std::shared_ptr<grpc::Channel> channel, v1::DeskService::Stub* stub, Random* random)
      : m_channel(std::move(channel)), m_stub(stub), m_random(random) {}
  ~HubWatch() { stop(); }

  // The session that calls go out with; empty: signed out. The stream waits for one.
  std::string session() const;
  void setSession(const std::string& session);

  void start(std::function<void(const std::string& person_id)> changed);  // ends an earlier watch
  void stop();

 private:
  void run(const std::function<void(const std::string& person_id)>& changed);
  // Reads until the stream ends; true when it brought anything.
  bool readUntilEnd(const std::function<void(const std::string& person_id)>& changed);

  const std::shared_ptr<grpc::Channel> m_channel;
  v1::DeskService::Stub* m_stub;
  Random* m_random;
  mutable std::mutex m_mutex;
  std::condition_variable m_condition;
  std::string m_session;
  bool m_stop = false;
  grpc::ClientContext* m_stream = nullptr;
  std::thread m_thread;
};

}  // namespace newel
