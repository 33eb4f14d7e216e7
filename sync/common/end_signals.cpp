#include "sync/common/end_signals.h"

#include <csignal>

namespace newel {
namespace {

sigset_t endSignals() {
  sigset_t signals;
  sigemptyset(&signals);
  sigaddset(&signals, SIGINT);
  sigaddset(&signals, SIGTERM);
  return signals;
}

}  // namespace

void holdEndSignals() {
  const sigset_t signals = endSignals();
  pthread_sigmask(SIG_BLOCK, &signals, nullptr);
}

void waitForEndSignal() {
  const sigset_t signals = endSignals();
  int which = 0;
  sigwait(&signals, &which);
}

bool endSignalCame() {
  sigset_t waiting;
  sigemptyset(&waiting);
  sigpending(&waiting);
  return sigismember(&waiting, SIGINT) == 1 || sigismember(&waiting, SIGTERM) == 1;
}

}  // namespace newel
