// The measures of the drawn body: lengths, masses, and what limb loss leaves of them.
// Not here: how the body is held (posture.h) or drawn (figure.h). Pure data and arithmetic.
#pragma once

#include <array>

#include "core/records/person.pb.h"

namespace newel {

// Lengths as shares of body height: Drillis and Contini 1966, as given in Winter, Biomechanics and Motor
// Control of Human Movement, figure 4.1. All lengths in core/figure are body heights; times the height in
// metres they are metres.
namespace lengths {
inline constexpr double kThigh = 0.245;
inline constexpr double kShank = 0.246;
inline constexpr double kFootHeight = 0.039;
inline constexpr double kFootLength = 0.152;
inline constexpr double kUpperArm = 0.186;
inline constexpr double kForearm = 0.146;
inline constexpr double kHand = 0.108;
inline constexpr double kTrunk = 0.288;        // hip to shoulder
inline constexpr double kHeadAndNeck = 0.182;  // shoulder to crown
inline constexpr double kHeadHeight = 0.130;   // chin to crown
inline constexpr double kShoulderBreadth = 0.259;
inline constexpr double kHipBreadth = 0.191;
inline constexpr double kHipHeight = 0.530;
inline constexpr double kKneeHeight = 0.285;
inline constexpr double kShoulderHeight = 0.818;

// Ours, no source: breadths are measured over the flesh, joint centres lie inside them.
inline constexpr double kHipHalf = 0.053;
inline constexpr double kShoulderHalf = 0.112;
// The trunk bends in two places; together with the last piece they make kTrunk.
inline constexpr double kPelvis = 0.080;
inline constexpr double kBelly = 0.095;
inline constexpr double kChest = kTrunk - kPelvis - kBelly;
inline constexpr double kHeadCentre = kHeadAndNeck - kHeadHeight / 2;  // above the shoulders
inline constexpr double kHeel = 0.040;                                 // behind the ankle
inline constexpr double kBall = 0.078;                                 // before the ankle
inline constexpr double kToe = kFootLength - kHeel;                    // before the ankle
inline constexpr double kGrip = 0.045;                                 // wrist to the middle of a closed hand
inline constexpr double kFingertip = 0.100;                            // wrist to where fingertips touch
}  // namespace lengths

// Masses as shares of body mass and centres of mass as shares of the segment from its near end: Dempster, as
// given in Winter, table 4.1. The trunk's three parts as there: thorax from C7, abdomen from T12/L1, pelvis
// from L4/L5.
struct SegmentMass {
  double mass;
  double centre;
};
namespace masses {
inline constexpr SegmentMass kHand{0.006, 0.506};
inline constexpr SegmentMass kForearm{0.016, 0.430};
inline constexpr SegmentMass kUpperArm{0.028, 0.436};
inline constexpr SegmentMass kFoot{0.0145, 0.500};
inline constexpr SegmentMass kShank{0.0465, 0.433};
inline constexpr SegmentMass kThigh{0.100, 0.433};
inline constexpr SegmentMass kHead{0.081, 1.000};
inline constexpr SegmentMass kThorax{0.216, 0.820};
inline constexpr SegmentMass kAbdomen{0.139, 0.440};
inline constexpr SegmentMass kPelvis{0.142, 0.105};
// A prosthesis weighs less than what it replaces (common practice, no source); this share of it.
inline constexpr double kProsthesisShare = 0.6;
}  // namespace masses

// What is left of each part of a leg, 0 to 1 of its length. Typical lengths, common practice, no source; at
// the joints themselves the part above is whole.
struct Remaining {
  double thigh = 1;
  double shank = 1;
  double foot = 1;
};
// UNSPECIFIED means nothing is lost.
Remaining remainingOf(v1::LimbLossLevel level);

// One leg as the figure needs to know it.
struct LimbState {
  v1::LimbLossLevel level = v1::LIMB_LOSS_LEVEL_UNSPECIFIED;
  v1::KneeKind knee = v1::KNEE_KIND_OWN_KNEE;
  bool prosthesis_on = false;

  bool lost() const { return level != v1::LIMB_LOSS_LEVEL_UNSPECIFIED; }
  bool prosthetic() const { return lost() && prosthesis_on; }
  bool bare() const { return lost() && !prosthesis_on; }
  // Is there something to stand or kneel on, own or prosthetic?
  bool hasFoot() const { return !bare() || remainingOf(level).foot > 0; }
  bool hasKnee() const { return !bare() || remainingOf(level).shank > 0; }
  // On its end where that is the knee's own, on a pad where the limb is shorter.
  bool canKneel() const { return !bare() || remainingOf(level).thigh > 0; }
  bool needsPad() const { return bare() && remainingOf(level).thigh > 0 && remainingOf(level).thigh < 1; }
};

// Mass of a leg's part as a share of the whole body with nothing lost: what is left, and the prosthesis.
struct PartMass {
  double own = 0;
  double device = 0;
};
std::array<PartMass, 3> legMasses(const LimbState& limb);  // thigh, shank, foot

}  // namespace newel
