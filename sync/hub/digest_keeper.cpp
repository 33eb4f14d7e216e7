#include "sync/hub/digest_keeper.h"

#include <algorithm>
#include <chrono>
#include <set>
#include <utility>
#include <vector>

#include "core/progress/attention_digest.h"
#include "core/progress/digest_weeks.h"
#include "core/progress/told_beside.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

// Of one round; between two, whoever waits for the store has it. Ours, no source.
constexpr int kRound = 20;
constexpr std::chrono::milliseconds kPause(1000);
constexpr std::chrono::milliseconds kLeastPause(20);
constexpr std::uint32_t kAllPractices = 1U << 30;
// Made anew while it is still good: a week for the desk that has it open, and days in any zone.
constexpr absl::civil_diff_t kDaysToSpare = 9;

absl::Status unreadable(const std::string& what) { return absl::DataLossError(what + ": not to be read"); }

template <typename Record, typename Row>
absl::StatusOr<std::vector<Record>> parsed(const std::vector<Row>& rows, const char* what) {
  std::vector<Record> records(rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if constexpr (requires { rows[i].content(); }) {
      if (!records[i].ParseFromString(rows[i].content())) return unreadable(what);
    } else {
      if (!records[i].ParseFromString(rows[i].content)) return unreadable(what);
    }
  }
  return records;
}

struct Loaded {
  v1::Person person;
  std::vector<v1::Programme> programmes;
  std::vector<v1::HoldOrder> holds;
  std::vector<v1::Message> messages;
  std::vector<v1::Receipt> receipts;
  std::vector<v1::Practice> practices;
  std::set<std::string> unread_ids;
  std::vector<v1::WearBlock> wear_blocks;
  std::vector<v1::Measure> measures;
};

template <typename Record, typename Row>
absl::Status take(const std::vector<Row>& rows, const char* what, std::vector<Record>& to) {
  auto records = parsed<Record>(rows, what);
  if (!records.ok()) return records.status();
  to = *std::move(records);
  return absl::OkStatus();
}

absl::StatusOr<Loaded> load(HubTransaction& transaction, const std::string& person_id) {
  Loaded loaded;
  const auto person = transaction.person(person_id);
  if (!person.has_value()) return absl::NotFoundError("person_id: nobody has it");
  if (!loaded.person.ParseFromString(person->content)) return unreadable("person");
  absl::Status taken = take(transaction.programmes(person_id), "programme", loaded.programmes);
  if (taken.ok()) taken = take(transaction.holdOrders(person_id), "hold order", loaded.holds);
  const auto messages = transaction.messages(person_id);
  if (taken.ok()) taken = take(messages, "message", loaded.messages);
  if (taken.ok()) taken = take(transaction.receipts(person_id), "receipt", loaded.receipts);
  const auto practices = transaction.practicesAfter(person_id, 0, kAllPractices);
  if (taken.ok()) taken = take(practices, "practice", loaded.practices);
  const auto blocks = transaction.recordsAfter(person_id, v1::RECORD_KIND_WEAR_BLOCK, 0, kAllPractices);
  if (taken.ok()) taken = take(blocks, "wear block", loaded.wear_blocks);
  const auto measures = transaction.recordsAfter(person_id, v1::RECORD_KIND_MEASURE, 0, kAllPractices);
  if (taken.ok()) taken = take(measures, "measure", loaded.measures);
  if (!taken.ok()) return taken;
  for (const auto& row : messages) {
    if (row.unread) loaded.unread_ids.insert(row.id);
  }
  return loaded;
}

// What older desks read, too.
void addFacts(const CaseFacts& facts, v1::CaseRow& row) {
  row.set_programme_number(facts.programme_number);
  row.set_programme_end_day(facts.programme_end_day);
  if (facts.last_practice.has_value()) *row.mutable_last_practice() = toTimestamp(*facts.last_practice);
  row.set_unread_messages(facts.unread_messages);
  row.set_hold_active(facts.hold_active);
  row.set_hold_arrived(facts.hold_arrived);
  row.set_red_flag_open(facts.red_flag_open);
  row.set_programme_arrived(facts.programme_arrived);
  row.set_programme_seen(facts.programme_seen);
}

