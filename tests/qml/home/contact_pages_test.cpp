// What the phone says of its contact with the clinic: what became of a practice, what is wrong and what to
// do, and what is written to and fro.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "qml/home/contact_notices.h"
#include "tests/qml/home/home_world.h"
#include "tests/qml/home/media_entry.h"

namespace newel::tests {
namespace {

using home::AppModel;
using Page = AppModel::Page;
using testing::HasSubstr;

class ContactPages : public testing::Test {
 protected:
  ContactPages() {
    m_world.clinic().put(inventedProgramme(1, {"sit-to-stand"}));
    m_world.pair();
  }
  HomeProgram& program() { return m_world.program(); }
  void practise() {
    program().today->start();
    m_world.answerAllFine();
    program().practice->confirmSupportAndStart();
    ASSERT_TRUE(m_world.passUntilPageChanges());
    program().practice->rate(1, 3);
    ASSERT_EQ(m_world.page(), Page::Close);
  }
  std::string deliveryWords() { return program().app->deliveryWords().toStdString(); }
  QVariantMap notice(int index) { return program().today->notices().at(index).toMap(); }
  HomeWorld m_world;
};

TEST_F(ContactPages, theFinishPageSaysWhenTheClinicHasIt) {
  m_world.clinic().setReachable(false);
  practise();
  EXPECT_EQ(program().app->delivery(), static_cast<int>(Delivery::Waiting));
  EXPECT_THAT(deliveryWords(), HasSubstr("On its way"));
  m_world.sync();
  EXPECT_THAT(deliveryWords(), HasSubstr("cannot be reached")) << "and why it waits";
  m_world.clinic().setReachable(true);
  int told = 0;
  QObject::connect(program().app.get(), &AppModel::changed, [&told] { ++told; });
  m_world.sync();
  EXPECT_GT(told, 0) << "the page hears of it";
  EXPECT_EQ(program().app->delivery(), static_cast<int>(Delivery::Arrived));
  EXPECT_THAT(deliveryWords(), HasSubstr("Arrived: today at"));
  EXPECT_EQ(m_world.clinic().practices().size(), 1U);
}

TEST_F(ContactPages, aNetworkThatIsAwayADayIsNoNewsAndAfterThreeDaysItIs) {
  m_world.clinic().setReachable(false);
  m_world.clock().advance(absl::Hours(24));
  m_world.sync();
  EXPECT_EQ(program().today->notices().size(), 0);
  EXPECT_TRUE(program().today->mayStart());
  m_world.clock().advance(absl::Hours(24 * 3));
  m_world.sync();
  ASSERT_EQ(program().today->notices().size(), 1);
  EXPECT_THAT(notice(0)["title"].toString().toStdString(), HasSubstr("No contact with the clinic since"));
  EXPECT_THAT(notice(0)["words"].toString().toStdString(), HasSubstr("Practise as usual"));
  EXPECT_TRUE(program().today->mayStart()) << "the phone works alone";
}

TEST_F(ContactPages, anEndedAccessSaysWhatItMeansAndTakesANewCode) {
  practise();
  program().app->leavePractice();
  m_world.clinic().revoke();
  m_world.sync();
  ASSERT_GE(program().today->notices().size(), 1);
  EXPECT_THAT(notice(0)["title"].toString().toStdString(), HasSubstr("ended this phone's access"));
  EXPECT_TRUE(notice(0)["newCode"].toBool());
  EXPECT_FALSE(program().today->mayStart());
  program().app->show(Page::Pair);
  ASSERT_EQ(m_world.page(), Page::Pair);
  program().pair->pairTyped("clinic.example:7443", "abcd-2345");
  while (program().pair->busy()) settle(10);
  EXPECT_EQ(m_world.page(), Page::Paired) << program().pair->error().toStdString();
  program().app->back();
  m_world.sync();
  EXPECT_EQ(m_world.page(), Page::Today);
  EXPECT_EQ(program().today->notices().size(), 0);
  EXPECT_EQ(program().engine->practices().size(), 1U) << "nothing was lost";
}

TEST_F(ContactPages, aPhoneWithoutTroubleIsNotPairedAnew) {
  program().app->show(Page::Pair);
  EXPECT_EQ(m_world.page(), Page::Today);
}

// Every problem that the engine can name, by itself.
TEST(ContactNotices, eachProblemSaysWhatHappenedWhatItMeansAndWhatToDo) {
  HomeState state;
  const absl::CivilDay today(2026, 11, 25);
  EXPECT_TRUE(home::contactNotices(state, absl::UTCTimeZone(), today).isEmpty()) << "nothing before pairing";
  state.paired = true;
  state.last_contact = absl::FromCivil(absl::CivilHour(2026, 11, 25, 8), absl::UTCTimeZone());
  EXPECT_TRUE(home::contactNotices(state, absl::UTCTimeZone(), today).isEmpty());
  for (const char* problem : {"sync.wrong-date", "sync.disk-full", "sync.hub-refused"}) {
    state.last_problem = problem;
    const QVariantList notices = home::contactNotices(state, absl::UTCTimeZone(), today);
    ASSERT_EQ(notices.size(), 1) << problem;
    EXPECT_FALSE(notices[0].toMap()["title"].toString().isEmpty());
    EXPECT_GT(notices[0].toMap()["words"].toString().size(), 60) << problem;
  }
  state.last_problem = "sync.no-network";
  EXPECT_TRUE(home::contactNotices(state, absl::UTCTimeZone(), today + 2).isEmpty());
  EXPECT_EQ(home::contactNotices(state, absl::UTCTimeZone(), today + home::kQuietDays).size(), 1);
  state.last_contact.reset();
  EXPECT_EQ(home::contactNotices(state, absl::UTCTimeZone(), today).size(), 1);
}

TEST_F(ContactPages, aMessageComesWithItsPhotoAndClip) {
  v1::Message message = m_world.clinic().message("This is how the strap lies.", false);
  v1::Entry both;
  putMedia(m_world.clinic(), both, "tagged.jpg", "tagged.mp4");
  *message.mutable_photo() = both.photo();
  *message.mutable_clip() = both.clip();
  m_world.clinic().put(message);
  m_world.sync();
  m_world.sync();
  ASSERT_EQ(program().messages->rows().size(), 1);
  const QVariantMap media = program().messages->rows().first().toMap()["media"].toMap();
  EXPECT_THAT(media["photo"].toString().toStdString(), HasSubstr("data:image"));
  EXPECT_EQ(media["photoWords"].toString(), kPhotoWords);
  EXPECT_EQ(media["captions"].toString(), kCaptions);
  EXPECT_FALSE(media["clipComing"].toBool());
  EXPECT_THAT(notice(0)["words"].toString().toStdString(), HasSubstr("A photo comes with it"));
}

TEST_F(ContactPages, aLineToTheTherapistIsKeptAndSeenToArrive) {
  m_world.clinic().setReachable(false);
  EXPECT_TRUE(program().messages->write("  The socket pinches.  "));
  ASSERT_EQ(program().messages->rows().size(), 1);
  QVariantMap row = program().messages->rows().first().toMap();
  EXPECT_EQ(row["words"].toString(), "The socket pinches.");
  EXPECT_FALSE(row["arrived"].toBool());
  m_world.clinic().setReachable(true);
  m_world.sync();
  row = program().messages->rows().first().toMap();
  EXPECT_TRUE(row["arrived"].toBool());
  ASSERT_EQ(m_world.clinic().messages().size(), 1U);
  EXPECT_EQ(m_world.clinic().messages().front().text(), "The socket pinches.");
}

TEST_F(ContactPages, aLineThatCannotBeSentSaysSoAndLosesNothing) {
  EXPECT_FALSE(program().messages->write(QString(5000, u'x')));
  EXPECT_THAT(program().messages->error().toStdString(), HasSubstr("too long"));
  EXPECT_TRUE(program().messages->rows().isEmpty());
}

TEST_F(ContactPages, todaySaysWhatToFetchOnce) {
  EXPECT_THAT(program().today->things().join(",").toStdString(), HasSubstr("heavy chair"));
  QStringList once = program().today->things();
  EXPECT_EQ(once.removeDuplicates(), 0);
}

TEST_F(ContactPages, theWayBackLeadsToWhereOneCameFrom) {
  program().app->show(Page::Help);
  program().advice->open("after-a-fall");
  program().app->show(Page::Advice);
  EXPECT_FALSE(program().advice->title().isEmpty()) << "there for everybody, assigned or not";
  program().app->back();
  EXPECT_EQ(m_world.page(), Page::Help);
  program().app->show(Page::Write);
  program().app->show(Page::Help);
  EXPECT_EQ(m_world.page(), Page::Help);
  program().app->back();
  EXPECT_EQ(m_world.page(), Page::Today) << "no way round in circles";
}

}  // namespace
}  // namespace newel::tests
