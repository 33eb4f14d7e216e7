// Finding somebody who is not among one's own people, and opening their record by a written reason when it
// cannot wait. The hub shows who somebody is and no more.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <vector>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"

namespace newel::desk {

class FindModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString familyName READ familyName WRITE setFamilyName NOTIFY changed)
  Q_PROPERTY(QString nameProblem READ nameProblem NOTIFY changed)
  Q_PROPERTY(QVariantList found READ found NOTIFY changed)  // {id, name, born, open}
  Q_PROPERTY(QString foundWords READ foundWords NOTIFY changed)
  // Administrators see no records: they may set who has access and nothing else.
  Q_PROPERTY(bool seesRecords READ seesRecords NOTIFY changed)
  Q_PROPERTY(
      QString asked READ asked NOTIFY askedChanged)  // whose record is about to be opened; empty: nobody's
  Q_PROPERTY(QString reasonProblem READ reasonProblem NOTIFY changed)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)

 public:
  explicit FindModel(DeskContext& context, QObject* parent = nullptr);

  QString familyName() const { return m_family_name; }
  void setFamilyName(const QString& name);
  QString nameProblem() const { return m_name_problem; }
  QVariantList found() const;
  QString foundWords() const { return m_found_words; }
  bool seesRecords() const { return m_context.therapist.role() != v1::ROLE_ADMINISTRATOR; }
  QString asked() const;
  QString reasonProblem() const { return m_reason_problem; }
  bool busy() const { return m_busy; }
  QString problem() const { return m_problem; }

  void begin();
  QString nameOf(const QString& person_id) const;
  Q_INVOKABLE void find();
  Q_INVOKABLE void ask(const QString& person_id);  // empty: not after all
  // opened() follows, or what is wrong.
  Q_INVOKABLE void openFor(const QString& reason);

 signals:
  void changed();
  void askedChanged();
  void opened(const QString& person_id);
  void sessionEnded();

 private:
  const v1::FoundPerson* foundById(const std::string& id) const;

  DeskContext& m_context;
  QString m_family_name;
  QString m_name_problem;
  std::vector<v1::FoundPerson> m_found;
  QString m_found_words;
  std::string m_asked_id;
  QString m_reason_problem;
  bool m_busy = false;
  QString m_problem;
};

}  // namespace newel::desk
