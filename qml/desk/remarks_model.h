// Notes for colleagues about practices and days of one person: those kept, a new one, one taken back. A note
// is changed by its writer alone, and never reaches the person's phone.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>
#include <string>
#include <vector>

#include "core/records/remark.pb.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"
#include "sync/export/fhir_import.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel::desk {

class RemarksModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool saving READ saving NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(
      int version READ version NOTIFY changed)  // another one: about() and ofDays() have to be asked anew
  Q_PROPERTY(QString today READ today NOTIFY changed)  // YYYY-MM-DD, where the person is

 public:
  explicit RemarksModel(DeskContext& context, QObject* parent = nullptr)
      : QObject(parent), m_context(context) {}

  void show(std::shared_ptr<const PersonFile> file);

  bool saving() const { return m_saving; }
  QString problem() const { return m_problem; }
  int version() const { return m_version; }
  QString today() const;

  // {id, words, text, mine} of one practice, as they were written.
  Q_INVOKABLE QVariantList about(const QString& practice_id) const;
  // The same of days, the newest day first.
  Q_INVOKABLE QVariantList ofDays() const;
  // `practice_id` may be empty: about the day, YYYY-MM-DD. saved() follows, or problem.
  Q_INVOKABLE void write(const QString& practice_id, const QString& day, const QString& text);
  Q_INVOKABLE void takeBack(const QString& id);
  // What a file from elsewhere asked for and warned of, as notes of whoever took it in: it outlives this
  // desk.
  void keepAsked(const std::string& person_id, const FhirImport& asked);

 signals:
  void changed();
  void saved();

 private:
  QVariantMap rowOf(const v1::Remark& remark) const;
  v1::PutRemarkRequest noteAbout(const std::string& person_id, const std::string& day, QString text) const;
  void put(std::vector<v1::PutRemarkRequest> requests);

  DeskContext& m_context;
  std::shared_ptr<const PersonFile> m_file;
  bool m_saving = false;
  QString m_problem;
  int m_version = 0;
};

}  // namespace newel::desk
