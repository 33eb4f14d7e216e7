#include "tests/sim/world.h"

#include <memory>
#include <vector>

#include "tests/core/people/sample_people.h"
#include "tests/sim/memory_vfs.h"
#include "tests/sim/sim_hub.h"
#include "tests/sim/sim_phone.h"
#include "tests/sim/stage.h"

namespace newel::sim {
namespace {

class World {
 public:
  explicit World(const RunOptions& options)
      : m_days(options.days),
        m_stage(options.seed, options.trace),
        m_hub(&m_stage, &m_ledger,
              {test::transfemoralLeft(), test::transtibialRight(), test::bothTranstibial()}) {
    const auto& people = m_hub.people();
    // Two phones of the first.
    for (int i = 0; i < 4; ++i) {
      m_phones.push_back(std::make_unique<SimPhone>(
          &m_stage, &m_hub, &m_ledger, i, people[static_cast<std::size_t>(i) % people.size()].id()));
    }
  }

  RunResult run() {
    for (int day = 0; day < m_days && fine(); ++day) {
      const absl::Duration end = absl::Hours(24) * (day + 1);
      m_hub.planDay();
      for (auto& phone : m_phones) phone->planDay();
      while (fine() && m_stage.step(end)) {
      }
      if (m_stage.clock.elapsed() < end) m_stage.pass(end - m_stage.clock.elapsed());
    }
    settle();
    return {m_stage.violation(), m_stage.digest()};
  }

 private:
  bool fine() const { return m_stage.violation().empty(); }

  // The faults stop; then everything promised is asked for.
  void settle() {
    if (!fine()) return;
    // Now and then the last thing to happen is that the hub goes back to a backup, so that no later programme
    // hides what came of it.
    if (m_stage.chance(250)) m_hub.goBack();
    m_stage.calm = true;
    m_stage.say("world", "the faults stop");
    m_hub.settle();
    // What is still on its way comes in first.
    const absl::Duration until = m_stage.clock.elapsed() + absl::Hours(36);
    while (fine() && m_stage.step(until)) {
    }
    // Twice: what one phone of a person brings, the other has yet to fetch.
    for (int round = 0; round < 2; ++round) {
      for (auto& phone : m_phones) {
        if (fine()) phone->settle();
      }
    }
    if (!fine()) return;
    m_hub.checkKept();
    m_hub.checkRecords();
    for (auto& phone : m_phones) phone->checkSettled();
  }

  const int m_days;
  Stage m_stage;
  Ledger m_ledger;
  SimHub m_hub;
  std::vector<std::unique_ptr<SimPhone>> m_phones;
};

}  // namespace

RunResult run(const RunOptions& options) {
  seedSqlite(options.seed);
  return World(options).run();
}

}  // namespace newel::sim
