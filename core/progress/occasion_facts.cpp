#include "core/progress/occasion_facts.h"

#include <algorithm>
#include <tuple>

#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

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

void add(Doing& doing, const v1::Practice& practice, const v1::EntryDone& entry) {
  const double dose = doseShareOf(entry);
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

class Reader {
 public:
  // `held` outlives this.
  Reader(Doings doings, const std::vector<HeldDays>& held) : m_doings(std::move(doings)), m_held(held) {}

  OccasionFacts of(const std::vector<Occasion>& occasions) {
    for (const auto& occasion : occasions) claimExact(occasion);
    OccasionFacts facts;
    facts.occasions.reserve(occasions.size());
    for (const auto& occasion : occasions) facts.occasions.push_back(factOf(occasion));
    for (const auto& [key, doing] : m_doings) {
      if (doing.any && !doing.used) ++facts.extra[{key.entry_id, weekOf(key.local_day)}];
    }
    return facts;
  }

 private:
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

  static OccasionFact::Told toldOf(const Occasion& occasion, const Doing* doing) {
    using Told = OccasionFact::Told;
    if (occasion.state == OccasionState::Excused) return Told::Excused;
    if (doing == nullptr) return Told::Nothing;
    if (doing->dose >= 1) return Told::Done;
    return doing->any ? Told::Part : Told::Skipped;
  }

  OccasionFact factOf(const Occasion& occasion) {
    OccasionFact fact;
    const absl::CivilDay day = *parseLocalDay(occasion.ref.local_day());
    fact.over = occasion.any_day_of_week ? mondayOf(day) + 6 : day;
    fact.held = isHeld(m_held, occasion.ref.entry_id(), fact.over);
    OccasionResult& result = fact.result;
    result.ref = occasion.ref;
    result.any_day_of_week = occasion.any_day_of_week;
    const Doing* doing = doingOf(occasion);
    fact.told = toldOf(occasion, doing);
    if (doing == nullptr) return fact;
    result.dose = doing->dose;
    result.practice_id = doing->practice_id;
    result.told_later = doing->any && doing->told_later;
    result.skipped = doing->skipped;
    return fact;
  }

  Doings m_doings;
  const std::vector<HeldDays>& m_held;
};

}  // namespace

// A stop in the middle of a long hold leaves no whole repetition, and yet time under load.
double doseShareOf(const v1::EntryDone& entry) {
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

std::string weekOf(const std::string& day) { return formatLocalDay(mondayOf(*parseLocalDay(day))); }

OccasionResult::State stateOn(const OccasionFact& fact, absl::CivilDay today, const HeardDays& heard) {
  using State = OccasionResult::State;
  using Told = OccasionFact::Told;
  if (fact.told == Told::Excused) return State::Excused;
  if (fact.told == Told::Done) return State::Done;
  // A day to come may still see the order lifted.
  if (fact.over <= today && fact.held) return State::Excused;
  if (fact.told == Told::Part) return State::Part;
  // Skipped by the person: known, even while the day goes on.
  if (fact.told == Told::Skipped) return State::NotDone;
  if (fact.over >= today) return State::Coming;
  return fact.over > heard.until || fact.over < heard.from ? State::NoData : State::NotDone;
}

std::optional<absl::CivilDay> lastDoneDay(const std::vector<v1::Practice>& practices) {
  std::optional<absl::CivilDay> last;
  for (const auto& practice : practices) {
    for (const auto& entry : practice.entries()) {
      if (doseShareOf(entry) <= 0) continue;
      const auto day = parseLocalDay(entry.occasion().local_day());
      if (day.ok() && (!last || *day > *last)) last = *day;
    }
  }
  return last;
}

absl::StatusOr<OccasionFacts> occasionFacts(const std::vector<v1::Programme>& programmes,
                                            const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                            absl::CivilDay last, const std::vector<HeldDays>& held) {
  const auto occasions = allOccasions(programmes, first, last);
  if (!occasions.ok()) return occasions.status();
  auto doings = doingsOf(practices, first, last);
  if (!doings.ok()) return doings.status();
  return Reader(*std::move(doings), held).of(*occasions);
}

}  // namespace newel
