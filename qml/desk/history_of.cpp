#include "qml/desk/history_of.h"

namespace newel::desk {

PersonHistory historyOf(const PersonFile& file, absl::Time now) {
  PersonHistory history;
  history.person = file.person;
  for (const auto& programme : file.programmes) history.programmes.push_back({programme, "", "", {}});
  for (const auto& order : file.holds) history.holds.push_back({order, "", "", {}});
  for (const auto& message : file.messages) history.messages.push_back({message, {}});
  history.practices = file.practices;
  history.wear_blocks = file.wear_blocks;
  history.measures = file.measures;
  history.as_of = now;
  history.last_contact = lastContact(file);
  addReceipts(file.receipts, history);
  putInOrder(history);
  return history;
}

}  // namespace newel::desk
