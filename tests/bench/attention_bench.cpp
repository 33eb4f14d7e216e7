// The attention list of a whole clinic, each person with a year of practice three times a week: from the
// store to rows in order, each with its reasons. `hub_ms` is what the hub takes to answer, all pages
// together; `judge_ms` what the desk takes to make rows of the answer and to put them in order; the time of
// an iteration is both. Not in it: the network between them, and words (made for the rows on the screen
// alone).
#include <benchmark/benchmark.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <memory>
#include <stdexcept>

#include "core/progress/attention_digest.h"
#include "core/records/record_text.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "tests/bench/bench_hub.h"
#include "tests/bench/bench_records.h"
#include "tests/bench/bench_times.h"

namespace newel::bench {
namespace {

constexpr int kPractices = 156;  // 52 weeks of three
constexpr std::uint32_t kPage = 500;

void need(const absl::Status& status) {
  if (!status.ok()) throw std::runtime_error(status.ToString());
}

// Persons 0 to n - 1, their programme of the last year and what they did of it: some all, some nearly
// nothing.
class YearClinic {
 public:
  YearClinic(Place& place, int persons) : m_hub(place, 0), m_now(absl::Now()) {
    m_programme = benchProgramme(6);
    const absl::CivilDay today = absl::ToCivilDay(m_now, absl::UTCTimeZone());
    m_first = mondayOf(today) - 364;
    m_programme.set_effective_day(formatLocalDay(m_first));
    m_programme.set_end_day(formatLocalDay(today + 28));
    for (int first = 0; first < persons; first += 50) {
      need(m_hub.hub().store().write([&](HubTransaction& transaction) {
        for (int i = first; i < std::min(persons, first + 50); ++i) add(transaction, i);
        return absl::OkStatus();
      }));
    }
    while (true) {
      const auto made = m_hub.hub().digests().refresh(200);
      need(made.status());
      if (*made == 0) break;
    }
  }

  // All pages, as a lead has them.
  std::vector<v1::ListCaseloadReply> pages() {
    DeskCaller caller;
    caller.therapist.set_id(benchId(4));
    caller.therapist.set_role(v1::ROLE_LEAD);
    v1::ListCaseloadRequest request;
    request.set_limit(kPage);
    std::vector<v1::ListCaseloadReply> pages;
    do {
      auto page = m_hub.hub().files().caseload(caller, request);
      need(page.status());
      pages.push_back(*std::move(page));
      if (!pages.back().rows().empty()) {
        request.set_after_person_id(pages.back().rows(pages.back().rows_size() - 1).person().id());
      }
    } while (pages.back().more());
    return pages;
  }

 private:
  void add(HubTransaction& transaction, int n) {
    const std::string id = benchId(static_cast<std::uint64_t>(10'000'000 + n));
    v1::Person person = benchPerson();
    person.set_id(id);
    v1::Identity identity;
    identity.set_person_id(id);
    identity.set_given_name("Person " + std::to_string(n));
    identity.set_family_name("Invented");
    transaction.putPerson(id, {1, toBytes(person)});
    transaction.putIdentity(id, {1, toBytes(identity)});
    const std::string device_id = benchId(static_cast<std::uint64_t>(20'000'000 + n));
    transaction.addDevice({device_id, id, "phone", "bench", sha256(device_id), m_now, m_now, false});
    v1::Programme programme = m_programme;
    programme.set_id(benchId(static_cast<std::uint64_t>(30'000'000 + n)));
    programme.set_person_id(id);
    const std::string bytes = toBytes(programme);
    transaction.addProgramme({id, 1, programme.id(), bytes, "signature", "key", "", programme.end_day()},
                             transaction.takeSequence());
    addYear(transaction, id, device_id, n);
  }

