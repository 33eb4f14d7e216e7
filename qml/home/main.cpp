// newel-home: the patient's program. Here its parts are made and put together; nothing is decided here.
#include <QtCore/QCommandLineParser>
#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QMetaEnum>
#include <QtCore/QStandardPaths>
#include <QtCore/QTimeZone>
#include <QtCore/QTimer>
#include <QtGui/QGuiApplication>
#include <QtQml/QQmlApplicationEngine>
#include <QtQml/QQmlExtensionPlugin>
#include <array>
#include <chrono>
#include <functional>
#include <future>
#include <iostream>

#include "core/records/record_text.h"
#include "platform/camera.h"
#include "platform/clock.h"
#include "platform/offset_clock.h"
#include "platform/paths.h"
#include "platform/reminders.h"
#include "platform/resident.h"
#include "platform/sound.h"
#include "platform/system_wishes.h"
#include "platform/vibration.h"
#include "qml/home/current_content.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/home_models.h"
#include "qml/home/late_media.h"
#include "qml/home/phrasing.h"
#include "qml/home/screen_language.h"
#include "qml/home/store_key.h"
#include "qml/home/trouble.h"
#include "qml/parts/clip_player.h"
#include "qml/parts/driver.h"
#include "qml/parts/theme.h"
#include "sync/common/real_random.h"

Q_IMPORT_QML_PLUGIN(Newel_PartsPlugin)
Q_IMPORT_QML_PLUGIN(Newel_HomePlugin)

namespace {

using namespace newel;
using namespace newel::home;

constexpr std::chrono::seconds kLongestUntilPicture(1);  // ours, no source

struct Arguments {
  QString data;
  QString drive;
  bool self_test = false;
  bool key_in_file = false;
  bool reminders_only = false;  // no window until a reminder is pressed or the program is started once more
};

Arguments readArguments(const QGuiApplication& app) {
  QCommandLineParser parser;
  parser.setApplicationDescription(QStringLiteral("Newel for the person who practises."));
  parser.addHelpOption();
  parser.addVersionOption();
  const QCommandLineOption data(QStringLiteral("data"), QStringLiteral("Folder for everything it keeps."),
                                QStringLiteral("folder"));
  const QCommandLineOption drive(
      QStringLiteral("drive"), QStringLiteral("Read commands from a file or FIFO, - for stdin (for tests)."),
      QStringLiteral("file"));
  const QCommandLineOption self_test(QStringLiteral("self-test"),
                                     QStringLiteral("Load every page, report every warning, exit."));
  const QCommandLineOption key_in_file(
      QStringLiteral("key-in-file"),
      QStringLiteral("Where the system has no safe place for the store's key, keep it in a file unasked."));
  const QCommandLineOption reminders_only(
      QStringLiteral("reminders-only"),
      QStringLiteral("Show no window, only reminders, where they are wanted (after log-in)."));
  parser.addOptions({data, drive, self_test, key_in_file, reminders_only});
  parser.process(app);
  Arguments arguments;
  arguments.data =
      parser.isSet(data) ? parser.value(data) : QString::fromStdString(platform::dataFolder("newel-home"));
  arguments.drive = parser.value(drive);
  arguments.self_test = parser.isSet(self_test);
  arguments.key_in_file = parser.isSet(key_in_file);
  arguments.reminders_only = parser.isSet(reminders_only);
  return arguments;
}

// Goes through every page once; the number of warnings that QML or the pages gave meanwhile.
int selfTest(QGuiApplication& app, AppModel& model, int& warnings) {
  const QMetaEnum pages = QMetaEnum::fromType<AppModel::Page>();
  int next = 0;
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, &app, [&] {
    if (next == pages.keyCount()) return app.quit();
    model.showForTest(static_cast<AppModel::Page>(pages.value(next++)));
  });
  timer.start(30);
  app.exec();
  std::cout << "self-test: " << next << " pages, " << warnings << " warnings" << std::endl;
  return warnings == 0 && next > 0 ? 0 : 1;
}

// Only where the person says so: whoever has the phone's storage can then read what is on it.
bool asksForKeyFile(const Arguments& arguments) {
  if (arguments.key_in_file) return true;
  if (!arguments.drive.isEmpty() || arguments.self_test || arguments.reminders_only)
    return false;  // nobody is there to be asked
  return askInWindow(
      {QCoreApplication::translate("main", "This phone has no safe place for a key"),
       QCoreApplication::translate(
           "main",
           "Newel locks what it keeps about you with a key. This phone has no place of its own for keys, so "
           "the key would lie in a file beside your data. Whoever gets at this phone's storage could then "
           "read it."),
       QCoreApplication::translate("main", "Keep the key in a file"),
       QCoreApplication::translate("main", "Do not use Newel here")});
}

