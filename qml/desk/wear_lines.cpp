#include "qml/desk/wear_lines.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QStringList>

#include "core/time/local_day.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

class WearLines {
  Q_DECLARE_TR_FUNCTIONS(WearLines)

 public:
  static QString sign(int sign) {
    switch (sign) {
      case v1::SKIN_SIGN_CLEAR:
        return tr("nothing seen");
      case v1::SKIN_SIGN_RED:
        return tr("red");
      case v1::SKIN_SIGN_OPEN_SKIN:
        return tr("open skin");
      case v1::SKIN_SIGN_BLISTER:
        return tr("blister");
      case v1::SKIN_SIGN_DRAINAGE:
        return tr("drainage");
      case v1::SKIN_SIGN_NEW_BRUISE:
        return tr("new bruise");
      case v1::SKIN_SIGN_RISING_PAIN:
        return tr("rising pain");
      case v1::SKIN_SIGN_SWELLING:
        return tr("swelling");
      case v1::SKIN_SIGN_FEVER:
        return tr("fever");
      case v1::SKIN_SIGN_NUMB_OR_COLD:
        return tr("numb or cold");
      default:
        return tr("a sign of a newer program");
    }
  }

  static QString verdict(SkinVerdict verdict) {
    switch (verdict) {
      case SkinVerdict::NotLooked:
        return tr("skin not looked at");
      case SkinVerdict::Watching:
        return tr("red, not yet known whether it went");
      case SkinVerdict::Clear:
        return tr("clear");
      case SkinVerdict::TooRed:
        return tr("red for too long");
      case SkinVerdict::Harm:
        return tr("a sign of harm");
    }
    return {};
  }

  static QString line(const v1::WearBlock& block, SkinVerdict verdict_of, absl::TimeZone zone) {
    const auto clock = [zone](const google::protobuf::Timestamp& at) {
      return print::text(absl::FormatTime("%H:%M", toTime(at), zone));
    };
    if (!block.has_taken_off_at()) return tr("%1 put on, not taken off yet").arg(clock(block.put_on_at()));
    const std::uint32_t minutes = wornMinutes(block);
    QString words =
        tr("%1 to %2, %3 min.").arg(clock(block.put_on_at()), clock(block.taken_off_at())).arg(minutes);
    QStringList signs;
    for (const int one : block.check().signs()) signs << sign(one);
    if (block.check().has_redness()) {
      signs << (block.check().redness().gone()
                    ? tr("gone after %1 min").arg(block.check().redness().watched_min())
                    : tr("still red after %1 min").arg(block.check().redness().watched_min()));
    }
    words += QStringLiteral(" ") +
             (signs.isEmpty() ? verdict(verdict_of)
                              : tr("%1: %2").arg(signs.join(QStringLiteral(", ")), verdict(verdict_of)));
    if (block.origin() == v1::ORIGIN_TOLD_LATER) words += QStringLiteral(". ") + tr("Told later, not timed");
    return words;
  }
};

}  // namespace

QString wearWords(const v1::WearBlock& block, SkinVerdict verdict, absl::TimeZone zone) {
  return WearLines::line(block, verdict, zone);
}

}  // namespace newel::desk
