// The attention list with ten thousand persons in a real window over a real hub: read page by page, and
// however far somebody scrolls the window makes no more rows than it shows. Counts, no times: those are in
// tests/bench. Everybody here is invented.
#include <gtest/gtest.h>

#include <set>

#include "tests/qml/desk/desk_window.h"
#include "tests/sync/common/many_persons.h"

namespace newel::tests {
namespace {

constexpr int kPersons = 10000;
constexpr int kPage = 500;  // sync/desk/desk_client.cpp

class LongList : public DeskPages {
 protected:
  QQuickItem* listView() {
    QList<QQuickItem*> items = {m_window->contentItem()};
    while (!items.isEmpty()) {
      QQuickItem* const item = items.takeFirst();
      if (item->inherits("QQuickListView") && item->property("count").toInt() > 100) return item;
      items << item->childItems();
    }
    return nullptr;
  }
  // Every row that is made now, shown or kept for later.
  static void note(QQuickItem* list, std::set<const QQuickItem*>& rows, int& shown) {
    auto* const content = list->property("contentItem").value<QQuickItem*>();
    int visible = 0;
    for (const QQuickItem* item : content->childItems()) {
      if (!item->property("personId").isValid()) continue;
      rows.insert(item);
      const double y = item->y() - list->property("contentY").toDouble();
      if (item->isVisible() && y + item->height() > 0 && y < list->height()) ++visible;
    }
    shown = std::max(shown, visible);
  }
};

TEST_P(LongList, scrollsThroughTenThousandWithAHandfulOfRows) {
  ASSERT_EQ(test::addPersons(m_clinic.store(), kPersons), absl::OkStatus());
  std::set<int> pages;
  QObject::connect(m_desk->caseload(), &desk::CaseloadModel::changed, [&] {
    if (m_desk->caseload()->loading()) pages.insert(m_desk->caseload()->read());
  });
  m_desk->signInModel()->setUserName(QStringLiteral("l.lead"));
  m_desk->signInModel()->signIn(QString::fromLatin1(test::kPassword));
  for (int i = 0; i < 3000 && (m_desk->caseload()->count() < kPersons || m_desk->caseload()->loading()); ++i)
    settle(20);
  ASSERT_EQ(m_desk->caseload()->count(), kPersons + 2);
  EXPECT_GE(static_cast<int>(pages.size()), kPersons / kPage / 2) << "told of while it reads, not at the end";
  answered();
  QQuickItem* const list = listView();
  ASSERT_NE(list, nullptr);
  std::set<const QQuickItem*> rows;
  int shown = 0;
  const auto look = [&] {
    settle(0);
    m_window->grabWindow();
    note(list, rows, shown);
  };
  look();
  ASSERT_GT(shown, 0);
  // By a page at a time, then in leaps, then to both ends.
  for (int i = 0; i < 120; ++i) {
    list->setProperty("contentY", list->property("contentY").toDouble() + list->height() * 0.9);
    look();
  }
  for (int i = 1; i <= 60; ++i) {
    QMetaObject::invokeMethod(list, "positionViewAtIndex", Q_ARG(int, i* kPersons / 61), Q_ARG(int, 0));
    look();
  }
  QMetaObject::invokeMethod(list, "positionViewAtEnd");
  look();
  EXPECT_EQ(list->property("count").toInt(), kPersons + 2);
  QMetaObject::invokeMethod(list, "positionViewAtBeginning");
  look();
  // The rows in view, those a little beyond it, and those kept to be used again.
  EXPECT_LE(static_cast<int>(rows.size()), 6 * shown + 12) << shown << " in view";
  // A search looks at all of them and shows what fits.
  m_desk->caseload()->setFilter(QStringLiteral("oddly"));
  EXPECT_EQ(m_desk->caseload()->count(), kPersons / 2);
  look();
  m_desk->caseload()->chooseShown();
  EXPECT_EQ(m_desk->caseload()->chosenCount(), kPersons / 2);
  m_desk->caseload()->setFilter(QString());
  look();
  EXPECT_LE(static_cast<int>(rows.size()), 12 * shown + 24) << "after two more fillings";
}

INSTANTIATE_TEST_SUITE_P(Looks, LongList, testing::Values(Look{100, false}, Look{150, false, "es"}),
                         nameOfLook);

}  // namespace
}  // namespace newel::tests
