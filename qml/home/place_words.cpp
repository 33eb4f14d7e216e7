#include "qml/home/place_words.h"

#include <absl/time/time.h>
#include <unicode/calendar.h>
#include <unicode/dtitvfmt.h>
#include <unicode/timezone.h>

#include <QtCore/QLocale>
#include <memory>

namespace newel::home {
namespace {

icu::Locale placeNow() {
  const QLocale locale;
  std::string name = locale.name().toStdString();
  // The same digits as Qt writes, whatever ICU's own data for the place say.
  name += locale.zeroDigit() == QStringLiteral("٠") ? "@numbers=arab" : "@numbers=latn";
  return icu::Locale(name.c_str());
}

UDate dateOf(absl::CivilDay day) {
  return static_cast<UDate>(absl::ToUnixMillis(absl::FromCivil(day, absl::UTCTimeZone())));
}

// Empty when ICU has no data at all.
QString formatted(const char16_t* skeleton, absl::CivilDay first, absl::CivilDay last) {
  UErrorCode status = U_ZERO_ERROR;
  const std::unique_ptr<icu::DateIntervalFormat> format(
      icu::DateIntervalFormat::createInstance(skeleton, placeNow(), status));
  if (U_FAILURE(status) || format == nullptr) return QString();
  format->adoptTimeZone(icu::TimeZone::createTimeZone("UTC"));
  const icu::DateInterval interval(dateOf(first), dateOf(last));
  icu::UnicodeString text;
  icu::FieldPosition place(icu::FieldPosition::DONT_CARE);
  format->format(&interval, text, place, status);
  if (U_FAILURE(status)) return QString();
  return QString::fromUtf16(text.getBuffer(), text.length());
}

}  // namespace

QString spanWords(absl::CivilDay first, absl::CivilDay last) { return formatted(u"MMMd", first, last); }
QString shortDayWords(absl::CivilDay day) { return formatted(u"MMMd", day, day); }
QString yearSpanWords(absl::CivilDay first, absl::CivilDay last) { return formatted(u"yMMMMd", first, last); }

QString ownNameOf(const QString& language) {
  const icu::Locale locale(language.toUtf8().constData());
  icu::UnicodeString name;
  locale.getDisplayLanguage(locale, name);
  // CLDR writes it as in the middle of a sentence; here it stands alone.
  if (name.length() > 0) name.replace(0, 1, icu::UnicodeString(name, 0, 1).toUpper(locale));
  return QString::fromUtf16(name.getBuffer(), name.length());
}

}  // namespace newel::home
