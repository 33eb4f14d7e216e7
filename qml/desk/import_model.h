// A FHIR file from elsewhere read where a person is added: who it is goes into the form, what was asked for
// waits for their first programme, and what could not be taken over is listed. Not here: reading FHIR
// (sync/export/fhir_import.h), the form (person_form_model.h), the programme (start_model.h).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QVariantList>
#include <memory>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "sync/export/fhir_import.h"

namespace newel::desk {

class ImportModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool reading READ reading NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(QString fileName READ fileName NOTIFY changed)       // empty: nothing was read
  Q_PROPERTY(QString taken READ taken NOTIFY changed)             // in words
  Q_PROPERTY(QStringList warnings READ warnings NOTIFY changed)   // to be read first
  Q_PROPERTY(QVariantList requests READ requests NOTIFY changed)  // {title, details}
  Q_PROPERTY(QStringList notTaken READ notTaken NOTIFY changed)

 public:
  explicit ImportModel(DeskContext& context, QObject* parent = nullptr);

  bool reading() const { return m_reading; }
  QString problem() const { return m_problem; }
  QString fileName() const { return m_file_name; }
  QString taken() const;
  QStringList warnings() const;
  QVariantList requests() const;
  QStringList notTaken() const;

  // A path, or a file: address. read() follows, or problem.
  Q_INVOKABLE void readFile(const QString& file);
  void forget();

  // nullptr: nothing was read.
  std::shared_ptr<const FhirImport> import() const { return m_import; }

 signals:
  void changed();
  void read();

 private:
  void got(const QString& name, absl::StatusOr<FhirImport> import);

  DeskContext& m_context;
  std::shared_ptr<const FhirImport> m_import;
  QString m_file_name;
  QString m_problem;
  bool m_reading = false;
  int m_turn = 0;  // of the reading that counts
};

// What one request of the file asks for, with who asked and when: {title, details}.
QVariantMap requestRow(const ImportedRequest& request);

}  // namespace newel::desk
