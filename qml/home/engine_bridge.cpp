#include "qml/home/engine_bridge.h"

#include <utility>

namespace newel::home {

void EngineBridge::holdBack(bool on) {
  m_held_back = on;
  if (!on && std::exchange(m_waiting, false)) emit news();
}

void EngineBridge::tell() {
  if (m_held_back) {
    m_waiting = true;
  } else {
    emit news();
  }
}

void EngineBridge::stateChanged() {
  QMetaObject::invokeMethod(
      this, [this] { tell(); }, Qt::QueuedConnection);
}

void EngineBridge::programmeChanged() {
  QMetaObject::invokeMethod(
      this, [this] { tell(); }, Qt::QueuedConnection);
}

void EngineBridge::holdOrderArrived(const v1::HoldOrder& order) {
  QMetaObject::invokeMethod(
      this,
      [this, order] {
        emit holdCame(order);
        tell();
      },
      Qt::QueuedConnection);
}

void EngineBridge::messageArrived(const v1::Message&) {
  QMetaObject::invokeMethod(
      this, [this] { tell(); }, Qt::QueuedConnection);
}

}  // namespace newel::home
