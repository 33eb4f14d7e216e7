// The choices of the person form, by key, in the order they are offered.
#pragma once

#include <QtCore/QVariantMap>

#include "core/library/catalogue.h"

namespace newel::desk {

QVariantMap personFormOptions(const Catalogue& catalogue);
// Keys of the questions that an Answer answers, in the order of the page.
QStringList answerKeys();

}  // namespace newel::desk
