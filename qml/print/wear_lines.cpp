#include "qml/print/wear_lines.h"

#include <QtCore/QStringList>

#include "core/time/local_day.h"
#include "qml/print/record_words.h"
#include "qml/print/sheet_language.h"

namespace newel::print {
namespace {

class WearLines {
 public:
  static QString sign(int sign) {
    switch (sign) {
      case v1::SKIN_SIGN_CLEAR:
        return sheetWords("WearLines", "nothing seen");
      case v1::SKIN_SIGN_RED:
        return sheetWords("WearLines", "red");
      case v1::SKIN_SIGN_OPEN_SKIN:
        return sheetWords("WearLines", "open skin");
      case v1::SKIN_SIGN_BLISTER:
        return sheetWords("WearLines", "blister");
      case v1::SKIN_SIGN_DRAINAGE:
        return sheetWords("WearLines", "drainage");
      case v1::SKIN_SIGN_NEW_BRUISE:
        return sheetWords("WearLines", "new bruise");
      case v1::SKIN_SIGN_RISING_PAIN:
        return sheetWords("WearLines", "rising pain");
      case v1::SKIN_SIGN_SWELLING:
        return sheetWords("WearLines", "swelling");
      case v1::SKIN_SIGN_FEVER:
        return sheetWords("WearLines", "fever");
      case v1::SKIN_SIGN_NUMB_OR_COLD:
        return sheetWords("WearLines", "numb or cold");
      default:
        return sheetWords("WearLines", "a sign of a newer program");
    }
  }

  static QString verdict(SkinVerdict verdict) {
    switch (verdict) {
      case SkinVerdict::NotLooked:
        return sheetWords("WearLines", "skin not looked at");
      case SkinVerdict::Watching:
        return sheetWords("WearLines", "red, not yet known whether it went");
      case SkinVerdict::Clear:
        return sheetWords("WearLines", "clear");
      case SkinVerdict::TooRed:
        return sheetWords("WearLines", "red for too long");
      case SkinVerdict::Harm:
        return sheetWords("WearLines", "a sign of harm");
    }
    return {};
  }

  static QString line(const v1::WearBlock& block, SkinVerdict verdict_of, absl::TimeZone zone) {
    const auto clock = [zone](const google::protobuf::Timestamp& at) {
      return text(absl::FormatTime("%H:%M", toTime(at), zone));
    };
    if (!block.has_taken_off_at())
      return sheetWords("WearLines", "%1 put on, not taken off yet").arg(clock(block.put_on_at()));
    const std::uint32_t minutes = wornMinutes(block);
    QString words = sheetWords("WearLines", "%1 to %2, %3 min.")
                        .arg(clock(block.put_on_at()), clock(block.taken_off_at()))
                        .arg(minutes);
    QStringList signs;
    for (const int one : block.check().signs()) signs << sign(one);
    if (block.check().has_redness()) {
      signs << (block.check().redness().gone()
                    ? sheetWords("WearLines", "gone after %1 min").arg(block.check().redness().watched_min())
                    : sheetWords("WearLines", "still red after %1 min")
                          .arg(block.check().redness().watched_min()));
    }
    words +=
        QStringLiteral(" ") +
        (signs.isEmpty()
             ? verdict(verdict_of)
             : sheetWords("WearLines", "%1: %2").arg(signs.join(QStringLiteral(", ")), verdict(verdict_of)));
    if (block.origin() == v1::ORIGIN_TOLD_LATER)
      words += QStringLiteral(". ") + sheetWords("WearLines", "Told later, not timed");
    return words;
  }
};

}  // namespace

QString wearWords(const v1::WearBlock& block, SkinVerdict verdict, absl::TimeZone zone) {
  return WearLines::line(block, verdict, zone);
}

}  // namespace newel::print
