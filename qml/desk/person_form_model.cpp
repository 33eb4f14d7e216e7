#include "qml/desk/person_form_model.h"

#include <QtCore/QRegularExpression>

#include "core/records/check.h"
#include "qml/desk/person_form_options.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "sync/common/record_id.h"

namespace newel::desk {
namespace {

const QString kConditions = QStringLiteral("conditions");
const QString kNoConditions = QStringLiteral("no_conditions");
const QString kLost = QStringLiteral("lost");

QString keyOf(v1::Side side) {
  return side == v1::SIDE_LEFT ? QStringLiteral("left") : QStringLiteral("right");
}

bool kneeLost(int level) { return level >= v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION; }

}  // namespace

PersonFormModel::PersonFormModel(DeskContext& context, QObject* parent)
    : QObject(parent), m_context(context), m_options(personFormOptions(*context.catalogue)) {}

QString PersonFormModel::title() const {
  if (isNew()) return tr("New person");
  return tr("Record of %1").arg(print::fullName(m_base_identity));
}

void PersonFormModel::beginNew() {
  m_base_person = v1::Person();
  m_base_identity = v1::Identity();
  m_base_revision = 0;
  m_base_person.set_id(newRecordId(*m_context.clock, *m_context.random));
  m_values = {{QStringLiteral("language"), print::text(m_context.language)},
              {QStringLiteral("zone"), print::text(m_context.zone_name)},
              {QStringLiteral("home.sturdy_chairs"), 0},
              {QStringLiteral("height_cm"), 0}};
  m_problems.clear();
  m_problem.clear();
  m_saving = false;
  emit valuesChanged();
  emit problemsChanged();
}

void PersonFormModel::take(const v1::Identity& identity, const v1::Person& person) {
  const auto put = [this](const QString& key, const std::string& value) {
    if (!value.empty()) set(key, print::text(value));
  };
  put(QStringLiteral("given_name"), identity.given_name());
  put(QStringLiteral("family_name"), identity.family_name());
  put(QStringLiteral("birth_date"), identity.birth_date());
  put(QStringLiteral("phone"), identity.phone());
  // A language that no catalogue is in is left to choose.
  for (const QVariant& option : m_options.value(QStringLiteral("language")).toList()) {
    const QString offered = option.toMap().value(QStringLiteral("value")).toString();
    if (offered.toStdString() == person.language()) set(QStringLiteral("language"), offered);
  }
}

void PersonFormModel::beginChange(const PersonFile& file) {
  m_base_person = file.person;
  m_base_identity = file.identity;
  m_base_revision = file.person.revision();
  m_problems.clear();
  m_problem.clear();
  m_saving = false;
  const v1::Person& person = file.person;
  m_values = {{QStringLiteral("given_name"), print::text(file.identity.given_name())},
              {QStringLiteral("family_name"), print::text(file.identity.family_name())},
              {QStringLiteral("birth_date"), print::text(file.identity.birth_date())},
              {QStringLiteral("phone"), print::text(file.identity.phone())},
              {QStringLiteral("mobility"), person.mobility()},
              {QStringLiteral("walking_aid"), person.walking_aid()},
              {QStringLiteral("home.rails"), person.home().rails()},
              {QStringLiteral("home.ramp"), person.home().ramp()},
              {QStringLiteral("home.sturdy_chairs"), person.home().sturdy_chairs()},
              {QStringLiteral("home.rolling_chair"), person.home().rolling_chair()},
              {QStringLiteral("home.counter"), person.home().counter()},
              {QStringLiteral("home.floor_space"), person.home().floor_space()},
              {QStringLiteral("home.someone_near"), person.home().someone_near()},
              {QStringLiteral("can_get_up_from_floor"), person.can_get_up_from_floor()},
              {QStringLiteral("senses.low_vision"), person.senses().low_vision()},
              {QStringLiteral("senses.hard_of_hearing"), person.senses().hard_of_hearing()},
              {QStringLiteral("language"), print::text(person.language())},
              {QStringLiteral("zone"), print::text(person.zone())},
              {QStringLiteral("height_cm"), person.height_cm()},
              {QStringLiteral("strong_side"), person.strong_side()},
              {kNoConditions, person.conditions().empty()}};
  QVariantList conditions;
  for (const int condition : person.conditions()) conditions << condition;
  m_values[kConditions] = conditions;
  int lost = 0;
  for (const auto& limb : person.limbs()) {
    const QString side = keyOf(limb.side());
    lost |= limb.side() == v1::SIDE_LEFT ? 1 : 2;
    m_values[side + QStringLiteral(".level")] = limb.level();
    m_values[side + QStringLiteral(".knee")] = limb.knee();
    m_values[side + QStringLiteral(".foot")] = limb.foot();
    m_values[side + QStringLiteral(".prosthesis")] = limb.has_prosthesis() ? v1::ANSWER_YES : v1::ANSWER_NO;
  }
  m_values[kLost] = lost;
  emit valuesChanged();
  emit problemsChanged();
}

void PersonFormModel::set(const QString& key, const QVariant& value) {
  if (m_values.value(key) == value) return;
  m_values[key] = value;
  if (key == kNoConditions && value.toBool()) m_values[kConditions] = QVariantList();
  if (key.startsWith(QStringLiteral("left.")) || key.startsWith(QStringLiteral("right."))) {
    fitLimb(key.section(QLatin1Char('.'), 0, 0));
  }
  emit valuesChanged();
  if (m_problems.remove(key) > 0) emit problemsChanged();
}

// What a level or the lack of a prosthesis leaves no choice about.
void PersonFormModel::fitLimb(const QString& side) {
  const int level = number(side + QStringLiteral(".level"));
  const int owns = number(side + QStringLiteral(".prosthesis"));
  const QString knee = side + QStringLiteral(".knee");
  const QString foot = side + QStringLiteral(".foot");
  if (level != v1::LIMB_LOSS_LEVEL_UNSPECIFIED) {
    if (!kneeLost(level)) {
      m_values[knee] = v1::KNEE_KIND_OWN_KNEE;
    } else if (owns == v1::ANSWER_NO) {
      m_values[knee] = v1::KNEE_KIND_NO_PROSTHESIS;
    } else if (number(knee) == v1::KNEE_KIND_OWN_KNEE || number(knee) == v1::KNEE_KIND_NO_PROSTHESIS) {
      m_values.remove(knee);
    }
  }
  if (owns == v1::ANSWER_NO) m_values[foot] = v1::FOOT_KIND_NO_PROSTHESIS;
  if (owns == v1::ANSWER_YES && number(foot) == v1::FOOT_KIND_NO_PROSTHESIS) m_values.remove(foot);
}

void PersonFormModel::toggleCondition(int condition) {
  QVariantList chosen = conditions();
  if (chosen.contains(condition)) {
    chosen.removeAll(condition);
  } else {
    chosen << condition;
  }
  m_values[kConditions] = chosen;
  m_values[kNoConditions] = false;
  emit valuesChanged();
  if (m_problems.remove(kConditions) > 0) emit problemsChanged();
}

void PersonFormModel::restNotKnown() {
  for (const QString& key : answerKeys()) {
    if (number(key) != v1::ANSWER_UNSPECIFIED) continue;
    m_values[key] = v1::ANSWER_NOT_KNOWN;
    m_problems.remove(key);
  }
  const QString rails = QStringLiteral("home.rails");
  if (number(rails) == v1::RAILS_UNSPECIFIED) {
    m_values[rails] = v1::RAILS_NOT_KNOWN;
    m_problems.remove(rails);
  }
  emit valuesChanged();
  emit problemsChanged();
}

bool PersonFormModel::lost(v1::Side side) const {
  return (number(kLost) & (side == v1::SIDE_LEFT ? 1 : 2)) != 0;
}

void PersonFormModel::addLimb(v1::Person& person, v1::Side side) const {
  if (!lost(side)) return;
  const QString key = keyOf(side);
  v1::LimbLoss& limb = *person.add_limbs();
  limb.set_side(side);
  limb.set_level(static_cast<v1::LimbLossLevel>(number(key + QStringLiteral(".level"))));
  limb.set_has_prosthesis(number(key + QStringLiteral(".prosthesis")) == v1::ANSWER_YES);
  limb.set_knee(static_cast<v1::KneeKind>(number(key + QStringLiteral(".knee"))));
  limb.set_foot(static_cast<v1::FootKind>(number(key + QStringLiteral(".foot"))));
}

v1::Person PersonFormModel::person() const {
  v1::Person person = m_base_person;
  person.clear_limbs();
  addLimb(person, v1::SIDE_LEFT);
  addLimb(person, v1::SIDE_RIGHT);
  person.set_mobility(static_cast<v1::MobilityLevel>(number(QStringLiteral("mobility"))));
  person.clear_conditions();
  for (const QVariant& condition : conditions())
    person.add_conditions(static_cast<v1::Condition>(condition.toInt()));
  person.set_walking_aid(static_cast<v1::WalkingAid>(number(QStringLiteral("walking_aid"))));
  v1::Home& home = *person.mutable_home();
  home.set_rails(static_cast<v1::Rails>(number(QStringLiteral("home.rails"))));
  home.set_ramp(static_cast<v1::Answer>(number(QStringLiteral("home.ramp"))));
  home.set_sturdy_chairs(
      static_cast<std::uint32_t>(std::max(0, number(QStringLiteral("home.sturdy_chairs")))));
  home.set_rolling_chair(static_cast<v1::Answer>(number(QStringLiteral("home.rolling_chair"))));
  home.set_counter(static_cast<v1::Answer>(number(QStringLiteral("home.counter"))));
  home.set_floor_space(static_cast<v1::Answer>(number(QStringLiteral("home.floor_space"))));
  home.set_someone_near(static_cast<v1::Answer>(number(QStringLiteral("home.someone_near"))));
  person.set_can_get_up_from_floor(static_cast<v1::Answer>(number(QStringLiteral("can_get_up_from_floor"))));
  person.mutable_senses()->set_low_vision(
      static_cast<v1::Answer>(number(QStringLiteral("senses.low_vision"))));
  person.mutable_senses()->set_hard_of_hearing(
      static_cast<v1::Answer>(number(QStringLiteral("senses.hard_of_hearing"))));
  person.set_language(words(QStringLiteral("language")));
  person.set_zone(words(QStringLiteral("zone")));
  person.set_height_cm(static_cast<std::uint32_t>(std::max(0, number(QStringLiteral("height_cm")))));
  person.set_strong_side(number(kLost) == 3 ? static_cast<v1::Side>(number(QStringLiteral("strong_side")))
                                            : v1::SIDE_UNSPECIFIED);
  return person;
}

v1::Identity PersonFormModel::identity() const {
  v1::Identity identity = m_base_identity;
  identity.set_person_id(m_base_person.id());
  identity.set_given_name(words(QStringLiteral("given_name")));
  identity.set_family_name(words(QStringLiteral("family_name")));
  identity.set_birth_date(words(QStringLiteral("birth_date")));
  identity.set_phone(words(QStringLiteral("phone")));
  return identity;
}

// What was not asked yet, all at once: check() names the first fault only.
void PersonFormModel::addMissing(QVariantMap& problems) const {
  const QString choose = tr("Choose one.");
  QStringList keys = answerKeys();
  keys << kLost << QStringLiteral("mobility") << QStringLiteral("walking_aid")
       << QStringLiteral("home.rails");
  for (const auto side : {v1::SIDE_LEFT, v1::SIDE_RIGHT}) {
    if (!lost(side)) continue;
    for (const QString& part : {QStringLiteral(".level"), QStringLiteral(".prosthesis")})
      keys << keyOf(side) + part;
    if (number(keyOf(side) + QStringLiteral(".prosthesis")) == v1::ANSWER_YES) {
      keys << keyOf(side) + QStringLiteral(".foot");
      if (kneeLost(number(keyOf(side) + QStringLiteral(".level"))))
        keys << keyOf(side) + QStringLiteral(".knee");
    }
  }
  if (number(kLost) == 3) keys << QStringLiteral("strong_side");
  for (const QString& key : keys) {
    if (number(key) == 0) problems[key] = choose;
  }
  if (words(QStringLiteral("given_name")).empty())
    problems[QStringLiteral("given_name")] = tr("Type a name.");
  if (conditions().isEmpty() && !m_values.value(kNoConditions).toBool()) {
    problems[kConditions] = tr("Ask about each one. If none is so, press Asked: none of these.");
  }
  if (number(QStringLiteral("height_cm")) == 0)
    problems[QStringLiteral("height_cm")] = tr("Type the height in cm.");
}

void PersonFormModel::putProblem(const absl::Status& status) {
  const QString message = print::text(std::string(status.message()));
  const qsizetype colon = message.indexOf(QLatin1String(": "));
  QString key = colon < 0 ? QString() : message.left(colon);
  const QString what = colon < 0 ? message : message.mid(colon + 2);
  static const QRegularExpression limb(QStringLiteral("^limbs\\[(\\d)\\]\\.(\\w+)$"));
  const auto match = limb.match(key);
  if (match.hasMatch()) {
    const v1::Person built = person();
    const int index = match.captured(1).toInt();
    if (index < built.limbs_size()) {
      key = keyOf(built.limbs(index).side()) + QLatin1Char('.') +
            (match.captured(2) == QLatin1String("has_prosthesis") ? QStringLiteral("prosthesis")
                                                                  : match.captured(2));
    }
  }
  if (key.startsWith(kConditions)) key = kConditions;
  if (key.isEmpty()) {
    m_problem = message;
  } else if (!m_problems.contains(key)) {
    m_problems[key] = what;
  }
}

bool PersonFormModel::checkAll() {
  m_problems.clear();
  m_problem.clear();
  addMissing(m_problems);
  if (m_problems.isEmpty()) {
    for (const absl::Status& status : {check(identity()), check(person())}) {
      if (!status.ok()) putProblem(status);
    }
  }
  if (!m_problems.isEmpty() && m_problem.isEmpty()) {
    m_problem = m_problems.size() == 1 ? tr("One field needs you.")
                                       : tr("%1 fields need you.").arg(m_problems.size());
  }
  emit problemsChanged();
  return m_problems.isEmpty() && m_problem.isEmpty();
}

void PersonFormModel::save() {
  if (m_saving || !checkAll()) return;
  m_saving = true;
  emit problemsChanged();
  v1::PutPersonRequest request;
  *request.mutable_person() = person();
  *request.mutable_identity() = identity();
  request.set_base_revision(m_base_revision);
  m_context.worker->run(
      this, tr("Saving the record"),
      [request](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->putPerson(request).status();
      },
      [this](const absl::Status& status) {
        m_saving = false;
        if (status.code() == absl::StatusCode::kInvalidArgument) {
          putProblem(status);
        } else {
          m_problem = problemWords(status, tr("save this record"));
        }
        emit problemsChanged();
        if (status.ok()) emit saved(print::text(m_base_person.id()));
      });
}

}  // namespace newel::desk
