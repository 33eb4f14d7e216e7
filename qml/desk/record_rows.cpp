#include <QtCore/QCoreApplication>

#include "qml/desk/person_model.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

using print::words;

class Rows {
 public:
  void add(const QString& label, const QString& value, bool missing = false) {
    m_rows << QVariantMap{{QStringLiteral("label"), label},
                          {QStringLiteral("value"), value},
                          {QStringLiteral("missing"), missing}};
  }
  void answer(const QString& label, v1::Answer answer) {
    add(label, words(answer), answer == v1::ANSWER_UNSPECIFIED || answer == v1::ANSWER_NOT_KNOWN);
  }
  QVariantList take() { return std::move(m_rows); }

 private:
  QVariantList m_rows;
};

void addLimbs(const v1::Person& person, Rows& rows) {
  for (const auto& limb : person.limbs()) {
    const QString side = words(limb.side());
    rows.add(QCoreApplication::translate("RecordRows", "Lost, %1").arg(side), words(limb.level()));
    rows.add(QCoreApplication::translate("RecordRows", "Prosthesis, %1").arg(side),
             limb.has_prosthesis() ? QCoreApplication::translate("RecordRows", "knee: %1; foot: %2")
                                         .arg(words(limb.knee()), words(limb.foot()))
                                   : QCoreApplication::translate("RecordRows", "none"),
             limb.foot() == v1::FOOT_KIND_NOT_KNOWN);
  }
  if (person.limbs_size() == 2) {
    rows.add(QCoreApplication::translate("RecordRows", "Goes first on stairs"), words(person.strong_side()),
             person.strong_side() == v1::SIDE_UNSPECIFIED);
  }
}

}  // namespace

QVariantList recordRows(const v1::Person& person, const v1::Identity& identity) {
  Rows rows;
  addLimbs(person, rows);
  rows.add(QCoreApplication::translate("RecordRows", "Mobility level"), words(person.mobility()));
  QStringList conditions;
  for (const int condition : person.conditions()) conditions << words(static_cast<v1::Condition>(condition));
  rows.add(QCoreApplication::translate("RecordRows", "Conditions"),
           conditions.isEmpty() ? QCoreApplication::translate("RecordRows", "asked, none of the list")
                                : conditions.join(QStringLiteral(", ")));
  rows.add(QCoreApplication::translate("RecordRows", "Walking aid"), words(person.walking_aid()));
  rows.answer(QCoreApplication::translate("RecordRows", "Gets up from the floor"),
              person.can_get_up_from_floor());
  const auto& home = person.home();
  rows.add(QCoreApplication::translate("RecordRows", "Stairs at home"), words(home.rails()),
           home.rails() == v1::RAILS_NOT_KNOWN);
  rows.answer(QCoreApplication::translate("RecordRows", "Ramp"), home.ramp());
  rows.add(QCoreApplication::translate("RecordRows", "Sturdy chairs"), QString::number(home.sturdy_chairs()));
  rows.answer(QCoreApplication::translate("RecordRows", "Chair on wheels"), home.rolling_chair());
  rows.answer(QCoreApplication::translate("RecordRows", "Worktop or heavy table"), home.counter());
  rows.answer(QCoreApplication::translate("RecordRows", "Room on the floor"), home.floor_space());
  rows.answer(QCoreApplication::translate("RecordRows", "Someone near"), home.someone_near());
  rows.answer(QCoreApplication::translate("RecordRows", "Low vision"), person.senses().low_vision());
  rows.answer(QCoreApplication::translate("RecordRows", "Hard of hearing"),
              person.senses().hard_of_hearing());
  rows.add(QCoreApplication::translate("RecordRows", "Height"),
           QCoreApplication::translate("RecordRows", "%1 cm").arg(person.height_cm()));
  rows.add(QCoreApplication::translate("RecordRows", "Language, zone"),
           QCoreApplication::translate("RecordRows", "%1, %2")
               .arg(print::text(person.language()), print::text(person.zone())));
  if (!identity.birth_date().empty())
    rows.add(QCoreApplication::translate("RecordRows", "Born"), print::dayWords(identity.birth_date()));
  if (!identity.phone().empty())
    rows.add(QCoreApplication::translate("RecordRows", "Phone"), print::text(identity.phone()));
  return rows.take();
}

}  // namespace newel::desk
