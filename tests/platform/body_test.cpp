// Shaking and the owner's wishes, over a real session bus. The calls of the older service are those of the
// interface file that Debian 12 ships (feedbackd 0.0.3, org.sigxcpu.Feedback.xml: TriggerFeedback takes
// ssa{sv}i); the newer one takes sa(du), at most ten steps of at most ten seconds (feedbackd, Haptic
// interface, as published in 2024). The portal's keys: XDG Desktop Portal documentation,
// org.freedesktop.portal.Settings, version 2.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QElapsedTimer>

#include "platform/system_wishes.h"
#include "platform/vibration.h"
#include "tests/platform/phone_services.h"

namespace newel::platform {
namespace {

using testing::Each;
using testing::Ge;

constexpr char kAppearance[] = "org.freedesktop.appearance";

template <typename Condition>
bool waitFor(Condition condition, int limit_ms = 3000) {
  QElapsedTimer since;
  since.start();
  while (!condition() && since.elapsed() < limit_ms)
    QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
  return condition();
}

TEST(Pulses, everyToneIsFeltAndTakenByTheService) {
  for (const Tone tone : kAllTones) {
    const std::vector<Pulse> pulses = pulsesOf(tone);
    ASSERT_FALSE(pulses.empty());
    EXPECT_TRUE(pulses.front().shakes);
    EXPECT_LE(pulses.size(), 10U);
    int all = 0;
    for (const Pulse& pulse : pulses) {
      EXPECT_GE(pulse.ms, 80);
      all += pulse.ms;
    }
    EXPECT_LT(all, 1000);
  }
}

TEST(Pulses, differByRhythm) {
  for (const Tone one : kAllTones) {
    for (const Tone other : kAllTones) {
      if (one == other) continue;
      const auto a = pulsesOf(one);
      const auto b = pulsesOf(other);
      bool differ = a.size() != b.size();
      for (std::size_t i = 0; !differ && i < a.size(); ++i) differ = std::abs(a[i].ms - b[i].ms) >= 50;
      EXPECT_TRUE(differ) << static_cast<int>(one) << " and " << static_cast<int>(other);
    }
  }
}

TEST(Vibration, withoutTheServiceNothingIsSaidToShake) {
  const auto vibration = makeVibration("org.newel.Home");
  bool known = false;
  vibration->ask([&] { known = true; });
  EXPECT_FALSE(waitFor([&] { return known; }, 300));
  EXPECT_FALSE(vibration->works());
  vibration->play(Tone::Go);
  vibration->stop();
}

TEST(Vibration, aRhythmGoesOutWhole) {
  FeedbackService service(true);
  const auto vibration = makeVibration("org.newel.Home");
  int known = 0;
  vibration->ask([&] { ++known; });
  ASSERT_TRUE(waitFor([&] { return known == 1; }));
  EXPECT_TRUE(vibration->works());
  vibration->ask([&] { ++known; });
  EXPECT_EQ(known, 2) << "what is known is said at once";
  ASSERT_EQ(service.calls().size(), 1U);
  EXPECT_TRUE(service.calls()[0].lengths_ms.empty()) << "asking shakes nothing";
  service.forget();
  vibration->play(Tone::HoldEnd);
  ASSERT_TRUE(waitFor([&] { return service.calls().size() == 1; }));
  const FeltCall& call = service.calls()[0];
  EXPECT_EQ(call.signature.toStdString(), "sa(du)");
  EXPECT_EQ(call.app.toStdString(), "org.newel.Home");
  EXPECT_THAT(call.lengths_ms, testing::ElementsAre(120, 80, 300));
  EXPECT_THAT(call.strengths, testing::ElementsAre(1.0, 0.0, 1.0));
  vibration->stop();
  ASSERT_TRUE(waitFor([&] { return service.calls().size() == 2; }));
  EXPECT_TRUE(service.calls()[1].lengths_ms.empty()) << "an empty rhythm ends what shakes";
}

TEST(Vibration, theOlderServiceIsGivenOneEventForEachNote) {
  FeedbackService service(false);
  const auto vibration = makeVibration("org.newel.Home");
  bool known = false;
  vibration->ask([&] { known = true; });
  ASSERT_TRUE(waitFor([&] { return known; }));
  service.forget();
  QElapsedTimer since;
  since.start();
  vibration->play(Tone::ChangeSide);
  ASSERT_TRUE(waitFor([&] { return service.calls().size() == 4; }));
  EXPECT_GE(since.elapsed(), 3 * (90 + 80) - 20) << "as a rhythm, not all at once";
  for (const FeltCall& call : service.calls()) {
    EXPECT_EQ(call.method.toStdString(), "TriggerFeedback");
    EXPECT_EQ(call.signature.toStdString(), "ssa{sv}i");
    EXPECT_EQ(call.profile.toStdString(), "quiet") << "that one shakes; the full one sounds";
    EXPECT_FALSE(call.event.isEmpty());
  }
  service.forget();
  vibration->play(Tone::ChangeSide);
  vibration->stop();
  EXPECT_FALSE(waitFor([&] { return service.calls().size() > 1; }, 700)) << "a stopped rhythm is over";
}

TEST(SystemWishes, withoutAPortalNothingIsWished) {
  const auto wishes = makeSystemWishes();
  bool changed = false;
  wishes->onChange([&] { changed = true; });
  EXPECT_FALSE(waitFor([&] { return changed; }, 300));
  EXPECT_FALSE(wishes->lessMotion());
  EXPECT_FALSE(wishes->moreContrast());
}

TEST(SystemWishes, whatTheDesktopSaysIsRead) {
  SettingsPortal portal({{kAppearance, {{"contrast", 1U}, {"reduced-motion", 1U}, {"color-scheme", 1U}}}});
  const auto wishes = makeSystemWishes();
  ASSERT_TRUE(waitFor([&] { return wishes->lessMotion() && wishes->moreContrast(); }));
  EXPECT_TRUE(portal.asked().contains(QLatin1String(kAppearance)));
}

TEST(SystemWishes, unknownValuesAreNoWish) {
  SettingsPortal portal({{kAppearance, {{"contrast", 7U}, {"reduced-motion", QStringLiteral("much")}}}});
  const auto wishes = makeSystemWishes();
  ASSERT_TRUE(waitFor([&] { return !portal.asked().isEmpty(); }));
  waitFor([] { return false; }, 100);
  EXPECT_FALSE(wishes->lessMotion());
  EXPECT_FALSE(wishes->moreContrast());
}

TEST(SystemWishes, desktopsBeforeTheSharedKeysAreUnderstood) {
  SettingsPortal portal({{"org.gnome.desktop.interface", {{"enable-animations", false}}},
                         {"org.gnome.desktop.a11y.interface", {{"high-contrast", true}}}});
  const auto wishes = makeSystemWishes();
  EXPECT_TRUE(waitFor([&] { return wishes->lessMotion() && wishes->moreContrast(); }));
}

TEST(SystemWishes, aChangeArrivesByItself) {
  SettingsPortal portal({});
  const auto wishes = makeSystemWishes();
  int changes = 0;
  wishes->onChange([&] { ++changes; });
  ASSERT_TRUE(waitFor([&] { return !portal.asked().isEmpty(); }));
  portal.change(kAppearance, "reduced-motion", 1U);
  ASSERT_TRUE(waitFor([&] { return wishes->lessMotion(); }));
  EXPECT_EQ(changes, 1);
  portal.change("org.gnome.desktop.interface", "clock-format", QStringLiteral("12h"));
  portal.change(kAppearance, "reduced-motion", 0U);
  ASSERT_TRUE(waitFor([&] { return !wishes->lessMotion(); }));
  EXPECT_EQ(changes, 2) << "what is none of ours is not told";
}

}  // namespace
}  // namespace newel::platform

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  QCoreApplication app(argc, argv);
  return RUN_ALL_TESTS();
}
