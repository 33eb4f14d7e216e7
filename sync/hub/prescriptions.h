// Programmes and hold orders: looked at again with the same rules as the desk's, numbered, signed, kept,
// sent.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// Thread-safe.
class Prescriptions {
 public:
  explicit Prescriptions(const HubContext* hub) : m_hub(hub) {}

  // desk_service.proto says what each error means. The same draft with the same base sent again gives the
  // programme that is there already.
  absl::StatusOr<v1::SignProgrammeReply> sign(const DeskCaller& caller,
                                              const v1::SignProgrammeRequest& request);
  absl::StatusOr<v1::ListProgrammesReply> programmes(const std::string& person_id);

  // kNotFound: no such person or order to lift. kFailedPrecondition: it is lifted already, or holds nothing.
  // kAlreadyExists: the id has another order; the same one again gives the order that is there.
  // On the disk and on its way to every phone that listens when it returns.
  absl::StatusOr<v1::IssueHoldReply> issueHold(const DeskCaller& caller, const v1::IssueHoldRequest& request);
  absl::StatusOr<v1::ListHoldsReply> holds(const std::string& person_id);

 private:
  struct Basis {  // what a draft is looked at against
    v1::Person person;
    std::optional<v1::Programme> last;
    std::vector<v1::OwnExercise> own;  // that the draft's entries name
    v1::ClinicSettings settings;
  };
  absl::StatusOr<Basis> basisFor(const v1::Programme& draft);
  static std::vector<v1::OwnExercise> withLast(const Basis& basis);
  absl::StatusOr<std::vector<v1::Finding>> findings(const v1::Programme& draft, const Basis& basis) const;
  absl::StatusOr<std::optional<v1::Programme>> signedBefore(const v1::SignProgrammeRequest& request,
                                                            SignedRow& row);
  absl::Status keepProgramme(HubTransaction& transaction, const DeskCaller& caller, std::uint32_t base_number,
                             v1::Programme& programme, SignedRow& row);
  absl::Status keepHold(HubTransaction& transaction, const DeskCaller& caller, v1::HoldOrder& order,
                        SignedRow& row);

  const HubContext* m_hub;
};

}  // namespace newel
