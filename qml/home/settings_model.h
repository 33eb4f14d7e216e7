// How this phone shows and speaks, and what its owner has already seen. Kept in one small file beside the
// engine's store; nothing of it leaves the phone.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QSettings>
#include <QtCore/QVariantList>

#include "core/records/clip.pb.h"
#include "qml/home/home_parts.h"
#include "qml/parts/figure_source.h"

namespace newel::home {

class SettingsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)  // 100 to 200
  Q_PROPERTY(bool voice READ voice WRITE setVoice NOTIFY changed)
  // Whether every tone is felt as well; only where canVibrate.
  Q_PROPERTY(bool vibrates READ vibrates WRITE setVibrates NOTIFY changed)
  Q_PROPERTY(bool canVibrate READ canVibrate NOTIFY changed)
  Q_PROPERTY(Look look READ look WRITE setLook NOTIFY changed)
  Q_PROPERTY(bool lessMotion READ lessMotion WRITE setLessMotion NOTIFY changed)  // stills, no movement
  Q_PROPERTY(bool moreContrast READ moreContrast WRITE setMoreContrast NOTIFY changed)
  // What the owner has asked of the whole system; either is enough.
  Q_PROPERTY(bool systemLessMotion READ systemLessMotion NOTIFY changed)
  Q_PROPERTY(bool systemMoreContrast READ systemMoreContrast NOTIFY changed)
  // What text is drawn at, the system's own scale included, in percent: for the desk's picture of this phone.
  Q_PROPERTY(int shownPercent WRITE setShownPercent)
  // Of screens and voice, as chosen on this phone ("es"); empty: the clinic's record or the system decides.
  Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
  // How the person is drawn, as numbers from 0 into what can be chosen.
  Q_PROPERTY(int build READ build WRITE setBuild NOTIFY changed)  // light, medium, heavy
  Q_PROPERTY(int skin READ skin WRITE setSkin NOTIFY changed)     // of skins()
  Q_PROPERTY(int head READ head WRITE setHead NOTIFY changed)     // hair, none, scarf
  Q_PROPERTY(QVariantList skins READ skins CONSTANT)              // colours
  Q_PROPERTY(newel::parts::FigureSource* figure READ figure CONSTANT)
  Q_PROPERTY(QString voiceNote READ voiceNote NOTIFY changed)  // why no voice can be heard, or empty
  Q_PROPERTY(QString error READ error NOTIFY changed)

 public:
  enum class Look { AsSystem, Light, Dark };
  Q_ENUM(Look)

  // `folder`: where the engine keeps its store.
  SettingsModel(const std::string& folder, const HomeParts& parts, QObject* parent = nullptr);

  int textPercent() const;
  void setTextPercent(int percent);
  void setShownPercent(int percent) { m_parts.engine->showsTextAt(percent); }
  bool voice() const;
  void setVoice(bool on);
  bool vibrates() const;
  void setVibrates(bool on);
  bool canVibrate() const { return m_parts.vibration->works(); }
  Look look() const;
  void setLook(Look look);
  bool lessMotion() const;
  void setLessMotion(bool on);
  bool moreContrast() const;
  void setMoreContrast(bool on);
  bool systemLessMotion() const { return m_parts.wishes->lessMotion(); }
  bool systemMoreContrast() const { return m_parts.wishes->moreContrast(); }
  QString language() const;
  void setLanguage(const QString& language);
  int build() const;
  void setBuild(int build);
  int skin() const;
  void setSkin(int skin);
  int head() const;
  void setHead(int head);
  QVariantList skins() const;
  v1::Appearance appearance() const;
  // The person as chosen, standing still; made up to date by showFigure().
  parts::FigureSource* figure() { return &m_figure; }
  Q_INVOKABLE void showFigure();
  QString voiceNote() const;
  QString error() const { return m_error; }

  // Says one sentence, so that the person can hear whether they hear it.
  Q_INVOKABLE void tryVoice();
  // Says the sample sentence of the page about the size of text, and nothing else.
  Q_INVOKABLE void saySample(const QString& words);
  // Every byte of this person, these settings too; afterwards the phone is unpaired.
  Q_INVOKABLE void erase();
  // The clinic alone: a pairing that was with another computer than the clinic's. How this phone shows and
  // speaks stays.
  Q_INVOKABLE void forgetClinic();

  // Where the first run is, as first_run_model.h names it; empty: nothing was kept.
  QString firstRunStep() const;
  void setFirstRunStep(const QString& step);
  // The first local day (YYYY-MM-DD) of which this phone knows what was done; empty: not noted yet.
  QString knownFrom() const;
  void setKnownFrom(const QString& day);

  std::uint32_t seenProgramme() const;
  void setSeenProgramme(std::uint32_t number);
  bool seenMessage(const QString& id) const;
  void setSeenMessage(const QString& id);

 signals:
  void changed();
  void erased();

 private:
  void keep(const QString& key, const QVariant& value);

  const HomeParts& m_parts;
  QSettings m_file;
  QString m_error;
  parts::FigureSource m_figure;
};

}  // namespace newel::home
