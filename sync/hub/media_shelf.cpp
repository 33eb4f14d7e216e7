#include "sync/hub/media_shelf.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "core/records/media_type.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "sync/common/media_clean.h"
#include "sync/common/record_id.h"

namespace newel {
namespace {

constexpr std::size_t kHashBytes = 32;

absl::Status checkHash(const std::string& hash) {
  return hash.size() == kHashBytes ? absl::OkStatus() : absl::InvalidArgumentError("sha256: is not 32 bytes");
}

absl::Status checkPut(const v1::PutMediaRequest& request) {
  if (absl::Status hash = checkHash(request.sha256()); !hash.ok()) return hash;
  if (request.size_bytes() == 0 || request.size_bytes() > kMostClipBytes) {
    return absl::InvalidArgumentError("size_bytes: a photo may have 1 MiB, a clip 16 MiB at most");
  }
  if (request.content().size() > kMostMediaPartBytes) {
    return absl::InvalidArgumentError("content: over 256 KiB in one part");
  }
  return absl::OkStatus();
}

absl::Status nothing() { return absl::NotFoundError("sha256: nothing of this person has it"); }

}  // namespace

struct MediaShelf::Wanted {
  std::string person_id;
  std::string sha256;
  std::uint64_t offset = 0;
  std::uint32_t most_bytes = 0;
  bool named = false;  // only what a signed programme or a message names
};

absl::StatusOr<v1::MediaPart> MediaShelf::part(const Wanted& wanted) {
  if (absl::Status hash = checkHash(wanted.sha256); !hash.ok()) return hash;
  if (wanted.most_bytes == 0 || wanted.most_bytes > kMostMediaPartBytes) {
    return absl::InvalidArgumentError("most_bytes: 1 to 256 KiB");
  }
  v1::MediaPart reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    const auto media = transaction.mediaOf(wanted.person_id, wanted.sha256);
    if (!media.has_value() || (wanted.named && !media->named)) return nothing();
    reply.set_size_bytes(media->size);
    reply.set_offset(wanted.offset);
    if (wanted.offset >= media->size) return absl::OkStatus();
    const auto row = transaction.mediaPart(media->id, wanted.offset);
    if (!row.has_value() || wanted.offset - row->offset >= row->content.size())
      return absl::DataLossError("media: a part is missing");
    reply.set_content(row->content.substr(wanted.offset - row->offset, wanted.most_bytes));
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::MediaPart> MediaShelf::get(const v1::GetMediaRequest& request) {
  return part({request.person_id(), request.sha256(), request.offset(), request.most_bytes(), false});
}

absl::StatusOr<v1::MediaPart> MediaShelf::fetch(const PhoneCaller& caller,
                                                const v1::FetchMediaRequest& request) {
  return part({caller.person_id, request.sha256(), request.offset(), request.most_bytes(), true});
}

absl::StatusOr<v1::PutMediaReply> MediaShelf::put(const DeskCaller& caller,
                                                  const v1::PutMediaRequest& request) {
  if (absl::Status good = checkPut(request); !good.ok()) return good;
  v1::PutMediaReply reply;
  // 1. The last part is kept. 2. All of it is read and looked at, with no transaction open: that takes a
  // while.
  // 3. It becomes media, or goes. A crash before 3 leaves an upload that has all its bytes; whoever asks next
  //    begins at 2.
  const absl::Status taken =
      m_hub->store->write([&](HubTransaction& transaction) { return takePart(transaction, request, reply); });
  if (!taken.ok()) return taken;
  if (reply.whole() || reply.offset() < request.size_bytes()) return reply;
  if (absl::Status done = conclude(caller, request); !done.ok()) return done;
  reply.set_whole(true);
  return reply;
}

absl::Status MediaShelf::takePart(HubTransaction& transaction, const v1::PutMediaRequest& request,
                                  v1::PutMediaReply& reply) const {
  const absl::Time now = m_hub->clock->wall();
  reply.Clear();
  if (!transaction.person(request.person_id()).has_value())
    return absl::NotFoundError("person_id: nobody has it");
  if (transaction.mediaOf(request.person_id(), request.sha256()).has_value()) {
    reply.set_offset(request.size_bytes());
    reply.set_whole(true);
    return absl::OkStatus();
  }
  auto upload = transaction.mediaUpload(request.person_id(), request.sha256());
  if (upload.has_value() && upload->size != request.size_bytes()) {
    return absl::InvalidArgumentError("size_bytes: was another one before");
  }
  reply.set_offset(upload.has_value() ? upload->have : 0);
  if (request.content().empty() || request.offset() != reply.offset()) return absl::OkStatus();
  if (request.content().size() > request.size_bytes() - reply.offset()) {
    return absl::InvalidArgumentError("content: more than size_bytes says");
  }
  if (!upload.has_value()) {
    transaction.dropStaleMedia(now - kMediaUploadKept, now - kMediaUnsignedKept);
    const MediaWaiting waiting = transaction.mediaWaiting(request.person_id());
    if (waiting.uploads >= kMostMediaUploads || waiting.bytes + request.size_bytes() > kMostMediaWaiting) {
      return absl::ResourceExhaustedError("media: too much waits for a signature; sign, or try tomorrow");
    }
    upload = {newRecordId(*m_hub->clock, *m_hub->random), request.person_id(), request.sha256(),
              request.size_bytes(), 0};
    transaction.addMediaUpload(*upload, now);
  }
  transaction.addMediaPart(*upload, request.content(), now);
  reply.set_offset(reply.offset() + request.content().size());
  return absl::OkStatus();
}

absl::StatusOr<std::string> MediaShelf::wholeContent(const v1::PutMediaRequest& request) {
  std::string content;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    content.clear();
    const auto upload = transaction.mediaUpload(request.person_id(), request.sha256());
    if (!upload.has_value()) return absl::UnavailableError("media: another desk has just sent it; ask again");
    while (content.size() < upload->size) {
      const auto row = transaction.mediaPart(upload->id, content.size());
      if (!row.has_value() || row->offset != content.size() || row->content.empty())
        return absl::DataLossError("media: a part is missing");
      content += row->content;
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return content;
}

absl::Status MediaShelf::conclude(const DeskCaller& caller, const v1::PutMediaRequest& request) {
  const auto content = wholeContent(request);
  if (!content.ok()) return content.status();
  const v1::MediaType type = sniffMedia(*content);
  absl::Status good = sha256(*content) == request.sha256()
                          ? checkCleanMedia(*content, type)
                          : absl::InvalidArgumentError("sha256: does not fit the content; send it again");
  absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    const absl::Time now = m_hub->clock->wall();
    const auto upload = transaction.mediaUpload(request.person_id(), request.sha256());
    if (!upload.has_value()) return absl::OkStatus();  // concluded by another call meanwhile
    std::string id = upload->id;
    if (good.ok()) {
      const auto known = transaction.media(request.sha256());
      if (known.has_value()) {
        id = known->id;
      } else {
        transaction.addMedia({id, request.sha256(), type, request.size_bytes(), false}, now);
      }
    }
    transaction.dropMediaUpload(upload->id);
    if (!good.ok()) return absl::OkStatus();
    transaction.addMediaLink(request.person_id(), id, now);
    m_hub->audit->add(
        transaction,
        {.action = "media.add", .who = caller.therapist.id(), .person = request.person_id(), .record = id});
    return absl::OkStatus();
  });
  return kept.ok() ? good : kept;
}

namespace {

absl::Status nameOne(HubTransaction& transaction, const std::string& person_id, const v1::MediaRef& ref,
                     const std::string& field) {
  const auto media = transaction.mediaOf(person_id, ref.sha256());
  if (!media.has_value() || media->type != ref.type() || media->size != ref.size_bytes())
    return absl::FailedPreconditionError(field +
                                         ": the hub does not have it; take it out and choose it again");
  transaction.markMediaNamed(person_id, media->id);
  return absl::OkStatus();
}

// An entry, or a message.
template <typename Record>
absl::Status nameBoth(HubTransaction& transaction, const std::string& person_id, const Record& record,
                      const std::string& path) {
  if (record.has_photo()) {
    absl::Status named = nameOne(transaction, person_id, record.photo(), path + "photo");
    if (!named.ok()) return named;
  }
  return record.has_clip() ? nameOne(transaction, person_id, record.clip(), path + "clip") : absl::OkStatus();
}

}  // namespace

absl::Status nameMediaOf(HubTransaction& transaction, const v1::Programme& programme) {
  for (int i = 0; i < programme.entries_size(); ++i) {
    absl::Status named = nameBoth(transaction, programme.person_id(), programme.entries(i),
                                  "entries[" + std::to_string(i) + "].");
    if (!named.ok()) return named;
  }
  return absl::OkStatus();
}

absl::Status nameMediaOf(HubTransaction& transaction, const v1::Message& message) {
  return nameBoth(transaction, message.person_id(), message, "");
}

}  // namespace newel
