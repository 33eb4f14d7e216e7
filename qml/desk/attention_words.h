// Words for the attention list: its reasons, its urgencies, the age of its figures.
#pragma once

#include <QtCore/QString>

#include "core/progress/attention.h"
#include "core/safety/rule_book.h"

namespace newel::desk {

QString reasonWords(const AttentionReason& reason, const RuleBook& rules);
QString urgencyWords(Urgency urgency);  // "Now", "Today", "Soon", "All well"
// "20 min", "never heard from".
QString figuresWords(const AttentionRow& row);

}  // namespace newel::desk
