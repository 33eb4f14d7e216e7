#include "tests/sync/common/many_phones.h"

#include <grpcpp/client_context.h>

#include <stdexcept>

#include "sync/common/content_hash.h"
#include "sync/common/pinned_channel.h"
#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"

namespace newel::test {
namespace {

constexpr std::size_t kTokenBytes = 32;
// Two hundred handshakes at once on a machine that does other things too: a handshake that took too long is
// begun again, as a phone would.
constexpr absl::Duration kConnectWait = absl::Seconds(10);
constexpr int kConnectTries = 10;
constexpr absl::Duration kPatience = absl::Seconds(60);

template <typename Reply, typename Call>
absl::StatusOr<Reply> called(const NetPhone& phone, Call&& call) {
  grpc::ClientContext context;
  phone.prepare(context);
  Reply reply;
  const absl::Status status = fromCall(call(context, reply));
  if (!status.ok()) return status;
  return reply;
}

}  // namespace

bool NetPhone::connect() const {
  for (int tries = 0; tries < kConnectTries; ++tries) {
    if (awaitConnection(*channel, kConnectWait, [] { return false; })) return true;
  }
  return false;
}

void NetPhone::prepare(grpc::ClientContext& context) const {
  context.AddMetadata("authorization", "Bearer " + token);
  setDeadline(context, kPatience);
}

absl::StatusOr<v1::OfferReply> NetPhone::offer(const v1::OfferRequest& request) const {
  return called<v1::OfferReply>(*this, [&](grpc::ClientContext& context, v1::OfferReply& reply) {
    return stub->Offer(&context, request, &reply);
  });
}

absl::StatusOr<v1::FetchReply> NetPhone::fetch(const v1::FetchRequest& request) const {
  return called<v1::FetchReply>(*this, [&](grpc::ClientContext& context, v1::FetchReply& reply) {
    return stub->Fetch(&context, request, &reply);
  });
}

std::vector<NetPhone> manyPhones(Hub& hub, const std::string& address, int count) {
  const HubContext& context = hub.context();
  std::vector<NetPhone> phones(static_cast<std::size_t>(count));
  for (NetPhone& phone : phones) {
    phone.device_id = newRecordId(*context.clock, *context.random);
    phone.person_id = newRecordId(*context.clock, *context.random);
    phone.token = toBase64Url(randomBytes(*context.random, kTokenBytes));
    phone.channel = channelTo(address, hub.clinic().certificate.certificate_pem);
    phone.stub = v1::HomeService::NewStub(phone.channel);
  }
  const absl::Status known = hub.store().write([&](HubTransaction& transaction) {
    for (const NetPhone& phone : phones) {
      transaction.putPerson(phone.person_id, {1, "invented"});
      transaction.addDevice({phone.device_id, phone.person_id, "phone", "1", sha256(phone.token),
                             context.clock->wall(), std::nullopt, false});
    }
    return absl::OkStatus();
  });
  if (!known.ok()) throw std::runtime_error(known.ToString());
  return phones;
}

}  // namespace newel::test
