#include "sync/hub/nudge_board.h"

#include <utility>

#include "sync/common/everybody.h"

namespace newel {
namespace {

absl::Status revoked() { return absl::PermissionDeniedError("device: its access was ended"); }
absl::Status signedOut() { return absl::UnauthenticatedError("session: it has ended"); }

template <typename Entry>
std::vector<Entry> where(const std::map<int, Entry>& all, const std::function<bool(const Entry&)>& test) {
  std::vector<Entry> found;
  for (const auto& [number, entry] : all) {
    if (test(entry)) found.push_back(entry);
  }
  return found;
}

}  // namespace

int NudgeBoard::joinPhone(const std::string& device_id, const std::string& person_id,
                          const std::shared_ptr<PhoneStream>& stream) {
  std::unique_lock lock(m_mutex);
  const int number = ++m_last;
  m_phones[number] = {device_id, person_id, stream};
  const absl::Status closed = m_closed;
  lock.unlock();
  if (!closed.ok()) stream->close(closed);
  return number;
}

int NudgeBoard::joinDesk(const std::string& session_sha256, const std::shared_ptr<DeskStream>& stream,
                         std::function<bool(const std::string& person_id)> may_hear) {
  std::unique_lock lock(m_mutex);
  const int number = ++m_last;
  m_desks[number] = {session_sha256, stream, std::move(may_hear)};
  const absl::Status closed = m_closed;
  lock.unlock();
  if (!closed.ok()) stream->close(closed);
  return number;
}

void NudgeBoard::leave(int number) {
  const std::lock_guard lock(m_mutex);
  m_phones.erase(number);
  m_desks.erase(number);
}

std::vector<NudgeBoard::Phone> NudgeBoard::phonesWhere(const std::function<bool(const Phone&)>& test) const {
  const std::lock_guard lock(m_mutex);
  return where(m_phones, test);
}

std::vector<NudgeBoard::Desk> NudgeBoard::desksWhere(const std::function<bool(const Desk&)>& test) const {
  const std::lock_guard lock(m_mutex);
  return where(m_desks, test);
}

void NudgeBoard::nudgePerson(const std::string& person_id) {
  v1::Nudge nudge;
  nudge.set_fetch(true);
  for (const auto& phone :
       phonesWhere([&](const Phone& p) { return person_id.empty() || p.person_id == person_id; })) {
    phone.stream->push(nudge);
  }
}

void NudgeBoard::pushHold(const std::string& person_id, const v1::SignedHoldOrder& order) {
  v1::Nudge nudge;
  *nudge.mutable_hold_order() = order;
  for (const auto& phone : phonesWhere([&](const Phone& p) { return p.person_id == person_id; })) {
    phone.stream->push(nudge);
  }
}

void NudgeBoard::nudgeDesks(const std::string& person_id) {
  v1::DeskNudge nudge;
  nudge.set_person_id(person_id.empty() ? kEverybody : person_id);
  for (const auto& desk : desksWhere([](const Desk&) { return true; })) {
    if (person_id.empty() || desk.may_hear(person_id)) desk.stream->push(nudge);
  }
}

void NudgeBoard::closeDevice(const std::string& device_id) {
  for (const auto& phone : phonesWhere([&](const Phone& p) { return p.device_id == device_id; })) {
    phone.stream->close(revoked());
  }
}

void NudgeBoard::closeSession(const std::string& session_sha256) {
  for (const auto& desk : desksWhere([&](const Desk& d) { return d.session_sha256 == session_sha256; })) {
    desk.stream->close(signedOut());
  }
}

void NudgeBoard::closeAll(const absl::Status& why) {
  {
    const std::lock_guard lock(m_mutex);
    m_closed = why;
  }
  for (const auto& phone : phonesWhere([](const Phone&) { return true; })) phone.stream->close(why);
  for (const auto& desk : desksWhere([](const Desk&) { return true; })) desk.stream->close(why);
}

void NudgeBoard::stillHere(const std::function<bool(const std::string&)>& device_is_good,
                           const std::function<bool(const std::string&)>& session_is_good) {
  v1::Nudge nudge;
  nudge.set_still_here(true);
  for (const auto& phone : phonesWhere([](const Phone&) { return true; })) {
    if (device_is_good(phone.device_id)) {
      phone.stream->push(nudge);
    } else {
      phone.stream->close(revoked());
    }
  }
  for (const auto& desk : desksWhere([](const Desk&) { return true; })) {
    if (session_is_good(desk.session_sha256)) {
      desk.stream->push(v1::DeskNudge());
    } else {
      desk.stream->close(signedOut());
    }
  }
}

std::size_t NudgeBoard::openStreams() const {
  const std::lock_guard lock(m_mutex);
  return m_phones.size() + m_desks.size();
}

}  // namespace newel
