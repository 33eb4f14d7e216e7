// What the person's phone will show and say for the selected entry, beat by beat, from the very timeline that
// the phone will play.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QAbstractListModel>
#include <QtCore/QElapsedTimer>
#include <QtCore/QTimer>
#include <QtCore/QVariantMap>

#include "core/records/timeline.pb.h"
#include "qml/desk/draft_model.h"
#include "qml/desk/phone_words.h"
#include "qml/parts/figure_source.h"

namespace newel::desk {

class PreviewModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(int at READ at WRITE setAt NOTIFY atChanged)
  Q_PROPERTY(int count READ count NOTIFY shownChanged)
  Q_PROPERTY(QString problem READ problem NOTIFY shownChanged)
  Q_PROPERTY(QString language READ language NOTIFY shownChanged)
  Q_PROPERTY(
      QVariantMap labels READ labels NOTIFY shownChanged)  // of PracticeFacts: the buttons, as on their phone
  Q_PROPERTY(bool rightToLeft READ rightToLeft NOTIFY shownChanged)
  // Of the text on the phone, 100 to 200: what the person's phone said, until another is looked at.
  Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY shownChanged)
  Q_PROPERTY(QString textWords READ textWords NOTIFY shownChanged)       // where that number comes from
  Q_PROPERTY(QVariantList textSizes READ textSizes NOTIFY shownChanged)  // {value, text}
  Q_PROPERTY(bool playing READ playing WRITE setPlaying NOTIFY playingChanged)  // beat after beat, in time
  Q_PROPERTY(newel::parts::FigureSource* figure READ figure CONSTANT)
  // Of the beat `at`, as PracticeFacts has them: title, cue, next, support, number, numberOf, setWords,
  // sideWords, fraction, resting, canLengthen, canGoNow, waiting, posts, entryNumber, entryCount.
  Q_PROPERTY(QVariantMap facts READ facts NOTIFY factsChanged)

 public:
  enum Role { Start = Qt::UserRole + 1, Words, Spoken, What };

  PreviewModel(DraftModel& draft, const DeskContext& context, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : count(); }
  QVariant data(const QModelIndex& index, int role) const override;
  QHash<int, QByteArray> roleNames() const override;
  int count() const { return m_timeline.beats_size(); }
  int at() const { return m_at; }
  void setAt(int at);
  bool playing() const { return m_playing; }
  void setPlaying(bool playing);
  parts::FigureSource* figure() { return &m_figure; }
  QString problem() const { return m_problem; }
  QString language() const;
  QVariantMap labels() const;
  bool rightToLeft() const { return m_phone.rightToLeft(); }
  int textPercent() const;
  void setTextPercent(int percent);
  QString textWords() const;
  QVariantList textSizes() const;
  QVariantMap facts() const;

 signals:
  void atChanged();
  void factsChanged();
  void playingChanged();
  void shownChanged();

 private:
  void refresh();
  int saidPercent() const;  // by the phone heard from last; 0: none has
  void showFigure();
  void advance();
  void begin();
  // Active time shown: within the beat `at`.
  std::int64_t activeMs() const;
  QString numberOf(const v1::Beat& beat) const;
  QString number(const v1::Beat& beat) const;
  QString setWords(const v1::Beat& beat) const;
  QString sideWords(const v1::Beat& beat) const;
  int repetitionsOfSet(const v1::Beat& beat) const;

  QString say(const char* words, int count = -1) const;  // the phone's player in the person's language

  DraftModel& m_draft;
  const DeskContext& m_context;
  v1::Timeline m_timeline;
  QString m_problem;
  int m_at = 0;
  int m_text_percent = 0;  // looked at by the therapist; 0: as the phone said
  std::string m_text_of;   // the person whose text size that is
  bool m_playing = false;
  QElapsedTimer m_since;  // the beat `at` began, while playing
  QTimer m_next;          // to the end of that beat
  QTimer m_count;         // while playing: the number goes down
  parts::FigureSource m_figure;
  PhoneWords m_phone;
};

}  // namespace newel::desk
