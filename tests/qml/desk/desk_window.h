// The desk's own window over a real hub, in one look after another, for the tests of its pages: nothing cut
// off, covered, outside the window, too small to press or nameless, and no warning. With NEWEL_SHOTS=<folder>
// in the environment check() keeps a picture of each, to be looked at. Everybody here is invented.
#pragma once

#include <gtest/gtest.h>

#include <QtCore/QDir>
#include <QtQml/QQmlApplicationEngine>
#include <QtQuick/QQuickItem>
#include <QtQuick/QQuickWindow>

#include "core/library/settings.h"
#include "qml/desk/desk_language.h"
#include "qml/desk/desk_model.h"
#include "qml/parts/driver.h"
#include "qml/parts/theme.h"
#include "sync/common/text_codes.h"
#include "tests/core/people/sample_people.h"
#include "tests/qml/parts/window_faults.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::tests {

using desk::DeskModel;

// A desk is worked with a pointer: WCAG 2.2, SC 2.5.8. The project's own 48 is for a phone in one hand.
inline constexpr double kLeastTarget = 24;

struct Look {
  int percent;
  bool dark;
  const char* language = "en";
};

inline constexpr Look kLooks[] = {{100, false}, {150, false},       {200, false},
                                  {100, true},  {100, false, "es"}, {200, false, "es"}};

inline std::string nameOfLook(const testing::TestParamInfo<Look>& info) {
  return std::string(info.param.language) + std::to_string(info.param.percent) +
         (info.param.dark ? "dark" : "light");
}

class DeskPages : public testing::TestWithParam<Look> {
 protected:
  DeskPages() {
    EXPECT_TRUE(
        m_clinic.hub().accounts().add("l.lead", "Lee Lead (invented)", v1::ROLE_LEAD, test::kPassword).ok());
    m_person = test::transtibialRight();
    m_clinic.addPerson(m_person, "Ada");
    m_clinic.addPerson(test::transfemoralLeft(), "Bea");
    m_clinic.sign(m_person);
    m_phone = m_clinic.pairedPhone("Adas phone", m_person.id());
    v1::SendMessageRequest message;
    message.set_person_id(m_person.id());
    message.set_text("Use both hands on the stairs this week.");
    message.set_id(test::idOf(700));
    EXPECT_TRUE(m_clinic.desk().sendMessage(message).ok());
    m_context.clock = &m_clinic.clock();
    m_context.random = &m_clinic.random();
    m_context.catalogue = &Catalogue::builtIn();
    m_context.rules = &RuleBook::builtIn();
    m_context.settings = usualSettings(Catalogue::builtIn());
    m_context.worker = &m_worker;
    m_context.data_folder = QString::fromStdString(m_folder.path());
    m_context.zone = absl::UTCTimeZone();
    m_context.zone_name = "UTC";
    m_language.use(QString::fromLatin1(GetParam().language));
    m_context.language = GetParam().language;
    desk::DeskSettings settings;
    settings.address = QString::fromStdString(m_clinic.address());
    settings.fingerprint = QString::fromStdString(toHex(m_clinic.hub().clinic().certificate_sha256));
    m_desk = std::make_unique<DeskModel>(m_context, settings, QString());
    load();
  }
  ~DeskPages() override { m_engine.reset(); }

  void load() {
    m_engine = std::make_unique<QQmlApplicationEngine>();
    QObject::connect(m_engine.get(), &QQmlApplicationEngine::warnings,
                     [this](const QList<QQmlError>& errors) {
                       for (const QQmlError& error : errors)
                         m_warnings.push_back(error.toString().toStdString());
                     });
    m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_engine->setInitialProperties({{QStringLiteral("desk"), QVariant::fromValue(m_desk.get())},
                                    {QStringLiteral("width"), 1280},
                                    {QStringLiteral("height"), 720}});
    m_engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Newel/Desk/Main.qml")));
    ASSERT_FALSE(m_engine->rootObjects().isEmpty());
    // Known once a page has brought its module in.
    auto* const theme = m_engine->singletonInstance<parts::Theme*>(qmlTypeId("Newel.Parts", 1, 0, "Theme"));
    theme->setTextPercent(GetParam().percent);
    theme->setDark(GetParam().dark);
    m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
    settle();
  }

  // Until the hub has answered everything that was asked.
  void answered() {
    for (int i = 0; i < 500; ++i) {
      settle(20);
      if (m_worker.idle() && !m_desk->caseload()->loading()) break;
    }
    settle();
  }

