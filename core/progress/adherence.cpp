#include "core/progress/adherence.h"

#include <algorithm>

#include "core/progress/occasion_facts.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

using State = OccasionResult::State;

class Count {
 public:
  Adherence of(OccasionFacts facts, absl::CivilDay today, const HeardDays& heard) {
    m_adherence.occasions.reserve(facts.occasions.size());
    for (auto& fact : facts.occasions) {
      fact.result.state = stateOn(fact, today, heard);
      m_adherence.occasions.push_back(std::move(fact.result));
      tally(m_adherence.occasions.back());
    }
    for (const auto& [place, times] : facts.extra) m_cells[place].done += times;
    for (const auto& [place, cell] : m_cells) addUp(place.first, place.second, cell);
    return std::move(m_adherence);
  }

 private:
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

absl::CivilDay heardFrom(absl::CivilDay paired, const std::vector<v1::Practice>& practices) {
  absl::CivilDay from = paired;
  for (const v1::Practice& practice : practices) {
    const auto day = parseLocalDay(practice.local_day());
    if (day.ok()) from = std::min(from, *day);
  }
  return from;
}

absl::StatusOr<Adherence> adherenceOf(const std::vector<v1::Programme>& programmes,
                                      const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                      absl::CivilDay last, absl::CivilDay today, const HeardDays& heard,
                                      const std::vector<HeldDays>& held) {
  auto facts = occasionFacts(programmes, practices, first, last, held);
  if (!facts.ok()) return facts.status();
  return Count().of(*std::move(facts), today, heard);
}

}  // namespace newel
