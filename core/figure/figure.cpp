#include "core/figure/figure.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/figure/body_shape.h"
#include "core/figure/describe.h"
#include "core/figure/draw_body.h"
#include "core/figure/draw_marks.h"
#include "core/figure/draw_props.h"
#include "core/figure/sketch.h"
#include "core/library/wording.h"

namespace newel {
namespace {

constexpr double kMargin = 0.05;
// Of things round the body this much is shown beyond it, so that the body stays large.
constexpr float kScenery = 0.16F;
// Moments of each phase at which the frame must hold everything.
constexpr double kFrameShares[] = {0, 0.3, 0.5, 0.7, 1};

v1::Side otherOf(v1::Side side) { return side == v1::SIDE_LEFT ? v1::SIDE_RIGHT : v1::SIDE_LEFT; }

LimbState stateOf(const v1::Person& person, v1::Side side, v1::ProsthesisUse use) {
  LimbState state;
  for (const v1::LimbLoss& limb : person.limbs()) {
    if (limb.side() != side) continue;
    state.level = limb.level();
    state.knee = limb.knee();
    state.prosthesis_on = limb.has_prosthesis() && use != v1::PROSTHESIS_USE_OFF;
  }
  return state;
}

struct Covered {
  Box body, scenery;
  bool no_body = true;
  bool no_scenery = true;

  Box shown() const {
    if (no_scenery) return body;
    return {std::min(body.left, std::max(scenery.left, body.left - kScenery)),
            std::min(body.top, std::max(scenery.top, body.top - kScenery)),
            std::max(body.right, std::min(scenery.right, body.right + kScenery)),
            std::max(body.bottom, std::min(scenery.bottom, body.bottom + kScenery))};
  }
};

void widen(Box& box, bool& empty, DrawPoint p, float by) {
  if (empty) box = {p.x - by, p.y - by, p.x + by, p.y + by};
  empty = false;
  box.left = std::min(box.left, p.x - by);
  box.right = std::max(box.right, p.x + by);
  box.top = std::min(box.top, p.y - by);
  box.bottom = std::max(box.bottom, p.y + by);
}

}  // namespace

FigureBody bodyOf(const v1::Person& person, v1::ProsthesisUse use, const v1::Appearance& appearance) {
  FigureBody body;
  body.left = stateOf(person, v1::SIDE_LEFT, use);
  body.right = stateOf(person, v1::SIDE_RIGHT, use);
  body.appearance = appearance;
  const v1::Side weaker = limbsOf(person).weaker;
  if (weaker != v1::SIDE_UNSPECIFIED) body.weaker = weaker;
  return body;
}

FigureOptions lettered(FigureOptions options, const std::string& language, const ClipBook& clips) {
  options.left_letter = clips.phrase("letter.left", language);
  options.right_letter = clips.phrase("letter.right", language);
  return options;
}

struct Figure::Parts {
  v1::Clip clip;
  v1::Exercise exercise;
  FigureBody body;
  FigureOptions options;
  Palette palette;
  BodyShape shape;
  const ClipBook* clips = nullptr;
  std::array<Choreography, 2> keys;        // side a on the left, on the right
  std::array<std::vector<Box>, 2> frames;  // the same, one a scene
  Drawing drawing;
  Pose pose;
  MarkWay way;