  void addYear(HubTransaction& transaction, const std::string& id, const std::string& device_id, int n) {
    std::vector<PracticeRow> rows;
    for (int i = 0; i < kPractices; ++i) {
      if (i % 10 < n % 10) continue;  // from all to one in ten
      const absl::CivilDay day = m_first + i / 3 * 7 + i % 3 * 2;
      v1::Practice practice = benchPractice(++m_number);
      practice.set_person_id(id);
      practice.set_local_day(formatLocalDay(day));
      *practice.mutable_started_at() =
          toTimestamp(absl::FromCivil(absl::CivilHour(day) + 9, absl::UTCTimeZone()));
      *practice.mutable_ended_at() =
          toTimestamp(absl::FromCivil(absl::CivilHour(day) + 10, absl::UTCTimeZone()));
      for (auto& entry : *practice.mutable_entries()) {
        entry.mutable_occasion()->set_local_day(practice.local_day());
        entry.set_pain_after_0_10(static_cast<std::uint32_t>((i + n) % 5));
      }
      PracticeRow& row = rows.emplace_back();
      row.person_id = id;
      row.device_id = device_id;
      row.envelope = makeEnvelope(v1::RECORD_KIND_PRACTICE, practice.id(), 1, toBytes(practice));
      row.envelope.set_sequence(transaction.takeSequence());
      *row.envelope.mutable_received_at() = practice.ended_at();
    }
    transaction.addPractices(rows);
  }

  BenchHub m_hub;
  const absl::Time m_now;
  v1::Programme m_programme;
  absl::CivilDay m_first;
  std::uint64_t m_number = 0;
};

// As the desk does: row by row, the facts kept for who asks why.
struct Judged {
  std::vector<AttentionFacts> facts;
  std::vector<AttentionRow> rows;
};

Judged judged(const std::vector<v1::ListCaseloadReply>& pages) {
  const absl::Time now = absl::Now();
  const absl::CivilDay today = absl::ToCivilDay(now, absl::UTCTimeZone());
  Judged list;
  std::size_t rows = 0;
  for (const auto& page : pages) rows += static_cast<std::size_t>(page.rows_size());
  list.facts.reserve(rows);
  list.rows.reserve(rows);
  v1::AttentionDigest digest;
  for (const auto& page : pages) {
    for (const auto& row : page.rows()) {
      ContactFacts contact{row.person().id(), std::nullopt, row.paired()};
      if (row.has_last_contact()) contact.last_contact = toTime(row.last_contact());
      if (!digest.ParseFromString(row.digest())) throw std::runtime_error("digest");
      list.facts.push_back(factsAt(digest, contact, now));
      list.rows.push_back(attentionRow(list.facts.back(), now, today, 7));
    }
  }
  list.rows = mostUrgentFirst(std::move(list.rows));
  return list;
}

// `of_linear` at n persons: the time of each person over that at the size before in the same run; over 1 is
// worse than linear. A thousand persons' rows lie in a processor's own cache, five thousand's do not.
template <typename Where>
void attentionListOf(benchmark::State& state) {
  static std::map<std::int64_t, double> each;
  Where place;
  YearClinic clinic(place, static_cast<int>(state.range(0)));
  Times hub_times;
  Times judge_times;
  std::vector<double> whole;
  std::size_t rows = 0;
  for (auto _ : state) {
    std::vector<v1::ListCaseloadReply> pages;
    const double hub = secondsOf([&] { pages = clinic.pages(); });
    Judged list;  // letting it go again is nobody's wait
    const double judge = secondsOf([&] { list = judged(pages); });
    rows = list.rows.size();
    hub_times.add(hub);
    judge_times.add(judge);
    whole.push_back(hub + judge);
    state.SetIterationTime(hub + judge);
  }
  if (rows != static_cast<std::size_t>(state.range(0))) return state.SkipWithError("rows are missing");
  std::sort(whole.begin(), whole.end());
  each[state.range(0)] = whole[whole.size() / 2] / static_cast<double>(state.range(0));
  hub_times.say(state, "hub_");
  judge_times.say(state, "judge_");
  const auto here = each.find(state.range(0));
  if (here != each.begin()) state.counters["of_linear"] = here->second / std::prev(here)->second;
}
BENCHMARK(attentionListOf<SqlitePlace>)
    ->Arg(1000)
    ->Arg(5000)
    ->Arg(10000)
    ->Arg(30000)
    ->UseManualTime()
    ->Iterations(20)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(attentionListOf<PostgresPlace>)
    ->Arg(1000)
    ->Arg(5000)
    ->Arg(10000)
    ->Arg(30000)
    ->UseManualTime()
    ->Iterations(20)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace newel::bench
