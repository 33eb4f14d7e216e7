// Photos and clips at the clinic: from a desk in parts, checked once they are whole, to the phones whose
// programme names them. Not here: what is looked at in the content (sync/common/media_clean.h).
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "core/records/message.pb.h"
#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"
#include "sync/protocol/home_service.pb.h"

namespace newel {

// How long an upload waits for its next part, and a whole one for a signature. Ours, no source: over a night;
// longer than a draft is likely to lie.
inline constexpr absl::Duration kMediaUploadKept = absl::Hours(24);
inline constexpr absl::Duration kMediaUnsignedKept = absl::Hours(24 * 30);

// Thread-safe. Who may is for the caller to know.
class MediaShelf {
 public:
  explicit MediaShelf(const HubContext* hub) : m_hub(hub) {}

  // desk_service.proto says what comes of it. kNotFound: nobody has the person's id.
  absl::StatusOr<v1::PutMediaReply> put(const DeskCaller& caller, const v1::PutMediaRequest& request);
  // kNotFound: nothing of this person has it. kInvalidArgument names the field.
  absl::StatusOr<v1::MediaPart> get(const v1::GetMediaRequest& request);
  // The same for a phone: only what a signed programme of its person, or a message to them, names.
  absl::StatusOr<v1::MediaPart> fetch(const PhoneCaller& caller, const v1::FetchMediaRequest& request);

 private:
  struct Wanted;
  absl::StatusOr<v1::MediaPart> part(const Wanted& wanted);
  absl::Status takePart(HubTransaction& transaction, const v1::PutMediaRequest& request,
                        v1::PutMediaReply& reply) const;
  absl::Status conclude(const DeskCaller& caller, const v1::PutMediaRequest& request);
  absl::StatusOr<std::string> wholeContent(const v1::PutMediaRequest& request);

  const HubContext* m_hub;
};

// Inside the transaction that keeps a programme or a message: everything it names is there, is this person's
// and is what the record says; from now on their phones may have it. kFailedPrecondition names the field.
absl::Status nameMediaOf(HubTransaction& transaction, const v1::Programme& programme);
absl::Status nameMediaOf(HubTransaction& transaction, const v1::Message& message);

}  // namespace newel
