#include "tests/qml/home/home_world.h"

#include <gtest/gtest.h>

#include "qml/home/square_reader.h"
#include "sync/home/seal.h"

namespace newel::tests {

using home::AppModel;

HomeProgram::HomeProgram(const std::string& folder, SimulatedClock& clock, Random& random,
                         HubNetwork& network) {
  HomeEngine::Options options;
  options.folder = folder;
  options.store_key = std::string(kStoreKeyBytes, 'k');
  options.clock = &clock;
  options.random = &random;
  options.app_version = "0.1.0";
  options.device_name = "bench";
  options.network = &network;
  auto opened = HomeEngine::open(options);
  EXPECT_TRUE(opened.ok()) << opened.status();
  engine = *std::move(opened);
  parts.engine = engine.get();
  parts.clock = &clock;
  parts.speech = &speech;
  parts.tones = &tones;
  parts.vibration = &vibration;
  parts.stay_awake = &stay_awake;
  parts.wishes = &wishes;
  parts.reminders = &reminders;
  parts.resident = &resident;
  parts.login_command = {"newel-home", "--reminders-only"};
  parts.documents = [folder] { return folder + "/documents"; };
  parts.zone = [this] { return zone; };
  content = std::make_unique<home::CurrentContent>(parts);
  bridge = std::make_unique<home::EngineBridge>();
  QObject::connect(bridge.get(), &home::EngineBridge::news, bridge.get(), [this] { content->refresh(); });
  parts.leads = [this](bool leads) { clips.setMayPlay(!leads); };
  session = std::make_unique<home::PracticeSession>(parts);
  settings = std::make_unique<home::SettingsModel>(folder, parts);
  parts.appearance = [this] { return settings->appearance(); };
  parts.language = [this] { return settings->language().toStdString(); };
  today = std::make_unique<home::TodayModel>(*session, *bridge, *settings, parts);
  practice = std::make_unique<home::PracticeModel>(*session, parts);
  player = std::make_unique<home::PlayerModel>(*session, parts);
  programme = std::make_unique<home::ProgrammeModel>(*bridge, *settings, parts);
  pair = std::make_unique<home::PairModel>(*bridge, parts);
  scan = std::make_unique<home::ScanModel>(&camera, home::readSquare);
  advice = std::make_unique<home::AdviceModel>(*bridge, parts);
  first_run = std::make_unique<home::FirstRunModel>(*settings, parts);
  history = std::make_unique<home::HistoryModel>(*settings, parts);
  messages = std::make_unique<home::MessagesModel>(*bridge, parts);
  reminder_service = std::make_unique<home::ReminderService>(*session, *bridge, parts);
  reminder_model = std::make_unique<home::ReminderModel>(*reminder_service, parts);
  tell_later = std::make_unique<home::TellLaterModel>(parts);
  take_along = std::make_unique<home::TakeAlongModel>(*bridge, parts);
  wear = std::make_unique<home::WearModel>(*bridge, parts);
  app = std::make_unique<AppModel>(*session, *today, *first_run, *bridge, parts, QString());
  models.app = app.get();
  models.pair = pair.get();
  models.scan = scan.get();
  models.today = today.get();
  models.practice = practice.get();
  models.player = player.get();
  models.programme = programme.get();
  models.settings = settings.get();
  models.advice = advice.get();
  models.reminders = reminder_model.get();
  models.tell_later = tell_later.get();
  models.take_along = take_along.get();
  models.wear = wear.get();
  models.clips = &clips;
  QObject::connect(scan.get(), &home::ScanModel::found, app.get(), [this](const QString& text) {
    app->back();
    pair->pairText(text);
  });
  models.firstRun = first_run.get();
  models.history = history.get();
  models.messages = messages.get();
  QObject::connect(pair.get(), &home::PairModel::paired, app.get(), &AppModel::pairedNow);
  QObject::connect(settings.get(), &home::SettingsModel::erased, app.get(), &AppModel::leavePractice);
  QObject::connect(settings.get(), &home::SettingsModel::erased, reminder_service.get(),
                   &home::ReminderService::rebuild);
  QObject::connect(wear.get(), &home::WearModel::told, today.get(), &home::TodayModel::refresh);
  QObject::connect(tell_later.get(), &home::TellLaterModel::told, today.get(), &home::TodayModel::refresh);
  QObject::connect(tell_later.get(), &home::TellLaterModel::told, reminder_service.get(),
                   &home::ReminderService::rebuild);
  QObject::connect(settings.get(), &home::SettingsModel::changed, session.get(),
                   [this] { session->setVibrates(settings->vibrates()); });
  engine->setListener(bridge.get());
  today->refresh();
  reminder_service->opened();
  reminder_service->rebuild();
}

HomeProgram::~HomeProgram() { engine->setListener(nullptr); }

HomeWorld::HomeWorld()
    : m_program(std::make_unique<HomeProgram>(m_folder.path(), m_clock, m_random, m_clinic)) {}

void HomeWorld::pair() {
  PairingTicket ticket{"clinic.example", 7443, std::string(32, '\x5a'), PaperClinic::kCode};
  const absl::Status paired = m_program->engine->pair(ticket);
  ASSERT_TRUE(paired.ok()) << paired;
  sync();
}

void HomeWorld::sync() {
  const absl::Status round = m_program->engine->syncOnce();
  EXPECT_TRUE(round.ok() || absl::IsUnavailable(round) || absl::IsPermissionDenied(round)) << round;
  settle(20);
  emit m_program->bridge->news();
}

void HomeWorld::killAndRestart(absl::Duration away) {
  m_program.reset();
  m_clock.advance(away);
  m_program = std::make_unique<HomeProgram>(m_folder.path(), m_clock, m_random, m_clinic);
}

void HomeWorld::answerAllFine(int pain) {
  for (int round = 0; round < 10 && page() == AppModel::Page::Question; ++round) {
    const v1::ReadyQuestion* const question = m_program->session->run()->question();
    for (const v1::ReadyChoice& choice : question->choices()) {
      if (!choice.fine()) continue;
      m_program->practice->answer(QString::fromStdString(choice.id()));
      break;
    }
  }
  if (page() == AppModel::Page::Pain) m_program->practice->painBefore(pain);
}

void HomeWorld::pass(absl::Duration time) {
  for (absl::Duration gone; gone < time; gone += absl::Milliseconds(100)) {
    m_clock.advance(absl::Milliseconds(100));
    m_program->session->apply(
        [](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.tick(wall, now); });
  }
}

bool HomeWorld::passUntilPageChanges(absl::Duration limit) {
  const AppModel::Page before = page();
  for (absl::Duration gone; gone < limit && page() == before; gone += absl::Milliseconds(100)) {
    pass(absl::Milliseconds(100));
  }
  return page() != before;
}

}  // namespace newel::tests
