// Reading the clinic's square with the camera: squares made by libqrencode, read by our way through it.
#include <gtest/gtest.h>

#include "qml/home/square_reader.h"
#include "sync/common/pairing_ticket.h"
#include "tests/qml/home/grey_square.h"
#include "tests/qml/home/home_world.h"

namespace newel::tests {
namespace {

using home::AppModel;
using home::readSquare;

std::string ticketText(const std::string& code = "ABCD2345") {
  PairingTicket ticket;
  ticket.host = "clinic.example";
  ticket.port = 7443;
  ticket.certificate_sha256 = std::string(32, '\x5a');
  ticket.backup_sha256 = std::string(32, '\x3c');
  ticket.code = code;
  return formatTicket(ticket);
}

TEST(SquareReader, readsWhatAHandHoldsCrooked) {
  const std::string text = ticketText();
  const Seen views[] = {{},
                        {.turned_deg = 17},
                        {.turned_deg = 90},
                        {.turned_deg = 181, .module_px = 9},
                        {.turned_deg = -33, .module_px = 3.2},
                        {.tilt = 0.15},
                        {.turned_deg = 8, .tilt = 0.1, .contrast = 0.4},
                        {.contrast = 0.25},
                        {.noise = 25},
                        {.mirrored = true}};
  for (const Seen& seen : views) {
    EXPECT_EQ(readSquare(greySquare(text, seen)).value_or("nothing"), text)
        << "turned " << seen.turned_deg << ", module " << seen.module_px << ", tilt " << seen.tilt
        << ", contrast " << seen.contrast << ", noise " << seen.noise;
  }
}

TEST(SquareReader, seesNothingWhereNothingIs) {
  EXPECT_FALSE(readSquare({}).has_value());
  EXPECT_FALSE(readSquare({-3, 5, {}}).has_value());
  EXPECT_FALSE(readSquare({100, 100, std::vector<std::uint8_t>(9999)}).has_value()) << "too few bytes";
  EXPECT_FALSE(readSquare({64, 64, std::vector<std::uint8_t>(64 * 64, 255)}).has_value());
  EXPECT_FALSE(readSquare(greySquare(ticketText(), {.contrast = 0.5, .noise = 120})).has_value());
}

class Scan : public testing::Test {
 protected:
  Scan() { program().settings->setFirstRunStep("Pair"); }
  HomeProgram& program() { return m_world.program(); }
  HomeWorld m_world;
};

TEST_F(Scan, theFirstSquareOfAClinicPairsAndTheCameraIsGivenBack) {
  program().app->show(AppModel::Page::Scan);
  ASSERT_EQ(m_world.page(), AppModel::Page::Scan);
  EXPECT_FALSE(program().camera.isOn()) << "only once its page is there";
  program().scan->begin();
  ASSERT_TRUE(program().camera.isOn());
  program().camera.show({64, 64, std::vector<std::uint8_t>(64 * 64, 200)});
  EXPECT_TRUE(program().scan->on());
  program().camera.show(greySquare("https://example.org"));
  EXPECT_TRUE(program().scan->otherSquare()) << "somebody else's square is said to be that";
  EXPECT_TRUE(program().camera.isOn());
  program().camera.show(greySquare(ticketText(), {.turned_deg = 5}));
  EXPECT_FALSE(program().camera.isOn());
  EXPECT_TRUE(program().scan->picture().isNull()) << "nothing of what it saw is kept";
  while (program().pair->busy()) settle(10);
  EXPECT_EQ(program().pair->error().toStdString(), "");
  EXPECT_TRUE(program().app->paired());
  EXPECT_EQ(m_world.page(), AppModel::Page::Paired);
  EXPECT_FALSE(program().pair->mustCompare()) << "the square holds the certificate's pin";
}

TEST_F(Scan, aUsedCodeIsSaidOnThePageBefore) {
  program().app->show(AppModel::Page::Scan);
  program().scan->begin();
  program().camera.show(greySquare(ticketText("ABCD9999")));
  while (program().pair->busy()) settle(10);
  EXPECT_EQ(m_world.page(), AppModel::Page::Pair);
  EXPECT_TRUE(program().pair->error().contains(QStringLiteral("Ask for a new one")));
}

TEST_F(Scan, eachReasonToSeeNothingIsSaidWithWhatToDo) {
  EXPECT_EQ(program().scan->whyNot(), QString());
  for (const char* why : {"camera.none", "camera.refused", "camera.broken"}) {
    program().camera.breakWith(why);
    program().scan->begin();
    EXPECT_FALSE(program().scan->on());
    EXPECT_TRUE(program().scan->whyNot().contains(QStringLiteral("type the code"))) << why;
  }
  home::ScanModel none(nullptr, readSquare);
  none.begin();
  EXPECT_FALSE(none.on());
  EXPECT_TRUE(none.whyNot().contains(QStringLiteral("no camera")));
}

TEST_F(Scan, leavingThePageGivesTheCameraBack) {
  program().scan->begin();
  program().scan->end();
  EXPECT_FALSE(program().camera.isOn());
  program().scan->begin();
  program().scan.reset();
  EXPECT_FALSE(program().camera.isOn());
}

}  // namespace
}  // namespace newel::tests
