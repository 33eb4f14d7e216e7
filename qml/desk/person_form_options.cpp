#include "qml/desk/person_form_options.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QLocale>

#include "core/records/person.pb.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

QVariantMap option(const QVariant& value, const QString& text) {
  return {{QStringLiteral("value"), value}, {QStringLiteral("text"), text}};
}

template <typename Value>
QVariantList optionsOf(std::initializer_list<Value> values) {
  QVariantList list;
  for (const Value value : values) list << option(static_cast<int>(value), print::words(value));
  return list;
}

QVariantList conditionOptions() {
  QVariantList list;
  for (int value = v1::Condition_MIN + 1; value <= v1::Condition_MAX; ++value) {
    list << option(value, print::words(static_cast<v1::Condition>(value)));
  }
  return list;
}

}  // namespace

QStringList answerKeys() {
  return {QStringLiteral("can_get_up_from_floor"), QStringLiteral("home.ramp"),
          QStringLiteral("home.rolling_chair"),    QStringLiteral("home.counter"),
          QStringLiteral("home.floor_space"),      QStringLiteral("home.someone_near"),
          QStringLiteral("senses.low_vision"),     QStringLiteral("senses.hard_of_hearing")};
}

QVariantMap personFormOptions(const Catalogue& catalogue) {
  QVariantMap options;
  options[QStringLiteral("lost")] =
      QVariantList{option(1, QCoreApplication::translate("PersonForm", "left")),
                   option(2, QCoreApplication::translate("PersonForm", "right")),
                   option(3, QCoreApplication::translate("PersonForm", "both"))};
  const QVariantList levels =
      optionsOf({v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT, v1::LIMB_LOSS_LEVEL_ANKLE_DISARTICULATION,
                 v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION,
                 v1::LIMB_LOSS_LEVEL_TRANSFEMORAL, v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION});
  const QVariantList knees =
      optionsOf({v1::KNEE_KIND_LOCKED, v1::KNEE_KIND_MECHANICAL, v1::KNEE_KIND_YIELDING});
  const QVariantList feet = optionsOf({v1::FOOT_KIND_FIXED_ANKLE, v1::FOOT_KIND_MOVING_ANKLE,
                                       v1::FOOT_KIND_ENERGY_STORING, v1::FOOT_KIND_NOT_KNOWN});
  const QVariantList owns =
      QVariantList{option(v1::ANSWER_YES, QCoreApplication::translate("PersonForm", "yes")),
                   option(v1::ANSWER_NO, QCoreApplication::translate("PersonForm", "no, none yet"))};
  for (const QString& side : {QStringLiteral("left"), QStringLiteral("right")}) {
    options[side + QStringLiteral(".level")] = levels;
    options[side + QStringLiteral(".knee")] = knees;
    options[side + QStringLiteral(".foot")] = feet;
    options[side + QStringLiteral(".prosthesis")] = owns;
  }
  options[QStringLiteral("strong_side")] = optionsOf({v1::SIDE_LEFT, v1::SIDE_RIGHT});
  options[QStringLiteral("mobility")] =
      optionsOf({v1::MOBILITY_LEVEL_K0, v1::MOBILITY_LEVEL_K1, v1::MOBILITY_LEVEL_K2, v1::MOBILITY_LEVEL_K3,
                 v1::MOBILITY_LEVEL_K4});
  options[QStringLiteral("walking_aid")] =
      optionsOf({v1::WALKING_AID_NONE, v1::WALKING_AID_ONE_CANE, v1::WALKING_AID_TWO_CANES,
                 v1::WALKING_AID_CRUTCHES, v1::WALKING_AID_WALKER});
  options[QStringLiteral("home.rails")] =
      optionsOf({v1::RAILS_BOTH, v1::RAILS_LEFT_GOING_UP, v1::RAILS_RIGHT_GOING_UP, v1::RAILS_NONE,
                 v1::RAILS_NO_STAIRS, v1::RAILS_NOT_KNOWN});
  for (const QString& key : answerKeys()) {
    options[key] = optionsOf({v1::ANSWER_YES, v1::ANSWER_NO, v1::ANSWER_NOT_KNOWN});
  }
  options[QStringLiteral("conditions")] = conditionOptions();
  QVariantList languages;
  for (const auto& language : catalogue.languages()) {
    const QString code = print::text(language);
    languages << option(code, QLocale::languageToString(QLocale(code).language()));
  }
  options[QStringLiteral("language")] = languages;
  return options;
}

}  // namespace newel::desk