  void signIn(const char* user) {
    m_desk->signInModel()->setUserName(QString::fromLatin1(user));
    m_desk->signInModel()->signIn(QString::fromLatin1(test::kPassword));
    answered();
    ASSERT_TRUE(m_desk->signedIn());
  }
  void openAda() {
    m_desk->openPerson(QString::fromStdString(m_person.id()));
    answered();
    ASSERT_TRUE(m_desk->person()->loaded());
  }

  void check(DeskModel::Page page, const std::string& variant = "") {
    ASSERT_EQ(m_desk->page(), page);
    answered();
    const std::string where = m_desk->pageName().toStdString() + variant;
    for (const std::string& fault : faultsOf(*m_window, kLeastTarget))
      ADD_FAILURE() << where << ": " << fault;
    for (const std::string& warning : m_warnings) ADD_FAILURE() << where << ": " << warning;
    m_warnings.clear();
    const QString folder = qEnvironmentVariable("NEWEL_SHOTS");
    if (folder.isEmpty()) return;
    const QString place = folder + "/" + GetParam().language + QString::number(GetParam().percent) +
                          (GetParam().dark ? "dark" : "");
    QDir().mkpath(place);
    EXPECT_TRUE(m_window->grabWindow().save(place + "/" + QString::fromStdString(where) + ".png"));
  }

  // A row that can wait is asked about, waits with its reason, and does so no longer.
  void waitsAndNoLonger() {
    auto* const list = m_desk->caseload();
    const QString id = QString::fromStdString(m_person.id());
    const auto row = [&](int role) {
      for (int i = 0; i < list->rowCount(); ++i) {
        const QModelIndex at = list->index(i);
        if (list->data(at, desk::CaseloadModel::PersonId).toString() == id) return list->data(at, role);
      }
      return QVariant();
    };
    ASSERT_TRUE(row(desk::CaseloadModel::MayWait).toBool());
    list->askWait(id);
    check(DeskModel::CaseloadPage, "-wait");
    list->letWait(QStringLiteral(" "),
                  list->waitDays().at(1).toMap().value(QStringLiteral("value")).toString());
    EXPECT_FALSE(list->waitProblem().isEmpty());
    check(DeskModel::CaseloadPage, "-wait-why");
    list->letWait(QStringLiteral("Their first visit is on Monday."),
                  list->waitDays().at(1).toMap().value(QStringLiteral("value")).toString());
    answered();
    EXPECT_TRUE(list->waitFor().isEmpty()) << list->waitProblem().toStdString();
    EXPECT_TRUE(row(desk::CaseloadModel::Waiting).toBool());
    EXPECT_TRUE(list->stale()) << "it stays where it is until somebody sorts";
    list->sortAgain();
    list->setWantedUrgency(desk::CaseloadModel::kWaitingLevel);
    EXPECT_EQ(list->rowCount(), 1);
    check(DeskModel::CaseloadPage, "-waiting");
    list->setWantedUrgency(-1);
    list->endWait(id);
    answered();
    EXPECT_FALSE(row(desk::CaseloadModel::Waiting).toBool());
    list->sortAgain();
  }

  void scroll(double content_y) {
    QList<QQuickItem*> items = {m_window->contentItem()};
    while (!items.isEmpty()) {
      QQuickItem* const item = items.takeFirst();
      if (item->inherits("QQuickFlickable")) {
        const double most = std::max(0.0, item->property("contentHeight").toDouble() - item->height());
        item->setProperty("contentY", std::min(content_y, most));
      }
      items << item->childItems();
    }
  }

  // As the screen says it now.
  static QString said(const char* context, const char* words) {
    return QCoreApplication::translate(context, words);
  }
  void click(const QString& name) {
    parts::Driver driver(m_window, [] { return QJsonObject(); });
    driver.run(QStringLiteral("click \"%1\"").arg(name));
    answered();
  }

  test::TestClinic m_clinic;
  desk::DeskLanguage m_language;
  TempFolder m_folder;
  v1::Person m_person;
  std::unique_ptr<HomeEngine> m_phone;
  desk::DeskContext m_context;
  desk::HubWorker m_worker;
  std::unique_ptr<DeskModel> m_desk;
  std::unique_ptr<QQmlApplicationEngine> m_engine;
  QQuickWindow* m_window = nullptr;
  std::vector<std::string> m_warnings;
};

}  // namespace newel::tests