absl::CivilDay dayOf(absl::Time now) { return absl::ToCivilDay(now, absl::UTCTimeZone()); }

}  // namespace

absl::StatusOr<DigestRow> digestRowOf(HubTransaction& transaction, const RuleBook& rules,
                                      const std::string& person_id, absl::Time now) {
  DigestRow row{person_id, {kDigestVersion, dayNumber(dayOf(now) + kDaysToSpare)}, ""};
  v1::CaseRow content;
  const auto loaded = load(transaction, person_id);
  // One record that cannot be read holds up nobody else's.
  if (absl::IsDataLoss(loaded.status())) return row;
  if (!loaded.ok()) return loaded.status();
  addFacts(transaction.caseFacts(person_id), content);
  WholeRecord whole{loaded->person.zone(), loaded->programmes, loaded->holds,     loaded->messages,
                    loaded->receipts,      loaded->practices,  loaded->unread_ids};
  whole.skin_told_elsewhere = skinSignsWhenWorn(loaded->programmes, loaded->wear_blocks);
  if (!loaded->programmes.empty())
    whole.measures_wanted = measuresWanted(loaded->programmes.back(), loaded->measures);
  auto digest = digestOf(whole, rules, now);
  if (digest.ok()) {
    row.age.last_day = digest->last_day();
    content.set_digest(digest->SerializeAsString());
  }
  row.content = content.SerializeAsString();
  return row;
}

bool lasts(const DigestAge& age, absl::Time now) {
  return age.version == kDigestVersion && dayOfNumber(age.last_day) > dayOf(now);
}

absl::StatusOr<int> DigestKeeper::refresh(int most) {
  const absl::Time now = m_hub->clock->wall();
  markOld(now);
  std::vector<DueDigest> due;
  std::vector<DigestRow> made;
  absl::Status done = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    due = transaction.dueDigests(static_cast<std::uint32_t>(most));
    made.clear();
    for (const auto& one : due) {
      auto row = digestRowOf(transaction, *m_hub->rules, one.person_id, now);
      if (!row.ok()) return row.status();
      made.push_back(*std::move(row));
    }
    return absl::OkStatus();
  });
  if (!done.ok()) return done;
  if (due.empty()) return 0;
  done = m_hub->store->write([&](HubTransaction& transaction) {
    for (std::size_t i = 0; i < due.size(); ++i) transaction.putDigest(made[i], due[i].mark);
    return absl::OkStatus();
  });
  if (!done.ok()) return done;
  return static_cast<int>(due.size());
}

void DigestKeeper::markOld(absl::Time now) {
  const absl::CivilDay today = dayOf(now);
  {
    const std::lock_guard lock(m_mutex);
    if (m_marked == today) return;
  }
  const absl::Status marked = m_hub->store->write([&](HubTransaction& transaction) {
    transaction.markOldDigests(kDigestVersion, dayNumber(today + kDaysToSpare));
    return absl::OkStatus();
  });
  const std::lock_guard lock(m_mutex);
  if (marked.ok()) m_marked = today;
}

DigestRounds::DigestRounds(DigestKeeper* keeper, const Clock* clock)
    : m_keeper(keeper), m_clock(clock), m_thread([this] { run(); }) {}

DigestRounds::~DigestRounds() {
  {
    const std::lock_guard lock(m_mutex);
    m_stop = true;
  }
  m_condition.notify_all();
  m_thread.join();
}

void DigestRounds::run() {
  auto pause = kPause;
  std::unique_lock lock(m_mutex);
  while (!m_condition.wait_for(lock, pause, [this] { return m_stop; })) {
    lock.unlock();
    const absl::Duration begun = m_clock->elapsed();
    const auto made = m_keeper->refresh(kRound);
    const bool more = made.ok() && *made == kRound;
    // As long as the work took, so that half of the time is everybody else's.
    const auto took = absl::ToChronoMilliseconds(m_clock->elapsed() - begun);
    pause = more ? std::clamp(took, kLeastPause, kPause) : kPause;
    lock.lock();
  }
}

}  // namespace newel
