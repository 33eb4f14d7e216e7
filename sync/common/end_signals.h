// Ctrl-C and the end of the system, for programs that must not leave anything half way: held back, and asked
// for by whoever works for long. For a program's main alone.
#pragma once

namespace newel {

// Before any thread begins, so that all of them leave the signals alone.
void holdEndSignals();
// Sleeps until one comes.
void waitForEndSignal();
// True once one came; it stays held back.
bool endSignalCame();

}  // namespace newel
