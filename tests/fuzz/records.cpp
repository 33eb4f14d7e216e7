#include "tests/fuzz/records.h"

#include "core/records/check.h"

namespace newel::fuzz {
namespace {

template <typename Record>
RecordType type() {
  return {[] { return std::make_unique<Record>(); },
          [](const google::protobuf::Message& message) {
            return newel::check(static_cast<const Record&>(message));
          }};
}

}  // namespace

const std::vector<RecordType>& recordTypes() {
  static const std::vector<RecordType> kTypes = {
      type<v1::Person>(),      type<v1::Identity>(),         type<v1::ClinicCard>(),
      type<v1::Programme>(),   type<v1::HoldOrder>(),        type<v1::Practice>(),
      type<v1::JournalLine>(), type<v1::Message>(),          type<v1::Receipt>(),
      type<v1::Measure>(),     type<v1::Exercise>(),         type<v1::ExerciseWords>(),
      type<v1::OwnExercise>(), type<v1::ClinicSettings>(),   type<v1::WearFile>(),
      type<v1::Rule>(),        type<v1::ReminderBook>(),     type<v1::WearPlan>(),
      type<v1::WearBlock>(),   type<v1::ProgrammeTemplate>()};
  return kTypes;
}

}  // namespace newel::fuzz
