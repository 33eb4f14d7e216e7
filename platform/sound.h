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

// Says to the sound server what ours is, before anything of ours sounds. While a tone, the voice or a clip
// has the device open, the server lowers or silences what else plays, as its owner set it up to do for a
// person who is spoken to; it gives that back by itself when ours is closed, also when this program is
// killed. Call once.
void nameOurSound();
std::unique_ptr<Speech> makeSpeech();
std::unique_ptr<Tones> makeTones();
std::unique_ptr<SoundRoute> makeSoundRoute();
// `reason`: shown by the system, for example "A practice is running".
std::unique_ptr<StayAwake> makeStayAwake(const std::string& reason);

}  // namespace newel::platform
