// What the entries' own rules say of the practices so far, entry by entry, with the evidence, how pain went,
// and the next programme as it would follow: a draft for a therapist to look at. Only signing sends it.
// Not here: judging (core/progress/progression.h), the ladder (core/review/ladder.h), the draft
// (draft_model.h).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>
#include <vector>

#include "core/progress/progression.h"
#include "core/progress/trend.h"
#include "core/review/ladder.h"
#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

class ProgressModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString about READ about NOTIFY changed)      // which programme, until when figures are known
  Q_PROPERTY(QString problem READ problem NOTIFY changed)  // it cannot be judged
  // {title, advice, adviceWords, dose, evidence: [{good, words}], pain, step, moves}: those that would move
  // first, then in the programme's order. `step`: what the draft would do with it.
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  Q_PROPERTY(int moving READ moving NOTIFY changed)  // entries that the draft would change
  Q_PROPERTY(QString draftWords READ draftWords NOTIFY changed)

 public:
  explicit ProgressModel(DeskContext& context, QObject* parent = nullptr)
      : QObject(parent), m_context(context) {}

  void show(std::shared_ptr<const PersonFile> file);

  QString name() const;
  QString about() const;
  QString problem() const { return m_problem; }
  QVariantList rows() const;
  int moving() const;
  QString draftWords() const;

  // `draft` with every entry that moves one rung further; all else as it is.
  v1::Programme follow(v1::Programme draft) const;

 signals:
  void changed();

 private:
  struct Row {
    v1::Entry entry;
    ProgressionAdvice advice;
    PainCourse pain;
    LadderStep step;
    bool moves() const { return step.what == LadderStep::What::Taken; }
  };
  void judge();
  QVariantMap rowOf(const Row& row) const;

  DeskContext& m_context;
  std::shared_ptr<const PersonFile> m_file;
  std::vector<Row> m_rows;
  QString m_problem;
};

}  // namespace newel::desk
