// The photos and clips on this phone, sealed like all else, in a SQLite file of their own beside the store: a
// part that is being written holds up no journal line, and damage here sets aside nothing that matters. All
// of it can be fetched again, so a file that cannot be used is begun anew. Not here: what is to be fetched
// (media_fetch.h).
#pragma once

#include <absl/status/statusor.h>

#include <functional>
#include <memory>
#include <mutex>
#include <set>
#include <string>

#include "core/records/media.pb.h"
#include "sync/common/database.h"
#include "sync/home/seal.h"

namespace newel {

// Thread-safe: one lock for all.
class MediaStore {
 public:
  // Opens nothing yet; each method does when it has to, and fails when that fails: kResourceExhausted disk
  // full.
  MediaStore(std::string folder, std::string vfs, const std::string& key, Random& random);

  struct Progress {
    std::uint64_t have = 0;  // bytes
    bool whole = false;      // and its hash was right
    int failures = 0;        // times that what came was not it
  };
  absl::StatusOr<Progress> progress(const std::string& sha256);
  // Keeps `content` behind what there is. On the disk when it returns OK.
  absl::Status append(const std::string& sha256, const std::string& content);
  // All of it is there: whole when size, kind and hash are what `ref` says. kInvalidArgument: they are not,
  // and it is gone.
  absl::Status conclude(const v1::MediaRef& ref);
  // What came is not it: begins anew, one failure more.
  absl::Status startAgain(const std::string& sha256);
  // The whole content, its hash checked just now. kNotFound: not here, not whole yet, or found damaged: then
  // it is gone and will be fetched again.
  absl::StatusOr<std::string> content(const v1::MediaRef& ref);
  // Everything else goes.
  absl::Status keepOnly(const std::set<std::string>& hashes);

  // Seals everything anew; from then on `key` is the key, whatever comes of it: what cannot be sealed anew is
  // found damaged later.
  absl::Status reseal(const std::string& key);
  // Every byte: the file goes.
  absl::Status wipe();

 private:
  absl::Status write(const std::function<absl::Status(Database&)>& body);
  absl::Status healed(absl::Status status);
  absl::Status ready();
  absl::Status openFile();
  absl::Status removeFile();
  absl::StatusOr<std::string> readAll(const std::string& hex);

  const std::string m_path;
  const std::string m_vfs;
  Random& m_random;
  std::mutex m_mutex;
  std::unique_ptr<Seal> m_seal;  // before the database, whose functions use them
  std::unique_ptr<Seal> m_next;
  std::unique_ptr<Database> m_database;
};

}  // namespace newel