  const Choreography& keysFor(v1::Side side_a) const { return keys[side_a == v1::SIDE_RIGHT ? 1 : 0]; }
  Eye eyeOf(const SceneKeys& scene, const Moment& moment) const;
  bool seesSideA(const SceneKeys& scene, const Moment& moment) const {
    return !scene.view.stays() || moment.side_a == body.weaker;
  }
  void paint(const Moment& moment);
  void paintBody(const SceneKeys& scene, Sketch& sketch, BodyPainter& painter, PropPainter& props,
                 MarkPainter& marks, const Moment& moment);
  void paintLetters(Sketch& sketch, const BodyPainter& painter, const Moment& moment);
  void paintMark(const SceneKeys& scene, MarkPainter& marks, const Moment& moment, bool ground);
  void flip();
  void findFrames();
  void addBounds(int scene, v1::Side side, Covered& covered);
};

Eye Figure::Parts::eyeOf(const SceneKeys& scene, const Moment& moment) const {
  const double azimuth = radians(scene.view.azimuth_deg());
  const double elevation = radians(scene.view.elevation_deg());
  const double side = seesSideA(scene, moment) ? 1 : -1;
  Eye eye;
  eye.toward = Vec3{std::sin(azimuth), side * std::cos(azimuth), 0} * std::cos(elevation) +
               Vec3{0, 0, std::sin(elevation)};
  eye.right = unit(cross({0, 0, 1}, eye.toward), {1, 0, 0});
  eye.up = cross(eye.toward, eye.right);
  if (scene.follow) eye.shift = scene.travel * pose.run;
  return eye;
}

// Everything is drawn as if side a were the left one; the other way round is the mirror image, exactly.
void Figure::Parts::flip() {
  for (DrawPoint& p : drawing.points) p.x = -p.x;
}

void Figure::Parts::paintMark(const SceneKeys& scene, MarkPainter& marks, const Moment& moment, bool ground) {
  if (moment.phase < 0) return;
  const v1::Mark& mark = scene.phases[moment.phase].mark;
  const int foot = mark.point() == v1::BODY_POINT_B_FOOT ? kSideB : kSideA;
  if (ground) {
    if (mark.kind() != v1::MARK_KIND_WEIGHT) return;
    marks.weight(pose.posture, foot);
    if (mark.point() == v1::BODY_POINT_PELVIS) marks.weight(pose.posture, 1 - foot);
    return;
  }
  const Choreography& keys_now = keysFor(moment.side_a);
  if (mark.kind() == v1::MARK_KIND_PRESS) marks.press(pointOf(pose.posture, keys_now.limbs, mark.point()));
  if (mark.kind() != v1::MARK_KIND_ARROW && mark.kind() != v1::MARK_KIND_LEADS) return;
  findWay(keys_now, moment, mark, way);
  // Toward where the person faces at the start of the scene.
  const Vec3 facing = scene.start.posture.pelvis.x;
  const double ahead = dot(facing, eyeOf(scene, moment).right) >= 0 ? mark.ahead() : -mark.ahead();
  marks.arrow(way, {static_cast<float>(ahead), static_cast<float>(-mark.up())});
  if (mark.kind() == v1::MARK_KIND_LEADS) {
    const v1::Side side = foot == kSideA ? moment.side_a : otherOf(moment.side_a);
    marks.leads(pose.posture, foot, side == v1::SIDE_LEFT ? options.left_letter : options.right_letter,
                moment.side_a == v1::SIDE_RIGHT);
  }
}

void Figure::Parts::paintBody(const SceneKeys& scene, Sketch& sketch, BodyPainter& painter,
                              PropPainter& props, MarkPainter& marks, const Moment& moment) {
  const int near = painter.nearSide();
  const int far = 1 - near;
  const Posture& p = pose.posture;
  const Vec3 toward = eyeOf(scene, moment).toward;
  const bool sideways = painter.sidedness() >= 0.4;
  // Seen from the front or back an arm is behind the trunk when its hand is.
  const auto behind = [&](int side) {
    return dot(mix(p.arms[side].grip, p.arms[side].elbow, 0.3) - mix(p.hips, p.neck, 0.6), toward) < -0.07;
  };
  const bool far_first = sideways || behind(far);
  const bool near_first = !sideways && behind(near);
  // A hand on the far edge of a seat is beyond the seat.
  const bool on_seat = pose.goal.arms[far].how == ArmHow::kPoint && pose.goal.arms[far].grip == v1::GRIP_SEAT;
  props.drawFlat();
  paintMark(scene, marks, moment, true);
  if (on_seat && sideways) painter.drawArm(far);
  const bool astride = sideways && props.isAstride();
  if (astride) painter.drawFarLeg();
  props.drawUpright(PropPlace::Behind);
  if (far_first && !(on_seat && sideways)) painter.drawArm(far);
  if (near_first) painter.drawArm(near);
  if (!astride) painter.drawFarLeg();
  painter.drawTrunk();
  painter.drawHead();
  painter.drawNearLeg();
  paintLetters(sketch, painter, moment);
  if (!far_first) painter.drawArm(far);
  props.drawUpright(PropPlace::Front);
  props.drawCarried();
  if (!near_first) painter.drawArm(near);
  props.drawInHand();
}

void Figure::Parts::paintLetters(Sketch& sketch, const BodyPainter& painter, const Moment& moment) {
  if (!options.letters) return;
  const bool flipped = moment.side_a == v1::SIDE_RIGHT;
  for (int side = 0; side < 2; ++side) {
    const bool left = (side == kSideA) != flipped;
    DrawPoint at = painter.letterPlace(side);
    if (flipped) at.x = -at.x;
    if (painter.isFar(side)) continue;
    sketch.label(palette.on_shorts, left ? options.left_letter : options.right_letter, at, 0.05F);
  }
}

void Figure::Parts::paint(const Moment& moment) {
  const Choreography& keys_now = keysFor(moment.side_a);
  const SceneKeys& scene = keys_now.scenes[moment.scene];
  drawing.clear();
  poseAt(keys_now, moment, pose);
  const Eye eye = eyeOf(scene, moment);
  Sketch sketch(drawing);
  BodyPainter painter(sketch, eye, pose.posture, keys_now.limbs, palette, shape, body.appearance.head());
  PropPainter props(sketch, eye, palette, scene, pose, keys_now.limbs);
  MarkPainter marks(sketch, eye, palette);
  paintBody(scene, sketch, painter, props, marks, moment);
  paintMark(scene, marks, moment, false);
  if (moment.side_a == v1::SIDE_RIGHT) flip();
}

// Adds what one scene's pictures cover while `side` is side a. Scenery without ends counts only near the
// body.
void Figure::Parts::addBounds(int scene, v1::Side side, Covered& covered) {
  const SceneKeys& keys_now = keysFor(side).scenes[scene];
  Moment moment;
  moment.scene = scene;
  moment.side_a = side;
  const int phases = static_cast<int>(keys_now.phases.size());
  // Once more for later rounds: they begin elsewhere.
  const bool rounds = phases > 0 && keys_now.phases.front().goesRound();
  for (int phase = -1; phase < phases + (rounds ? 1 : 0); ++phase) {
    moment.phase = phase == phases ? 0 : phase;
    moment.first_run = phase != phases;
    for (const double share : kFrameShares) {
      moment.fraction = share;
      paint(moment);
      for (const Op& op : drawing.ops) {
        const bool scenery = op.layer == Layer::Ground || op.layer == Layer::Prop;
        if ((keys_now.follow && scenery) || op.kind == OpKind::Label) continue;
        std::uint32_t point = op.first_point;
        for (std::uint32_t v = 0; v < op.verb_count; ++v) {
          const Verb verb = drawing.verbs[op.first_verb + v];
          const int used = verb == Verb::Cubic ? 3 : verb == Verb::Close ? 0 : 1;
          for (int i = 0; i < used; ++i) {
            widen(scenery ? covered.scenery : covered.body, scenery ? covered.no_scenery : covered.no_body,
                  drawing.points[point++], op.width / 2);
          }
        }
      }
    }
  }
}

// One size for all scenes and both sides, so that nothing jumps; each sits on the bottom edge.
void Figure::Parts::findFrames() {
  constexpr v1::Side kSides[] = {v1::SIDE_LEFT, v1::SIDE_RIGHT};
  float width = 0;
  float height = 0;
  for (int scene = 0; scene < clip.scenes_size(); ++scene) {
    const v1::View& view = clip.scenes(scene).view();
    for (int side = 0; side < 2; ++side) {
      Covered covered;
      addBounds(scene, kSides[side], covered);
      if (view.stays()) addBounds(scene, kSides[1 - side], covered);
      Box box = covered.shown();
      const auto margin = static_cast<float>(kMargin + view.margin());
      box = {box.left - margin, box.top - margin, box.right + margin, box.bottom + margin};
      frames[side].push_back(box);
      width = std::max(width, box.width());
      height = std::max(height, box.height());
    }
  }
  for (auto& boxes : frames) {
    for (Box& box : boxes) {
      const float more = (width - box.width()) / 2;
      box = {box.left - more, box.bottom - height, box.right + more, box.bottom};
    }
  }
}

Figure::Figure(std::unique_ptr<Parts> parts) : m_parts(std::move(parts)) {}
Figure::Figure(Figure&&) noexcept = default;
Figure& Figure::operator=(Figure&&) noexcept = default;
Figure::~Figure() = default;

absl::StatusOr<Figure> Figure::make(const std::string& exercise_id, const FigureBody& body,
                                    const FigureOptions& options, const Catalogue& catalogue,
                                    const ClipBook& clips) {
  const v1::Exercise* exercise = catalogue.find(exercise_id);
  if (exercise == nullptr)
    return absl::NotFoundError("exercise_id: there is no exercise \"" + exercise_id + "\"");
  const v1::Clip* clip = clips.find(exercise_id);
  if (clip == nullptr) return absl::NotFoundError("exercise_id: \"" + exercise_id + "\" has no figure");
  auto parts = std::make_unique<Parts>();
  parts->clip = *clip;
  parts->exercise = *exercise;
  parts->body = body;
  parts->options = options;
  parts->clips = &clips;
  v1::Support support = options.support;
  if (support == v1::SUPPORT_UNSPECIFIED) support = exercise->supports(0);
  parts->options.support = support;
  parts->palette = options.dark ? darkPalette(body.appearance) : lightPalette(body.appearance);
  parts->shape = bodyShape(body.appearance.build());
  parts->keys[0] = keysOf(*clip, *exercise, support, {body.left, body.right});
  parts->keys[1] = keysOf(*clip, *exercise, support, {body.right, body.left});
  parts->findFrames();
  // Room for frames between the ones just seen, so that drawing never has to make more.
  Drawing& drawing = parts->drawing;
  drawing.ops.reserve(drawing.ops.capacity() + 64);
  drawing.verbs.reserve(drawing.verbs.capacity() + 1024);
  drawing.points.reserve(drawing.points.capacity() + 2048);
  drawing.labels.resize(8);
  return Figure(std::move(parts));
}

Moment Figure::momentAt(const v1::Timeline& timeline, std::int64_t ms) const {
  return newel::momentAt(m_parts->keys[0], m_parts->clip, timeline, ms, m_parts->body.weaker);
}

namespace {

double usualLength(const PhaseKeys& phase) {
  if (phase.goesRound()) return phase.round_s;
  return phase.kind == v1::PHASE_KIND_HOLD ? 1.5 : 3;
}

Moment momentOf(const Figure& figure, int scene, int phase, double fraction, v1::Side working) {
  Moment moment;
  moment.scene = scene;
  moment.phase = phase;
  moment.fraction = fraction;
  const v1::Side weaker = figure.body().weaker;
  const v1::Side side = working == v1::SIDE_UNSPECIFIED ? weaker : working;
  moment.side_a = sideAOf(figure.clip().side_a(), v1::LIMB_ROLE_WORKING, side, weaker, weaker);
  return moment;
}

}  // namespace

Moment Figure::momentOfRun(double fraction, v1::Side working) const {
  double total = 0;
  const auto& scenes = m_parts->keys[0].scenes;
  for (const SceneKeys& scene : scenes) {
    for (const PhaseKeys& phase : scene.phases) total += usualLength(phase);
  }
  double left = std::clamp(fraction, 0.0, 1.0) * total;
  for (int scene = 0; scene < static_cast<int>(scenes.size()); ++scene) {
    const auto& phases = scenes[scene].phases;
    for (int phase = 0; phase < static_cast<int>(phases.size()); ++phase) {
      const double length = usualLength(phases[phase]);
      const bool last =
          scene + 1 == static_cast<int>(scenes.size()) && phase + 1 == static_cast<int>(phases.size());
      if (left <= length || last) return momentOf(*this, scene, phase, std::min(1.0, left / length), working);
      left -= length;
    }
  }
  return momentOf(*this, 0, -1, 0, working);
}

absl::StatusOr<Moment> Figure::momentOfPhase(const std::string& phase_id, double fraction,
                                             v1::Side working) const {
  const auto& scenes = m_parts->keys[0].scenes;
  for (int scene = 0; scene < static_cast<int>(scenes.size()); ++scene) {
    const auto& phases = scenes[scene].phases;
    for (int phase = 0; phase < static_cast<int>(phases.size()); ++phase) {
      if (phases[phase].id == phase_id) {
        return momentOf(*this, scene, phase, std::clamp(fraction, 0.0, 1.0), working);
      }
    }
  }
  return absl::NotFoundError("phase_id: there is no phase \"" + phase_id + "\"");
}

std::vector<Moment> Figure::keyMoments(int most, v1::Side working) const {
  const auto& scenes = m_parts->keys[0].scenes;
  bool travels = false;
  for (const SceneKeys& scene : scenes) travels = travels || length(scene.travel) > 0;
  // On stairs and the like the steps tell the tale, not the standing between them.
  std::vector<Moment> told;
  std::vector<Moment> all;
  if (!travels) told.push_back(momentOf(*this, 0, -1, 0, working));
  all = told;
  for (int scene = 0; scene < static_cast<int>(scenes.size()); ++scene) {
    for (int phase = 0; phase < static_cast<int>(scenes[scene].phases.size()); ++phase) {
      const PhaseKeys& keys = scenes[scene].phases[phase];
      if (keys.goesRound()) {
        for (const double share : {0.25, 0.5, 0.75}) {
          all.push_back(momentOf(*this, scene, phase, share, working));
          all.back().first_run = false;
          told.push_back(all.back());
        }
        continue;
      }
      const Moment moment = momentOf(*this, scene, phase, keys.frames.empty() ? 0 : 0.5, working);
      all.push_back(moment);
      const bool way_back = keys.kind == v1::PHASE_KIND_RETURN;
      if (!way_back && (!travels || length(scenes[scene].travel) > 0)) told.push_back(moment);
    }
  }
  const std::vector<Moment>& from = static_cast<int>(told.size()) >= most ? told : all;
  const int count = static_cast<int>(from.size());
  if (count <= most || most < 2) return from;
  std::vector<Moment> chosen;
  chosen.reserve(static_cast<std::size_t>(most));
  for (int i = 0; i < most; ++i) chosen.push_back(from[(i * (count - 1) + (most - 1) / 2) / (most - 1)]);
  return chosen;
}

double Figure::aspect() const {
  const Box& frame = m_parts->frames[0].front();
  return static_cast<double>(frame.width()) / frame.height();
}

const Drawing& Figure::draw(const Moment& moment) {
  m_parts->paint(moment);
  m_parts->drawing.frame = m_parts->frames[moment.side_a == v1::SIDE_RIGHT ? 1 : 0][moment.scene];
  return m_parts->drawing;
}

std::string Figure::describe(const Moment& moment, const std::string& language) const {
  return describeMoment(m_parts->keysFor(moment.side_a), moment, m_parts->body, m_parts->exercise,
                        *m_parts->clips, language);
}

const Choreography& Figure::choreography(v1::Side side_a) const { return m_parts->keysFor(side_a); }
const v1::Clip& Figure::clip() const { return m_parts->clip; }
const v1::Exercise& Figure::exercise() const { return m_parts->exercise; }
const FigureBody& Figure::body() const { return m_parts->body; }

}  // namespace newel
