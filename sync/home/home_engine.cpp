#include "sync/home/home_engine.h"

#include <algorithm>
#include <filesystem>
#include <mutex>
#include <utility>

#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/schedule/reminder_book.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "sync/common/record_id.h"
#include "sync/home/device_store.h"
#include "sync/home/export.h"
#include "sync/home/grpc_hub_link.h"
#include "sync/home/inbox.h"
#include "sync/home/journal.h"
#include "sync/home/media_fetch.h"
#include "sync/home/media_store.h"
#include "sync/home/outbox.h"
#include "sync/home/pairing.h"
#include "sync/home/sync_loop.h"
#include "sync/home/wear_log.h"

namespace newel {

class HomeEngine::Impl {
 public:
  Impl(Options options, std::unique_ptr<DeviceStore> store)
      : m_options(std::move(options)),
        m_store(std::move(store)),
        m_media(m_options.folder, m_options.sqlite_vfs, m_options.store_key, *m_options.random),
        m_media_fetch({m_store.get(), &m_media, m_options.media_part_bytes, [this] { return freeBytes(); }}) {
    if (m_options.network == nullptr) {
      m_own_network = makeGrpcHubNetwork();
      m_options.network = m_own_network.get();
    }
    SyncLoop::Parts parts;
    parts.store = m_store.get();
    parts.network = m_options.network;
    parts.clock = m_options.clock;
    parts.random = m_options.random;
    parts.app_version = m_options.app_version;
    parts.media = &m_media_fetch;
    parts.new_id = [this] { return newId(); };
    parts.news = [this](const InboxNews& news) { tell(news); };
    parts.changed = [this] { toListener([](Listener& listener) { listener.stateChanged(); }); };
    m_loop = std::make_unique<SyncLoop>(std::move(parts));
  }

  // A newer program may understand what the last one had to refuse: look at everything again.
  absl::Status noteVersion() {
    return m_store->write([&](Database& database) {
      const DeviceSettings settings = loadSettings(database);
      if (settings.app_version == m_options.app_version) return absl::OkStatus();
      saveSetting(database, "app_version", m_options.app_version);
      if (settings.paired) saveSetting(database, "cursor", "0");
      return absl::OkStatus();
    });
  }

  // Of the disk that the store lies on; one of its own file layer is nobody's to ask.
  std::optional<std::uint64_t> freeBytes() const {
    if (!m_options.sqlite_vfs.empty()) return std::nullopt;
    std::error_code error;
    const auto space = std::filesystem::space(m_options.folder, error);
    if (error) return std::nullopt;
    return space.available;
  }

  // Photos and clips first: a crash between the two leaves a phone that fetches them again.
  absl::Status wipe() {
    absl::Status gone = m_media.wipe();
    return gone.ok() ? m_store->wipe() : gone;
  }

  std::string newId() { return newRecordId(*m_options.clock, *m_options.random); }

  DeviceSettings settings() const {
    auto settings = m_store->settings();
    return settings.ok() ? *std::move(settings) : DeviceSettings();
  }

  std::optional<v1::Person> person() const {
    v1::Person person;
    const DeviceSettings all = settings();
    if (!all.paired || !person.ParseFromString(all.person)) return std::nullopt;
    return person;
  }

  // What a read of the store gives, or nothing when it cannot be read just now.
  template <typename Body>
  auto readOr(Body&& body) const -> std::invoke_result_t<Body, Database&> {
    using Value = std::invoke_result_t<Body, Database&>;
    auto value = m_store->read([&](Database& database) -> absl::StatusOr<Value> { return body(database); });
    return value.ok() ? *std::move(value) : Value();
  }

  // A change of our own: on the disk, then on its way.
  template <typename Body>
  absl::Status change(Body&& body, bool send) {
    absl::Status status = m_store->write(std::forward<Body>(body));
    m_loop->noteLocal(status);
    if (status.ok() && send) m_loop->wake();
    return status;
  }

  absl::Status closePractice(const v1::Practice& practice) {
    const auto who = person();
    if (!who.has_value()) return absl::FailedPreconditionError("this phone belongs to nobody yet");
    if (practice.person_id() != who->id()) return absl::InvalidArgumentError("person_id: another person");
    return change([&](Database& database) { return keepPractice(database, practice); }, true);
  }

