#include "core/progress/adherence.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

using State = OccasionResult::State;

struct Key {
  std::string entry_id;
  std::string local_day;
  std::uint32_t window = 0;
  friend bool operator<(const Key& left, const Key& right) {
    return std::tie(left.entry_id, left.local_day, left.window) <
           std::tie(right.entry_id, right.local_day, right.window);
  }
};

// What all practices together did for one occasion.
struct Doing {
  double dose = 0;
  bool any = false;  // something of it was done
  bool told_later = true;
  std::string practice_id;
  v1::StopReason skipped = v1::STOP_REASON_UNSPECIFIED;
  bool used = false;  // belongs to an occasion that was due or excused
};
using Doings = std::map<Key, Doing>;

double ratio(double done, double asked) { return std::min(1.0, done / asked); }

// A stop in the middle of a long hold leaves no whole repetition, and yet time under load.
double doseOf(const v1::EntryDone& entry) {
  double dose = -1;
  if (entry.asked().repetitions() > 0) {
    dose = ratio(entry.done().repetitions(), entry.asked().repetitions());
  }
  if (entry.asked().active_ms() > 0) {
    dose = std::max(dose, ratio(static_cast<double>(entry.done().active_ms()),
                                static_cast<double>(entry.asked().active_ms())));
  }
  // Told later without numbers: done unless it says why not.
  if (dose < 0) return entry.skipped() == v1::STOP_REASON_UNSPECIFIED ? 1 : 0;
  return dose;
}

void add(Doing& doing, const v1::Practice& practice, const v1::EntryDone& entry) {
  const double dose = doseOf(entry);
  doing.dose = std::min(1.0, doing.dose + dose);
  doing.skipped = entry.skipped();
  if (dose <= 0) return;
  doing.any = true;
  doing.practice_id = practice.id();
  doing.told_later = doing.told_later && practice.origin() == v1::ORIGIN_TOLD_LATER;
}

absl::StatusOr<Doings> doingsOf(const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                absl::CivilDay last) {
  Doings doings;
  for (const auto& practice : practices) {
    for (int i = 0; i < practice.entries_size(); ++i) {
      const v1::EntryDone& entry = practice.entries(i);
      const auto day = parseLocalDay(entry.occasion().local_day());
      if (!day.ok()) {
        return absl::InvalidArgumentError("practices[" + practice.id() + "].entries[" + std::to_string(i) +
                                          "].occasion.local_day: " + std::string(day.status().message()));
      }
      if (*day < first || *day > last) continue;
      const v1::OccasionRef& ref = entry.occasion();
      add(doings[{ref.entry_id(), ref.local_day(), ref.window()}], practice, entry);
    }
  }
  return doings;
}

// Every occasion of all programmes, each programme until the next number takes over.
absl::StatusOr<std::vector<Occasion>> allOccasions(std::vector<v1::Programme> programmes,
                                                   absl::CivilDay first, absl::CivilDay last) {
  std::sort(programmes.begin(), programmes.end(),
            [](const auto& left, const auto& right) { return left.number() < right.number(); });
  std::vector<std::vector<Occasion>> parts;
  absl::CivilDay until = last;
  for (auto programme = programmes.rbegin(); programme != programmes.rend(); ++programme) {
    auto part = occasionsOf(*programme, first, until);
    if (!part.ok()) return part.status();
    parts.push_back(*std::move(part));
    until = std::min(until, *parseLocalDay(programme->effective_day()) - 1);
  }
  std::vector<Occasion> all;
  for (auto part = parts.rbegin(); part != parts.rend(); ++part) {
    all.insert(all.end(), std::make_move_iterator(part->begin()), std::make_move_iterator(part->end()));
  }
  return all;
}

class Count {
 public:
  // `held` outlives this.
  Count(Doings doings, absl::CivilDay today, absl::CivilDay heard_until, const std::vector<HeldDays>& held)
      : m_doings(std::move(doings)), m_today(today), m_heard_until(heard_until), m_held(held) {}

  Adherence of(const std::vector<Occasion>& occasions) {
    for (const auto& occasion : occasions) claimExact(occasion);
    for (const auto& occasion : occasions) {
      m_adherence.occasions.push_back(resultOf(occasion));
      tally(m_adherence.occasions.back());
    }
    for (const auto& [key, doing] : m_doings) {
      if (doing.any && !doing.used) ++m_cells[{key.entry_id, weekOf(key.local_day)}].done;
    }
    for (const auto& [place, cell] : m_cells) addUp(place.first, place.second, cell);
    return std::move(m_adherence);
  }

