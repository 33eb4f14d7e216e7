// The desk's open stream: says whose record changed. Opens again by itself after a back-off.
#pragma once

#include <grpcpp/client_context.h>

#include <condition_variable>
#include <functional>
#include <mutex>
#include <string>
#include <thread>

#include "core/records/random.h"
#include "sync/protocol/desk_service.grpc.pb.h"

namespace newel {

// Thread-safe.
class HubWatch {
 public:
  // Both outlive this.
  HubWatch(v1::DeskService::Stub* stub, Random* random) : m_stub(stub), m_random(random) {}
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
