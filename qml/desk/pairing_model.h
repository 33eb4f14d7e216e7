// The pairing page: a one-time code as QR and to type, and how long it is good for. The deadline stands on
// the clock nobody can set; the page's timer only repaints.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QTimer>
#include <memory>
#include <set>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class PairingModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString qrText READ qrText NOTIFY changed)
  Q_PROPERTY(QString typedCode READ typedCode NOTIFY changed)
  Q_PROPERTY(QString address READ address NOTIFY changed)
  Q_PROPERTY(QString fingerprint READ fingerprint NOTIFY changed)  // to compare by eye
  Q_PROPERTY(int secondsLeft READ secondsLeft NOTIFY ticked)
  Q_PROPERTY(QString leftWords READ leftWords NOTIFY ticked)
  Q_PROPERTY(bool expired READ expired NOTIFY ticked)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(QString pairedPhone READ pairedPhone NOTIFY changed)  // empty until one has used the code

 public:
  explicit PairingModel(DeskContext& context, QObject* parent = nullptr);

  QString qrText() const { return m_qr_text; }
  QString typedCode() const { return m_typed_code; }
  QString address() const { return m_address; }
  QString fingerprint() const { return m_fingerprint; }
  int secondsLeft() const;
  QString leftWords() const;
  bool expired() const { return !m_qr_text.isEmpty() && secondsLeft() == 0; }
  QString problem() const { return m_problem; }
  QString pairedPhone() const { return m_paired_phone; }

  void begin(const PersonFile& file);
  // Phones that were not there at begin() are the ones that used the code.
  void follow(const PersonFile& file);
  void end();
  Q_INVOKABLE void newCode();

 signals:
  void changed();
  void ticked();

 private:
  DeskContext& m_context;
  std::string m_person_id;
  std::set<std::string> m_known;
  QString m_qr_text;
  QString m_typed_code;
  QString m_address;
  QString m_fingerprint;
  QString m_problem;
  QString m_paired_phone;
  absl::Duration m_deadline;  // on the elapsed clock
  QTimer m_repaint;
};

}  // namespace newel::desk
