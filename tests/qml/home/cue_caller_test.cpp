// Which cues are given when.
#include "qml/home/cue_caller.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace newel::home {
namespace {

using platform::Tone;
using testing::ElementsAre;

v1::Beat& add(v1::Timeline& timeline, v1::BeatKind kind, std::int64_t length_ms, const std::string& spoken,
              std::uint32_t repetition = 0) {
  v1::Beat& beat = *timeline.add_beats();
  beat.set_index(static_cast<std::uint32_t>(timeline.beats_size() - 1));
  beat.set_kind(kind);
  beat.set_length_ms(length_ms);
  beat.set_spoken(spoken);
  beat.set_set(1);
  beat.set_repetition(repetition);
  return beat;
}

std::vector<Tone> tonesOf(const std::vector<Cue>& cues) {
  std::vector<Tone> tones;
  for (const Cue& cue : cues) {
    if (cue.sounds) tones.push_back(cue.tone);
  }
  return tones;
}

// get ready 10 s, up 3 s, hold 5 s, down 3 s, up, hold, down (last).
v1::Timeline upAndDown() {
  v1::Timeline timeline;
  add(timeline, v1::BEAT_KIND_GET_READY, 15000, "Sit well back.");
  for (std::uint32_t repetition = 1; repetition <= 2; ++repetition) {
    add(timeline, v1::BEAT_KIND_MOVE, 3000, "Stand up.", repetition).set_last_of_set(repetition == 2);
    add(timeline, v1::BEAT_KIND_HOLD, 12000, "Hold.", repetition).set_last_of_set(repetition == 2);
    v1::Beat& down = add(timeline, v1::BEAT_KIND_RETURN, 3000, "Sit down.", repetition);
    down.set_last_of_set(repetition == 2);
    down.set_ends_repetition(true);
  }
  return timeline;
}

TEST(CueCaller, getReadyAnnouncesTheFirstMoveBeforeItComes) {
  const std::vector<Cue> cues = cuesOf(upAndDown(), 0, CallWords());
  ASSERT_EQ(cues.size(), 5U);
  EXPECT_EQ(cues[0].words, "Sit well back.");
  EXPECT_EQ(cues[0].tone, Tone::Ready);
  EXPECT_EQ(cues[1].words, "Next: Stand up.");
  EXPECT_TRUE(cues[1].from_end);
  EXPECT_EQ(cues[1].offset_ms, 6000);
  EXPECT_FALSE(cues[1].sounds);
  EXPECT_EQ(cues[2].offset_ms, 3000);
  EXPECT_EQ(cues[4].offset_ms, 1000);
}

TEST(CueCaller, workAfterRestBeginsWithGo) {
  EXPECT_THAT(tonesOf(cuesOf(upAndDown(), 1, CallWords())), ElementsAre(Tone::Go));
}

TEST(CueCaller, holdIsCalledHalfWayAndCountedOut) {
  EXPECT_THAT(tonesOf(cuesOf(upAndDown(), 2, CallWords())),
              ElementsAre(Tone::Count, Tone::HalfWay, Tone::Count, Tone::Count, Tone::Count));
}

TEST(CueCaller, whatFollowsAHoldBeginsWithHoldEnd) {
  EXPECT_THAT(tonesOf(cuesOf(upAndDown(), 3, CallWords())), ElementsAre(Tone::HoldEnd));
}

TEST(CueCaller, lastOneIsCalledOnceAtTheStartOfTheLastRepetition) {
  const v1::Timeline timeline = upAndDown();
  const std::vector<Cue> first = cuesOf(timeline, 4, CallWords());
  EXPECT_EQ(first[0].words, "Last one. Stand up.");
  EXPECT_EQ(first[0].tone, Tone::LastOne);
  EXPECT_EQ(cuesOf(timeline, 5, CallWords())[0].words, "Hold.");
  EXPECT_EQ(cuesOf(timeline, 6, CallWords())[0].words, "Sit down.");
}

TEST(CueCaller, onlyRepetitionOfASetIsNotCalledTheLast) {
  v1::Timeline timeline;
  add(timeline, v1::BEAT_KIND_GET_READY, 5000, "Ready.");
  add(timeline, v1::BEAT_KIND_MOVE, 3000, "Stand up.", 1).set_last_of_set(true);
  EXPECT_EQ(cuesOf(timeline, 1, CallWords())[0].words, "Stand up.");
}

TEST(CueCaller, changeOfSideHasItsOwnTone) {
  v1::Timeline timeline;
  add(timeline, v1::BEAT_KIND_CHANGE_SIDE, 5000, "Change to the left.");
  add(timeline, v1::BEAT_KIND_MOVE, 3000, "Lift.", 1);
  EXPECT_THAT(tonesOf(cuesOf(timeline, 0, CallWords())),
              ElementsAre(Tone::ChangeSide, Tone::Count, Tone::Count, Tone::Count));
}

// A bout of four minutes in four beats: one hold, called half way once, counted out once.
TEST(CueCaller, boutOfMinutesIsOneHold) {
  v1::Timeline timeline;
  add(timeline, v1::BEAT_KIND_GET_READY, 20000, "Lie down.");
  for (int i = 0; i < 4; ++i) {
    v1::Beat& beat = add(timeline, v1::BEAT_KIND_HOLD, 60000,
                         i == 0   ? "Lie flat."
                         : i == 2 ? "Half way."
                                  : "",
                         1);
    beat.set_phase_id("lie-flat");
    beat.set_part_id("lie");
  }
  const HoldSpan span = holdSpanAt(timeline, 3);
  EXPECT_EQ(span.first, 1U);
  EXPECT_EQ(span.last, 4U);
  EXPECT_THAT(tonesOf(cuesOf(timeline, 1, CallWords())), ElementsAre(Tone::Go));
  EXPECT_THAT(tonesOf(cuesOf(timeline, 2, CallWords())), ElementsAre());
  EXPECT_THAT(tonesOf(cuesOf(timeline, 3, CallWords())), ElementsAre(Tone::HalfWay));
  EXPECT_EQ(cuesOf(timeline, 3, CallWords())[0].words, "Half way.");
  EXPECT_THAT(tonesOf(cuesOf(timeline, 4, CallWords())), ElementsAre(Tone::Count, Tone::Count, Tone::Count));
}

TEST(CueCaller, lastBeatOfAllHasNothingToAnnounce) {
  v1::Timeline timeline;
  add(timeline, v1::BEAT_KIND_REST, 30000, "Rest.");
  EXPECT_THAT(tonesOf(cuesOf(timeline, 0, CallWords())), ElementsAre(Tone::Rest));
}

// Standards, section 4: 500 to 2,000 Hz, never over 2.5 kHz; two cues differ in rhythm as well as in pitch.
TEST(Tones, stayInTheBandThatOlderEarsHear) {
  for (const Tone tone : platform::kAllTones) {
    int total = 0;
    for (const platform::Note& note : platform::notesOf(tone)) {
      EXPECT_GE(note.hertz, 500);
      EXPECT_LE(note.hertz, 2000);
      total += note.sound_ms + note.silence_ms;
    }
    EXPECT_LT(total, 700);
  }
}

TEST(Tones, noTwoHaveTheSameRhythm) {
  std::set<std::vector<int>> rhythms;
  for (const Tone tone : platform::kAllTones) {
    std::vector<int> rhythm;
    for (const platform::Note& note : platform::notesOf(tone)) {
      rhythm.push_back(note.sound_ms);
      rhythm.push_back(note.silence_ms);
    }
    EXPECT_TRUE(rhythms.insert(rhythm).second);
  }
}

TEST(Tones, samplesHaveTheLengthAndThePitchOfTheirNotes) {
  constexpr int kRate = 48000;
  const std::vector<std::int16_t> samples = platform::samplesOf(Tone::Go, kRate);
  ASSERT_EQ(samples.size(), static_cast<std::size_t>(kRate) * 400 / 1000);
  int rising = 0;
  for (std::size_t i = 1; i < samples.size(); ++i) rising += samples[i - 1] < 0 && samples[i] >= 0 ? 1 : 0;
  EXPECT_NEAR(rising / 0.4, 1319, 6);
  EXPECT_EQ(samples.front(), 0);
  EXPECT_NEAR(samples.back(), 0, 200);
}

}  // namespace
}  // namespace newel::home
