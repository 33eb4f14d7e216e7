#include <QtCore/QByteArray>

#include "platform/sound.h"

namespace newel::platform {

// The role for which PulseAudio's module-role-ducking and module-role-cork act as they come; libpulse puts it
// on every stream of this process. Nothing is to be undone by us: no volume of another's is touched.
void nameOurSound() { qputenv("PULSE_PROP_media.role", "phone"); }

}  // namespace newel::platform
