// How far an export is, for who waits at a terminal, and whether to go on.
#pragma once

#include <absl/time/time.h>

#include <functional>
#include <iosfwd>

#include "sync/export/person_history.h"

namespace newel {

// "40 % done" once a second at most, and not at all when it is quick.
class ExportTeller {
 public:
  // `elapsed`: a clock that nobody can set; empty: nothing is told. `asked_to_stop`: empty: nobody can. `out`
  // outlives this.
  ExportTeller(std::ostream& out, std::function<absl::Duration()> elapsed,
               std::function<bool()> asked_to_stop);

  // A part of the whole, `from` to `to` of 100; called with how much of the part is done. Not longer than
  // this lives.
  ExportProgress part(int from, int to);

 private:
  bool at(int percent);

  std::ostream& m_out;
  const std::function<absl::Duration()> m_elapsed;
  const std::function<bool()> m_asked_to_stop;
  absl::Duration m_said;
};

}  // namespace newel
