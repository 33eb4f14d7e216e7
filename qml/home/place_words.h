// What CLDR says and Qt 6.4 does not, through ICU: short dates and spans of days in the way of the place
// ("23–29 Nov", "٢٣–٢٩ نوفمبر"), and what a language calls itself. Not here: whole dates and times
// (phrasing.h).
#pragma once

#include <absl/time/civil_time.h>

#include <QtCore/QString>

namespace newel::home {

// In the default QLocale's language and digits.
QString spanWords(absl::CivilDay first, absl::CivilDay last);
QString shortDayWords(absl::CivilDay day);
// With the year, for spans that may lie years back.
QString yearSpanWords(absl::CivilDay first, absl::CivilDay last);

// "es": "Español"; the tag itself where it is not known.
QString ownNameOf(const QString& language);

}  // namespace newel::home
