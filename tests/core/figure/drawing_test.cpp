// The picture: mirrored exactly, framed, layered, without allocation once it runs; and its SVG.
#include "core/figure/drawing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "core/figure/sheet.h"
#include "core/figure/svg.h"
#include "tests/core/figure/count_allocations.h"
#include "tests/core/figure/figure_people.h"

namespace newel {
namespace {

std::vector<std::string> clipIds() {
  std::vector<std::string> ids;
  for (const v1::Clip& clip : ClipBook::builtIn().clips()) ids.push_back(clip.exercise_id());
  return ids;
}

Figure figureOf(const std::string& id, v1::Side side, v1::LimbLossLevel level) {
  const v1::Exercise* exercise = Catalogue::builtIn().find(id);
  const bool on = exercise->prosthesis() != v1::PROSTHESIS_USE_OFF;
  return std::move(*Figure::make(id, bodyWith(side, level, on)));
}

class EveryClip : public testing::TestWithParam<std::string> {};

TEST_P(EveryClip, leftIsTheExactMirrorOfRight) {
  for (const v1::LimbLossLevel level : allLevels()) {
    Figure left = figureOf(GetParam(), v1::SIDE_LEFT, level);
    Figure right = figureOf(GetParam(), v1::SIDE_RIGHT, level);
    for (const double fraction : {0.0, 0.13, 0.37, 0.5, 0.71, 1.0}) {
      const Drawing a = left.draw(left.momentOfRun(fraction));
      const Drawing b = right.draw(right.momentOfRun(fraction));
      ASSERT_EQ(a.points.size(), b.points.size());
      ASSERT_EQ(a.ops.size(), b.ops.size());
      for (std::size_t i = 0; i < a.points.size(); ++i) {
        ASSERT_EQ(a.points[i].x, -b.points[i].x);
        ASSERT_EQ(a.points[i].y, b.points[i].y);
      }
      EXPECT_EQ(a.frame.left, -b.frame.right);
    }
  }
}

// Letters change sides with the picture, and are still the person's own.
TEST_P(EveryClip, lettersNameThePersonsOwnSides) {
  Figure left = figureOf(GetParam(), v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  Figure right = figureOf(GetParam(), v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  const Drawing a = left.draw(left.momentOfRun(0));
  const Drawing b = right.draw(right.momentOfRun(0));
  ASSERT_GT(a.label_count, 0U);
  ASSERT_EQ(a.label_count, b.label_count);
  for (std::size_t i = 0; i < a.label_count; ++i) {
    EXPECT_EQ(a.labels[i].at.x, -b.labels[i].at.x);
    EXPECT_EQ(a.labels[i].text, b.labels[i].text == "L" ? "R" : "L");
  }
}

TEST_P(EveryClip, everythingIsInsideItsFrameAndFinite) {
  Figure figure = figureOf(GetParam(), v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  for (int i = 0; i <= 40; ++i) {
    const Moment moment = figure.momentOfRun(i / 40.0);
    const Drawing& drawing = figure.draw(moment);
    for (const Op& op : drawing.ops) {
      if (op.kind == OpKind::Label) continue;
      ASSERT_LE(op.first_verb + op.verb_count, drawing.verbs.size());
      // What stands round the body may go on beyond the picture.
      if (op.layer == Layer::Prop || op.layer == Layer::Ground) continue;
      std::uint32_t point = op.first_point;
      for (std::uint32_t v = 0; v < op.verb_count; ++v) {
        const Verb verb = drawing.verbs[op.first_verb + v];
        const int used = verb == Verb::Cubic ? 3 : verb == Verb::Close ? 0 : 1;
        for (int k = 0; k < used; ++k, ++point) {
          const DrawPoint p = drawing.points[point];
          ASSERT_TRUE(std::isfinite(p.x) && std::isfinite(p.y));
          EXPECT_GE(p.x, drawing.frame.left) << i;
          EXPECT_LE(p.x, drawing.frame.right) << i;
          EXPECT_GE(p.y, drawing.frame.top) << i;
          EXPECT_LE(p.y, drawing.frame.bottom) << i;
        }
      }
    }
  }
}

TEST_P(EveryClip, drawsWithoutAllocating) {
  if (allocationsSoFar() < 0) GTEST_SKIP() << "the sanitizer keeps the heap for itself";
  Figure figure = figureOf(GetParam(), v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  figure.draw(figure.momentOfRun(0));
  const long before = allocationsSoFar();
  for (int i = 0; i <= 300; ++i) figure.draw(figure.momentOfRun(i / 300.0));
  EXPECT_EQ(allocationsSoFar() - before, 0);
}

INSTANTIATE_TEST_SUITE_P(All, EveryClip, testing::ValuesIn(clipIds()), [](const auto& info) {
  std::string name = info.param;
  for (char& c : name) {
    if (c == '-') c = '_';
  }
  return name;
});

int countOf(const Drawing& drawing, Colour colour, OpKind kind) {
  int count = 0;
  for (const Op& op : drawing.ops) count += op.kind == kind && op.colour == colour ? 1 : 0;
  return count;
}

// Stairs, ramp, kerb: the body ends higher or lower than it began.
bool climbs(const v1::Scene& scene) { return scene.travel().z() != 0; }

// Which foot gets further in a phase.
int footThatGoes(const PhaseKeys& phase) {
  const auto way = [&](int side) {
    return distance(phase.first_from.posture.legs[side].ball, phase.end().posture.legs[side].ball);
  };
  return way(kSideA) > way(kSideB) ? kSideA : kSideB;
}

// On stairs, ramp and kerb the foot that goes first says so; wherever a foot says so, it is the one that
// goes, and the picture has the letter of the person's own side at it.
TEST(Drawing, theFootThatLeadsCarriesItsLetter) {
  int marked = 0;
  int climbed = 0;
  for (const v1::Clip& clip : ClipBook::builtIn().clips()) {
    for (const v1::Side side : {v1::SIDE_LEFT, v1::SIDE_RIGHT}) {
      Figure figure = figureOf(clip.exercise_id(), side, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
      Moment still = figure.momentOfRun(0);
      still.phase = -1;  // at the start nothing leads
      const std::size_t letters = figure.draw(still).label_count;
      for (const v1::Scene& scene : clip.scenes()) {
        if (climbs(scene)) {
          ++climbed;
          EXPECT_EQ(scene.phases(0).mark().kind(), v1::MARK_KIND_LEADS) << clip.exercise_id();
        }
        for (const v1::KeyPhase& phase : scene.phases()) {
          if (phase.mark().kind() != v1::MARK_KIND_LEADS) continue;
          const std::string where = clip.exercise_id() + " " + phase.phase_id();
          const Moment moment = *figure.momentOfPhase(phase.phase_id(), 0.5);
          const SceneKeys& keys = figure.choreography(moment.side_a).scenes[moment.scene];
          const int foot = footThatGoes(keys.phases[moment.phase]);
          EXPECT_EQ(phase.mark().point(), foot == kSideA ? v1::BODY_POINT_A_FOOT : v1::BODY_POINT_B_FOOT)
              << where;
          const v1::Side own = foot == kSideA ? moment.side_a : otherOne(moment.side_a);
          const Drawing& drawing = figure.draw(moment);
          ASSERT_EQ(drawing.label_count, letters + 1) << where;
          EXPECT_EQ(drawing.labels[letters].text, own == v1::SIDE_LEFT ? "L" : "R") << where;
          ++marked;
        }
      }
    }
  }
  EXPECT_GT(marked, 0);
  EXPECT_GE(climbed, 16);  // four exercises, up and down, left and right
}

// The socket is told by hatching, not by colour: lines that a sound leg does not have.
TEST(Drawing, everyProsthesisIsHatched) {
  const Palette palette = lightPalette({});
  Figure sound = std::move(*Figure::make("sit-to-stand", FigureBody{}));
  EXPECT_EQ(countOf(sound.draw(sound.momentOfRun(0)), palette.brass, OpKind::Fill), 0);
  for (const v1::LimbLossLevel level : allLevels()) {
    Figure figure = figureOf("sit-to-stand", v1::SIDE_LEFT, level);
    EXPECT_EQ(countOf(figure.draw(figure.momentOfRun(0)), palette.brass, OpKind::Fill), 1)
        << v1::LimbLossLevel_Name(level);
  }
}

TEST(Drawing, withoutTheProsthesisNothingOfItIsDrawn) {
  const Palette palette = lightPalette({});
  for (const v1::LimbLossLevel level : allLevels()) {
    Figure figure = std::move(*Figure::make("bridge-over-roll", bodyWith(v1::SIDE_LEFT, level, false)));
    const Drawing& drawing = figure.draw(figure.momentOfRun(0));
    EXPECT_EQ(countOf(drawing, palette.brass, OpKind::Fill), 0);
    EXPECT_EQ(countOf(drawing, palette.metal, OpKind::Fill), 0);
  }
}

TEST(Drawing, farLimbsArePaler) {
  Figure figure = figureOf("sit-to-stand", v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  const Drawing& drawing = figure.draw(figure.momentOfRun(0));
  const Palette palette = lightPalette({});
  for (const Op& op : drawing.ops) {
    if (op.layer == Layer::FarLeg) {
      EXPECT_FALSE(op.colour == palette.skin);
      EXPECT_FALSE(op.colour == palette.ink);
    }
  }
}

TEST(Drawing, peopleDiffer) {
  const FigureBody plain = bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true);
  std::set<std::string> pictures;
  const auto add = [&](const v1::Appearance& appearance) {
    FigureBody body = plain;
    body.appearance = appearance;
    Figure figure = std::move(*Figure::make("sit-to-stand", body));
    pictures.insert(toSvg(figure.draw(figure.momentOfRun(0.3)), 300, "", ""));
  };
  v1::Appearance appearance;
  for (const v1::Build build : {v1::BUILD_LIGHT, v1::BUILD_MEDIUM, v1::BUILD_HEAVY}) {
    for (const v1::SkinTone skin : {v1::SKIN_TONE_1, v1::SKIN_TONE_2, v1::SKIN_TONE_3, v1::SKIN_TONE_4}) {
      for (const v1::HeadWear head : {v1::HEAD_WEAR_HAIR, v1::HEAD_WEAR_NONE, v1::HEAD_WEAR_SCARF}) {
        appearance.set_build(build);
        appearance.set_skin(skin);
        appearance.set_head(head);
        add(appearance);
      }
    }
  }
  EXPECT_EQ(pictures.size(), 36U);
}

// Well-formed as far as a reader without a library can say: tags balance, no bare ampersand, no "nan".
void expectWellFormed(const std::string& svg) {
  std::vector<std::string> open;
  for (std::size_t at = svg.find('<'); at != std::string::npos; at = svg.find('<', at + 1)) {
    const std::size_t end = svg.find('>', at);
    ASSERT_NE(end, std::string::npos);
    const std::string tag = svg.substr(at + 1, end - at - 1);
    if (tag.back() == '/') continue;
    if (tag.front() == '/') {
      ASSERT_FALSE(open.empty());
      EXPECT_EQ(open.back(), tag.substr(1));
      open.pop_back();
    } else {
      open.push_back(tag.substr(0, tag.find(' ')));
    }
  }
  EXPECT_TRUE(open.empty());
  EXPECT_EQ(svg.find("nan"), std::string::npos);
  EXPECT_EQ(svg.find("inf"), std::string::npos);
}

TEST(Svg, isWellFormedAndSaysWhatItShows) {
  Figure figure = figureOf("sit-to-stand", v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  const std::string svg = toSvg(figure.draw(figure.momentOfRun(0.2)), 400, "Sit & stand", "A <person>");
  expectWellFormed(svg);
  EXPECT_NE(svg.find("<title>Sit &amp; stand</title>"), std::string::npos);
  EXPECT_NE(svg.find("<desc>A &lt;person&gt;</desc>"), std::string::npos);
}

TEST(Sheet, holdsEveryClipWithItsTitle) {
  const auto sheet = figureSheet(bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true), 3, "en");
  ASSERT_TRUE(sheet.ok());
  expectWellFormed(*sheet);
  for (const std::string& id : clipIds()) {
    const std::string title = Catalogue::builtIn().words(id, "en")->title();
    EXPECT_NE(sheet->find(">" + svgText(title) + "<"), std::string::npos) << title;
  }
}

TEST(Sheet, refusesAnUnknownExercise) {
  EXPECT_EQ(figureSheet(FigureBody{}, 3, "en", {"no-such"}).status().code(), absl::StatusCode::kNotFound);
}

}  // namespace
}  // namespace newel
