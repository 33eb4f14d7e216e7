#include "qml/home/first_run_model.h"

#include <QtCore/QMetaEnum>

#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"
#include "qml/home/place_words.h"
#include "qml/home/screen_language.h"

namespace newel::home {
namespace {

QMetaEnum steps() { return QMetaEnum::fromType<FirstRunModel::Step>(); }

}  // namespace

FirstRunModel::FirstRunModel(SettingsModel& settings, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_settings(settings), m_parts(parts) {
  connect(&settings, &SettingsModel::changed, this, &FirstRunModel::changed);
}

FirstRunModel::Step FirstRunModel::step() const {
  const bool paired = m_parts.engine->state().paired;
  bool known = false;
  const int kept = steps().keyToValue(m_settings.firstRunStep().toLatin1().constData(), &known);
  if (!known) return paired ? Step::Done : Step::Language;
  const auto step = static_cast<Step>(kept);
  // Paired, and then the phone died before the step was kept; or the clinic was forgotten again.
  if (paired && step <= Step::Pair) return Step::AskReminders;
  if (!paired && step > Step::Pair) return Step::Pair;
  return step;
}

QString FirstRunModel::place() const {
  const Step at = step();
  if (at == Step::Done) return QString();
  return tr("Step %L1 of %L2").arg(static_cast<int>(at) + 1).arg(static_cast<int>(Step::Done));
}

bool FirstRunModel::canGoBack() const {
  const Step at = step();
  return at != Step::Language && at != Step::AskReminders && at != Step::Done;
}

QVariantList FirstRunModel::languages() const {
  QVariantList rows;
  for (const QString& language : ScreenLanguage::offered()) {
    rows << QVariantMap{{"id", language}, {"name", ownNameOf(language)}};
  }
  return rows;
}

QString FirstRunModel::language() const {
  const QString language = text(languageOf(m_parts)).section(QLatin1Char('-'), 0, 0);
  return ScreenLanguage::offered().contains(language) ? language : QStringLiteral("en");
}

void FirstRunModel::next() {
  const Step at = step();
  if (at == Step::Done || at == Step::Pair) return;
  keep(static_cast<Step>(static_cast<int>(at) + 1));
}

void FirstRunModel::back() {
  if (canGoBack()) keep(static_cast<Step>(static_cast<int>(step()) - 1));
}

void FirstRunModel::keep(Step step) {
  m_settings.setFirstRunStep(QString::fromLatin1(steps().valueToKey(static_cast<int>(step))));
}

}  // namespace newel::home
