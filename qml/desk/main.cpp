// newel-desk: the therapist's program. Here its parts are made and put together; nothing is decided here.
#include <QtCore/QCommandLineParser>
#include <QtCore/QDir>
#include <QtCore/QMetaEnum>
#include <QtCore/QTimeZone>
#include <QtCore/QTimer>
#include <QtGui/QGuiApplication>
#include <QtQml/QQmlApplicationEngine>
#include <QtQml/QQmlExtensionPlugin>
#include <iostream>

#include "core/time/local_day.h"
#include "platform/clock.h"
#include "platform/offset_clock.h"
#include "platform/paths.h"
#include "qml/desk/desk_language.h"
#include "qml/desk/desk_model.h"
#include "qml/desk/print_command.h"
#include "qml/paint/contact_sheet.h"
#include "qml/parts/clip_player.h"
#include "qml/parts/driver.h"
#include "qml/parts/theme.h"
#include "qml/print/handout.h"
#include "sync/common/real_random.h"

Q_IMPORT_QML_PLUGIN(Newel_PartsPlugin)
Q_IMPORT_QML_PLUGIN(Newel_DeskPlugin)

namespace {

using namespace newel;
using namespace newel::desk;

struct Arguments {
  QString data;
  QString drive;
  QString sheets;
  QString hub;
  QString fingerprint;
  QString user;
  QString figures;
  absl::Duration lock_after;  // zero: as the clinic says
  bool self_test = false;
  PrintCommand print;
};

QCommandLineOption valued(const char* name, const char* words, const char* value) {
  return {QString::fromLatin1(name), QString::fromLatin1(words), QString::fromLatin1(value)};
}

void addOptions(QCommandLineParser& parser) {
  parser.setApplicationDescription(QStringLiteral("Newel for the therapist."));
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addOptions(
      {valued("data", "Folder for what it remembers and for drafts.", "folder"),
       valued("hub", "The hub's address, host:port.", "address"),
       valued("fingerprint", "The hub's fingerprint, as newel-hub fingerprint prints it.", "hex"),
       valued("user", "User name.", "name"),
       valued("lock-after",
              "Lock after so many seconds without a touch, when that is sooner than the clinic says: for a "
              "desk in "
              "an open place.",
              "seconds"),
       valued("sheets", "Folder for PDFs (your documents).", "folder"),
       valued("drive", "Read commands from a file or FIFO, - for stdin (for tests).", "file"),
       valued("sheet", "Paint every figure of the catalogue on one picture and exit, no screen needed.",
              "file.png"),
       {QStringLiteral("self-test"), QStringLiteral("Load every page, report every warning, exit.")},
       valued("print",
              "Write a PDF and exit, no screen needed: handout, report or card. The password comes from the "
              "environment's NEWEL_PASSWORD, the code of a second factor from NEWEL_CODE.",
              "kind"),
       valued("person", "With --print: id of the person.", "id"),
       valued("out", "With --print: the file to write.", "file.pdf"),
       valued("from", "With --print report: first day, YYYY-MM-DD (four weeks back).", "day"),
       valued("to", "With --print report: last day (today).", "day"),
       valued("size", "With --print: a4 or letter.", "paper"),
       valued("body", "With --print: size of the text in points, 8 to 24.", "points"),
       {QStringLiteral("large-print"), QStringLiteral("With --print handout: text of 16 points.")},
       valued("language", "With --print: language of the sheet, en, es or ar (the person's; a report's: en).",
              "language"),
       {QStringLiteral("compact"), QStringLiteral("With --print handout: several exercises to a page.")},
       {QStringLiteral("no-name"), QStringLiteral("With --print handout or card: leave the name off.")}});
}

Arguments readArguments(const QCommandLineParser& parser) {
  const auto value = [&parser](const char* name) { return parser.value(QString::fromLatin1(name)); };
  Arguments arguments;
  arguments.data = parser.isSet(QStringLiteral("data"))
                       ? value("data")
                       : QString::fromStdString(platform::dataFolder("newel-desk"));
  arguments.drive = value("drive");
  arguments.sheets = value("sheets");
  arguments.hub = value("hub");
  arguments.fingerprint = value("fingerprint");
  arguments.user = value("user");
  arguments.figures = value("sheet");
  arguments.lock_after = absl::Seconds(value("lock-after").toUInt());
  arguments.self_test = parser.isSet(QStringLiteral("self-test"));
  PrintCommand& print = arguments.print;
  print.kind = value("print");
  print.person_id = value("person");
  print.address = arguments.hub;
  print.fingerprint = arguments.fingerprint;
  print.user_name = arguments.user;
  print.password = qEnvironmentVariable("NEWEL_PASSWORD");
  print.code = qEnvironmentVariable("NEWEL_CODE");
  print.out = value("out");
  print.first_day = value("from");
  print.last_day = value("to");
  print.choice.size = value("size").compare(QLatin1String("letter"), Qt::CaseInsensitive) == 0
                          ? QPageSize::Letter
                          : QPageSize::A4;
  print.choice.body_pt = value("body").toDouble();
  if (parser.isSet(QStringLiteral("large-print"))) print.choice.body_pt = print::kLargePrintPt;
  print.choice.language = value("language").toStdString();
  print.choice.compact = parser.isSet(QStringLiteral("compact"));
  print.choice.with_name = !parser.isSet(QStringLiteral("no-name"));
  return arguments;
}

std::string wrongChoice(const QCommandLineParser& parser) {
  const QString size = parser.value(QStringLiteral("size")).toLower();
  if (!size.isEmpty() && size != QLatin1String("a4") && size != QLatin1String("letter"))
    return "--size: a4 or letter";
  if (parser.isSet(QStringLiteral("body"))) {
    bool fine = false;
    const double points = parser.value(QStringLiteral("body")).toDouble(&fine);
    if (!fine || points < 8 || points > 24) return "--body: 8 to 24";
  }
  if (parser.isSet(QStringLiteral("lock-after"))) {
    bool fine = false;
    const uint seconds = parser.value(QStringLiteral("lock-after")).toUInt(&fine);
    if (!fine || seconds < 1 || seconds > 3600) return "--lock-after: 1 to 3600 seconds";
  }
  return "";
}

// "1280x720" from the environment of a test; 1280 x 800 otherwise.
QSize windowSize() {
  const QStringList parts = qEnvironmentVariable("NEWEL_WINDOW_SIZE").split(QLatin1Char('x'));
  const QSize size = parts.size() == 2 ? QSize(parts[0].toInt(), parts[1].toInt()) : QSize();
  return size.isEmpty() ? QSize(1280, 800) : size;
}

// Goes through every page once; the number of warnings that QML or the pages gave meanwhile.
int selfTest(QGuiApplication& app, DeskModel& model, const int& warnings) {
  const QMetaEnum pages = QMetaEnum::fromType<DeskModel::Page>();
  int next = 0;
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, &app, [&] {
    if (next == pages.keyCount()) return QGuiApplication::quit();
    model.showForTest(static_cast<DeskModel::Page>(pages.value(next++)));
  });
  timer.start(30);
  QGuiApplication::exec();
  std::cout << "self-test: " << next << " pages, " << warnings << " warnings" << std::endl;
  return warnings == 0 && next > 0 ? 0 : 1;
}

