#include "tests/fuzz/fuzz_hub.h"

#include <utility>

#include "sync/common/text_codes.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/fuzz/target.h"

namespace newel::fuzz {

namespace fs = std::filesystem;

FuzzFolder::FuzzFolder() {
  RealRandom random;
  m_path = fs::temp_directory_path() / ("newel-fuzz-" + toHex(randomBytes(random, 8)));
  fs::create_directories(m_path);
}

FuzzFolder::~FuzzFolder() {
  std::error_code error;
  fs::remove_all(m_path, error);
}

FuzzHub::FuzzHub() {
  auto store = openSqliteHubStore(m_folder.file("hub.db"));
  require(store.ok(), "a store");
  m_store = *std::move(store);
  v1::ClinicCard card;
  card.set_name("Fuzz clinic (invented)");
  card.set_phone("555 0101");
  card.set_emergency_number("112");
  require(initClinic(*m_store, card, {}, false, m_clock, m_random).ok(), "a clinic");
  auto hub = Hub::open(m_store.get(), &m_clock, &m_random);
  require(hub.ok(), "a hub");
  m_hub = *std::move(hub);
  m_desk.therapist.set_id(test::idOf(900));
  m_desk.therapist.set_user_name("f.lead");
  m_desk.therapist.set_display_name("Lead (invented)");
  m_desk.therapist.set_role(v1::ROLE_LEAD);
  const absl::Status staffed = m_store->write([&](HubTransaction& transaction) {
    transaction.addAccount({test::idOf(900), "f.lead", "Lead (invented)", v1::ROLE_LEAD, "$hash"});
    transaction.addAccount({test::idOf(50), "f.other", "Other (invented)", v1::ROLE_THERAPIST, "$hash"});
    return absl::OkStatus();
  });
  require(staffed.ok(), "accounts");
  v1::PutPersonRequest put;
  *put.mutable_person() = test::transfemoralLeft();
  put.mutable_identity()->set_person_id(put.person().id());
  put.mutable_identity()->set_given_name("Sample");
  require(m_hub->files().put(m_desk, put).ok(), "a person");
  m_phone = {test::idOf(901), put.person().id()};
}

}  // namespace newel::fuzz
