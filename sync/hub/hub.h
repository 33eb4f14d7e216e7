// The hub without a network around it: everything it does, over a store. HubServer puts gRPC in front; a
// simulation calls it directly.
#pragma once

#include <absl/status/statusor.h>

#include <memory>

#include "sync/hub/account_book.h"
#include "sync/hub/accounts.h"
#include "sync/hub/audit_view.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/digest_keeper.h"
#include "sync/hub/home_calls.h"
#include "sync/hub/hub_context.h"
#include "sync/hub/media_shelf.h"
#include "sync/hub/pairings.h"
#include "sync/hub/person_access.h"
#include "sync/hub/person_files.h"
#include "sync/hub/person_measures.h"
#include "sync/hub/person_remarks.h"
#include "sync/hub/prescriptions.h"
#include "sync/hub/snoozes.h"

namespace newel {

// Thread-safe.
class Hub {
 public:
  // All pointers outlive the hub. kNotFound: no clinic in the store yet. From here on the store tells this
  // hub what other processes commit; the last hub opened on a store is the one that hears it.
  static absl::StatusOr<std::unique_ptr<Hub>> open(HubStore* store, const Clock* clock, Random* random);

  ~Hub();
  Hub(const Hub&) = delete;
  Hub& operator=(const Hub&) = delete;

  const Clinic& clinic() const { return m_clinic; }
  NudgeBoard& board() { return m_board; }
  Accounts& accounts() { return *m_accounts; }
  AccountBook& accountBook() { return *m_account_book; }
  AuditView& auditView() { return *m_audit_view; }
  Pairings& pairings() { return *m_pairings; }
  HomeCalls& phones() { return *m_phones; }
  PersonAccess& access() { return *m_access; }
  PersonFiles& files() { return *m_files; }
  PersonMeasures& measures() { return *m_measures; }
  PersonRemarks& remarks() { return *m_remarks; }
  Prescriptions& prescriptions() { return *m_prescriptions; }
  DigestKeeper& digests() { return *m_digests; }
  Snoozes& snoozes() { return *m_snoozes; }
  ClinicLibrary& library() { return *m_library; }
  MediaShelf& media() { return *m_media; }
  AuditTrail& audit() { return m_audit; }
  const HubContext& context() const { return m_context; }
  HubStore& store() { return *m_context.store; }

  // To be called about every 30 s: tells open streams that the hub is there, and ends those that lost their
  // right to be open.
  void stillHere();

 private:
  Hub(HubStore* store, const Clock* clock, Random* random, Clinic clinic);
  void hear(const StoreNews& news);

  Clinic m_clinic;
  NudgeBoard m_board;
  AuditTrail m_audit;
  HubContext m_context;
  std::unique_ptr<Accounts> m_accounts;
  std::unique_ptr<AccountBook> m_account_book;
  std::unique_ptr<AuditView> m_audit_view;
  std::unique_ptr<Pairings> m_pairings;
  std::unique_ptr<HomeCalls> m_phones;
  std::unique_ptr<PersonAccess> m_access;
  std::unique_ptr<PersonFiles> m_files;
  std::unique_ptr<PersonMeasures> m_measures;
  std::unique_ptr<PersonRemarks> m_remarks;
  std::unique_ptr<Prescriptions> m_prescriptions;
  std::unique_ptr<DigestKeeper> m_digests;
  std::unique_ptr<Snoozes> m_snoozes;
  std::unique_ptr<ClinicLibrary> m_library;
  std::unique_ptr<MediaShelf> m_media;
};

}  // namespace newel
