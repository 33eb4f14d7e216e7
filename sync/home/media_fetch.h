// Brings the photos and clips that the newest programme and the newest messages name onto this phone, part by
// part, the last thing of a round; and lets go of what none of them, nor the programme before, names. A
// practice never waits for it.
#pragma once

#include <absl/status/status.h>

#include <functional>
#include <optional>

#include "sync/home/device_store.h"
#include "sync/home/hub_link.h"
#include "sync/home/media_store.h"

namespace newel {

class MediaFetch {
 public:
  struct Parts {
    DeviceStore* store = nullptr;
    MediaStore* media = nullptr;
    std::uint32_t part_bytes = 0;
    // What is left on the disk; nullopt: nobody knows.
    std::function<std::optional<std::uint64_t>()> free_bytes;
  };
  explicit MediaFetch(Parts parts) : m_parts(std::move(parts)) {}

  struct Result {
    absl::Status hub;    // the first call that failed in a way that ends the round
    absl::Status local;  // the store: disk full
    bool arrived = false;
  };
  // Until all is here, `pause` says that something more urgent waits, or a call fails. What the hub does not
  // have, and what came wrong three times, is left out: it is no reason to be told.
  Result run(HubLink& link, const std::function<bool()>& pause);

 private:
  enum class Step { Again, Done, Stop };
  Step fetchPart(HubLink& link, const v1::MediaRef& ref, Result& result);
  Step keepPart(const v1::MediaRef& ref, std::uint64_t have, const v1::MediaPart& part, Result& result);
  bool hasRoomFor(std::uint64_t bytes) const;

  const Parts m_parts;
};

}  // namespace newel
