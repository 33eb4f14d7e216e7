// Draws a solved posture: limbs, trunk, head, prosthesis. For core/figure alone.
#pragma once

#include <array>

#include "core/figure/body_shape.h"
#include "core/figure/palette.h"
#include "core/figure/posture.h"
#include "core/figure/skeleton.h"
#include "core/figure/sketch.h"

namespace newel {

// Lines, body heights.
inline constexpr float kOutline = 0.0075F;
inline constexpr float kThinLine = 0.0045F;

class BodyPainter {
 public:
  BodyPainter(Sketch& sketch, const Eye& eye, const Posture& posture, const std::array<LimbState, 2>& limbs,
              const Palette& palette, const BodyShape& shape, v1::HeadWear head);

  int nearSide() const { return m_near; }
  // Looking at the body's side (1) or at its front or back (0).
  double sidedness() const { return m_sidedness; }

  void drawArm(int side);
  // Everything below the trunk, in the right order round it: call first with `before_trunk`.
  void drawFarLeg();
  void drawTrunk();
  void drawHead();
  void drawNearLeg();

  // Where the letter of a leg belongs, on the shorts.
  DrawPoint letterPlace(int side) const;
  bool isFar(int side) const { return side != m_near && m_fade > 0.2; }

 private:
  Disc disc(const Vec3& at, double radius) const { return {m_eye.see(at), static_cast<float>(radius)}; }
  Disc section(const Vec3& at, const Turn& turn, const Section& size) const;
  Colour tone(Colour colour, int side) const;
  Colour lineTone(int side) const;
  void legPieces(int side);
  void thighPieces(int side);
  void shankPieces(int side);
  void shoePieces(int side);
  void pelvisPieces();
  void socket(int side, const Disc& a, const Disc& b);
  void legDetails(int side);
  void kneeBlock(int side);
  void pylon(int side, double from);
  bool showsLeg(int side) const;
  double hemOf(int side) const;
  Disc hemDisc(int side) const;
  Vec3 thighAt(int side, double share) const;
  Vec3 shankAt(int side, double share) const;
  double thighRadiusAt(double share) const;
  // The part of the head's skin (or hair) round `direction`, as far as `angle_deg` from it.
  void headCap(const Vec3& direction, double angle_deg, Colour fill);
  Vec3 headPoint(const Vec3& direction) const;

  Sketch& m_sketch;
  const Eye& m_eye;
  const Posture& m_posture;
  const std::array<LimbState, 2>& m_limbs;
  const Palette& m_palette;
  const BodyShape& m_shape;
  v1::HeadWear m_head_wear;
  int m_near = 0;
  double m_sidedness = 1;
  double m_fade = 0;
};

}  // namespace newel
