#include "qml/desk/dose_fields.h"

#include <google/protobuf/message.h>

#include <QtCore/QCoreApplication>

namespace newel::desk {
namespace {

struct Field {
  const char* key;  // the field's name in exercise.proto
  const char* label;
  const char* unit;
  int from;
  int to;
  int step;
};

constexpr Field kSets[] = {
    {"sets", QT_TRANSLATE_NOOP("DoseFields", "Sets"), "", 1, 10, 1},
    {"repetitions", QT_TRANSLATE_NOOP("DoseFields", "Repetitions"), "", 1, 60, 1},
    {"hold_s", QT_TRANSLATE_NOOP("DoseFields", "Hold seconds"), "s", 0, 120, 1},
    {"move_s", QT_TRANSLATE_NOOP("DoseFields", "Seconds out"), "s", 1, 20, 1},
    {"return_s", QT_TRANSLATE_NOOP("DoseFields", "Seconds back"), "s", 1, 20, 1},
    {"repetition_rest_s", QT_TRANSLATE_NOOP("DoseFields", "Seconds between"), "s", 0, 60, 1},
    {"rest_s", QT_TRANSLATE_NOOP("DoseFields", "Rest between sets"), "s", 0, 300, 15}};
constexpr Field kMinutes[] = {{"minutes", QT_TRANSLATE_NOOP("DoseFields", "Minutes"), "min", 1, 60, 1},
                              {"bouts", QT_TRANSLATE_NOOP("DoseFields", "Times in a row"), "", 1, 6, 1},
                              {"rest_s", QT_TRANSLATE_NOOP("DoseFields", "Rest between"), "s", 0, 600, 15}};
constexpr Field kPasses[] = {
    {"passes", QT_TRANSLATE_NOOP("DoseFields", "Times there and back"), "", 1, 30, 1},
    {"distance_m", QT_TRANSLATE_NOOP("DoseFields", "Metres one way"), "m", 1, 200, 1},
    {"step_count", QT_TRANSLATE_NOOP("DoseFields", "Steps one way"), "", 1, 40, 1},
    {"step_s", QT_TRANSLATE_NOOP("DoseFields", "Seconds a step"), "s", 1, 10, 1},
    {"rest_s", QT_TRANSLATE_NOOP("DoseFields", "Rest between"), "s", 0, 300, 15}};

template <std::size_t Size>
QVariantList listOf(const Field (&fields)[Size], const google::protobuf::Message& dose) {
  QVariantList list;
  for (const Field& field : fields) {
    const auto* known = dose.GetDescriptor()->FindFieldByName(field.key);
    // Of a length only the kind that is set has a stepper.
    if (known->containing_oneof() != nullptr && !dose.GetReflection()->HasField(dose, known)) continue;
    list << QVariantMap{{QStringLiteral("key"), QString::fromLatin1(field.key)},
                        {QStringLiteral("label"), QCoreApplication::translate("DoseFields", field.label)},
                        {QStringLiteral("unit"), QString::fromLatin1(field.unit)},
                        {QStringLiteral("from"), field.from},
                        {QStringLiteral("to"), field.to},
                        {QStringLiteral("step"), field.step}};
  }
  return list;
}

google::protobuf::Message* kindOf(v1::Dose& dose) {
  if (dose.has_sets()) return dose.mutable_sets();
  if (dose.has_minutes()) return dose.mutable_minutes();
  return dose.has_passes() ? dose.mutable_passes() : nullptr;
}

}  // namespace

QVariantList doseFields(const v1::Dose& dose) {
  if (dose.has_sets()) return listOf(kSets, dose.sets());
  if (dose.has_minutes()) return listOf(kMinutes, dose.minutes());
  if (dose.has_passes()) return listOf(kPasses, dose.passes());
  return {};
}

QVariantMap doseValues(const v1::Dose& dose) {
  v1::Dose copy = dose;
  QVariantMap values;
  const google::protobuf::Message* kind = kindOf(copy);
  if (kind == nullptr) return values;
  for (const QVariant& field : doseFields(dose)) {
    const QString key = field.toMap().value(QStringLiteral("key")).toString();
    const auto* known = kind->GetDescriptor()->FindFieldByName(key.toStdString());
    values[key] = kind->GetReflection()->GetUInt32(*kind, known);
  }
  return values;
}

void setDoseValue(v1::Dose& dose, const QString& key, std::uint32_t value) {
  google::protobuf::Message* kind = kindOf(dose);
  if (kind == nullptr) return;
  const auto* known = kind->GetDescriptor()->FindFieldByName(key.toStdString());
  if (known != nullptr) kind->GetReflection()->SetUInt32(kind, known, value);
}

}  // namespace newel::desk
