// The hold page: what to stop, why in words, looked at once more before it counts; or lifting one.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QVariantList>
#include <memory>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class HoldModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool lifting READ lifting NOTIFY changed)
  Q_PROPERTY(bool everything READ everything WRITE setEverything NOTIFY changed)
  Q_PROPERTY(QVariantList entries READ entries NOTIFY changed)  // {id, title}; of the last programme
  Q_PROPERTY(QStringList chosen READ chosen NOTIFY changed)     // entry ids
  Q_PROPERTY(QString reason READ reason WRITE setReason NOTIFY changed)
  Q_PROPERTY(QString what READ what NOTIFY changed)      // in words
  Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed)  // what is still missing; empty: ready to review
  Q_PROPERTY(bool reviewing READ reviewing NOTIFY changed)
  Q_PROPERTY(bool sending READ sending NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString limbs READ limbs NOTIFY changed)

 public:
  explicit HoldModel(DeskContext& context, QObject* parent = nullptr);

  void beginHold(std::shared_ptr<const PersonFile> file);
  void beginLift(std::shared_ptr<const PersonFile> file, const std::string& hold_id);

  bool lifting() const { return !m_lifts_id.empty(); }
  bool everything() const { return m_everything; }
  void setEverything(bool everything);
  QVariantList entries() const;
  QStringList chosen() const { return m_chosen; }
  QString reason() const { return m_reason; }
  void setReason(const QString& reason);
  QString what() const;
  QString whyNot() const;
  bool reviewing() const { return m_reviewing; }
  bool sending() const { return m_sending; }
  QString problem() const { return m_problem; }
  QString name() const;
  QString limbs() const;

  Q_INVOKABLE void toggle(const QString& entry_id);
  Q_INVOKABLE void review();  // before it counts
  Q_INVOKABLE void change();  // back from the review
  Q_INVOKABLE void send();    // sent() follows, or problem

 signals:
  void changed();
  void sent();

 private:
  void begin(std::shared_ptr<const PersonFile> file);

  DeskContext& m_context;
  std::shared_ptr<const PersonFile> m_file;
  std::string m_lifts_id;
  bool m_everything = true;
  QStringList m_chosen;
  QString m_reason;
  QString m_problem;
  bool m_reviewing = false;
  bool m_sending = false;
};

}  // namespace newel::desk
