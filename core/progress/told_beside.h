// What a person's record says beside practices, for the attention list and the phone's pages: what the skin
// looked like when the prosthesis came off, and which measures the clinic still wants.
#pragma once

#include <vector>

#include "core/progress/attention.h"
#include "core/records/measure.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/wear.pb.h"

namespace newel {

// "wear-harm" or "wear-too-red" for each block whose skin says so under the last wear plan of `programmes`
// (by number); empty without a plan. Any order of blocks, each with its last revision.
std::vector<ToldSign> skinSignsWhenWorn(const std::vector<v1::Programme>& programmes,
                                        const std::vector<v1::WearBlock>& blocks);

// A measure taken so many days before the day it was asked for is the one that was asked for. Ours, no
// source.
inline constexpr int kTakenEarlyDays = 7;

// Those that `programme` asks for and nobody took yet, in its order. Days that cannot be read are left out.
std::vector<MeasureDue> measuresWanted(const v1::Programme& programme,
                                       const std::vector<v1::Measure>& measures);

}  // namespace newel
