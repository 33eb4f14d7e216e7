#include "sync/hub/hub.h"

#include <utility>

#include "sync/common/text_codes.h"

namespace newel {

absl::StatusOr<std::unique_ptr<Hub>> Hub::open(HubStore* store, const Clock* clock, Random* random) {
  auto clinic = loadClinic(*store, *clock, *random);
  if (!clinic.ok()) return clinic.status();
  std::unique_ptr<Hub> hub(new Hub(store, clock, random, *std::move(clinic)));
  const absl::Status watching = store->watch([raw = hub.get()](const StoreNews& news) { raw->hear(news); });
  if (!watching.ok()) return watching;
  return hub;
}

Hub::~Hub() { m_context.store->watch(nullptr).IgnoreError(); }

Hub::Hub(HubStore* store, const Clock* clock, Random* random, Clinic clinic)
    : m_clinic(std::move(clinic)), m_audit(clock) {
  m_context = {
      store, clock, random, &m_board, &m_audit, &m_clinic, &Catalogue::builtIn(), &RuleBook::builtIn()};
  m_accounts = std::make_unique<Accounts>(&m_context);
  m_account_book = std::make_unique<AccountBook>(&m_context);
  m_audit_view = std::make_unique<AuditView>(&m_context);
  m_pairings = std::make_unique<Pairings>(&m_context);
  m_phones = std::make_unique<HomeCalls>(&m_context, m_pairings.get());
  m_access = std::make_unique<PersonAccess>(&m_context);
  m_files = std::make_unique<PersonFiles>(&m_context);
  m_measures = std::make_unique<PersonMeasures>(&m_context);
  m_remarks = std::make_unique<PersonRemarks>(&m_context);
  m_prescriptions = std::make_unique<Prescriptions>(&m_context);
  m_digests = std::make_unique<DigestKeeper>(&m_context);
  m_snoozes = std::make_unique<Snoozes>(&m_context);
  m_library = std::make_unique<ClinicLibrary>(&m_context);
  m_media = std::make_unique<MediaShelf>(&m_context);
}

// What the calls of this process do after their own commits, for the commits of others.
void Hub::hear(const StoreNews& news) {
  using Kind = StoreNews::Kind;
  if (news.kind == Kind::Hold) m_phones->passOnHold(news.id);
  if (news.kind == Kind::Feed) m_board.nudgePerson(news.id);
  if (news.kind == Kind::Feed || news.kind == Kind::Desks) m_board.nudgeDesks(news.id);
  if (news.kind == Kind::Device) m_board.closeDevice(news.id);
  if (news.kind == Kind::Session) {
    const auto session = fromHex(news.id);
    if (session.ok()) m_board.closeSession(*session);
  }
  if (news.kind == Kind::Everything) {
    stillHere();
    m_board.nudgePerson("");
    m_board.nudgeDesks("");
  }
}

void Hub::stillHere() {
  m_board.stillHere([this](const std::string& device_id) { return m_phones->deviceIsGood(device_id); },
                    [this](const std::string& session) { return m_accounts->sessionIsGood(session); });
}

}  // namespace newel