// The catalogue's figures through the screen's own adapter, for somebody with the left shank lost.
int paintFigures(const QString& file) {
  newel::FigureBody body;
  body.left.level = newel::v1::LIMB_LOSS_LEVEL_TRANSTIBIAL;
  const auto sheet = newel::paint::contactSheet(body, QLocale().name().left(2).toStdString());
  if (!sheet.ok()) {
    std::cerr << "newel-desk: " << sheet.status().message() << std::endl;
    return 1;
  }
  if (!sheet->save(file)) {
    std::cerr << "newel-desk: cannot write " << file.toStdString() << std::endl;
    return 1;
  }
  std::cout << file.toStdString() << ": " << sheet->width() << " x " << sheet->height() << std::endl;
  return 0;
}

DeskContext makeContext(const Clock& clock, Random& random, const QString& data) {
  DeskContext context;
  context.clock = &clock;
  context.random = &random;
  context.catalogue = &Catalogue::builtIn();
  context.rules = &RuleBook::builtIn();
  context.settings = usualSettings(*context.catalogue);
  context.data_folder = data;
  context.zone_name = QTimeZone::systemTimeZoneId().toStdString();
  context.zone = loadZone(context.zone_name).value_or(absl::UTCTimeZone());
  return context;
}

int runWindow(QGuiApplication& app, const Arguments& arguments, DeskContext& context, DeskLanguage& language,
              const QString& banner) {
  HubWorker worker;
  context.worker = &worker;
  DeskSettings settings = loadSettings(arguments.data);
  if (!arguments.hub.isEmpty()) settings.address = arguments.hub;
  if (!arguments.fingerprint.isEmpty() && arguments.fingerprint != settings.fingerprint) {
    settings.fingerprint = arguments.fingerprint;
    settings.pins.clear();
  }
  if (!arguments.user.isEmpty()) settings.user_name = arguments.user;
  DeskModel model(context, settings, banner);
  model.lock()->setSooner(arguments.lock_after);
  if (!arguments.sheets.isEmpty()) model.setSheetsFolder(arguments.sheets);

  int warnings = 0;
  QQmlApplicationEngine qml;
  QObject::connect(&qml, &QQmlApplicationEngine::warnings, &app,
                   [&](const QList<QQmlError>& errors) { warnings += static_cast<int>(errors.size()); });
  QObject::connect(&model, &DeskModel::languageChanged, &qml, [&](const QString& chosen) {
    language.use(chosen);
    qml.retranslate();
  });
  qml.addImportPath(QStringLiteral("qrc:/qt/qml"));
  const QSize size = windowSize();
  qml.setInitialProperties({{QStringLiteral("desk"), QVariant::fromValue(&model)},
                            {QStringLiteral("width"), size.width()},
                            {QStringLiteral("height"), size.height()}});
  const int theme_type = qmlTypeId("Newel.Parts", 1, 0, "Theme");
  auto* const theme = qml.singletonInstance<newel::parts::Theme*>(theme_type);
  if (theme != nullptr) {
    theme->setTextPercent(settings.text_percent);
    if (settings.look_chosen) theme->setDark(settings.dark);
  }
  qml.load(QUrl(QStringLiteral("qrc:/qt/qml/Newel/Desk/Main.qml")));
  if (qml.rootObjects().isEmpty()) return 1;
  if (arguments.self_test) return selfTest(app, model, warnings);
  auto* const window = qobject_cast<QQuickWindow*>(qml.rootObjects().constFirst());
  std::unique_ptr<newel::parts::Driver> driver;
  if (!arguments.drive.isEmpty()) {
    driver = std::make_unique<newel::parts::Driver>(window, [&model] { return model.facts(); });
    driver->readFrom(arguments.drive);
  }
  return QGuiApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
  for (int i = 1; i < argc; ++i) {
    // A sheet needs fonts but no screen.
    const QByteArray option(argv[i]);
    if ((option.startsWith("--print") || option == "--sheet" || option.startsWith("--sheet=")) &&
        !qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
      qputenv("QT_QPA_PLATFORM", "offscreen");
    }
  }
  QGuiApplication app(argc, argv);
  newel::parts::chooseClipReader();
  QGuiApplication::setApplicationName(QStringLiteral("newel-desk"));
  QGuiApplication::setApplicationDisplayName(QStringLiteral("Newel Desk"));
  QGuiApplication::setApplicationVersion(QStringLiteral("0.1.0"));
  QCommandLineParser parser;
  addOptions(parser);
  parser.process(app);
  const std::string wrong = wrongChoice(parser);
  if (!wrong.empty()) {
    std::cerr << "newel-desk: " << wrong << std::endl;
    return 2;
  }
  const Arguments arguments = readArguments(parser);
  newel::parts::useOurFont();
  if (!newel::parts::ourFontIsThere()) {
    std::cerr << "newel-desk: the font Noto Sans is missing (fonts-noto-core)" << std::endl;
  }
  if (!arguments.figures.isEmpty()) return paintFigures(arguments.figures);
  DeskLanguage language;
  language.use(loadSettings(arguments.data).language);
  const std::unique_ptr<Clock> system_clock = platform::makeSystemClock();
  const absl::Duration offset = platform::wallOffsetAskedFor();
  const platform::OffsetClock clock(*system_clock, offset);
  RealRandom random;
  DeskContext context = makeContext(clock, random, arguments.data);
  context.language = language.shown().toStdString();
  if (!arguments.print.kind.isEmpty()) return runPrint(arguments.print, context);
  const QString banner = offset == absl::ZeroDuration()
                             ? QString()
                             : QCoreApplication::translate("main", "Test clock: the date is shifted");
  return runWindow(app, arguments, context, language, banner);
}
