// One practice while it runs: keeps its lines before anything is shown, wakes up when the player or a cue is
// due, speaks and sounds the cues, and closes into the outbox. Decides nothing: order, questions, stops and
// verdicts come from core/practice.
// UI thread only.
#pragma once

#include <QtCore/QObject>
#include <QtCore/QTimer>
#include <functional>
#include <memory>
#include <vector>

#include "core/practice/practice_run.h"
#include "core/schedule/occasions.h"
#include "qml/home/cue_caller.h"
#include "qml/home/home_parts.h"

namespace newel::home {

class PracticeSession : public QObject {
  Q_OBJECT

 public:
  // `parts` outlives this.
  explicit PracticeSession(const HomeParts& parts, QObject* parent = nullptr);
  ~PracticeSession() override;

  // Begins a new practice over `due` (in that order). Errors as of PracticeRun::begin(); kFailedPrecondition
  // when one is under way.
  absl::Status begin(const std::vector<Occasion>& due);
  // Takes up the unfinished practice of the engine. kNotFound when there is none or its programme is gone.
  absl::Status takeUp();
  // Forgets the run that closed, so that the next may begin.
  void leave();

  bool active() const { return m_run != nullptr; }
  const PracticeRun* run() const { return m_run.get(); }
  const RunInput& input() const { return m_input; }
  // The closed record, until leave().
  const v1::Practice& record() const { return m_record; }

  // One step of the run, with both clocks; afterwards cues, timers and, where it closed, the outbox. The
  // error is returned and told through failed() as well.
  using Step = std::function<absl::Status(PracticeRun&, absl::Time, absl::Duration)>;
  bool apply(const Step& step);
  const QString& lastError() const { return m_error; }

  void holdCame(const v1::HoldOrder& order);
  void stopPressed();
  // Not in front any more, or about to end: what runs is paused.
  void pauseForSystem();
  // What sound went to is gone. Who follows by ear cannot go on, and nothing may suddenly be said aloud: what
  // runs is paused, and stays so until the person goes on.
  void soundRouteLost();
  bool soundLost() const { return m_sound_lost; }
  // Nobody has gone on for long, or the last tone has died away: screen and sound device are given back.
  // Called by its own timer.
  void giveBackDevices();

  absl::Duration now() const { return m_parts.clock->elapsed(); }
  void setVoice(bool on);
  void setVibrates(bool on);
  bool voice() const { return m_voice; }
  // Says the present beat's words again.
  void repeatWords();
  // Whether every tone is felt as well.
  bool vibrates() const { return m_vibrates && m_parts.vibration->works(); }
  // Why cues cannot be heard, as a text key; empty when voice and tones work. Muting is not a fault.
  std::string soundProblem() const;

 signals:
  void changed();                     // step or player state may be another
  void ticked();                      // only times moved on
  void failed(const QString& words);  // nothing was changed

 private:
  // Where the present beat is, or the lead-in before it.
  struct Moment {
    bool lead_in;
    absl::Duration into, left;
  };
  Moment moment() const;
  RuleFacts history(absl::CivilDay today) const;
  RunInput inputFor(const v1::Programme& programme, const v1::Person& person) const;
  PracticeRun::Keep keep();
  void closeIfDone();
  void tellFailure(const absl::Status& status);
  void followPlayer();
  void beatBegan();
  void callDone();
  void noteZone();
  void fireCues();
  void fire(const Cue& cue);
  void sound(platform::Tone tone);
  void keepAwake(bool leads, bool paused);
  void schedule();
  void wake();
  void pulse();

  const HomeParts& m_parts;
  std::unique_ptr<PracticeRun> m_run;
  RunInput m_input;
  v1::Practice m_record;
  QString m_error;
  QTimer m_wake;   // to the next deadline or cue
  QTimer m_pulse;  // ten times a second while something runs
  QTimer m_cool;   // until the sound device is given back and the screen may go off
  bool m_voice = true;
  bool m_vibrates = true;
  bool m_sound_lost = false;  // that is why it is paused
  bool m_led = false;         // a player led when last looked at
  bool m_waited = false;      // and was paused

  // The beat whose cues are being given.
  std::size_t m_cued_entry = 0;
  std::uint32_t m_cued_beat = 0;
  bool m_cued = false;
  bool m_cued_lead_in = false;
  absl::Duration m_cued_into;
  absl::Duration m_lead_in;  // length of the lead-in that is being called
  std::vector<Cue> m_cues;
  std::vector<bool> m_given;
};

}  // namespace newel::home
