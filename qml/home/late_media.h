// Voice, tones, sound route, camera, clips and the reading of squares, which come with the system's media
// libraries: large, and on most days not needed before the first practice. They are in a module beside the
// program, loaded when one of them is first asked for. Where the module cannot be loaded, each says that it
// does not work. UI thread.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "platform/camera.h"
#include "platform/sound.h"
#include "qml/parts/clip_reader.h"

namespace newel::home {

// What the module makes; of one build with the program, so that nothing else needs to be agreed on.
struct MediaMakers {
  std::unique_ptr<platform::Speech> (*speech)() = nullptr;
  std::unique_ptr<platform::Tones> (*tones)() = nullptr;
  std::unique_ptr<platform::SoundRoute> (*sound_route)() = nullptr;
  std::unique_ptr<platform::Camera> (*camera)() = nullptr;
  std::unique_ptr<parts::ClipReader> (*clip_reader)() = nullptr;
  std::optional<std::string> (*read_square)(const platform::GreyPicture&) = nullptr;
};
inline constexpr char kMediaEntry[] = "newelMedia";  // void(MediaMakers*)

std::unique_ptr<platform::Speech> makeLateSpeech();
std::unique_ptr<platform::Tones> makeLateTones();
std::unique_ptr<platform::SoundRoute> makeLateSoundRoute();
std::unique_ptr<platform::Camera> makeLateCamera();
std::unique_ptr<parts::ClipReader> makeLateClipReader();  // may be none
// As readSquare() of square_reader.h.
std::optional<std::string> readSquareLate(const platform::GreyPicture& picture);

}  // namespace newel::home
