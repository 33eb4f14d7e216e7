#include "sync/hub/record_look.h"

#include <google/protobuf/arena.h>

#include <algorithm>
#include <future>
#include <span>
#include <thread>

#include "core/records/check.h"
#include "sync/common/content_hash.h"
#include "sync/common/limits.h"

namespace newel {
namespace {

using google::protobuf::Arena;

absl::Status refused(const std::string& reason) { return absl::InvalidArgumentError(reason); }

absl::Status checkEnvelope(const v1::Envelope& envelope) {
  if (envelope.content().size() > kMostContentBytes) return refused("content: over 1 MiB");
  if (envelope.revision() == 0) return refused("revision: is missing");
  if (sha256(envelope.content()) != envelope.sha256()) return refused("sha256: does not fit the content");
  return absl::OkStatus();
}

template <typename Record>
absl::Status read(const PhoneCaller& caller, const v1::Envelope& envelope, Record& record) {
  if (!record.ParseFromString(envelope.content())) return refused("content: not to be read");
  absl::Status good = check(record);
  if (!good.ok()) return good;
  if (record.id() != envelope.id()) return refused("id: the record has another one");
  if (record.person_id() != caller.person_id) return refused("person_id: another person");
  return absl::OkStatus();
}

// A rule that only says "not today" is recorded with the practice too, and is no emergency. One that this hub
// does not know comes from a newer phone and is taken for the worst.
bool hasRedFlag(const v1::Practice& practice, const RuleBook& rules) {
  if (practice.red_flag_rule_ids().empty()) return practice.end() == v1::PRACTICE_END_RED_FLAG;
  return std::any_of(practice.red_flag_rule_ids().begin(), practice.red_flag_rule_ids().end(),
                     [&](const std::string& id) {
                       const v1::Rule* rule = rules.rule(id);
                       return rule == nullptr || rule->effect() == v1::EFFECT_RED_FLAG;
                     });
}

absl::Status lookAtPractice(const PhoneCaller& caller, const RuleBook& rules, Arena& arena,
                            LookedAt& looked) {
  auto& practice = *Arena::CreateMessage<v1::Practice>(&arena);
  absl::Status good = read(caller, *looked.envelope, practice);
  if (!good.ok()) return good;
  if (practice.revision() != looked.envelope->revision())
    return refused("revision: the record has another one");
  looked.red_flag = hasRedFlag(practice, rules);
  return absl::OkStatus();
}

absl::Status lookAtReceipt(const PhoneCaller& caller, Arena& arena, LookedAt& looked) {
  auto& receipt = *Arena::CreateMessage<v1::Receipt>(&arena);
  absl::Status good = read(caller, *looked.envelope, receipt);
  if (!good.ok()) return good;
  ReceiptRow& row = looked.receipt.emplace();
  row.id = receipt.id();
  row.person_id = receipt.person_id();
  row.of = receipt.of();
  row.ref_id = receipt.ref_id();
  row.ref_number = receipt.ref_number();
  row.state = receipt.state();
  row.content = looked.envelope->content();
  row.sha256 = looked.envelope->sha256();
  return absl::OkStatus();
}

absl::Status lookAtMessage(const PhoneCaller& caller, Arena& arena, LookedAt& looked) {
  auto& message = *Arena::CreateMessage<v1::Message>(&arena);
  absl::Status good = read(caller, *looked.envelope, message);
  if (!good.ok()) return good;
  if (message.sender() != v1::SENDER_PERSON) return refused("sender: a phone writes for its person only");
  if (message.urgent()) return refused("urgent: is the clinic's word");
  looked.message = MessageRow{message.id(), message.person_id(), true, looked.envelope->content(),
                              looked.envelope->sha256()};
  return absl::OkStatus();
}

absl::Status lookAtWearBlock(const PhoneCaller& caller, Arena& arena, LookedAt& looked) {
  auto& block = *Arena::CreateMessage<v1::WearBlock>(&arena);
  absl::Status good = read(caller, *looked.envelope, block);
  if (!good.ok()) return good;
  if (block.revision() != looked.envelope->revision()) return refused("revision: the record has another one");
  looked.wear_block = true;
  return absl::OkStatus();
}

absl::Status lookAt(const PhoneCaller& caller, const RuleBook& rules, Arena& arena, LookedAt& looked) {
  absl::Status good = checkEnvelope(*looked.envelope);
  if (!good.ok()) return good;
  switch (looked.envelope->kind()) {
    case v1::RECORD_KIND_PRACTICE:
      return lookAtPractice(caller, rules, arena, looked);
    case v1::RECORD_KIND_RECEIPT:
      return lookAtReceipt(caller, arena, looked);
    case v1::RECORD_KIND_MESSAGE:
      return lookAtMessage(caller, arena, looked);
    case v1::RECORD_KIND_WEAR_BLOCK:
      return lookAtWearBlock(caller, arena, looked);
    default:
      return refused("kind: not from a phone");
  }
}

// Below this a thread costs about what it saves. Ours, no source.
constexpr std::size_t kWorthAThread = 32;

void lookAtThese(const PhoneCaller& caller, const v1::OfferRequest& request, const RuleBook& rules,
                 std::span<LookedAt> these, std::size_t first) {
  // One record is looked at and let go before the next: an arena that holds a whole call would be several
  // times as large as the call.
  Arena arena;
  for (std::size_t i = 0; i < these.size(); ++i) {
    these[i].envelope = &request.records(static_cast<int>(first + i));
    these[i].good = lookAt(caller, rules, arena, these[i]);
    arena.Reset();
  }
}

}  // namespace

// A phone that comes back after weeks brings a hundred at a time: a second core takes half of them.
std::vector<LookedAt> lookAtAll(const PhoneCaller& caller, const v1::OfferRequest& request,
                                const RuleBook& rules) {
  static const bool kSecondCore = std::thread::hardware_concurrency() > 1;
  std::vector<LookedAt> all(static_cast<std::size_t>(request.records_size()));
  const std::span<LookedAt> whole(all);
  const std::size_t half = kSecondCore && all.size() >= kWorthAThread ? all.size() / 2 : 0;
  const auto look = [&](std::span<LookedAt> these, std::size_t first) {
    lookAtThese(caller, request, rules, these, first);
  };
  if (half == 0) {
    look(whole, 0);
    return all;
  }
  auto other = std::async(std::launch::async, look, whole.first(half), 0);
  look(whole.subspan(half), half);
  other.get();
  return all;
}

}  // namespace newel
