#include "sync/hub/clinic_library.h"

#include <set>
#include <utility>

#include "core/library/own_exercises.h"
#include "core/library/settings.h"
#include "core/records/check.h"
#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/media_clean.h"
#include "sync/hub/backup.h"

namespace newel {
namespace {

absl::Status tooOld(std::uint64_t latest) {
  return absl::AbortedError("base_revision: revision " + std::to_string(latest) + " is the latest");
}

absl::Status addAll(HubTransaction& transaction, v1::ListOwnExercisesReply& reply) {
  for (const VersionedRow& row : transaction.ownExercises()) {
    if (!reply.add_exercises()->ParseFromString(row.content))
      return absl::DataLossError("own exercise: not to be read");
  }
  return absl::OkStatus();
}

// Whatever the desk did to it: nothing of where or when it was taken is kept.
absl::Status cleanPicture(v1::OwnExercise& own) {
  if (own.picture().empty()) return absl::OkStatus();
  auto clean = cleanMedia(own.picture());
  if (!clean.ok()) return absl::InvalidArgumentError("picture: " + std::string(clean.status().message()));
  own.set_picture(std::move(clean->content));
  return absl::OkStatus();
}

}  // namespace

absl::StatusOr<v1::ClinicCard> clinicCard(HubTransaction& transaction) {
  v1::ClinicCard card;
  if (!card.ParseFromString(transaction.setting("card")))
    return absl::DataLossError("clinic card: not to be read");
  return card;
}

absl::StatusOr<v1::ClinicCard> clinicCard(HubStore& store) {
  absl::StatusOr<v1::ClinicCard> card = v1::ClinicCard();
  const absl::Status read = store.read([&](HubTransaction& transaction) {
    card = clinicCard(transaction);
    return card.status();
  });
  if (!read.ok()) return read;
  return card;
}

absl::StatusOr<std::vector<v1::OwnExercise>> ownExercisesOf(HubTransaction& transaction,
                                                            const v1::Programme& programme) {
  std::vector<v1::OwnExercise> list;
  std::set<std::pair<std::string, std::uint32_t>> taken;
  for (int i = 0; i < programme.entries_size(); ++i) {
    const v1::Entry& entry = programme.entries(i);
    if (!isOwnExerciseId(entry.exercise_id())) continue;
    if (!taken.insert({entry.exercise_id(), entry.exercise_revision()}).second) continue;
    const auto row = transaction.ownExercise(entry.exercise_id(), entry.exercise_revision());
    v1::OwnExercise own;
    if (!row.has_value() || !own.ParseFromString(row->content)) {
      return absl::InvalidArgumentError("entries[" + std::to_string(i) +
                                        "].exercise_id: the clinic has no such exercise and revision");
    }
    list.push_back(std::move(own));
  }
  return list;
}

absl::StatusOr<v1::ListOwnExercisesReply> ClinicLibrary::ownExercises() {
  v1::ListOwnExercisesReply reply;
  const absl::Status read =
      m_hub->store->read([&](HubTransaction& transaction) { return addAll(transaction, reply); });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::PutOwnExerciseReply> ClinicLibrary::putOwnExercise(
    const DeskCaller& caller, const v1::PutOwnExerciseRequest& request) {
  v1::OwnExercise own = request.exercise();
  own.set_clinic_id(m_hub->clinic->card.clinic_id());
  own.set_author_id(caller.therapist.id());
  own.set_author_name(caller.therapist.display_name());
  *own.mutable_written_at() = toTimestamp(m_hub->clock->wall());
  own.mutable_exercise()->set_revision(request.base_revision() + 1);
  for (auto& words : *own.mutable_words()) words.set_exercise_revision(request.base_revision() + 1);
  absl::Status good = checkOwn(own, *m_hub->catalogue);
  if (good.ok()) good = cleanPicture(own);
  if (!good.ok()) return good;
  const std::string& id = own.exercise().id();
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    const std::uint64_t latest = transaction.latestOwnRevision(id);
    if (latest != request.base_revision()) return tooOld(latest);
    transaction.addOwnExercise(id, {latest + 1, toBytes(own)});
    m_hub->audit->add(transaction, {.action = "exercise.write", .who = caller.therapist.id(), .record = id});
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgeDesks("");
  v1::PutOwnExerciseReply reply;
  *reply.mutable_exercise() = std::move(own);
  return reply;
}

absl::StatusOr<v1::GetSettingsReply> ClinicLibrary::settings() {
  v1::GetSettingsReply reply;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) -> absl::Status {
    auto card = clinicCard(transaction);
    if (!card.ok()) return card.status();
    *reply.mutable_clinic() = *std::move(card);
    if (const auto at = lastBackup(transaction)) *reply.mutable_backup()->mutable_last() = toTimestamp(*at);
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  reply.mutable_backup()->set_by_database(m_hub->store->copiedByDatabase());
  return reply;
}

absl::StatusOr<v1::PutSettingsReply> ClinicLibrary::putSettings(const DeskCaller& caller,
                                                                const v1::PutSettingsRequest& request) {
  v1::ClinicSettings settings;
  settings.set_clinic_id(m_hub->clinic->card.clinic_id());
  settings.set_revision(request.base_revision() + 1);
  *settings.mutable_values() = request.values();
  absl::Status good = check(settings);
  if (good.ok()) good = fitsSettings(settings, *m_hub->catalogue);
  if (!good.ok()) return good;
  v1::PutSettingsReply reply;
  const absl::Status kept = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    auto card = clinicCard(transaction);
    if (!card.ok()) return card.status();
    if (card->settings().revision() != request.base_revision()) return tooOld(card->settings().revision());
    *card->mutable_settings() = settings;
    const std::string bytes = toBytes(*card);
    transaction.putSetting("card", bytes);
    commitToFeed(transaction, *m_hub, "",
                 makeEnvelope(v1::RECORD_KIND_CLINIC_CARD, card->clinic_id(),
                              static_cast<std::uint32_t>(settings.revision() + 1), bytes),
                 /*replace=*/true);
    m_hub->audit->add(transaction, {.action = "settings.change", .who = caller.therapist.id()});
    *reply.mutable_clinic() = *std::move(card);
    return absl::OkStatus();
  });
  if (!kept.ok()) return kept;
  m_hub->board->nudgePerson("");  // everybody
  m_hub->board->nudgeDesks("");
  return reply;
}

}  // namespace newel
