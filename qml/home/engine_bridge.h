// Carries the engine's news from its own thread to the UI thread as signals. Holds no state but one flag.
#pragma once

#include <QtCore/QObject>

#include "sync/home/home_engine.h"

namespace newel::home {

class EngineBridge : public QObject, public HomeEngine::Listener {
  Q_OBJECT

 public:
  using QObject::QObject;

  // While the engine is busy on another thread (pairing), news wait: no model may ask it anything then.
  void holdBack(bool on);
  bool heldBack() const { return m_held_back; }

  // Engine's thread.
  void stateChanged() override;
  void programmeChanged() override;
  void holdOrderArrived(const v1::HoldOrder& order) override;
  void messageArrived(const v1::Message& message) override;

 signals:                                            // UI thread
  void news();                                       // anything that a page may show has changed
  void holdCame(const newel::v1::HoldOrder& order);  // before the news() about it

 private:
  void tell();

  bool m_held_back = false;
  bool m_waiting = false;
};

}  // namespace newel::home
