// The phone service's requests as bytes, through everything the hub does with them but the network.
#include "tests/fuzz/fuzz_hub.h"
#include "tests/fuzz/target.h"

namespace newel::fuzz {
namespace {

void offer(FuzzHub& hub, const std::string& bytes) {
  v1::OfferRequest request;
  if (!request.ParseFromString(bytes)) return;
  const auto reply = hub.hub().phones().offer(hub.phone(), request);
  if (reply.ok()) require(reply->outcomes_size() == request.records_size(), "one outcome for each record");
}

void fetch(FuzzHub& hub, const std::string& bytes) {
  v1::FetchRequest request;
  if (!request.ParseFromString(bytes)) return;
  const auto reply = hub.hub().phones().fetch(hub.phone(), request);
  if (!reply.ok()) return;
  require(reply->records_size() <= static_cast<int>(request.limit()), "no more than asked for");
}

void pair(FuzzHub& hub, const std::string& bytes) {
  v1::PairRequest request;
  if (!request.ParseFromString(bytes)) return;
  require(!hub.hub().phones().pair(request, "fuzz").ok(), "no code was given, so none is good");
}

void fetchMedia(FuzzHub& hub, const std::string& bytes) {
  v1::FetchMediaRequest request;
  if (!request.ParseFromString(bytes)) return;
  require(!hub.hub().media().fetch(hub.phone(), request).ok(), "no programme names any, so none is given");
}

void token(FuzzHub& hub, const std::string& bytes) {
  require(!hub.hub().phones().authenticate(bytes, {}).ok(), "no token was given, so none is good");
}

}  // namespace
}  // namespace newel::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace newel::fuzz;
  static FuzzHub hub;
  const Input input = split(data, size);
  switch (input.choice % 5) {
    case 0:
      offer(hub, input.rest);
      break;
    case 1:
      fetch(hub, input.rest);
      break;
    case 2:
      pair(hub, input.rest);
      break;
    case 3:
      token(hub, input.rest);
      break;
    default:
      fetchMedia(hub, input.rest);
  }
  return 0;
}