// The store stays as it is; the person learns why nothing can be shown.
void showTrouble(const Arguments& arguments, const absl::Status& status) {
  if (!arguments.drive.isEmpty() || arguments.self_test || arguments.reminders_only ||
      absl::IsCancelled(status))
    return;
  const QString words =
      absl::IsPermissionDenied(status) || absl::IsUnavailable(status)
          ? QCoreApplication::translate("main",
                                        "What Newel keeps on this phone is locked, and its key is not there. "
                                        "Unlock the phone's place for keys and open Newel again, or phone "
                                        "your clinic. Nothing was changed.")
          : QCoreApplication::translate("main",
                                        "What Newel keeps on this phone cannot be opened. Phone your clinic. "
                                        "Nothing was deleted.");
  askInWindow({QCoreApplication::translate("main", "Newel cannot open"), words, QString(),
               QCoreApplication::translate("main", "Close")});
}

bool remindersWanted(const HomeEngine& engine) {
  return engine.state().paired && engine.reminderBook().settings().wanted() == v1::REMINDERS_WANTED_YES;
}

// The person sees Today before the network is looked for. A window that never shows a picture (behind the
// lock screen) holds nothing up for long: a hold order may be waiting.
void afterFirstPicture(QQuickWindow& window, const std::function<void()>& begin) {
  auto* const latest = new QTimer(&window);
  const auto start = [latest, begin] {
    if (!latest->isActive()) return;  // once: a timer that has fired is not active any more
    latest->stop();
    begin();
  };
  latest->setSingleShot(true);
  latest->start(window.isVisible() ? kLongestUntilPicture : std::chrono::milliseconds(0));
  QObject::connect(latest, &QTimer::timeout, &window, begin);
  QObject::connect(&window, &QQuickWindow::frameSwapped, latest, start, Qt::QueuedConnection);
}

// What takes long and waits for nothing, beside the opening of the store. Whoever needs it sooner waits for
// it.
std::array<std::future<void>, 2> readAhead() {
  return {std::async(std::launch::async, &CurrentContent::readBuiltIn), std::async(std::launch::async, [] {
            if (!newel::parts::ourFontIsThere())
              std::cerr << "newel-home: the font Noto Sans is missing (fonts-noto-core)" << std::endl;
          })};
}

int failed(const absl::Status& status) {
  std::cerr << "newel-home: " << status.message() << std::endl;
  return 1;
}

}  // namespace

