// The fields of a dose as the editor's steppers see them: key, label, unit and the bounds of exercise.proto.
#pragma once

#include <QtCore/QVariantMap>

#include "core/records/exercise.pb.h"

namespace newel::desk {

QVariantList doseFields(const v1::Dose& dose);  // {key, label, unit, from, to, step}
QVariantMap doseValues(const v1::Dose& dose);
// Keys the dose's kind does not have change nothing.
void setDoseValue(v1::Dose& dose, const QString& key, std::uint32_t value);

}  // namespace newel::desk
