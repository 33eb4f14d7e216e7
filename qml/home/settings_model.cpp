#include "qml/home/settings_model.h"

#include <QtGui/QColor>
#include <algorithm>

#include "core/figure/palette.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

const QString kText = QStringLiteral("textPercent");
const QString kVoice = QStringLiteral("voice");
const QString kVibrates = QStringLiteral("vibrates");
const QString kLook = QStringLiteral("look");
const QString kLessMotion = QStringLiteral("lessMotion");
const QString kMoreContrast = QStringLiteral("moreContrast");
const QString kLanguage = QStringLiteral("language");
const QString kFirstRun = QStringLiteral("firstRun");
const QString kKnownFrom = QStringLiteral("knownFrom");
const QString kBuild = QStringLiteral("build");
const QString kSkin = QStringLiteral("skin");
const QString kHead = QStringLiteral("head");
const QString kSeenProgramme = QStringLiteral("seenProgramme");
const QString kSeenMessages = QStringLiteral("seenMessages");

}  // namespace

SettingsModel::SettingsModel(const std::string& folder, const HomeParts& parts, QObject* parent)
    : QObject(parent),
      m_parts(parts),
      m_file(text(folder) + QStringLiteral("/settings.ini"), QSettings::IniFormat) {}

void SettingsModel::keep(const QString& key, const QVariant& value) {
  m_file.setValue(key, value);
  m_file.sync();
  emit changed();
}

int SettingsModel::textPercent() const { return std::clamp(m_file.value(kText, 100).toInt(), 100, 200); }

void SettingsModel::setTextPercent(int percent) { keep(kText, std::clamp(percent, 100, 200)); }

bool SettingsModel::voice() const { return m_file.value(kVoice, true).toBool(); }

void SettingsModel::setVoice(bool on) {
  if (!on) m_parts.speech->stop();
  keep(kVoice, on);
}

bool SettingsModel::vibrates() const { return m_file.value(kVibrates, true).toBool(); }

void SettingsModel::setVibrates(bool on) {
  if (on) m_parts.vibration->play(platform::Tone::Ready);
  keep(kVibrates, on);
}

SettingsModel::Look SettingsModel::look() const {
  const int kept = m_file.value(kLook, 0).toInt();
  return kept == 1 ? Look::Light : kept == 2 ? Look::Dark : Look::AsSystem;
}

void SettingsModel::setLook(Look look) { keep(kLook, static_cast<int>(look)); }

bool SettingsModel::lessMotion() const { return m_file.value(kLessMotion, false).toBool(); }

void SettingsModel::setLessMotion(bool on) { keep(kLessMotion, on); }

bool SettingsModel::moreContrast() const { return m_file.value(kMoreContrast, false).toBool(); }

void SettingsModel::setMoreContrast(bool on) { keep(kMoreContrast, on); }

QString SettingsModel::language() const { return m_file.value(kLanguage).toString(); }

void SettingsModel::setLanguage(const QString& language) { keep(kLanguage, language); }

QString SettingsModel::firstRunStep() const { return m_file.value(kFirstRun).toString(); }

void SettingsModel::setFirstRunStep(const QString& step) { keep(kFirstRun, step); }

QString SettingsModel::knownFrom() const { return m_file.value(kKnownFrom).toString(); }

void SettingsModel::setKnownFrom(const QString& day) { keep(kKnownFrom, day); }

int SettingsModel::build() const { return std::clamp(m_file.value(kBuild, 1).toInt(), 0, 2); }

void SettingsModel::setBuild(int build) { keep(kBuild, std::clamp(build, 0, 2)); }

int SettingsModel::skin() const { return std::clamp(m_file.value(kSkin, 1).toInt(), 0, 3); }

void SettingsModel::setSkin(int skin) { keep(kSkin, std::clamp(skin, 0, 3)); }

int SettingsModel::head() const { return std::clamp(m_file.value(kHead, 0).toInt(), 0, 2); }

void SettingsModel::setHead(int head) { keep(kHead, std::clamp(head, 0, 2)); }

v1::Appearance SettingsModel::appearance() const {
  v1::Appearance appearance;
  appearance.set_build(static_cast<v1::Build>(v1::BUILD_LIGHT + build()));
  appearance.set_skin(static_cast<v1::SkinTone>(v1::SKIN_TONE_1 + skin()));
  appearance.set_head(static_cast<v1::HeadWear>(v1::HEAD_WEAR_HAIR + head()));
  return appearance;
}

QVariantList SettingsModel::skins() const {
  QVariantList colours;
  for (int tone = v1::SKIN_TONE_1; tone <= v1::SKIN_TONE_4; ++tone) {
    v1::Appearance appearance;
    appearance.set_skin(static_cast<v1::SkinTone>(tone));
    const Colour colour = lightPalette(appearance).skin;
    colours << QColor(colour.r, colour.g, colour.b);
  }
  return colours;
}

void SettingsModel::showFigure() {
  const std::optional<v1::Person> person = m_parts.engine->person();
  parts::FigureAsked asked;
  asked.exercise_id = "even-weight-standing";
  asked.body = bodyOf(person.value_or(v1::Person()), v1::PROSTHESIS_USE_ON, appearance());
  asked.support = v1::SUPPORT_NO_HANDS;
  asked.language = languageOf(m_parts);
  m_figure.show(asked);
}

QString SettingsModel::voiceNote() const {
  const std::string why = m_parts.speech->whyNot(languageOf(m_parts));
  if (why.empty()) return QString();
  if (why == "speech.no-sound-device")
    return tr("This phone has no sound just now. Every cue is on the screen as well.");
  if (why == "speech.no-voice")
    return tr("This phone has no voice for your language. Every cue is on the screen as well.");
  return tr("The voice does not work just now. Every cue is on the screen as well.");
}

void SettingsModel::tryVoice() {
  m_parts.tones->play(platform::Tone::Ready);
  if (vibrates()) m_parts.vibration->play(platform::Tone::Ready);
  saySample(tr("Get ready. This is how I sound."));
}

void SettingsModel::saySample(const QString& words) {
  m_parts.speech->say(words.toStdString(), languageOf(m_parts));
}

void SettingsModel::erase() {
  const absl::Status status = m_parts.engine->wipe();
  m_error = errorWords(status);
  if (status.ok()) {
    m_file.clear();
    m_file.sync();
  }
  emit changed();
  if (status.ok()) emit erased();
}

void SettingsModel::forgetClinic() {
  const absl::Status status = m_parts.engine->wipe();
  m_error = errorWords(status);
  if (status.ok()) {
    for (const QString& key : {kSeenProgramme, kSeenMessages, kKnownFrom}) m_file.remove(key);
    m_file.sync();
  }
  emit changed();
  if (status.ok()) emit erased();
}

std::uint32_t SettingsModel::seenProgramme() const { return m_file.value(kSeenProgramme, 0).toUInt(); }

void SettingsModel::setSeenProgramme(std::uint32_t number) { keep(kSeenProgramme, number); }

bool SettingsModel::seenMessage(const QString& id) const {
  return m_file.value(kSeenMessages).toStringList().contains(id);
}

void SettingsModel::setSeenMessage(const QString& id) {
  QStringList seen = m_file.value(kSeenMessages).toStringList();
  if (seen.contains(id)) return;
  keep(kSeenMessages, seen << id);
}

}  // namespace newel::home
