// The twelve, beat by beat, as files that were read by eye. NEWEL_WRITE_GOLDEN=1 writes them anew; read the
// difference before you keep it.
#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "core/practice/compile.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/practice/timeline_text.h"

namespace newel {
namespace {

struct Golden {
  std::string file;
  std::string exercise;
  v1::Person person;
};

std::vector<Golden> goldens() {
  std::vector<Golden> all;
  for (const char* id :
       {"sit-to-stand", "weight-shift-side", "even-weight-standing", "step-through", "stairs-one-at-a-time",
        "stairs-step-over-step", "ramp-up-down", "opposite-arm-and-leg", "curl-up-legs-lifted",
        "rolling-chair-push-pull", "face-down-lying", "bridge-over-roll"}) {
    const bool transtibial = std::string(id) == "stairs-step-over-step";
    all.push_back({id, id, transtibial ? test::transtibialRight() : test::transfemoralLeft()});
  }
  all.push_back({"sit-to-stand.both-lost", "sit-to-stand", test::bothTranstibial()});
  all.push_back({"stairs-one-at-a-time.both-lost", "stairs-one-at-a-time", test::bothTranstibial()});
  all.push_back({"step-through.both-lost", "step-through", test::bothTranstibial()});
  return all;
}

class GoldenTimeline : public ::testing::TestWithParam<Golden> {};

TEST_P(GoldenTimeline, isWhatTheFileSays) {
  const Golden& golden = GetParam();
  const auto timeline = compileTimeline(test::entryOf(golden.exercise, golden.person), golden.person,
                                        Catalogue::builtIn(), "en");
  ASSERT_TRUE(timeline.ok()) << timeline.status();
  const std::string text = test::timelineText(*timeline);
  const std::string path = std::string(NEWEL_SOURCE_DIR "/tests/data/timelines/") + golden.file + ".txt";
  if (std::getenv("NEWEL_WRITE_GOLDEN") != nullptr) {
    std::ofstream(path) << text;
    GTEST_SKIP() << "skipped: written anew, " << path;
  }
  std::ifstream in(path);
  ASSERT_TRUE(in.good()) << path;
  std::stringstream wanted;
  wanted << in.rdbuf();
  EXPECT_EQ(text, wanted.str());
}

INSTANTIATE_TEST_SUITE_P(Twelve, GoldenTimeline, ::testing::ValuesIn(goldens()), [](const auto& info) {
  std::string name = info.param.file;
  for (char& c : name) {
    if (c == '-' || c == '.') c = '_';
  }
  return name;
});

}  // namespace
}  // namespace newel
