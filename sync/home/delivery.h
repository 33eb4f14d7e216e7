// Where a record that this phone made is by now. A word of its own, so that whoever asks the engine need not
// know the outbox.
#pragma once

namespace newel {

// Still to be sent; acknowledged by the hub; refused by it for good and kept here.
enum class Delivery { Waiting, Arrived, SetAside };

}  // namespace newel
