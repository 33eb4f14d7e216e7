// How the program's memory is kept.
#pragma once

namespace newel::platform {

// One heap for all threads in place of one for each: a program that mostly waits keeps less by some hundred
// kilobytes a thread. Once, in main, before the first thread; for programs of one person, not for the hub.
void keepOneHeap();

}  // namespace newel::platform
