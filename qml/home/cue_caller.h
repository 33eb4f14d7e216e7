// Which cues a beat gives and when: voice and tones that announce every change before it happens.
// Pure: a timeline in, cues out. Not here: sounding them (platform), the clock (practice_session.h).
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/timeline.pb.h"
#include "platform/tones.h"

namespace newel::home {

// Times are kept from the beat's end where they count down to it, so that a rest made longer still counts
// down to its own end.
struct Cue {
  bool from_end = false;
  std::int64_t offset_ms = 0;  // after the start, or before the end; never negative
  bool sounds = false;         // whether `tone` is to sound
  platform::Tone tone = platform::Tone::Count;
  std::string words;  // to be spoken; empty: none
};

// Words that no exercise carries, in the language of the timeline.
struct CallWords {
  std::string half_way = "Half way.";
  std::string last_one = "Last one.";
  std::string next = "Next:";
  std::string get_ready = "Get ready.";
  std::string done = "Done. Now look at the phone.";
  std::string stop = "Stop now.";
};

// The cues of beat `index`, in order of time for a beat of its planned length. `index` must be in range.
//   get-ready, rest, change of side: own tone and words at the start; 6 s before the end, in beats of 12 s
//   and
//     over, the next words; three counts, 1 s apart, before the end in beats of 5 s and over.
//   move, hold, return: Go after something that was not work; hold-end after a hold; last-one (tone and word)
//     at the start of a set's last repetition; otherwise a count. Words of the beat with it.
//   holds of 10 s and over: half-way in the middle, tone and word; holds of 6 s and over: three counts before
//   the end. A bout
//     that is written as several hold beats counts as one: half-way where its middle beat begins.
// All lengths: common practice, no source.
std::vector<Cue> cuesOf(const v1::Timeline& timeline, std::uint32_t index, const CallWords& words);

// The cues of the time to take up the position again after a pause: ready at once, three counts at the end.
std::vector<Cue> leadInCues(std::int64_t length_ms, const CallWords& words);

// The beats that make up one unbroken hold around `index`, both ends included; {index, index} for others.
struct HoldSpan {
  std::uint32_t first = 0;
  std::uint32_t last = 0;
};
HoldSpan holdSpanAt(const v1::Timeline& timeline, std::uint32_t index);

}  // namespace newel::home
