// The real voice, tones and screen lock of this machine; made once in a program's main, on its UI thread, and
// used there. A running QGuiApplication is needed on Linux.
#pragma once

#include <memory>
#include <string>

#include "platform/sound_route.h"
#include "platform/speech.h"
#include "platform/stay_awake.h"
#include "platform/tones.h"

namespace newel::platform {

std::unique_ptr<Speech> makeSpeech();
std::unique_ptr<Tones> makeTones();
std::unique_ptr<SoundRoute> makeSoundRoute();
// `reason`: shown by the system, for example "A practice is running".
std::unique_ptr<StayAwake> makeStayAwake(const std::string& reason);

}  // namespace newel::platform
