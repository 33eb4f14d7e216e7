// Words for wearing time: what a plan asks for, what a skin sign is called, what the plan says today.
// Pure but for the translation that is installed; UI thread.
#pragma once

#include <QtCore/QString>
#include <QtCore/QVariantList>

#include "core/records/wear.pb.h"
#include "core/schedule/wear_plan.h"

namespace newel::home {

// Minutes as people say them: "45 minutes", "2 hours", "1 hour 30 minutes".
QString spanOfTimeWords(int minutes);
// "2 times 1 hour a day", "as long as you like".
QString wearStepWords(const v1::WearStep& step);
// What may be seen when it comes off, to be chosen from: maps "id" (number), "words". Nothing seen comes
// first and alone, harm last.
QVariantList skinSignRows();
QString skinSignWords(v1::SkinSign sign);
// What was seen: "nothing to see", "red, gone after 12 minutes", "a blister".
QString skinWords(const v1::SkinCheck& check);

}  // namespace newel::home
