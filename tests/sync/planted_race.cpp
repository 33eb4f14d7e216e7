// Two threads, one number, no lock. The nightly command wants the thread sanitizer to find it: a checker that
// has been told to overlook too much would not.
#include <thread>

namespace {

int planted = 0;

}  // namespace

int main() {
  std::thread other([] {
    for (int i = 0; i < 1000; ++i) ++planted;
  });
  for (int i = 0; i < 1000; ++i) ++planted;
  other.join();
  return planted < 0 ? 1 : 0;
}
