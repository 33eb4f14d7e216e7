// The practices of one call, compared with what is kept and with one another, and added together. For Intake,
// inside one write transaction.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "sync/hub/hub_store.h"
#include "sync/hub/record_look.h"

namespace newel {

class PracticeBatch {
 public:
  // Looks up every good practice of `records` at once. `records` outlives this.
  PracticeBatch(HubTransaction& transaction, const std::vector<LookedAt>& records);

  // What is kept of the practice in `records[place]`, those of this batch among it.
  PracticeKept keptOf(std::size_t place) const;
  // Adds it to the batch.
  void keep(PracticeRow row);
  // Hands the batch to the store. Once, at the end.
  void finish();

 private:
  HubTransaction* m_transaction;
  const std::vector<LookedAt>* m_records;
  std::vector<PracticeKept> m_kept;  // of the store, by place among the good practices
  std::vector<std::size_t> m_place;  // of a record among them
  std::vector<PracticeRow> m_rows;   // to be added
  std::unordered_multimap<std::string, std::size_t> m_by_id;  // id to place in m_rows
};

}  // namespace newel
