// Clips played from memory. The reader behind it is the system's: where it has none, that is said.
#include "qml/parts/clip_player.h"

#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QElapsedTimer>
#include <QtCore/QFile>

namespace newel::parts {
namespace {

QByteArray fileOf(const char* name) {
  QFile file(QStringLiteral(NEWEL_SOURCE_DIR "/tests/data/media/") + QLatin1String(name));
  EXPECT_TRUE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

template <typename Test>
bool soon(Test test) {
  QElapsedTimer since;
  since.start();
  while (!test() && since.elapsed() < 15000) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  return test();
}

TEST(ClipPlayer, showsWhatIsInTheClipAndComesToItsEnd) {
  ClipPlayer player(makeQtClipReader);
  ClipContent clip([] { return fileOf("tagged.webm"); });
  QSize size;
  QObject::connect(&player, &ClipPlayer::pictureChanged, &player, [&] {
    if (!player.picture().isNull()) size = player.picture().size();
  });
  player.play(&clip);
  EXPECT_TRUE(player.playing());
  ASSERT_TRUE(soon([&] { return !player.playing(); })) << "a clip of a second does not end";
  if (player.failed()) GTEST_SKIP() << "skipped: this system plays no clips";
  EXPECT_EQ(size, QSize(160, 120));
  EXPECT_EQ(player.clip(), &clip);
}

TEST(ClipPlayer, whatIsNoClipOrIsGoneIsSaid) {
  ClipPlayer player(makeQtClipReader);
  ClipContent rubbish([] { return QByteArray("not a clip at all, only words"); });
  player.play(&rubbish);
  ASSERT_TRUE(soon([&] { return !player.playing(); }));
  EXPECT_TRUE(player.failed());
  ClipContent gone([] { return QByteArray(); });
  player.play(&gone);
  EXPECT_FALSE(player.playing());
  EXPECT_TRUE(player.failed());
}

TEST(ClipPlayer, isStoppedAtOnceAndStaysSilentWhileItMayNot) {
  ClipPlayer player(makeQtClipReader);
  ClipContent clip([] { return fileOf("tagged.webm"); });
  player.play(&clip);
  player.setMayPlay(false);
  EXPECT_FALSE(player.playing());
  player.play(&clip);
  EXPECT_FALSE(player.playing());
  player.setMayPlay(true);
  EXPECT_FALSE(player.playing()) << "nothing begins by itself";
  player.play(&clip);
  EXPECT_TRUE(player.playing());
  player.stop();
  EXPECT_FALSE(player.playing());
  EXPECT_FALSE(player.failed());
}

TEST(ClipPlayer, withoutAReaderItSaysThatItCannot) {
  ClipPlayer player([] { return std::unique_ptr<ClipReader>(); });
  ClipContent clip([] { return fileOf("tagged.webm"); });
  player.play(&clip);
  EXPECT_FALSE(player.playing());
  EXPECT_TRUE(player.failed());
  player.stop();
}

TEST(ClipPlayer, goesWithItsClip) {
  ClipPlayer player(makeQtClipReader);
  {
    ClipContent clip([] { return fileOf("tagged.webm"); });
    player.play(&clip);
  }
  EXPECT_EQ(player.clip(), nullptr);
  player.stop();
  EXPECT_FALSE(player.playing());
}

}  // namespace
}  // namespace newel::parts
