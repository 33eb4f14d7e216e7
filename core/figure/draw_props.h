// Draws the things round the body. For core/figure alone.
#pragma once

#include "core/figure/key_poses.h"
#include "core/figure/motion.h"
#include "core/figure/palette.h"
#include "core/figure/sketch.h"

namespace newel {

// Before the body, or over it because it stands between the body and the eye.
enum class PropPlace { Behind, Front };

class PropPainter {
 public:
  PropPainter(Sketch& sketch, const Eye& eye, const Palette& palette, const SceneKeys& scene,
              const Pose& pose, const std::array<LimbState, 2>& limbs)
      : m_sketch(sketch), m_eye(eye), m_palette(palette), m_scene(scene), m_pose(pose), m_limbs(limbs) {}

  // A far leg is beyond what the body sits astride.
  bool isAstride() const;

  // What lies on the ground or is ground.
  void drawFlat();
  void drawUpright(PropPlace place);
  // Things in the hands or hung between two points of the body.
  void drawCarried();
  // Small things in one hand, over it.
  void drawInHand();

 private:
  PropPlace placeOf(const SceneProp& prop, const Vec3& at) const;
  static bool isInHand(const SceneProp& prop) {
    return isCarried(prop) && prop.prop.to() == v1::BODY_POINT_UNSPECIFIED &&
           (prop.shape.kind == v1::PROP_KIND_MIRROR || prop.shape.kind == v1::PROP_KIND_TOWEL);
  }
  static bool isCarried(const SceneProp& prop) {
    return prop.prop.from() != v1::BODY_POINT_UNSPECIFIED || prop.prop.to() != v1::BODY_POINT_UNSPECIFIED;
  }
  DrawPoint see(const PropShape& shape, const Vec3& at, double x, double y, double z) const;
  void quad(Layer layer, Colour fill, Colour line, const PropShape& shape, const Vec3& at,
            const Vec3 (&corners)[4]);
  void bar(Colour colour, float width, const PropShape& shape, const Vec3& at, const Vec3& a, const Vec3& b);
  // A box from low to high: the faces that look toward the eye.
  void box(Colour fill, const PropShape& shape, const Vec3& at, const Vec3& low, const Vec3& high);
  void one(const SceneProp& prop, const Vec3& at);
  void chair(const PropShape& shape, const Vec3& at);
  void rollingChair(const PropShape& shape, const Vec3& at);
  void seat(const PropShape& shape, const Vec3& at);
  void back(const PropShape& shape, const Vec3& at);
  void rail(const PropShape& shape, const Vec3& at);
  void stairs(const PropShape& shape, const Vec3& at);
  void ramp(const PropShape& shape, const Vec3& at);
  void counter(const PropShape& shape, const Vec3& at);
  void roll(const PropShape& shape, const Vec3& at);
  void flat(const PropShape& shape, const Vec3& at);
  void cushion(const PropShape& shape, const Vec3& at);
  void mirror(const PropShape& shape, const Vec3& at);
  void cycle(const PropShape& shape, const Vec3& at);
  void tippingBoard(const PropShape& shape, const Vec3& at);
  void cane(const PropShape& shape, const Vec3& at);
  void water(const PropShape& shape, const Vec3& at);
  void sleeve(const SceneProp& prop, double share);
  void cloth(const Vec3& hand);
  void handMirror(const ArmPosture& arm);
  // How far apart lines or posts of something endless are, so that they meet themselves after each run.
  double repeatOf(double usual) const;
  bool looksAtEye(const PropShape& shape, const Vec3& normal) const;

  Sketch& m_sketch;
  const Eye& m_eye;
  const Palette& m_palette;
  const SceneKeys& m_scene;
  const Pose& m_pose;
  const std::array<LimbState, 2>& m_limbs;
};

// Where a point of the body is.
Vec3 pointOf(const Posture& posture, const std::array<LimbState, 2>& limbs, v1::BodyPoint point);

}  // namespace newel
