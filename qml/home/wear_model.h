// Wearing time: what the plan says now, and what the person tells: put on, taken off, what the skin looked
// like. What a plan allows is core/schedule/wear_plan.h's to say; nothing here judges skin. UI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QTimer>
#include <QtCore/QVariantList>
#include <optional>

#include "core/schedule/wear_plan.h"
#include "qml/home/engine_bridge.h"
#include "qml/home/home_parts.h"

namespace newel::home {

class WearModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(State state READ state NOTIFY changed)
  Q_PROPERTY(bool planned READ planned NOTIFY changed)
  Q_PROPERTY(QString headline READ headline NOTIFY changed)  // where things are: "On since 10:05"
  Q_PROPERTY(QString plan READ plan NOTIFY changed)          // what the plan says today
  Q_PROPERTY(QString worn READ worn NOTIFY changed)          // worn today, and what is left
  Q_PROPERTY(QString advice READ advice NOTIFY changed)      // what to do now; may be empty
  Q_PROPERTY(QString stop READ stop NOTIFY changed)  // why no longer, or not at all, until the clinic speaks
  Q_PROPERTY(QString note READ note NOTIFY changed)  // the therapist's words, and the step's
  // While it is on and the block has an end.
  Q_PROPERTY(bool timed READ timed NOTIFY changed)
  Q_PROPERTY(int minutesLeft READ minutesLeft NOTIFY changed)
  Q_PROPERTY(double share READ share NOTIFY changed)  // of the block, 0 to 1
  Q_PROPERTY(bool over READ over NOTIFY changed)      // it should be off by now
  Q_PROPERTY(QVariantList signs READ signs CONSTANT)  // see skinSignRows()
  // How long ago something was, to be stepped through: index 0 is now.
  Q_PROPERTY(int agoSteps READ agoSteps NOTIFY changed)
  Q_PROPERTY(bool watchOver READ watchOver NOTIFY changed)  // the minutes that red may stay are over
  Q_PROPERTY(QString watchWords READ watchWords NOTIFY changed)
  // Those of the last two weeks, the newest first: maps "when", "words".
  Q_PROPERTY(QVariantList past READ past NOTIFY changed)
  Q_PROPERTY(QString error READ error NOTIFY changed)

 public:
  enum class State {
    NoPlan,
    NotBegun,  // the plan begins on a later day
    Off,       // may be put on
    Rest,      // off for the plan's break
    On,
    Look,       // came off: the skin is to be looked at
    Watch,      // red: is it gone in time?
    DoneToday,  // all that the plan has for today
    StayOff     // until the clinic has spoken
  };
  Q_ENUM(State)

  WearModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent = nullptr);

  State state() const { return m_state; }
  bool planned() const { return m_state != State::NoPlan; }
  QString headline() const;
  QString plan() const;
  QString worn() const;
  QString advice() const;
  QString stop() const;
  QString note() const;
  bool timed() const { return m_state == State::On && m_block_min > 0; }
  int minutesLeft() const;
  double share() const;
  bool over() const;
  QVariantList signs() const;
  int agoSteps() const;
  bool watchOver() const;
  QString watchWords() const;
  QVariantList past() const;
  QString error() const { return m_error; }

  // The words of a step back in time: "now", "15 minutes ago, at 10:05".
  Q_INVOKABLE QString agoWords(int step) const;
  Q_INVOKABLE void putOn(int ago_step);
  Q_INVOKABLE void takeOff(int ago_step);
  Q_INVOKABLE void look(const QVariantList& signs);
  // Was the red gone when the plan's minutes were over; or is it gone already.
  Q_INVOKABLE void redGone(bool gone);
  Q_INVOKABLE void refresh();

 signals:
  void changed();
  void told();  // a record was kept

 private:
  void read();
  void findState(absl::Time now);
  void schedule(absl::Time now);
  void keep(v1::WearBlock block);
  absl::Time now() const { return m_parts.clock->wall(); }
  absl::Time earliest() const;
  std::optional<absl::Time> endOfBlock() const;
  std::optional<absl::Time> endOfRest() const;
  std::optional<absl::Time> endOfWatch() const;
  std::vector<int> agoMinutes() const;

  const HomeParts& m_parts;
  QTimer m_tick;  // only repaints: every end is an instant
  std::optional<v1::WearPlan> m_plan;
  std::vector<v1::WearBlock> m_blocks;
  std::optional<v1::WearBlock> m_last;  // put on last
  WearDay m_day;
  State m_state = State::NoPlan;
  std::uint32_t m_block_min = 0;  // of the block that is on; 0: no end
  QString m_error;
};

}  // namespace newel::home
