#include "qml/home/wear_words.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QStringList>
#include <algorithm>

#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

class WearWords {
  Q_DECLARE_TR_FUNCTIONS(WearWords)

 public:
  static QString span(int minutes) {
    const int hours = minutes / 60;
    const int rest = minutes % 60;
    if (hours == 0) return minutesWords(minutes);
    const QString whole = tr("%Ln hour(s)", nullptr, hours);
    return rest == 0 ? whole : tr("%1 %2", "hours, minutes").arg(whole, minutesWords(rest));
  }

  static QString step(const v1::WearStep& step) {
    if (step.all_day()) return tr("as long as you like");
    const auto blocks = static_cast<int>(step.blocks());
    const QString one = span(static_cast<int>(step.block_min()));
    return blocks == 1 ? tr("once a day for %1").arg(one)
                       : tr("%Ln time(s) a day for %1", nullptr, blocks).arg(one);
  }

  static QString sign(v1::SkinSign sign) {
    switch (sign) {
      case v1::SKIN_SIGN_CLEAR:
        return tr("Nothing: the skin looks as always");
      case v1::SKIN_SIGN_RED:
        return tr("Red skin");
      case v1::SKIN_SIGN_NEW_BRUISE:
        return tr("A new bruise");
      case v1::SKIN_SIGN_BLISTER:
        return tr("A blister");
      case v1::SKIN_SIGN_OPEN_SKIN:
        return tr("Open skin");
      case v1::SKIN_SIGN_DRAINAGE:
        return tr("Fluid comes out");
      case v1::SKIN_SIGN_RISING_PAIN:
        return tr("Pain that grows");
      case v1::SKIN_SIGN_SWELLING:
        return tr("Swelling, or it does not go on any more");
      case v1::SKIN_SIGN_NUMB_OR_COLD:
        return tr("Numb, cold or another colour");
      case v1::SKIN_SIGN_FEVER:
        return tr("Fever");
      default:
        return {};
    }
  }

  static QString redness(const v1::Redness& redness) {
    const QString minutes = minutesWords(static_cast<int>(std::max(redness.watched_min(), 1U)));
    return redness.gone() ? tr("Red, gone after %1").arg(minutes)
                          : tr("Red, still there after %1").arg(minutes);
  }
};

}  // namespace

QString spanOfTimeWords(int minutes) { return WearWords::span(minutes); }
QString wearStepWords(const v1::WearStep& step) { return WearWords::step(step); }
QString skinSignWords(v1::SkinSign sign) { return WearWords::sign(sign); }

QVariantList skinSignRows() {
  QVariantList rows;
  for (const v1::SkinSign sign :
       {v1::SKIN_SIGN_CLEAR, v1::SKIN_SIGN_RED, v1::SKIN_SIGN_NEW_BRUISE, v1::SKIN_SIGN_BLISTER,
        v1::SKIN_SIGN_OPEN_SKIN, v1::SKIN_SIGN_DRAINAGE, v1::SKIN_SIGN_RISING_PAIN, v1::SKIN_SIGN_SWELLING,
        v1::SKIN_SIGN_NUMB_OR_COLD, v1::SKIN_SIGN_FEVER}) {
    rows << QVariantMap{{"id", static_cast<int>(sign)}, {"words", skinSignWords(sign)}};
  }
  return rows;
}

QString skinWords(const v1::SkinCheck& check) {
  QStringList words;
  for (const int sign : check.signs()) {
    const bool watched = sign == v1::SKIN_SIGN_RED && check.has_redness();
    words << (watched ? WearWords::redness(check.redness()) : skinSignWords(static_cast<v1::SkinSign>(sign)));
  }
  return words.join(QStringLiteral(", "));
}

}  // namespace newel::home
