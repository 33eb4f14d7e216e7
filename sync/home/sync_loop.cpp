#include "sync/home/sync_loop.h"

#include <algorithm>
#include <chrono>
#include <utility>

#include "core/time/local_day.h"
#include "sync/common/broken_variant.h"
#include "sync/common/limits.h"
#include "sync/common/pinned_channel.h"
#include "sync/common/retry_rule.h"
#include "sync/common/signing.h"
#include "sync/home/hub_pins.h"
#include "sync/home/outbox.h"

namespace newel {
namespace {

// Ours, no source: the stream brings news at once, so a quiet turn only catches what a dead stream missed.
constexpr absl::Duration kQuietTurn = absl::Minutes(15);
constexpr absl::Duration kFirstRetry = absl::Seconds(1);
// A minute at most: a hold order may be waiting there.
constexpr absl::Duration kLongestRetry = absl::Minutes(1);
// A sleep ends at an instant of the clock that counts suspend, so it is looked at in pieces: after a suspend
// a turn is late by one at most.
constexpr std::chrono::seconds kPiece(60);
// A hub that always has "more" must not keep a round alive for ever.
constexpr int kMostPages = 10000;

std::string problemOf(const absl::Status& status) {
  if (isCertificateProblem(status)) return "sync.hub-refused";
  switch (status.code()) {
    case absl::StatusCode::kOk:
      return "";
    case absl::StatusCode::kUnavailable:
    case absl::StatusCode::kDeadlineExceeded:
    case absl::StatusCode::kCancelled:
      return "sync.no-network";
    case absl::StatusCode::kPermissionDenied:
    case absl::StatusCode::kUnauthenticated:
      return "sync.revoked";
    default:
      return "sync.hub-refused";
  }
}

// sync/common/certificate.h: certificates begin in 2000.
absl::Time firstCertificateDay() { return absl::FromUnixSeconds(946684800); }

bool endsAccess(const absl::Status& status) {
  return !isCertificateProblem(status) &&
         (absl::IsPermissionDenied(status) || absl::IsUnauthenticated(status));
}

// The store's own errors wear the same codes as the hub's; this keeps them apart.
constexpr char kLocalMark[] = "newel/local";

absl::Status local(absl::Status status) {
  if (!status.ok()) status.SetPayload(kLocalMark, absl::Cord("store"));
  return status;
}

bool isLocal(const absl::Status& status) { return status.GetPayload(kLocalMark).has_value(); }

}  // namespace

SyncLoop::SyncLoop(Parts parts) : m_parts(std::move(parts)) {}

SyncLoop::~SyncLoop() {
  {
    const std::lock_guard lock(m_mutex);
    m_stop = true;
    if (m_link) m_link->cancel();
  }
  m_condition.notify_all();
  if (m_thread.joinable()) m_thread.join();
  m_link.reset();
}

void SyncLoop::start() {
  m_thread = std::thread([this] { run(); });
}

void SyncLoop::wake() {
  {
    const std::lock_guard lock(m_mutex);
    m_next_turn = absl::ZeroDuration();
    m_woken = true;
  }
  m_condition.notify_all();
}

absl::Status SyncLoop::betweenRounds(const std::function<absl::Status()>& change) {
  {
    const std::lock_guard lock(m_mutex);
    if (m_link) m_link->cancel();
  }
  const std::lock_guard no_round(m_round);
  std::shared_ptr<HubLink> link;
  {
    const std::lock_guard lock(m_mutex);
    link = std::exchange(m_link, nullptr);
    m_listening = false;
    m_contact.problem.clear();
    m_contact.another_certificate = false;
  }
  link.reset();  // its stream's thread is over here, so nothing of the former pairing is written any more
  absl::Status changed = change();
  dropForeignHolds();
  return changed;
}

// Whoever it belongs to now stays held, also when the change failed or was for the same person; nothing of a
// former person is left.
void SyncLoop::dropForeignHolds() {
  const auto settings = m_parts.store->settings();
  v1::Person person;
  if (!settings.ok() || !person.ParseFromString(settings->person)) return;
  const std::lock_guard lock(m_mutex);
  std::erase_if(m_unwritten_holds,
                [&](const v1::HoldOrder& order) { return order.person_id() != person.id(); });
}

SyncLoop::Contact SyncLoop::contact() const {
  const std::lock_guard lock(m_mutex);
  return m_contact;
}

void SyncLoop::noteLocal(const absl::Status& status) {
  const std::lock_guard lock(m_mutex);
  if (absl::IsResourceExhausted(status)) m_contact.problem = "sync.disk-full";
  if (status.ok() && m_contact.problem == "sync.disk-full") m_contact.problem.clear();
}

// Never later than what was planned already: a wake during a failing round still counts.
void SyncLoop::turnWithin(absl::Duration wait) {
  const absl::Duration at = m_parts.clock->elapsed() + wait;
  const std::lock_guard lock(m_mutex);
  m_next_turn = std::min(m_next_turn, at);
}

void SyncLoop::run() {
  std::unique_lock lock(m_mutex);
  while (!m_stop) {
    const absl::Duration left = m_next_turn - m_parts.clock->elapsed();
    if (left > absl::ZeroDuration()) {
      const auto piece = std::min<std::chrono::nanoseconds>(absl::ToChronoNanoseconds(left), kPiece);
      m_condition.wait_for(lock, piece);
      continue;
    }
    lock.unlock();
    takeTurn();
    lock.lock();
  }
}

absl::Duration SyncLoop::untilTurn() const {
  const std::lock_guard lock(m_mutex);
  return m_next_turn - m_parts.clock->elapsed();
}

void SyncLoop::takeTurn() {
  {
    // Before the round, so that a wake during it leads to another.
    const std::lock_guard lock(m_mutex);
    m_next_turn = m_parts.clock->elapsed() + kQuietTurn;
  }
  // Its outcome shows in contact(); when to try again, finish() has decided.
  syncOnce().IgnoreError();
}

absl::Status SyncLoop::syncOnce() {
  const std::lock_guard one(m_round);
  {
    const std::lock_guard lock(m_mutex);
    m_contact.now = true;
    m_woken = false;
  }
  RoundState state;
  absl::Status status = round(state);
  const bool look = isCertificateProblem(status) && !isBroken(Broken::IgnoreBackupPin);
  if (look && follow()) status = round(state);
  finish(status, state);
  letGoAfter(status);
  return status;
}

// A connection that failed is not kept until the next try: left alone, gRPC goes on looking for the hub by
// itself, and the phone never sleeps.
void SyncLoop::letGoAfter(const absl::Status& status) {
  if (status.ok() || isLocal(status)) return;
  std::shared_ptr<HubLink> failed;  // goes after the lock: its listener's thread may be waiting for one
  const std::lock_guard lock(m_mutex);
  if (!m_listening) failed.swap(m_link);
}

absl::Status SyncLoop::round(RoundState& state) {
  const auto settings = m_parts.store->settings();
  if (!settings.ok()) return local(settings.status());
  if (!settings->paired || settings->revoked) return absl::OkStatus();
  if (!isPinned(settings->hub)) return certificateProblem(settings->hub.address);
  const std::shared_ptr<HubLink> link = linkFor(*settings);
  if (!link) return absl::CancelledError("stopping");
  tellChanged();
  absl::Status status = offerAll(*link, state);
  if (status.ok()) status = fetchAll(*link, state);
  // What has just arrived is told at once, not at the next turn.
  if (status.ok() && state.receipts) status = offerAll(*link, state);
  if (status.ok()) listenIfNeeded(*link);
  // Last, and never in the way: whatever else there is to say or hear comes before the next part.
  if (status.ok()) status = fetchMedia(*link);
  return status;
}

absl::Status SyncLoop::fetchMedia(HubLink& link) {
  const MediaFetch::Result result = m_parts.media->run(link, [this] {
    const std::lock_guard lock(m_mutex);
    return m_stop || m_woken;
  });
  if (result.arrived) tellChanged();
  // A full disk is to be told; whatever else is wrong with the photos here, they are fetched again.
  return absl::IsResourceExhausted(result.local) ? local(result.local) : result.hub;
}

std::shared_ptr<HubLink> SyncLoop::linkFor(const DeviceSettings& settings) {
  const std::lock_guard lock(m_mutex);
  if (m_stop) return nullptr;
  if (!m_link) m_link = m_parts.network->connect(settings.hub);
  return m_link;
}

// The clinic may show another of the certificates it told us of. True: it does, and the next round finds it.
bool SyncLoop::follow() {
  const auto settings = m_parts.store->settings();
  if (!settings.ok() || settings->hub.pins.empty()) return false;
  const auto found = m_parts.network->findAgain(settings->hub);
  if (!found.ok() || found->certificate_sha256 == settings->hub.certificate_sha256) return false;
  const absl::Status kept = m_parts.store->write([&](Database& database) {
    saveSetting(database, "certificate", found->certificate_pem);
    saveSetting(database, "fingerprint", found->certificate_sha256);
    return absl::OkStatus();
  });
  if (!kept.ok()) return false;
  std::shared_ptr<HubLink> former;
  {
    const std::lock_guard lock(m_mutex);
    former = std::exchange(m_link, nullptr);
    m_listening = false;
  }
  return true;  // `former` ends here, with no lock held: its listener's thread may be waiting for one
}

void SyncLoop::listenIfNeeded(HubLink& link) {
  {
    const std::lock_guard lock(m_mutex);
    if (m_listening || m_stop) return;
    m_listening = true;
  }
  v1::ListenRequest request;
  request.set_app_version(m_parts.app_version);
  request.set_text_percent(m_text_percent);
  link.listen(request, this);
}

absl::Status SyncLoop::offerAll(HubLink& link, RoundState& state) {
  std::uint64_t after = 0;
  for (int page_number = 0; page_number < kMostPages; ++page_number) {
    const auto page =
        m_parts.store->read([&](Database& database) -> absl::StatusOr<std::vector<v1::Envelope>> {
          return nextPage(database, after);
        });
    if (!page.ok()) return local(page.status());
    if (page->empty()) return absl::OkStatus();
    // A record to be sent again does not hold up those behind it.
    after = page->back().sequence();
    v1::OfferRequest request;
    request.set_app_version(m_parts.app_version);
    request.set_text_percent(m_text_percent);
    for (const auto& envelope : *page) *request.add_records() = envelope;
    const auto reply = link.offer(request);
    if (!reply.ok()) return reply.status();
    PageResult result;
    // 1. The hub has them on its disk. 2. They leave the outbox. A crash between the two sends them again,
    //    and the hub says that it knows them.
    const absl::Status applied = m_parts.store->write([&](Database& database) {
      result = applyOutcomes(database, *page, *reply);
      return absl::OkStatus();
    });
    if (!applied.ok()) return local(applied);
    state.later = state.later || result.later > 0;
    absl::Status noted = noteHub(reply->generation(), reply->hub_time(), state);
    if (!noted.ok()) return noted;
  }
  return absl::OkStatus();
}

absl::Status SyncLoop::fetchAll(HubLink& link, RoundState& state) {
  for (int page_number = 0; page_number < kMostPages; ++page_number) {
    const auto settings = m_parts.store->settings();
    if (!settings.ok()) return local(settings.status());
    v1::FetchRequest request;
    request.set_cursor(settings->cursor);
    request.set_generation(settings->generation);
    request.set_limit(kMostFetched);
    const auto reply = link.fetch(request);
    if (!reply.ok()) return reply.status();
    absl::Status noted = noteHub(reply->generation(), reply->hub_time(), state);
    if (!noted.ok()) return noted;
    absl::Status taken = takeFetched(*reply, state);
    if (!taken.ok()) return taken;
    const bool grew = reply->generation() != settings->generation || reply->cursor() > settings->cursor;
    if (reply->more() && !grew) return absl::InternalError("cursor: the hub has more but does not go on");
    if (!reply->more()) return absl::OkStatus();
  }
  return absl::OkStatus();
}

absl::Status SyncLoop::takeFetched(const v1::FetchReply& reply, RoundState& state) {
  InboxNews news;
  const absl::Time now = m_parts.clock->wall();
  if (isBroken(Broken::CursorBeforeRecords)) {
    const absl::Status moved = m_parts.store->write([&](Database& database) {
      saveSetting(database, "cursor", std::to_string(reply.cursor()));
      return absl::OkStatus();
    });
    if (!moved.ok()) return local(moved);
  }
  // Records and cursor in one transaction: a crash before it fetches them again, after it not.
  const absl::Status kept = m_parts.store->write([&](Database& database) {
    Inbox inbox(database, loadSettings(database), now, m_parts.new_id);
    for (const auto& envelope : reply.records()) inbox.take(envelope);
    saveSetting(database, "cursor", std::to_string(reply.cursor()));
    if (reply.has_pins()) takePins(database, reply.pins());
    news = inbox.news();
    return absl::OkStatus();
  });
  if (!kept.ok()) return local(kept);
  state.receipts = state.receipts || news.receipts;
  tell(news);
  return absl::OkStatus();
}

absl::Status SyncLoop::noteHub(const std::string& generation, const google::protobuf::Timestamp& hub_time,
                               RoundState& state) {
  const absl::Time now = m_parts.clock->wall();
  const absl::Time hub_now = toTime(hub_time);
  const absl::Duration apart = now > hub_now ? now - hub_now : hub_now - now;
  state.wrong_date = apart > kWrongDate;
  return local(m_parts.store->write([&](Database& database) {
    const DeviceSettings settings = loadSettings(database);
    saveSetting(database, "last_contact", std::to_string(absl::ToUnixMicros(now)));
    saveSetting(database, "last_hub_time", std::to_string(absl::ToUnixMicros(hub_now)));
    if (!generation.empty() && generation != settings.generation) {
      // The hub went back to a backup: what it had acknowledged since may be gone there, and only there.
      saveSetting(database, "generation", generation);
      saveSetting(database, "cursor", "0");
      if (!isBroken(Broken::OfferNothingAgain)) queueEverythingAgain(database);
      state.receipts = true;
    }
    return absl::OkStatus();
  }));
}

void SyncLoop::finish(const absl::Status& status, const RoundState& state) {
  std::string problem = isLocal(status) ? "sync.hub-refused" : problemOf(status);
  if (isLocal(status) && absl::IsResourceExhausted(status)) problem = "sync.disk-full";
  if (status.ok() && state.wrong_date) problem = "sync.wrong-date";
  // Before the certificate's first day nothing can be trusted, so the date is what has to be put right.
  if (isCertificateProblem(status) && m_parts.clock->wall() < firstCertificateDay())
    problem = "sync.wrong-date";
  if (!isLocal(status) && endsAccess(status)) endAccess();
  const bool again = !status.ok() || state.later;
  int failures = 0;
  {
    const std::lock_guard lock(m_mutex);
    m_contact.now = false;
    m_contact.problem = problem;
    m_contact.another_certificate = isCertificateProblem(status);
    m_failures = again ? m_failures + 1 : 0;
    failures = m_failures;
  }
  if (again) turnWithin(backOff(failures, kFirstRetry, kLongestRetry, *m_parts.random));
  tellChanged();
}

void SyncLoop::endAccess() {
  // Only a note: what is queued stays, readable and exportable, and goes when the phone is paired again.
  m_parts.store
      ->write([](Database& database) {
        saveSetting(database, "revoked", "1");
        if (isBroken(Broken::ForgetOutboxOnRevocation)) database.exec("DELETE FROM outbox");
        return absl::OkStatus();
      })
      .IgnoreError();
}

void SyncLoop::nudge(const v1::Nudge& nudge) {
  {
    const std::lock_guard lock(m_mutex);
    m_listen_failures = 0;
  }
  if (nudge.kind_case() == v1::Nudge::kFetch) wake();
  if (nudge.kind_case() != v1::Nudge::kHoldOrder) return;
  // Not left to the next round: a round may be waiting for a slow answer, and this must stop somebody now.
  InboxNews news;
  const absl::Time now = m_parts.clock->wall();
  const absl::Status kept = m_parts.store->write([&](Database& database) {
    Inbox inbox(database, loadSettings(database), now, m_parts.new_id);
    inbox.takeHoldOrder(nudge.hold_order());
    news = inbox.news();
    return absl::OkStatus();
  });
  noteLocal(kept);
  if (!kept.ok()) {
    news = isBroken(Broken::HoldWaitsForDisk) ? InboxNews() : unwritten(nudge.hold_order());
  }
  tell(news);
  wake();
}

// A disk that is full must not keep somebody on the stairs. Fetch brings the order again, to be kept then.
InboxNews SyncLoop::unwritten(const v1::SignedHoldOrder& signed_order) {
  InboxNews news;
  const auto settings = m_parts.store->settings();
  v1::Person person;
  if (!settings.ok() || !person.ParseFromString(settings->person)) return news;
  const auto order = openHoldOrder(signed_order, settings->clinic_key);
  if (!order.ok() || order->person_id() != person.id()) return news;
  news.hold_orders.push_back(*order);
  const std::lock_guard lock(m_mutex);
  m_unwritten_holds.push_back(*order);
  return news;
}

std::vector<v1::HoldOrder> SyncLoop::unwrittenHolds() const {
  const std::lock_guard lock(m_mutex);
  return m_unwritten_holds;
}

void SyncLoop::listenEnded(const absl::Status& why) {
  int failures = 0;
  {
    const std::lock_guard lock(m_mutex);
    m_listening = false;
    failures = ++m_listen_failures;
  }
  if (endsAccess(why)) {
    endAccess();
    const std::lock_guard lock(m_mutex);
    m_contact.problem = "sync.revoked";
  }
  turnWithin(backOff(failures, kFirstRetry, kLongestRetry, *m_parts.random));
  m_condition.notify_all();
  tellChanged();
}

void SyncLoop::tellChanged() {
  const std::lock_guard one(m_telling);
  m_parts.changed();
}

void SyncLoop::tell(const InboxNews& news) {
  const std::lock_guard one(m_telling);
  m_parts.news(news);
}

}  // namespace newel