 private:
  static std::string weekOf(const std::string& day) { return formatLocalDay(mondayOf(*parseLocalDay(day))); }

  // An occasion practised on its own day is never lent to another one of its week.
  void claimExact(const Occasion& occasion) {
    const auto found =
        m_doings.find({occasion.ref.entry_id(), occasion.ref.local_day(), occasion.ref.window()});
    if (found == m_doings.end()) return;
    if (!occasion.any_day_of_week || occasion.state == OccasionState::Excused) found->second.used = true;
  }

  const Doing* doingOf(const Occasion& occasion) {
    const v1::OccasionRef& ref = occasion.ref;
    if (!occasion.any_day_of_week || occasion.state == OccasionState::Excused) {
      const auto found = m_doings.find({ref.entry_id(), ref.local_day(), ref.window()});
      return found == m_doings.end() ? nullptr : &found->second;
    }
    // Any day counts: the week's practices fill its occasions one by one, in order.
    const std::string week = weekOf(ref.local_day());
    for (auto& [key, doing] : m_doings) {
      const bool mine = key.entry_id == ref.entry_id() && key.window == ref.window();
      if (!mine || doing.used || !doing.any || weekOf(key.local_day) != week) continue;
      doing.used = true;
      return &doing;
    }
    return nullptr;
  }

  State stateOf(const Occasion& occasion, const Doing* doing) const {
    if (occasion.state == OccasionState::Excused) return State::Excused;
    if (doing != nullptr && doing->dose >= 1) return State::Done;
    const absl::CivilDay day = *parseLocalDay(occasion.ref.local_day());
    const absl::CivilDay over = occasion.any_day_of_week ? mondayOf(day) + 6 : day;
    // A day to come may still see the order lifted.
    if (over <= m_today && isHeld(m_held, occasion.ref.entry_id(), over)) return State::Excused;
    if (doing != nullptr && doing->any) return State::Part;
    // Skipped by the person: known, even while the day goes on.
    if (doing != nullptr) return State::NotDone;
    if (over >= m_today) return State::Coming;
    return over > m_heard_until ? State::NoData : State::NotDone;
  }

  OccasionResult resultOf(const Occasion& occasion) {
    OccasionResult result;
    result.ref = occasion.ref;
    result.any_day_of_week = occasion.any_day_of_week;
    const Doing* doing = doingOf(occasion);
    result.state = stateOf(occasion, doing);
    if (doing == nullptr) return result;
    result.dose = doing->dose;
    result.practice_id = doing->practice_id;
    result.told_later = doing->any && doing->told_later;
    result.skipped = doing->skipped;
    return result;
  }

  void tally(const OccasionResult& result) {
    const bool done = result.state == State::Done || result.state == State::Part;
    if (!done && result.state != State::NotDone) return;
    Share& cell = m_cells[{result.ref.entry_id(), weekOf(result.ref.local_day())}];
    ++cell.due;
    cell.dose += result.dose;
    if (done) ++cell.done;
  }

  void addUp(const std::string& entry_id, const std::string& week, const Share& cell) {
    for (Share* share : {&m_adherence.all, &m_adherence.by_entry[entry_id], &m_adherence.by_week[week]}) {
      share->due += cell.due;
      share->done += cell.done;
      share->counted += std::min(cell.done, cell.due);
      share->dose += cell.dose;
    }
  }

  Doings m_doings;
  absl::CivilDay m_today;
  absl::CivilDay m_heard_until;
  const std::vector<HeldDays>& m_held;
  Adherence m_adherence;
  std::map<std::pair<std::string, std::string>, Share> m_cells;  // by entry and week
};

std::optional<double> over(double part, int whole) {
  if (whole == 0) return std::nullopt;
  return part / whole;
}

}  // namespace

std::optional<double> Share::capped() const { return over(counted, due); }
std::optional<double> Share::raw() const { return over(done, due); }
std::optional<double> Share::doseShare() const { return over(dose, due); }

absl::StatusOr<Adherence> adherenceOf(const std::vector<v1::Programme>& programmes,
                                      const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                      absl::CivilDay last, absl::CivilDay today, absl::CivilDay heard_until,
                                      const std::vector<HeldDays>& held) {
  const auto occasions = allOccasions(programmes, first, last);
  if (!occasions.ok()) return occasions.status();
  auto doings = doingsOf(practices, first, last);
  if (!doings.ok()) return doings.status();
  return Count(*std::move(doings), today, heard_until, held).of(*occasions);
}

}  // namespace newel
