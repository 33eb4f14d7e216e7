#include "sync/common/media_clean.h"

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <string>

#include "core/records/media_type.h"
#include "sync/common/content_hash.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_media.h"

namespace newel {
namespace {

using namespace std::string_view_literals;

constexpr std::array kFiles = {"tagged.jpg",     "tagged.png",  "tagged.mp4", "tagged.mov",
                               "fragmented.mp4", "tagged.webm", "live.webm"};

// What the tools that made the files left in them (tests/data/media/README.txt).
constexpr std::array kTelling = {"Canary"sv, "52.52"sv,   "13.40"sv, "Lavf"sv, "2024"sv,   "Exif"sv,
                                 "xmp"sv,    "\xA9xyz"sv, "udta"sv,  "meta"sv, "Handler"sv};

bool holdsClip(const std::string& name) { return isClip(sniffMedia(test::mediaFile(name))); }

TEST(MediaClean, nothingOfPlaceTimeOrMakerIsLeft) {
  for (const char* name : kFiles) {
    const std::string before = test::mediaFile(name);
    ASSERT_FALSE(before.empty()) << name;
    ASSERT_NE(before.find("Canary"), std::string::npos) << name << ": the test would prove nothing";
    const auto clean = cleanMedia(before);
    ASSERT_TRUE(clean.ok()) << name << ": " << clean.status();
    EXPECT_EQ(clean->type, sniffMedia(before)) << name;
    for (const auto telling : kTelling)
      EXPECT_EQ(clean->content.find(telling), std::string::npos) << name << telling;
    // No byte of a clip moves, so that its tables of places stay true.
    if (holdsClip(name)) {
      EXPECT_EQ(clean->content.size(), before.size()) << name;
    }
  }
}

TEST(MediaClean, cleaningTwiceChangesNothing) {
  for (const char* name : kFiles) {
    const auto once = cleanMedia(test::mediaFile(name));
    ASSERT_TRUE(once.ok()) << name;
    EXPECT_EQ(checkCleanMedia(once->content, once->type), absl::OkStatus()) << name;
    EXPECT_FALSE(checkCleanMedia(test::mediaFile(name), once->type).ok())
        << name << " says more than its picture";
    const auto other = holdsClip(name) ? v1::MEDIA_TYPE_PNG : v1::MEDIA_TYPE_MP4;
    EXPECT_FALSE(checkCleanMedia(once->content, other).ok()) << name;
  }
  const std::string photo = test::photoOfColour(5, 3000);
  EXPECT_EQ(checkCleanMedia(photo, v1::MEDIA_TYPE_PNG), absl::OkStatus());
}

// What other people's readers make of them: ffmpeg decodes the same pictures and the same sound before and
// after, and exiftool finds nothing of place, time, maker, author or words.
class OtherReaders : public testing::Test {
 protected:
  static std::string answerOf(const std::string& command) {
    std::string answer;
    FILE* const pipe = popen((command + " 2>&1").c_str(), "r");
    std::array<char, 4096> buffer{};
    while (const std::size_t got = fread(buffer.data(), 1, buffer.size(), pipe))
      answer.append(buffer.data(), got);
    return pclose(pipe) == 0 ? answer : "failed: " + answer;
  }
  std::string put(const std::string& name, const std::string& content) {
    std::string path = m_folder.path(name);
    std::ofstream(path, std::ios::binary) << content;
    return path;
  }
  test::TempFolder m_folder;
};

TEST_F(OtherReaders, ffmpegSeesTheSamePictures) {
  if (std::system("ffmpeg -version > /dev/null 2>&1") != 0)
    GTEST_SKIP() << "skipped: ffmpeg is not installed";
  for (const char* name : kFiles) {
    const auto clean = cleanMedia(test::mediaFile(name));
    ASSERT_TRUE(clean.ok()) << name;
    const std::string frames = " -map 0:v -map 0:a? -f framemd5 -";
    const std::string tool = "ffmpeg -v error -xerror -i ";
    const std::string before = answerOf(tool + put(name, test::mediaFile(name)) + frames);
    const std::string after = answerOf(tool + put(std::string("clean.") + name, clean->content) + frames);
    EXPECT_EQ(before.rfind("failed", 0), std::string::npos) << before;
    EXPECT_EQ(after, before) << name;
  }
}

TEST_F(OtherReaders, exiftoolFindsNothingThatTells) {
  if (std::system("exiftool -ver > /dev/null 2>&1") != 0)
    GTEST_SKIP() << "skipped: exiftool is not installed";
  for (const char* name : kFiles) {
    const auto clean = cleanMedia(test::mediaFile(name));
    ASSERT_TRUE(clean.ok()) << name;
    // Of what is in the file itself, not of the file; numbers raw, so that a zero date is an empty one.
    const std::string tool =
        "exiftool -a -G1 -s -ee -u --System:all --ExifTool:all --File:all -api QuickTimeUTC ";
    const std::string before = answerOf(tool + put(name, test::mediaFile(name)));
    EXPECT_NE(before.find("Canary"), std::string::npos) << name << before;
    const std::string after = answerOf(tool + put(std::string("clean.") + name, clean->content));
    for (const char* telling :
         {"Canary", "GPS", "52 deg", "2024", "Exif", "XMP", "Comment", "Title", "Artist", "Make"}) {
      // A clip says how long and how large it is; nothing else in it has these digits.
      EXPECT_EQ(after.find(telling), std::string::npos) << name << " " << telling << "\n" << after;
    }
  }
}

TEST(MediaClean, aTrackThatIsNeitherPictureNorSoundGoesWithItsSamples) {
  const std::string before = test::mediaFile("tagged.mov");
  // The third track's only sample: 01:02:03:04 at ten pictures a second, counted (QuickTime File Format,
  // timecode).
  constexpr std::uint32_t kPictures = ((1 * 60 + 2) * 60 + 3) * 10 + 4;
  std::string sample;
  for (int shift = 24; shift >= 0; shift -= 8)
    sample += static_cast<char>(kPictures >> static_cast<unsigned>(shift));
  ASSERT_NE(before.find(sample), std::string::npos);
  const auto clean = cleanMedia(before);
  ASSERT_TRUE(clean.ok());
  EXPECT_EQ(clean->content.find(sample), std::string::npos);
  EXPECT_EQ(clean->content.find("tmcd"), std::string::npos);
}

TEST(MediaClean, whatIsNoPhotoAndNoClipIsRefusedInPlainWords) {
  const auto wordsFor = [](const std::string& content) {
    return std::string(cleanMedia(content).status().message());
  };
  EXPECT_NE(wordsFor("").find("neither a photo"), std::string::npos);
  EXPECT_NE(wordsFor("GIF89a etc.").find("neither a photo"), std::string::npos);
  EXPECT_NE(wordsFor("<svg/>").find("neither a photo"), std::string::npos);
  const std::string heic = std::string("\0\0\0\x18", 4) + "ftypheic" + std::string(12, '\0');
  EXPECT_NE(wordsFor(heic).find("neither a photo"), std::string::npos);
  EXPECT_NE(wordsFor("\xFF\xD8\xFF").find("cut short"), std::string::npos);
  EXPECT_NE(wordsFor("\x1A\x45\xDF\xA3").find("cut short"), std::string::npos);
  std::string large = test::photoOfColour(1, (1U << 20U) + 1000);
  EXPECT_NE(wordsFor(large).find("1 MiB"), std::string::npos);
  std::string matroska = test::mediaFile("tagged.webm");
  matroska.replace(matroska.find("webm"), 4, "matr");
  EXPECT_NE(wordsFor(matroska).find("not WebM"), std::string::npos);
  std::string endless = test::photoOfColour(1);
  endless[18] = '\x7F';  // the width's third byte: 32,000 pixels
  EXPECT_NE(wordsFor(endless).find("8192 pixels"), std::string::npos);
}

TEST(MediaClean, theNameOfACodecThatIsNotTakenIsRefused) {
  std::string clip = test::mediaFile("tagged.mp4");
  std::size_t at = clip.find("avc1", clip.find("stsd"));
  ASSERT_NE(at, std::string::npos);
  clip.replace(at, 4, "encv");
  EXPECT_FALSE(cleanMedia(clip).ok());
  std::string webm = test::mediaFile("tagged.webm");
  webm.replace(webm.find("A_OPUS"), 6, "A_AACX");
  EXPECT_FALSE(cleanMedia(webm).ok());
}

TEST(MediaClean, whatIsCutAnywhereIsRefusedOrClean) {
  for (const char* name : kFiles) {
    const std::string whole = test::mediaFile(name);
    const std::string start = cleanMedia(whole)->content;
    for (std::size_t size = 0; size < whole.size(); ++size) {
      const auto clean = cleanMedia(whole.substr(0, size));
      if (clean.ok()) {
        EXPECT_EQ(checkCleanMedia(clean->content, clean->type), absl::OkStatus()) << name << size;
      }
    }
    EXPECT_FALSE(cleanMedia(whole.substr(0, whole.size() / 2)).ok()) << name;
  }
}

TEST(MediaClean, aChangedByteAnywhereLeavesItCleanOrRefused) {
  std::mt19937_64 random(20261129);
  for (const char* name : kFiles) {
    const std::string whole = test::mediaFile(name);
    for (int i = 0; i < 4000; ++i) {
      std::string changed = whole;
      const std::size_t head = i % 2 == 0 ? whole.size() : std::min<std::size_t>(whole.size(), 900);
      changed[random() % head] = static_cast<char>(random());
      const auto clean = cleanMedia(changed);
      if (clean.ok()) {
        ASSERT_EQ(checkCleanMedia(clean->content, clean->type), absl::OkStatus()) << name << i;
      }
    }
  }
}

}  // namespace
}  // namespace newel
