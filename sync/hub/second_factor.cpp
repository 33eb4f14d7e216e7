#include "sync/hub/second_factor.h"

#include "sync/common/text_codes.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/totp.h"

namespace newel {
namespace {

constexpr std::size_t kGroup = 4;

std::string inGroups(const std::string& text) {
  std::string grouped;
  for (std::size_t i = 0; i < text.size(); i += kGroup) {
    grouped += (i == 0 ? "" : " ") + text.substr(i, kGroup);
  }
  return grouped;
}

}  // namespace

absl::StatusOr<v1::BeginSecondFactorReply> beginSecondFactor(const HubContext& hub,
                                                             const AccountRow& account) {
  const std::string secret = randomBytes(*hub.random, kTotpSecretBytes);
  v1::BeginSecondFactorReply reply;
  const absl::Status begun = hub.store->write([&](HubTransaction& transaction) -> absl::Status {
    const auto known = transaction.secondFactor(account.id);
    if (known.has_value() && known->confirmed) {
      return absl::AlreadyExistsError("second factor: one is in use; whoever runs the hub can take it away");
    }
    const auto card = clinicCard(transaction);
    if (!card.ok()) return card.status();
    transaction.putSecondFactor(account.id, {secret, /*confirmed=*/false, /*last_step=*/0});
    hub.audit->add(transaction, {.action = "account.factor_begin", .who = account.id});
    reply.set_uri(totpUri(secret, card->name(), account.user_name));
    return absl::OkStatus();
  });
  if (!begun.ok()) return begun;
  reply.set_secret_text(inGroups(toBase32(secret)));
  return reply;
}

absl::Status confirmSecondFactor(HubTransaction& transaction, const std::string& account_id,
                                 const std::string& code, absl::Time now) {
  auto factor = transaction.secondFactor(account_id);
  if (!factor.has_value()) return absl::FailedPreconditionError("second factor: begin first");
  if (factor->confirmed) return absl::FailedPreconditionError("second factor: it is in use already");
  const auto step = totpStepOf(factor->secret, code, now, factor->last_step);
  if (!step.has_value()) return absl::InvalidArgumentError("code: not right; is the clock right there?");
  factor->confirmed = true;
  factor->last_step = *step;
  transaction.putSecondFactor(account_id, *factor);
  return absl::OkStatus();
}

absl::Status takeCode(HubTransaction& transaction, const std::string& account_id, const std::string& code,
                      absl::Time now, bool& in_use) {
  auto factor = transaction.secondFactor(account_id);
  in_use = factor.has_value() && factor->confirmed;
  if (!in_use) return absl::OkStatus();
  if (code.empty()) return absl::PermissionDeniedError("code: the second factor's code is needed as well");
  const auto step = totpStepOf(factor->secret, code, now, factor->last_step);
  if (!step.has_value()) {
    return absl::UnauthenticatedError("code: wrong or used already; wait for the next one");
  }
  factor->last_step = *step;
  transaction.putSecondFactor(account_id, *factor);
  return absl::OkStatus();
}

}  // namespace newel
