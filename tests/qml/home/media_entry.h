// An entry with a therapist's photo and clip, from tests/data/media, cleaned as at the desk.
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "core/records/media_type.h"
#include "sync/common/media_clean.h"
#include "tests/qml/home/paper_clinic.h"
#include "tests/sync/common/test_media.h"

namespace newel::tests {

inline constexpr char kPhotoWords[] = "Your chair stands against the wall. Both feet are flat on the floor.";
inline constexpr char kClipWords[] = "How you lean forward before you rise.";
inline constexpr char kCaptions[] = "Slide to the edge. Nose over toes. Now push with both legs.";

struct MediaOfEntry {
  std::string photo;
  std::string clip;
};

// Names both in `entry` and puts them on the counter. With an empty name it is one that never comes.
inline MediaOfEntry putMedia(PaperClinic& clinic, v1::Entry& entry, const std::string& photo,
                             const std::string& clip) {
  const auto content = [&clinic](const std::string& name, const char* otherwise) {
    const auto clean = cleanMedia(test::mediaFile(name.empty() ? otherwise : name));
    EXPECT_TRUE(clean.ok()) << clean.status();
    if (!name.empty()) clinic.putMedia(clean->content);
    return clean->content;
  };
  MediaOfEntry media{content(photo, "tagged.jpg"), content(clip, "tagged.mp4")};
  *entry.mutable_photo() = test::refTo(media.photo, kPhotoWords);
  *entry.mutable_clip() = test::refTo(media.clip, kClipWords);
  entry.mutable_clip()->set_captions(kCaptions);
  return media;
}

}  // namespace newel::tests
