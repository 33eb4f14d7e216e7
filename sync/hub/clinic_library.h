// What a clinic adds to the catalogue and to the rules: its own exercises, its templates and its settings.
// Not here: what a programme carries of them (prescriptions.h).
#pragma once

#include <absl/status/statusor.h>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// More than anybody looks through; all of them go to a desk in one answer. Ours, no source.
inline constexpr int kMostTemplates = 200;

// Thread-safe.
class ClinicLibrary {
 public:
  explicit ClinicLibrary(const HubContext* hub) : m_hub(hub) {}

  absl::StatusOr<v1::ListOwnExercisesReply> ownExercises();
  // kAborted: base_revision is not the latest. kInvalidArgument names the field.
  absl::StatusOr<v1::PutOwnExerciseReply> putOwnExercise(const DeskCaller& caller,
                                                         const v1::PutOwnExerciseRequest& request);
  absl::StatusOr<v1::ListTemplatesReply> templates();
  // kAborted, kInvalidArgument as above; kResourceExhausted: the clinic has kMostTemplates of them.
  absl::StatusOr<v1::PutTemplateReply> putTemplate(const DeskCaller& caller,
                                                   const v1::PutTemplateRequest& request);
  // kNotFound: none of that id is there. kAborted as above.
  absl::StatusOr<v1::WithdrawTemplateReply> withdrawTemplate(const DeskCaller& caller,
                                                             const v1::WithdrawTemplateRequest& request);
  absl::StatusOr<v1::GetSettingsReply> settings();
  // Who may is for the caller to know (accounts.h). kAborted, kInvalidArgument as above.
  absl::StatusOr<v1::PutSettingsReply> putSettings(const DeskCaller& caller,
                                                   const v1::PutSettingsRequest& request);

 private:
  const HubContext* m_hub;
};

// The clinic's card as it is now, settings included.
absl::StatusOr<v1::ClinicCard> clinicCard(HubTransaction& transaction);
absl::StatusOr<v1::ClinicCard> clinicCard(HubStore& store);

// The own exercises that the entries of `programme` name, each once. kInvalidArgument names the entry whose
// exercise or revision the clinic does not have.
absl::StatusOr<std::vector<v1::OwnExercise>> ownExercisesOf(HubTransaction& transaction,
                                                            const v1::Programme& programme);

}  // namespace newel
