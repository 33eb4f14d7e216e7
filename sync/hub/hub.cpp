#include "sync/hub/hub.h"

#include <utility>

namespace newel {

absl::StatusOr<std::unique_ptr<Hub>> Hub::open(HubStore* store, const Clock* clock, Random* random) {
  auto clinic = loadClinic(*store, *clock, *random);
  if (!clinic.ok()) return clinic.status();
  return std::unique_ptr<Hub>(new Hub(store, clock, random, *std::move(clinic)));
}

Hub::Hub(HubStore* store, const Clock* clock, Random* random, Clinic clinic)
    : m_clinic(std::move(clinic)), m_audit(clock) {
  m_context = {
      store, clock, random, &m_board, &m_audit, &m_clinic, &Catalogue::builtIn(), &RuleBook::builtIn()};
  m_accounts = std::make_unique<Accounts>(&m_context);
  m_pairings = std::make_unique<Pairings>(&m_context);
  m_phones = std::make_unique<HomeCalls>(&m_context, m_pairings.get());
  m_access = std::make_unique<PersonAccess>(&m_context);
  m_files = std::make_unique<PersonFiles>(&m_context);
  m_prescriptions = std::make_unique<Prescriptions>(&m_context);
  m_library = std::make_unique<ClinicLibrary>(&m_context);
}

void Hub::stillHere() {
  m_board.stillHere([this](const std::string& device_id) { return m_phones->deviceIsGood(device_id); },
                    [this](const std::string& session) { return m_accounts->sessionIsGood(session); });
}

}  // namespace newel
