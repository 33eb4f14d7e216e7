#include "tests/qml/home/page_walk.h"

#include <QtCore/QDir>
#include <QtCore/QRegularExpression>
#include <QtGui/QFontMetricsF>
#include <QtGui/QGuiApplication>
#include <QtQml/QQmlExtensionPlugin>
#include <QtQuick/QQuickItem>

#include "qml/parts/driver.h"

Q_IMPORT_QML_PLUGIN(Newel_HomePlugin)

namespace newel::tests {
namespace {

using home::AppModel;
using Look = home::SettingsModel::Look;

constexpr int kPercents[] = {100, 150, 200};
// 1 dp is 1/160 inch: 10 mm are 10 / 25.4 * 160.
constexpr double kTenMillimetres = 62.99;
constexpr double kStopSide = 64;
// Nothing else to press this near to Stop, edge to edge.
constexpr double kStopAlone = 24;

// What is on the screen, item by item.
void gatherTexts(const QQuickItem* item, QStringList& found) {
  if (!item->isVisible()) return;
  const QString text = item->property("text").toString();
  if (!text.isEmpty() && !found.contains(text)) found << text;
  for (const QQuickItem* child : item->childItems()) gatherTexts(child, found);
}

std::string wordsFor(const PageSize& size, int percent) {
  return std::to_string(size.width) + "x" + std::to_string(size.height) + "at" + std::to_string(percent);
}

std::vector<QQuickItem*> allOf(QQuickItem* item) {
  std::vector<QQuickItem*> all = {item};
  for (std::size_t i = 0; i < all.size(); ++i) {
    const QList<QQuickItem*> children = all[i]->childItems();
    for (QQuickItem* child : children) {
      if (child->isVisible()) all.push_back(child);
    }
  }
  return all;
}

QRectF boxOf(const QQuickItem* item) {
  return item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
}

double apart(const QRectF& a, const QRectF& b) {
  const double across = std::max({0.0, a.left() - b.right(), b.left() - a.right()});
  const double down = std::max({0.0, a.top() - b.bottom(), b.top() - a.bottom()});
  return std::max(across, down);
}

}  // namespace

PageWalk::~PageWalk() {
  m_engine.reset();
  if (m_pseudo != nullptr) QCoreApplication::removeTranslator(m_pseudo.get());
  home::ScreenLanguage().use("en");
  inventedLanguage() = "en";
}

void PageWalk::begin(const std::string& language) {
  m_language_name = language;
  const bool pseudo = language == "pseudo";
  m_language.use(pseudo ? "en" : language);
  inventedLanguage() = pseudo ? "en" : language;
  if (pseudo) {
    m_pseudo = std::make_unique<PseudoLanguage>();
    QCoreApplication::installTranslator(m_pseudo.get());
  }
  program().settings->setLook(Look::Light);
  load();
}

void PageWalk::load() {
  m_engine = std::make_unique<QQmlApplicationEngine>();
  QObject::connect(m_engine.get(), &QQmlApplicationEngine::warnings, [this](const QList<QQmlError>& errors) {
    for (const QQmlError& error : errors) m_warnings.push_back(error.toString().toStdString());
  });
  m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
  m_engine->setInitialProperties({{QStringLiteral("models"), QVariant::fromValue(&program().models)}});
  m_engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Newel/Home/Main.qml")));
  ASSERT_FALSE(m_engine->rootObjects().isEmpty());
  m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
  m_window->resize(kPageSizes[0].width, kPageSizes[0].height);
  settle();
}

void PageWalk::killAndRestart() {
  m_window = nullptr;
  m_engine.reset();
  m_world.killAndRestart();
  load();
}

void PageWalk::layOut(const PageSize& size, int percent) {
  if (program().settings->textPercent() != percent) program().settings->setTextPercent(percent);
  m_window->resize(size.width, size.height);
  settleLayout(*m_window);
}

void PageWalk::judge(QQuickWindow& window, const std::string& where) const {
  for (const std::string& fault : faultsOf(window)) ADD_FAILURE() << where << ": " << fault;
  for (const std::string& fault : orderFaultsOf(window)) ADD_FAILURE() << where << ": " << fault;
}

void PageWalk::checkDigits(const std::string& where) const {
  if (m_language_name != "ar") return;
  // What is dialled, typed, compared or named as it stands; what the clinic of the test wrote; and what
  // stands in the catalogue's own Arabic, whose digits its translator chose.
  static const QRegularExpression kAsItStands(
      QStringLiteral("112|555 0142|clinic\\.example:7443|newel:1|\\b[0-9A-F]{4}( [0-9A-F]{4})+|"
                     "[0-9-]+\\.pdf|/tmp/newel-\\w+|Monday to Friday, 8 to 16|2-minute walk|"
                     "10 طبقات|3\\+1|15 دقيقة"));
  static const QRegularExpression kLatin(QStringLiteral("[0-9]"));
  QStringList texts;
  gatherTexts(m_window->contentItem(), texts);
  for (QString text : std::as_const(texts)) {
    const std::string whole = text.toStdString();
    EXPECT_FALSE(kLatin.match(text.remove(kAsItStands)).hasMatch())
        << where << ": digits of another language in: " << whole;
  }
}

void PageWalk::check(AppModel::Page page, const std::string& variant) {
  ASSERT_NE(m_window, nullptr);
  ASSERT_EQ(m_world.page(), page) << program().app->pageName().toStdString();
  const std::string name = program().app->pageName().toStdString() + variant;
  for (const PageSize& size : kPageSizes) {
    for (const int percent : kPercents) {
      layOut(size, percent);
      const std::string look = wordsFor(size, percent);
      judge(*m_window, name + " " + look);
      if (page == AppModel::Page::Practice) {
        checkPractice(name + " " + look, m_language_name == "en" || percent == 100);
      }
      keepPicture(*m_window, look + m_language_name, name);
    }
  }
  layOut(kPageSizes[0], 100);
  checkDigits(name);
  checkThemes(name);
  for (const std::string& warning : m_warnings) ADD_FAILURE() << name << ": " << warning;
  m_warnings.clear();
}

void PageWalk::checkThemes(const std::string& where) {
  const std::string layout = layoutOf(*m_window);
  for (const bool strong : {false, true}) {
    for (const Look look : {Look::Dark, Look::Light}) {
      program().settings->setLook(look);
      program().settings->setMoreContrast(strong);
      settle(5);
      EXPECT_EQ(layoutOf(*m_window), layout) << where << ": a colour moves things";
      const std::string theme = std::string(strong ? "strong" : "") + (look == Look::Dark ? "dark" : "light");
      keepPicture(*m_window, theme + m_language_name, where);
    }
  }
  program().settings->setMoreContrast(false);
}

// What has to be there at every size without scrolling: figure, number and words, and Stop alone.
void PageWalk::checkPractice(const std::string& where, bool full) {
  if (program().player->paused()) return;
  const QRectF window(0, 0, m_window->width(), m_window->height());
  QRectF stop;
  bool figure = false;
  double numeral = 0;
  std::vector<QRectF> others;
  for (QQuickItem* item : allOf(m_window->contentItem())) {
    const QRectF box = boxOf(item);
    if (item->inherits("newel::parts::FigureView")) figure = box.height() >= 68 && window.contains(box);
    if (item->objectName() == "numeral" && window.intersects(box)) {
      QFont font = item->property("font").value<QFont>();
      // What is left of it where the number is wide; of the digits the one that is as high as they get.
      const double wide = QFontMetricsF(font).horizontalAdvance(item->property("text").toString());
      const QString digit = QLocale().toString(1);
      numeral = QFontMetricsF(font).tightBoundingRect(digit).height() * std::min(1.0, item->width() / wide);
    }
    if (!item->inherits("QQuickAbstractButton") || !item->isVisible()) continue;
    if (item->property("objectName").toString() == "stop") {
      stop = box;
    } else {
      others.push_back(box);
    }
  }
  EXPECT_GE(std::min(stop.width(), stop.height()), kStopSide) << where << ": Stop";
  EXPECT_TRUE(window.contains(stop)) << where << ": Stop";
  for (const QRectF& other : others)
    EXPECT_GE(apart(stop, other), kStopAlone) << where << ": too near to Stop";
  EXPECT_GE(numeral, kTenMillimetres) << where << ": the number is smaller than 10 mm";
  EXPECT_TRUE(figure || !full || !program().player->figure()->there()) << where << ": no figure";
}

void PageWalk::keepPicture(QQuickWindow& window, const std::string& folder, const std::string& name) const {
  const QString shots = qEnvironmentVariable("NEWEL_SHOTS");
  if (shots.isEmpty()) return;
  const QString place = shots + "/" + QString::fromStdString(folder);
  QDir().mkpath(place);
  EXPECT_TRUE(window.grabWindow().save(place + "/" + QString::fromStdString(name) + ".png"));
}

void PageWalk::scroll(double content_y) {
  for (QQuickItem* item : allOf(m_window->contentItem())) {
    if (!item->inherits("QQuickFlickable")) continue;
    const double most = item->property("contentHeight").toDouble() - item->height();
    item->setProperty("contentY", std::clamp(content_y, 0.0, std::max(0.0, most)));
  }
}

void PageWalk::pair() {
  m_world.clinic().put(inventedProgramme(1, {"sit-to-stand", "stairs-one-at-a-time", "face-down-lying"}));
  m_world.pair();
}

void PageWalk::click(const QString& name) {
  parts::Driver driver(m_window, [] { return QJsonObject(); });
  QString answer;
  QObject::connect(&driver, &parts::Driver::answered, &driver,
                   [&answer](const QString& text) { answer = text; });
  driver.run(QStringLiteral("click \"") + name + QStringLiteral("\""));
  for (int i = 0; i < 200 && answer.isEmpty(); ++i) settle(20);
  driver.disconnect();
  EXPECT_EQ(answer.toStdString(), "ok") << name.toStdString();
}

}  // namespace newel::tests
