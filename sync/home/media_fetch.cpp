#include "sync/home/media_fetch.h"

#include <algorithm>
#include <set>
#include <vector>

#include "core/records/media_type.h"
#include "sync/home/inbox.h"

namespace newel {
namespace {

// Ours, no source: wrong three times is no accident of the way; another programme may name it anew.
constexpr int kMostFailures = 3;
// So much stays free for what a practice writes. Ours, no source: years of practices.
constexpr std::uint64_t kKeptFree = std::uint64_t{64} << 20U;
// A practice that runs keeps the programme that it began with.
constexpr int kProgrammes = 2;
// As many messages as the phone's page shows (qml/home/messages_model.h), and no more than a programme may
// have.
constexpr int kMessages = 20;
constexpr std::uint64_t kMostMessageMediaBytes = kMostProgrammeMediaBytes;

// The hub's way to say "not this one": the round is none the worse for it.
bool isAboutThisOne(const absl::Status& status) {
  return absl::IsNotFound(status) || absl::IsInvalidArgument(status) || absl::IsUnimplemented(status) ||
         absl::IsDataLoss(status) || absl::IsInternal(status);
}

// What the phone wants: the newest programme's first, since a practice may begin; then the newest messages'.
struct Named {
  std::vector<v1::MediaRef> wanted;
  std::set<std::string> kept;  // hashes; also what the programme before names
};

void addMessages(const std::vector<v1::Message>& messages, Named& named) {
  std::uint64_t together = 0;
  int looked_at = 0;
  for (auto message = messages.rbegin(); message != messages.rend() && looked_at < kMessages; ++message) {
    ++looked_at;
    for (const v1::MediaRef& ref : {message->photo(), message->clip()}) {
      if (ref.sha256().empty()) continue;
      together += ref.size_bytes();
      if (together > kMostMessageMediaBytes) return;  // the older ones go, so that the phone does not fill
      if (named.kept.insert(ref.sha256()).second) named.wanted.push_back(ref);
    }
  }
}

Named namedBy(const std::vector<v1::Programme>& programmes, const std::vector<v1::Message>& messages) {
  Named named;
  for (const auto& programme : programmes) {
    for (const v1::MediaRef* ref : mediaNamedBy(programme)) {
      if (named.kept.insert(ref->sha256()).second && &programme == &programmes.front())
        named.wanted.push_back(*ref);
    }
  }
  std::stable_sort(
      named.wanted.begin(), named.wanted.end(),
      [](const v1::MediaRef& a, const v1::MediaRef& b) { return isPhoto(a.type()) && !isPhoto(b.type()); });
  addMessages(messages, named);
  return named;
}

}  // namespace

MediaFetch::Result MediaFetch::run(HubLink& link, const std::function<bool()>& pause) {
  Result result;
  const auto named = m_parts.store->read([](Database& database) -> absl::StatusOr<Named> {
    return namedBy(newestProgrammes(database, kProgrammes), keptMessages(database));
  });
  if (!named.ok()) {
    result.local = named.status();
    return result;
  }
  result.local = m_parts.media->keepOnly(named->kept);
  if (!result.local.ok()) return result;
  for (const v1::MediaRef& ref : named->wanted) {
    Step step = Step::Again;
    while (step == Step::Again && !pause()) step = fetchPart(link, ref, result);
    if (step != Step::Done) return result;
  }
  return result;
}

MediaFetch::Step MediaFetch::fetchPart(HubLink& link, const v1::MediaRef& ref, Result& result) {
  const auto progress = m_parts.media->progress(ref.sha256());
  if (!progress.ok()) {
    result.local = progress.status();
    return Step::Stop;
  }
  if (progress->whole || progress->failures >= kMostFailures) return Step::Done;
  if (!hasRoomFor(ref.size_bytes() - std::min(ref.size_bytes(), progress->have))) return Step::Done;
  v1::MediaPart part;
  // After a crash between its last part and the look at it, all of it may be here already.
  if (progress->have < ref.size_bytes()) {
    v1::FetchMediaRequest request;
    request.set_sha256(ref.sha256());
    request.set_offset(progress->have);
    request.set_most_bytes(m_parts.part_bytes);
    auto reply = link.fetchMedia(request);
    if (!reply.ok()) {
      if (isAboutThisOne(reply.status())) return Step::Done;
      result.hub = reply.status();
      return Step::Stop;
    }
    part = *std::move(reply);
  }
  return keepPart(ref, progress->have, part, result);
}

MediaFetch::Step MediaFetch::keepPart(const v1::MediaRef& ref, std::uint64_t have, const v1::MediaPart& part,
                                      Result& result) {
  const std::uint64_t left = ref.size_bytes() - std::min(ref.size_bytes(), have);
  absl::Status kept;
  if (left > 0) {
    const bool fits = part.offset() == have && part.size_bytes() == ref.size_bytes() &&
                      !part.content().empty() && part.content().size() <= left;
    kept =
        fits ? m_parts.media->append(ref.sha256(), part.content()) : m_parts.media->startAgain(ref.sha256());
    if (kept.ok() && !fits) return Step::Done;  // not at once: the next round is soon enough
    if (kept.ok() && part.content().size() < left) return Step::Again;
  }
  if (kept.ok()) kept = m_parts.media->conclude(ref);
  if (absl::IsInvalidArgument(kept)) return Step::Done;
  result.arrived = result.arrived || kept.ok();
  result.local = kept;
  return kept.ok() ? Step::Done : Step::Stop;
}

bool MediaFetch::hasRoomFor(std::uint64_t bytes) const {
  const auto free = m_parts.free_bytes ? m_parts.free_bytes() : std::nullopt;
  return !free.has_value() || *free >= bytes + kKeptFree;
}

}  // namespace newel
