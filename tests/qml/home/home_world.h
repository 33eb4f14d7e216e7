// A phone on the bench: a real engine in a folder of its own, a clock that the test moves, recorded sound,
// and all view models as main.cpp puts them together.
#pragma once

#include <memory>

#include "platform/fake/recorded_reminders.h"
#include "platform/fake/recorded_resident.h"
#include "platform/fake/recorded_sound.h"
#include "platform/fake/shown_camera.h"
#include "qml/home/current_content.h"
#include "qml/home/home_models.h"
#include "tests/qml/home/paper_clinic.h"
#include "tests/qml/parts/window_faults.h"

namespace newel::tests {

// What a run of the program makes; gone after kill().
struct HomeProgram {
  HomeProgram(const std::string& folder, SimulatedClock& clock, Random& random, HubNetwork& network);
  ~HomeProgram();

  platform::RecordedSpeech speech;
  platform::RecordedTones tones;
  platform::RecordedVibration vibration;
  platform::RecordedStayAwake stay_awake;
  platform::FixedWishes wishes;
  platform::ShownCamera camera;
  platform::RecordedReminders reminders;
  platform::RecordedResident resident;
  std::string zone = "Europe/Berlin";  // where the phone is
  std::unique_ptr<HomeEngine> engine;
  newel::parts::ClipPlayer clips{newel::parts::makeQtClipReader};
  home::HomeParts parts;
  std::unique_ptr<home::CurrentContent> content;
  std::unique_ptr<home::EngineBridge> bridge;
  std::unique_ptr<home::PracticeSession> session;
  std::unique_ptr<home::SettingsModel> settings;
  std::unique_ptr<home::TodayModel> today;
  std::unique_ptr<home::PracticeModel> practice;
  std::unique_ptr<home::PlayerModel> player;
  std::unique_ptr<home::ProgrammeModel> programme;
  std::unique_ptr<home::PairModel> pair;
  std::unique_ptr<home::ScanModel> scan;
  std::unique_ptr<home::AdviceModel> advice;
  std::unique_ptr<home::FirstRunModel> first_run;
  std::unique_ptr<home::HistoryModel> history;
  std::unique_ptr<home::MessagesModel> messages;
  std::unique_ptr<home::ReminderService> reminder_service;
  std::unique_ptr<home::ReminderModel> reminder_model;
  std::unique_ptr<home::TellLaterModel> tell_later;
  std::unique_ptr<home::WearModel> wear;
  std::unique_ptr<home::TakeAlongModel> take_along;
  std::unique_ptr<home::AppModel> app;
  home::HomeModels models;
};

class HomeWorld {
 public:
  HomeWorld();

  HomeProgram& program() { return *m_program; }
  home::AppModel::Page page() { return m_program->app->page(); }
  PaperClinic& clinic() { return m_clinic; }
  SimulatedClock& clock() { return m_clock; }
  const std::string& folder() const { return m_folder.path(); }  // of the phone's store

  void pair();  // without the pages
  // One round of contact, and its news brought to the models.
  void sync();
  // The program ends without a word and starts again on the same folder; the clock goes on by `away`.
  void killAndRestart(absl::Duration away = absl::Seconds(20));

  // Takes the fine answer to every question and gives `pain`, until the first exercise may start.
  void answerAllFine(int pain = 1);
  // Lets time pass in steps of 100 ms, as the program's own pulse does.
  void pass(absl::Duration time);
  // Lets time pass until the page is another, at most `limit`. False when it stayed.
  bool passUntilPageChanges(absl::Duration limit = absl::Minutes(30));

 private:
  TempFolder m_folder;
  PaperClinic m_clinic;
  RealRandom m_random;
  // 2026-11-25 10:00 in Berlin.
  SimulatedClock m_clock{absl::FromUnixSeconds(1795597200)};
  std::unique_ptr<HomeProgram> m_program;
};

}  // namespace newel::tests
