// The module that late_media.h loads.
#include "qml/home/late_media.h"
#include "qml/home/square_reader.h"

extern "C" __attribute__((visibility("default"))) void newelMedia(newel::home::MediaMakers* makers) {
  makers->speech = newel::platform::makeSpeech;
  makers->tones = newel::platform::makeTones;
  makers->sound_route = newel::platform::makeSoundRoute;
  makers->camera = newel::platform::makeCamera;
  makers->clip_reader = newel::parts::makeQtClipReader;
  makers->read_square = newel::home::readSquare;
}