  void tell(const InboxNews& news) {
    toListener([&news](Listener& listener) {
      // First what must stop somebody.
      for (const auto& order : news.hold_orders) listener.holdOrderArrived(order);
      if (news.programme) listener.programmeChanged();
      for (const auto& message : news.messages) listener.messageArrived(message);
      if (news.person || news.receipts || news.wear) listener.stateChanged();
    });
  }

  // The listener's owner may end it as soon as this has returned.
  void setListener(Listener* listener) {
    const std::lock_guard lock(m_listening);
    m_listener = listener;
  }

  template <typename Say>
  void toListener(const Say& say) {
    const std::lock_guard lock(m_listening);
    if (m_listener != nullptr) say(*m_listener);
  }

  Options m_options;
  std::unique_ptr<HubNetwork> m_own_network;
  std::recursive_mutex m_listening;  // who is told may ask the engine for more
  Listener* m_listener = nullptr;
  std::unique_ptr<DeviceStore> m_store;
  MediaStore m_media;
  MediaFetch m_media_fetch;
  std::unique_ptr<SyncLoop> m_loop;  // last: its threads use all of the above
};

HomeEngine::HomeEngine(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
HomeEngine::~HomeEngine() = default;

absl::StatusOr<std::unique_ptr<HomeEngine>> HomeEngine::open(Options options) {
  auto store = DeviceStore::open(options.folder, options.sqlite_vfs, options.store_key, *options.random);
  if (!store.ok()) return store.status();
  auto impl = std::make_unique<Impl>(std::move(options), *std::move(store));
  const absl::Status noted = impl->noteVersion();
  if (!noted.ok() && !absl::IsResourceExhausted(noted)) return noted;
  return std::unique_ptr<HomeEngine>(new HomeEngine(std::move(impl)));
}

void HomeEngine::setListener(Listener* listener) { m_impl->setListener(listener); }
void HomeEngine::start() { m_impl->m_loop->start(); }
void HomeEngine::syncSoon() { m_impl->m_loop->wake(); }
absl::Status HomeEngine::syncOnce() { return m_impl->m_loop->syncOnce(); }
absl::Duration HomeEngine::untilTurn() const { return m_impl->m_loop->untilTurn(); }
void HomeEngine::showsTextAt(int percent) {
  m_impl->m_loop->showsTextAt(static_cast<std::uint32_t>(std::clamp(percent, 100, 200)));
}
void HomeEngine::takeTurn() { m_impl->m_loop->takeTurn(); }
std::string HomeEngine::newId() { return m_impl->newId(); }

absl::Status HomeEngine::pair(const PairingTicket& ticket) {
  const DeviceSettings before = m_impl->settings();
  const bool in_force = before.paired && !before.revoked;
  if (in_force && !m_impl->m_loop->contact().another_certificate) {
    return absl::FailedPreconditionError("this phone is paired already; wipe it first");
  }
  v1::PairRequest request;
  request.set_code(ticket.code);
  request.set_device_name(m_impl->m_options.device_name);
  request.set_app_version(m_impl->m_options.app_version);
  *request.mutable_device_time() = toTimestamp(m_impl->m_options.clock->wall());
  const auto paired = m_impl->m_options.network->pair(ticket, request);
  if (!paired.ok()) {
    return absl::IsDeadlineExceeded(paired.status())
               ? absl::UnavailableError("the clinic did not answer in time")
               : paired.status();
  }
  absl::Status good = checkPairReply(paired->reply);
  if (!good.ok()) return good;
  const auto who = m_impl->person();
  if (in_force && (!who.has_value() || who->id() != paired->reply.person().id())) {
    return absl::FailedPreconditionError("this phone belongs to another person; wipe it first");
  }
  const bool another = before.paired && (!who.has_value() || who->id() != paired->reply.person().id());
  return m_impl->m_loop->betweenRounds([&]() -> absl::Status {
    // Rows that are deleted still lie in the log until it is cut, so the former person's store is wiped as a
    // whole first. A crash after that finds a phone that belongs to nobody, and a new code is needed.
    if (another) {
      absl::Status gone = m_impl->wipe();
      if (!gone.ok()) return gone;
    }
    return m_impl->change(
        [&](Database& database) {
          keepPairing(database, *paired, m_impl->m_options.app_version, m_impl->m_options.clock->wall());
          return absl::OkStatus();
        },
        true);
  });
}

absl::Status HomeEngine::changeStoreKey(const std::string& key) {
  return m_impl->m_loop->betweenRounds([&] {
    absl::Status done = m_impl->m_store->reseal(key, m_impl->m_options.clock->wall());
    // What of the photos cannot be sealed anew is fetched again.
    if (done.ok()) m_impl->m_media.reseal(key).IgnoreError();
    return done;
  });
}

std::optional<absl::Time> HomeEngine::storeKeySince() const { return m_impl->settings().key_since; }

absl::Status HomeEngine::wipe() {
  return m_impl->m_loop->betweenRounds([&] { return m_impl->wipe(); });
}

HomeState HomeEngine::state() const {
  HomeState state;
  const DeviceSettings settings = m_impl->settings();
  const SyncLoop::Contact contact = m_impl->m_loop->contact();
  state.paired = settings.paired;
  state.revoked = settings.revoked;
  state.queued = m_impl->readOr([](Database& database) { return queuedCount(database); });
  state.set_aside = m_impl->readOr([](Database& database) { return setAsideCount(database); });
  state.last_contact = settings.last_contact;
  state.last_hub_time = settings.last_hub_time;
  state.contact_now = contact.now;
  state.last_problem = contact.problem;
  if (settings.revoked && contact.problem != "sync.disk-full") state.last_problem = "sync.revoked";
  return state;
}

std::optional<v1::Person> HomeEngine::person() const { return m_impl->person(); }
std::string HomeEngine::greetingName() const { return m_impl->settings().greeting_name; }

std::string HomeEngine::hubFingerprint() const {
  const DeviceSettings settings = m_impl->settings();
  return settings.paired ? shortFingerprint(settings.hub.certificate_sha256) : "";
}

std::optional<v1::ClinicCard> HomeEngine::clinic() const {
  v1::ClinicCard card;
  const DeviceSettings settings = m_impl->settings();
  if (!settings.paired || !card.ParseFromString(settings.clinic)) return std::nullopt;
  return card;
}

std::optional<v1::Programme> HomeEngine::programme() const {
  auto all = programmes();
  if (all.empty()) return std::nullopt;
  return std::move(all.back());
}

std::vector<v1::Programme> HomeEngine::programmes() const {
  return m_impl->readOr([](Database& database) { return keptProgrammes(database); });
}

std::optional<std::string> HomeEngine::media(const v1::MediaRef& ref) const {
  auto content = m_impl->m_media.content(ref);
  if (!content.ok()) return std::nullopt;
  return *std::move(content);
}

bool HomeEngine::hasMedia(const v1::MediaRef& ref) const {
  const auto progress = m_impl->m_media.progress(ref.sha256());
  return progress.ok() && progress->whole;
}

std::vector<v1::HoldOrder> HomeEngine::activeHolds() const { return activeAmong(holdOrders()); }

std::vector<v1::HoldOrder> HomeEngine::holdOrders() const {
  auto orders = m_impl->readOr([](Database& database) { return keptHoldOrders(database); });
  for (auto& unwritten : m_impl->m_loop->unwrittenHolds()) {
    bool known = false;
    for (const auto& order : orders) known = known || order.id() == unwritten.id();
    if (!known) orders.push_back(std::move(unwritten));
  }
  return orders;
}

std::vector<v1::Message> HomeEngine::messages() const {
  return m_impl->readOr([](Database& database) { return keptMessages(database); });
}

std::vector<std::string> HomeEngine::unseenUrgentMessageIds() const {
  return m_impl->readOr([](Database& database) {
    std::vector<std::string> ids;
    for (const auto& message : keptMessages(database)) {
      if (message.sender() == v1::SENDER_CLINIC && message.urgent() &&
          !hasReceipt(database, v1::RECEIPT_OF_MESSAGE, message.id(), v1::RECEIPT_STATE_SEEN)) {
        ids.push_back(message.id());
      }
    }
    return ids;
  });
}

std::vector<v1::Practice> HomeEngine::practices() const {
  return m_impl->readOr([](Database& database) { return keptPractices(database); });
}

std::vector<v1::Practice> HomeEngine::practicesSince(absl::Time since) const {
  return m_impl->readOr([since](Database& database) { return keptPracticesSince(database, since); });
}

std::optional<absl::Time> HomeEngine::firstPracticeAt() const {
  return m_impl->readOr([](Database& database) { return firstKeptAt(database); });
}

Delivery HomeEngine::deliveryOf(const std::string& record_id) const {
  return m_impl->readOr([&](Database& database) { return newel::deliveryOf(database, record_id); });
}

absl::Status HomeEngine::appendJournal(absl::Span<const v1::JournalLine> lines) {
  return m_impl->change(
      [&](Database& database) {
        for (const v1::JournalLine& line : lines) {
          if (absl::Status kept = appendLine(database, line); !kept.ok()) return kept;
        }
        return absl::OkStatus();
      },
      false);
}

std::optional<UnfinishedPractice> HomeEngine::unfinished() const {
  auto journal = m_impl->readOr([](Database& database) { return unfinishedJournal(database); });
  if (!journal.has_value()) return std::nullopt;
  return UnfinishedPractice{journal->practice_id, std::move(journal->lines)};
}

absl::Status HomeEngine::closePractice(const v1::Practice& practice) {
  return m_impl->closePractice(practice);
}

absl::Status HomeEngine::addToldLater(const v1::Practice& practice) {
  if (practice.origin() != v1::ORIGIN_TOLD_LATER) {
    return absl::InvalidArgumentError("origin: only what was told later comes this way");
  }
  return m_impl->closePractice(practice);
}

absl::Status HomeEngine::markSeen(v1::ReceiptOf of, const std::string& ref_id, std::uint64_t ref_number) {
  const auto who = m_impl->person();
  if (!who.has_value()) return absl::FailedPreconditionError("this phone belongs to nobody yet");
  const v1::Receipt receipt = makeReceipt(newId(), who->id(), of, ref_id, ref_number, v1::RECEIPT_STATE_SEEN,
                                          m_impl->m_options.clock->wall());
  absl::Status good = check(receipt);
  if (!good.ok()) return good;
  return m_impl->change(
      [&](Database& database) -> absl::Status {
        if (!hasReceipt(database, of, ref_id, v1::RECEIPT_STATE_ARRIVED)) {
          return absl::NotFoundError("ref_id: nothing of that kind has arrived here");
        }
        addReceipt(database, receipt);
        return absl::OkStatus();
      },
      true);
}

absl::Status HomeEngine::writeMessage(const std::string& text) {
  const auto who = m_impl->person();
  if (!who.has_value()) return absl::FailedPreconditionError("this phone belongs to nobody yet");
  v1::Message message;
  message.set_id(newId());
  message.set_person_id(who->id());
  message.set_sender(v1::SENDER_PERSON);
  *message.mutable_written_at() = toTimestamp(m_impl->m_options.clock->wall());
  message.set_text(text);
  absl::Status good = check(message);
  if (!good.ok()) return good;
  return m_impl->change(
      [&](Database& database) {
        const std::string bytes = toBytes(message);
        database.run("INSERT INTO message (id, content) VALUES (?1, seal(?2, 'message', ?1))", message.id(),
                     Blob{bytes});
        queueRecord(database, makeEnvelope(v1::RECORD_KIND_MESSAGE, message.id(), 1, bytes));
        return absl::OkStatus();
      },
      true);
}

std::vector<v1::WearBlock> HomeEngine::wearBlocks() const {
  return m_impl->readOr([](Database& database) { return keptWearBlocks(database); });
}

std::vector<v1::Measure> HomeEngine::measures() const {
  return m_impl->readOr([](Database& database) { return keptMeasures(database); });
}

absl::Status HomeEngine::keepWearBlock(const v1::WearBlock& block) {
  const auto who = m_impl->person();
  if (!who.has_value()) return absl::FailedPreconditionError("this phone belongs to nobody yet");
  if (block.person_id() != who->id()) return absl::InvalidArgumentError("person_id: another person");
  return m_impl->change([&](Database& database) { return newel::keepWearBlock(database, block); }, true);
}

v1::ReminderBook HomeEngine::reminderBook() const {
  v1::ReminderBook book;
  const std::string bytes =
      m_impl->readOr([](Database& database) { return loadSetting(database, kRemindersSetting); });
  // What cannot be read is forgotten: reminders are then asked for anew.
  if (!bytes.empty() && book.ParseFromString(bytes) && check(book).ok()) return book;
  book.Clear();
  *book.mutable_settings() = usualReminderSettings();
  return book;
}

absl::Status HomeEngine::keepReminderBook(const v1::ReminderBook& book) {
  absl::Status good = check(book);
  if (!good.ok()) return good;
  return m_impl->change(
      [&](Database& database) {
        saveSetting(database, kRemindersSetting, toBytes(book));
        return absl::OkStatus();
      },
      false);
}

std::string HomeEngine::exportAll() const {
  return m_impl->readOr([](Database& database) { return exportStore(database); });
}

}  // namespace newel
