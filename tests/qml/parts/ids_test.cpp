// A name in QML is looked for in the item itself before the page around it. An id that every item has as a
// property, such as "top", means another thing inside a delegate, and what compiles QML and what interprets
// it do not agree which: chips of no width came of it.
#include <gtest/gtest.h>

#include <QtCore/QDirIterator>
#include <QtCore/QFile>
#include <QtCore/QMetaProperty>
#include <QtCore/QRegularExpression>
#include <QtCore/QSet>
#include <QtQuick/QQuickItem>

namespace newel::parts {
namespace {

QSet<QString> propertiesOfEveryItem() {
  QSet<QString> names;
  const QMetaObject& item = QQuickItem::staticMetaObject;
  for (int i = 0; i < item.propertyCount(); ++i) names.insert(QString::fromLatin1(item.property(i).name()));
  return names;
}

QStringList idsIn(const QString& qml) {
  static const QRegularExpression kId(QStringLiteral("\\bid:\\s*(\\w+)"));
  QStringList ids;
  auto found = kId.globalMatch(qml);
  while (found.hasNext()) ids << found.next().captured(1);
  return ids;
}

TEST(Ids, areNoPropertiesOfEveryItem) {
  const QSet<QString> taken = propertiesOfEveryItem();
  ASSERT_TRUE(taken.contains(QStringLiteral("top"))) << "the anchors are among them";
  ASSERT_EQ(idsIn(QStringLiteral("Item { id: top }")), QStringList{"top"});
  int ids = 0;
  QDirIterator files(QStringLiteral(NEWEL_SOURCE_DIR "/qml"), {QStringLiteral("*.qml")}, QDir::Files,
                     QDirIterator::Subdirectories);
  while (files.hasNext()) {
    QFile file(files.next());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    for (const QString& id : idsIn(QString::fromUtf8(file.readAll()))) {
      ++ids;
      EXPECT_FALSE(taken.contains(id)) << file.fileName().toStdString() << ": id: " << id.toStdString();
    }
  }
  EXPECT_GT(ids, 300);
}

}  // namespace
}  // namespace newel::parts