int main(int argc, char** argv) {
  // While a call or the stream is open its own thread looks after the connection, and between tries none is
  // kept: gRPC need not look as well, every five seconds.
  qputenv("GRPC_CLIENT_CHANNEL_BACKUP_POLL_INTERVAL_MS", "0");
  QGuiApplication app(argc, argv);
  newel::parts::chooseClipReader();
  QGuiApplication::setApplicationName(QStringLiteral("newel-home"));
  QGuiApplication::setApplicationDisplayName(QStringLiteral("Newel"));
  QGuiApplication::setApplicationVersion(QString::fromLatin1(kAppVersion));
  const Arguments arguments = readArguments(app);
  newel::parts::useOurFont();
  const auto ahead = readAhead();
  ScreenLanguage language;
  language.use("");

  const auto resident = platform::makeResident("home", arguments.data.toStdString());
  if (!resident->takePlace()) return 0;
  const std::unique_ptr<Clock> system_clock = platform::makeSystemClock();
  const absl::Duration offset = platform::wallOffsetAskedFor();
  platform::OffsetClock clock(*system_clock, offset);
  RealRandom random;
  HomeEngine::Options options;
  options.folder = arguments.data.toStdString();
  options.clock = &clock;
  options.random = &random;
  options.app_version = kAppVersion;
  options.device_name = QSysInfo::prettyProductName().toStdString();
  const auto secrets = platform::makeSecretStore();
  const absl::StatusOr<std::unique_ptr<HomeEngine>> engine =
      openWithKey(options, *secrets, [&] { return asksForKeyFile(arguments); });
  if (!engine.ok()) {
    showTrouble(arguments, engine.status());
    return failed(engine.status());
  }
  if (keyIsOld(**engine, clock.wall())) {
    const absl::Status changed = changeKey(**engine, options.folder, *secrets, random);
    // The old key is as good as it was; the next start tries again.
    if (!changed.ok()) qWarning("the key of the store could not be changed");
  }

  if (arguments.reminders_only && !remindersWanted(**engine)) {
    resident->startAtLogin(false, {});
    return 0;
  }
  platform::nameOurSound();
  const auto speech = makeLateSpeech();
  const auto tones = makeLateTones();
  const auto sound_route = makeLateSoundRoute();
  const auto vibration = platform::makeVibration("org.newel.Home");
  const auto wishes = platform::makeSystemWishes();
  const auto stay_awake = platform::makeStayAwake("A practice is running");
  const auto reminders = platform::makeReminders(clock, "Newel");
  HomeParts parts;
  parts.engine = engine->get();
  parts.clock = &clock;
  parts.speech = speech.get();
  parts.tones = tones.get();
  parts.vibration = vibration.get();
  parts.stay_awake = stay_awake.get();
  parts.wishes = wishes.get();
  parts.reminders = reminders.get();
  parts.resident = resident.get();
  parts.login_command = {QCoreApplication::applicationFilePath().toStdString(), "--data",
                         QDir(arguments.data).absolutePath().toStdString(), "--reminders-only"};
  parts.documents = [] {
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation).toStdString();
  };
  parts.zone = [] { return QTimeZone::systemTimeZoneId().toStdString(); };
  CurrentContent content(parts);

  SettingsModel settings(options.folder, parts);
  parts.appearance = [&settings] { return settings.appearance(); };
  parts.language = [&settings] { return settings.language().toStdString(); };
  const auto speakAsThePerson = [&] {
    const auto person = (*engine)->person();
    const std::string chosen = parts.language();
    language.use(chosen.empty() && person.has_value() ? person->language() : chosen);
  };
  speakAsThePerson();
  EngineBridge bridge;
  // First of all who listen: the others show what these have made of the news.
  QObject::connect(&bridge, &EngineBridge::news, &app, [&] {
    content.refresh();
    speakAsThePerson();
  });
  newel::parts::ClipPlayer clips(makeLateClipReader);
  std::function<void()> listen_for_loss;  // from the first practice on
  parts.leads = [&clips, &listen_for_loss](bool leads) {
    clips.setMayPlay(!leads);
    if (leads && listen_for_loss) std::exchange(listen_for_loss, nullptr)();
  };
  PracticeSession session(parts);
  TodayModel today(session, bridge, settings, parts);
  PracticeModel practice(session, parts);
  PlayerModel player(session, parts);
  ProgrammeModel programme(bridge, settings, parts);
  PairModel pair(bridge, parts);
  const auto camera = makeLateCamera();
  ScanModel scan(camera.get(), readSquareLate);
  const QString banner = offset == absl::ZeroDuration()
                             ? QString()
                             : QCoreApplication::translate("main", "Test clock: the date is shifted");
  AdviceModel advice(bridge, parts);
  FirstRunModel first_run(settings, parts);
  HistoryModel history(settings, parts);
  MessagesModel messages(bridge, parts);
  ReminderService reminder_service(session, bridge, parts);
  ReminderModel reminder_model(reminder_service, parts);
  TellLaterModel tell_later(parts);
  TakeAlongModel take_along(bridge, parts);
  WearModel wear(bridge, parts);
  AppModel model(session, today, first_run, bridge, parts, banner);
  HomeModels models;
  models.app = &model;
  models.pair = &pair;
  models.scan = &scan;
  models.today = &today;
  models.practice = &practice;
  models.player = &player;
  models.programme = &programme;
  models.settings = &settings;
  models.advice = &advice;
  models.reminders = &reminder_model;
  models.tell_later = &tell_later;
  models.take_along = &take_along;
  models.wear = &wear;
  models.clips = &clips;
  QObject::connect(&scan, &ScanModel::found, &model, [&](const QString& text) {
    model.back();
    pair.pairText(text);
  });
  models.firstRun = &first_run;
  models.history = &history;
  models.messages = &messages;
  QObject::connect(&pair, &PairModel::paired, &model, &AppModel::pairedNow);
  QObject::connect(&settings, &SettingsModel::erased, &model, &AppModel::leavePractice);
  QObject::connect(&settings, &SettingsModel::erased, &reminder_service, &ReminderService::rebuild);
  QObject::connect(&tell_later, &TellLaterModel::told, &today, &TodayModel::refresh);
  QObject::connect(&wear, &WearModel::told, &today, &TodayModel::refresh);
  QObject::connect(&reminder_service, &ReminderService::clockChanged, &wear, &WearModel::refresh);
  QObject::connect(&tell_later, &TellLaterModel::told, &reminder_service, &ReminderService::rebuild);
  QObject::connect(&reminder_service, &ReminderService::clockChanged, &today, &TodayModel::refresh);
  QObject::connect(&settings, &SettingsModel::changed, &session, [&] {
    session.setVoice(settings.voice());
    session.setVibrates(settings.vibrates());
    speakAsThePerson();
  });
  session.setVoice(settings.voice());
  session.setVibrates(settings.vibrates());
  wishes->onChange([&settings] { emit settings.changed(); });
  // Out of sight the person cannot follow; a desktop window that lies behind another still speaks.
  QObject::connect(&app, &QGuiApplication::applicationStateChanged, &session,
                   [&](Qt::ApplicationState state) {
                     if (state == Qt::ApplicationSuspended || state == Qt::ApplicationHidden)
                       session.pauseForSystem();
                     if (state == Qt::ApplicationActive) reminder_service.opened();
                   });

  listen_for_loss = [&] { sound_route->whenLost([&session] { session.soundRouteLost(); }); };

  int warnings = 0;
  QQmlApplicationEngine qml;
  QObject::connect(&qml, &QQmlApplicationEngine::warnings, &app,
                   [&](const QList<QQmlError>& errors) { warnings += static_cast<int>(errors.size()); });
  qml.addImportPath(QStringLiteral("qrc:/qt/qml"));
  QObject::connect(&language, &ScreenLanguage::changed, &qml, &QQmlApplicationEngine::retranslate);
  qml.setInitialProperties({{QStringLiteral("models"), QVariant::fromValue(&models)},
                            {QStringLiteral("visible"), !arguments.reminders_only}});
  qml.load(QUrl(QStringLiteral("qrc:/qt/qml/Newel/Home/Main.qml")));
  if (qml.rootObjects().isEmpty()) return 1;
  auto* const window = qobject_cast<QQuickWindow*>(qml.rootObjects().constFirst());

  const auto come_to_front = [&] {
    window->show();
    window->raise();
    window->requestActivate();
    reminder_service.opened();
    today.refresh();
  };
  QObject::connect(&reminder_service, &ReminderService::openAsked, window, come_to_front);
  resident->onCalled(come_to_front);
  // Where reminders come from this program, closing its window does not end it.
  QGuiApplication::setQuitOnLastWindowClosed(false);
  bool closed = false;
  const auto leave_unless_needed = [&] {
    if (!closed || window->isVisible()) return;
    // While the system has not answered it is waited for: the answer comes as a change.
    const platform::ReminderPermission permission = reminder_service.permission();
    const bool may = permission == platform::ReminderPermission::Granted ||
                     permission == platform::ReminderPermission::Asking;
    if (!may || !reminder_service.comeWhenClosed()) QGuiApplication::quit();
  };
  QObject::connect(&app, &QGuiApplication::lastWindowClosed, &session, [&] {
    session.pauseForSystem();
    closed = true;
    leave_unless_needed();
  });
  QObject::connect(&reminder_service, &ReminderService::changed, &session, leave_unless_needed);
  (*engine)->setListener(&bridge);
  afterFirstPicture(*window, [&] {
    (*engine)->start();
    vibration->ask([&settings] { emit settings.changed(); });
  });
  today.refresh();
  if (!arguments.reminders_only) reminder_service.opened();
  reminder_service.rebuild();
  if (arguments.self_test) return selfTest(app, model, warnings);
  std::unique_ptr<newel::parts::Driver> driver;
  if (!arguments.drive.isEmpty()) {
    driver = std::make_unique<newel::parts::Driver>(window, [&model, window] {
      QJsonObject facts = model.facts();
      facts["window"] = window->isVisible();
      return facts;
    });
    driver->readFrom(arguments.drive);
  }
  const int code = QGuiApplication::exec();
  session.pauseForSystem();
  (*engine)->setListener(nullptr);
  return code;
}
