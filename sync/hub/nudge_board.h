// Who is listening just now: phones and desks with an open stream. Knows nothing of gRPC, so that a
// simulation can listen too.
#pragma once

#include <absl/status/status.h>

#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

#include "sync/protocol/desk_service.pb.h"
#include "sync/protocol/home_service.pb.h"

namespace newel {

// One open stream. Called from any thread; neither blocks.
template <typename Nudge>
class NudgeStream {
 public:
  virtual ~NudgeStream() = default;
  virtual void push(const Nudge& nudge) = 0;
  virtual void close(const absl::Status& why) = 0;
};
using PhoneStream = NudgeStream<v1::Nudge>;
using DeskStream = NudgeStream<v1::DeskNudge>;

// Thread-safe.
class NudgeBoard {
 public:
  // Returns a number for leave().
  int joinPhone(const std::string& device_id, const std::string& person_id,
                const std::shared_ptr<PhoneStream>& stream);
  // `may_hear`: whether this desk may be told of a person; called with no lock of the board held.
  int joinDesk(const std::string& session_sha256, const std::shared_ptr<DeskStream>& stream,
               std::function<bool(const std::string& person_id)> may_hear);
  void leave(int number);

  void nudgePerson(const std::string& person_id);  // empty: every phone
  void pushHold(const std::string& person_id, const v1::SignedHoldOrder& order);
  void nudgeDesks(const std::string& person_id);  // those that may hear of the person; empty: every desk
  void closeDevice(const std::string& device_id);
  void closeSession(const std::string& session_sha256);
  void closeAll(const absl::Status& why);  // and whoever joins from then on, for the hub is stopping
  // To every stream; and closes those whose device or session `good` no longer vouches for.
  void stillHere(const std::function<bool(const std::string& device_id)>& device_is_good,
                 const std::function<bool(const std::string& session_sha256)>& session_is_good);
  std::size_t openStreams() const;

 private:
  struct Phone {
    std::string device_id;
    std::string person_id;
    std::shared_ptr<PhoneStream> stream;
  };
  struct Desk {
    std::string session_sha256;
    std::shared_ptr<DeskStream> stream;
    std::function<bool(const std::string& person_id)> may_hear;
  };
  // Copies, so that no stream is called under the lock.
  std::vector<Phone> phonesWhere(const std::function<bool(const Phone&)>& test) const;
  std::vector<Desk> desksWhere(const std::function<bool(const Desk&)>& test) const;

  mutable std::mutex m_mutex;
  int m_last = 0;
  absl::Status m_closed;  // OK: open
  std::map<int, Phone> m_phones;
  std::map<int, Desk> m_desks;
};

}  // namespace newel
