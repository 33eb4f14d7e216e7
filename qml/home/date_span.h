// Short dates and spans of days in the way of the place ("23 – 29 Nov", "٢٣–٢٩ نوفمبر"), from CLDR through ICU:
// Qt 6.4 has neither spans nor dates without a year. Not here: whole dates and times (phrasing.h).
#pragma once

#include <absl/time/civil_time.h>

#include <QtCore/QString>

namespace newel::home {

// In the default QLocale's language and digits.
QString spanWords(absl::CivilDay first, absl::CivilDay last);
QString shortDayWords(absl::CivilDay day);
// With the year, for spans that may lie years back.
QString yearSpanWords(absl::CivilDay first, absl::CivilDay last);

}  // namespace newel::home
