// A clinic without a hub: pairs a phone with an invented person and hands it what a test puts on the counter,
// all in this process. Records go through the phone's real checks, signatures included.
#pragma once

#include <map>
#include <mutex>
#include <string>
#include <vector>

#include "core/records/programme.pb.h"
#include "sync/common/real_random.h"
#include "sync/common/signing.h"
#include "sync/home/home_engine.h"

namespace newel::tests {

// An invented person: left transfemoral, two sturdy chairs, rails on both sides.
// What the invented person speaks; a test may set it before it begins.
std::string& inventedLanguage();
v1::Person inventedPerson();
// Programme `number` of that person: `exercises` with small doses, every day of 2026-11.
// A plan of two steps, from 1 November 2026: twice an hour with an hour between, for two good days; then all
// day. Red skin may stay for ten minutes.
v1::WearPlan inventedWearPlan();
// A Timed Up and Go of that person, on `day` of November 2026.
v1::Measure inventedMeasure(int day, double seconds);
v1::Programme inventedProgramme(std::uint32_t number, const std::vector<std::string>& exercises);

class PaperClinic : public HubNetwork {
 public:
  PaperClinic();

  absl::StatusOr<PairedHub> pair(const PairingTicket& ticket, const v1::PairRequest& request) override;
  std::unique_ptr<HubLink> connect(const HubAddress& hub) override;
  absl::StatusOr<HubAddress> findAgain(const HubAddress& hub) override { return hub; }

  void put(const v1::Programme& programme);
  void putMedia(const std::string& content);  // a photo or clip, as it is
  void put(const v1::HoldOrder& order);
  void put(const v1::Message& message);
  void put(const v1::Measure& measure);
  void putSetting(const std::string& id, std::uint32_t value);  // with the clinic's card
  v1::HoldOrder holdOrder(const std::string& reason, const std::vector<std::string>& entry_ids = {});
  v1::Message message(const std::string& text, bool urgent);

  // What has arrived from the phone.
  std::vector<v1::Practice> practices() const;
  std::vector<v1::Receipt> receipts() const;
  std::vector<v1::Message> messages() const;
  std::vector<v1::WearBlock> wearBlocks() const;  // as they came, each revision

  void setReachable(bool reachable);
  void revoke();  // this phone; pairing it again gives access again
  static constexpr char kCode[] = "ABCD2345";

 private:
  friend class PaperLink;
  void put(v1::RecordKind kind, const std::string& id, std::uint32_t revision, const std::string& content);
  std::string newId();

  mutable std::mutex m_mutex;
  RealRandom m_random;
  ClinicKey m_key;
  std::vector<v1::Envelope> m_counter;
  std::vector<v1::Envelope> m_arrived;
  std::map<std::string, std::string> m_media;  // by hash
  std::uint64_t m_number = 0;
  bool m_reachable = true;
  bool m_revoked = false;
};

}  // namespace newel::tests
