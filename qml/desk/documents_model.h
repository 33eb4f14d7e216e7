// The documents page: which one, with what in it, into which folder; made beside the screen, so that the page
// can be left meanwhile, and given up at any moment. Nothing is there before the hub has it in its audit
// trail.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QVariantList>
#include <atomic>
#include <memory>
#include <thread>

#include "qml/desk/document_work.h"
#include "qml/desk/hub_worker.h"

namespace newel::desk {

class DocumentsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QVariantList kinds READ kinds CONSTANT)  // {value, text}
  Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY changed)
  Q_PROPERTY(QString about READ about NOTIFY changed)  // what it is and how careful to be with it
  Q_PROPERTY(QVariantList layouts READ layouts CONSTANT)
  Q_PROPERTY(int layout READ layout WRITE setLayout NOTIFY changed)
  Q_PROPERTY(QVariantList languages READ languages NOTIFY changed)  // the person's first
  Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
  Q_PROPERTY(QVariantList papers READ papers CONSTANT)
  Q_PROPERTY(int paper READ paper WRITE setPaper NOTIFY changed)
  Q_PROPERTY(bool hasLayout READ hasLayout NOTIFY changed)
  Q_PROPERTY(bool hasLanguage READ hasLanguage NOTIFY changed)
  Q_PROPERTY(bool hasPaper READ hasPaper NOTIFY changed)
  Q_PROPERTY(bool hasDays READ hasDays NOTIFY changed)
  Q_PROPERTY(QString firstDay READ firstDay WRITE setFirstDay NOTIFY changed)
  Q_PROPERTY(QString lastDay READ lastDay WRITE setLastDay NOTIFY changed)
  Q_PROPERTY(QString firstDayProblem READ firstDayProblem NOTIFY changed)
  Q_PROPERTY(QString lastDayProblem READ lastDayProblem NOTIFY changed)
  Q_PROPERTY(QVariantList extras READ extras NOTIFY changed)  // {value, text} of this kind
  Q_PROPERTY(QVariantList chosenExtras READ chosenExtras NOTIFY changed)
  Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY changed)
  Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed)  // empty: it can be made
  Q_PROPERTY(bool making READ making NOTIFY workChanged)
  Q_PROPERTY(int percent READ percent NOTIFY workChanged)
  Q_PROPERTY(QString makingWords READ makingWords NOTIFY workChanged)
  Q_PROPERTY(QString problem READ problem NOTIFY workChanged)
  Q_PROPERTY(QStringList made READ made NOTIFY workChanged)  // paths, the newest first; of this person

 public:
  enum Extra { Words, Exercises, UsProfiles };
  Q_ENUM(Extra)

  explicit DocumentsModel(DeskContext& context, QObject* parent = nullptr);
  ~DocumentsModel() override;
  DocumentsModel(const DocumentsModel&) = delete;
  DocumentsModel& operator=(const DocumentsModel&) = delete;

  void begin(std::shared_ptr<const PersonFile> file);
  void beginReport(std::shared_ptr<const PersonFile> file, absl::CivilDay first, absl::CivilDay last);
  void follow(std::shared_ptr<const PersonFile> file);  // its newest state, for what is made from now on
  // Nobody is signed in any more: what is being made is given up, and nothing about anybody stays.
  void forget();

  QString name() const;
  static QVariantList kinds();
  int kind() const { return static_cast<int>(m_kind); }
  void setKind(int kind);
  QString about() const;
  static QVariantList layouts();
  int layout() const { return m_layout; }
  void setLayout(int layout);
  QVariantList languages() const;
  QString language() const { return m_language; }
  void setLanguage(const QString& language);
  static QVariantList papers();
  int paper() const { return m_letter ? 1 : 0; }
  void setPaper(int paper);
  bool hasLayout() const { return m_kind == DocumentKind::Handout; }
  bool hasLanguage() const { return m_kind == DocumentKind::Handout || m_kind == DocumentKind::Card; }
  bool hasPaper() const { return isSheet(m_kind); }
  bool hasDays() const;
  QString firstDay() const { return m_first; }
  void setFirstDay(const QString& day);
  QString lastDay() const { return m_last; }
  void setLastDay(const QString& day);
  QString firstDayProblem() const { return dayProblem(m_first); }
  QString lastDayProblem() const;
  QVariantList extras() const;
  QVariantList chosenExtras() const { return m_extras; }
  QString folder() const { return m_folder; }
  void setFolder(const QString& folder);  // a path, or a file: address
  QString whyNot() const;
  bool making() const { return m_stop != nullptr; }
  int percent() const { return m_percent; }
  QString makingWords() const;
  QString problem() const { return m_problem; }
  QStringList made() const { return m_made; }

  Q_INVOKABLE void toggleExtra(int extra);
  Q_INVOKABLE void make();    // saved() follows, or problem
  Q_INVOKABLE void cancel();  // what is being made: nothing of it stays

 signals:
  void changed();
  void workChanged();
  void saved(const QString& words);

 private:
  using Stop = std::shared_ptr<std::atomic<bool>>;
  struct Job {
    DocumentWish wish;
    std::shared_ptr<const PersonFile> file;
    QString path;
    QString title;
    Stop stop;
  };

  bool has(Extra extra) const { return m_extras.contains(static_cast<int>(extra)); }
  bool daysNeeded() const { return m_kind == DocumentKind::Report; }
  QString dayProblem(const QString& day) const;
  DocumentWish wish() const;
  void begun(const Job& job);
  void finish(const Job& job, std::vector<ExportFile> files);
  void ended(const Job& job, const absl::Status& status);
  void setPercent(const Stop& stop, int percent);

  DeskContext& m_context;
  std::shared_ptr<const PersonFile> m_file;
  DocumentKind m_kind = DocumentKind::Handout;
  int m_layout = 0;
  QString m_language;
  bool m_letter = false;
  QString m_first;
  QString m_last;
  QVariantList m_extras;
  QString m_folder;
  QString m_problem;
  QStringList m_made;
  QString m_title;  // of what is being made
  int m_percent = 0;
  Stop m_stop;  // null: nothing is being made
  std::thread m_thread;
};

}  // namespace newel::desk
