// My programme: every entry with its words, cautions and the therapist's note; marks it seen when shown.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <map>
#include <memory>
#include <string>

#include "qml/home/engine_bridge.h"
#include "qml/home/entry_media.h"
#include "qml/home/home_parts.h"
#include "qml/home/settings_model.h"
#include "qml/parts/figure_source.h"

namespace newel::home {

class ProgrammeModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(QString title READ title NOTIFY changed)        // "Programme 2"
  Q_PROPERTY(QString signedBy READ signedBy NOTIFY changed)  // "from Ruth Adler, until 1 January 2027"
  Q_PROPERTY(QString changes READ changes NOTIFY changed)
  Q_PROPERTY(QString advice READ advice NOTIFY changed)
  // Maps "title", "dose", "rhythm", "hands", "prosthesis", "purpose", "start", "note" and the lists "good",
  // "stopIf", "cautions", "figure", a FigureSource, and "media" (EntryMedia.qml).
  Q_PROPERTY(QVariantList entries READ entries NOTIFY changed)
  Q_PROPERTY(bool fresh READ fresh NOTIFY changed)  // not yet seen by the person

 public:
  ProgrammeModel(EngineBridge& bridge, SettingsModel& settings, const HomeParts& parts,
                 QObject* parent = nullptr);

  QString title() const;
  QString signedBy() const;
  QString changes() const;
  QString advice() const;
  QVariantList entries() const;
  bool fresh() const;

  // The page is in front of the person.
  Q_INVOKABLE void shown();

 signals:
  void changed();

 private:
  QVariantMap rowOf(const v1::Entry& entry, const v1::Person& person) const;
  parts::FigureSource* figureFor(const v1::Entry& entry, const v1::Person& person) const;

  SettingsModel& m_settings;
  const HomeParts& m_parts;
  mutable std::map<std::string, std::unique_ptr<parts::FigureSource>> m_figures;  // by entry
  mutable MediaRows m_media;
};

}  // namespace newel::home
