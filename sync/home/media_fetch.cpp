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

// The hub's way to say "not this one": the round is none the worse for it.
bool isAboutThisOne(const absl::Status& status) {
  return absl::IsNotFound(status) || absl::IsInvalidArgument(status) || absl::IsUnimplemented(status) ||
         absl::IsDataLoss(status) || absl::IsInternal(status);
}

std::vector<v1::MediaRef> photosFirst(const v1::Programme& programme) {
  std::vector<v1::MediaRef> refs;
  for (const v1::MediaRef* ref : mediaNamedBy(programme)) refs.push_back(*ref);
  std::stable_sort(refs.begin(), refs.end(), [](const v1::MediaRef& a, const v1::MediaRef& b) {
    return isPhoto(a.type()) && !isPhoto(b.type());
  });
  return refs;
}

}  // namespace

MediaFetch::Result MediaFetch::run(HubLink& link, const std::function<bool()>& pause) {
  Result result;
  const auto programmes =
      m_parts.store->read([](Database& database) -> absl::StatusOr<std::vector<v1::Programme>> {
        return newestProgrammes(database, kProgrammes);
      });
  if (!programmes.ok()) {
    result.local = programmes.status();
    return result;
  }
  std::set<std::string> named;
  for (const auto& programme : *programmes) {
    for (const v1::MediaRef* ref : mediaNamedBy(programme)) named.insert(ref->sha256());
  }
  result.local = m_parts.media->keepOnly(named);
  if (!result.local.ok() || programmes->empty()) return result;
  for (const v1::MediaRef& ref : photosFirst(programmes->front())) {
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
