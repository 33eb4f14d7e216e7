#include "sync/common/grpc_status.h"

#include <string>

namespace newel {
namespace {

constexpr std::size_t kLongestMessage = 2000;

// Not in the middle of a character.
std::string cut(std::string text) {
  if (text.size() <= kLongestMessage) return text;
  std::size_t end = kLongestMessage;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
  text.resize(end);
  return text;
}

}  // namespace

absl::Status fromGrpc(const grpc::Status& status) {
  if (status.ok()) return absl::OkStatus();
  return absl::Status(static_cast<absl::StatusCode>(status.error_code()), status.error_message());
}

grpc::Status toGrpc(const absl::Status& status) {
  if (status.ok()) return grpc::Status::OK;
  return grpc::Status(static_cast<grpc::StatusCode>(status.raw_code()), cut(std::string(status.message())));
}

}  // namespace newel
