#include "sync/hub/hub_place.h"

#include <filesystem>
#include <ostream>

#include "sync/common/database.h"
#include "sync/hub/postgres_hub_store.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sqlite_hub_store.h"

namespace newel {

std::string storePath(const std::string& place) { return place + "/" + kHubStoreName; }

int failed(const HubMachine& machine, const absl::Status& status) {
  *machine.err << "newel-hub: " << status.message() << "\n";
  return 1;
}

absl::StatusOr<std::unique_ptr<HubStore>> openStore(const std::string& place, bool make) {
  if (isPostgresAddress(place)) return openPostgresHubStore(place);
  if (place.find("://") != std::string::npos)
    return absl::InvalidArgumentError("store: only postgres:// addresses are known");
  if (!make && !std::filesystem::exists(storePath(place))) {
    return absl::NotFoundError("there is no clinic in " + place + " yet: run newel-hub init first");
  }
  const absl::Status folder = ensurePrivateFolder(place);
  if (!folder.ok()) return folder;
  return openSqliteHubStore(storePath(place));
}

}  // namespace newel
