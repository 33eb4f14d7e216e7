// Drives a fuzz target without libFuzzer: every file of the corpus as it is, then changed copies of them,
// from a seed that is said, until the time is over. The last input stands in a file, so that a crash leaves
// it behind.
//   <target> CORPUS [--seconds N] [--seed N] [--last FILE]
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

#include "tests/fuzz/target.h"

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kLongest = 1U << 16U;

std::vector<std::string> corpusOf(const std::string& folder) {
  std::vector<fs::path> paths;
  for (const auto& file : fs::directory_iterator(folder)) paths.push_back(file.path());
  std::sort(paths.begin(), paths.end());
  std::vector<std::string> inputs;
  for (const auto& path : paths) {
    std::ifstream stream(path, std::ios::binary);
    inputs.emplace_back(std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>());
  }
  return inputs;
}

class Mutator {
 public:
  Mutator(std::uint64_t seed, const std::vector<std::string>* corpus) : m_random(seed), m_corpus(corpus) {}

  std::string next() {
    std::string input = any();
    const std::size_t changes = 1 + below(4);
    for (std::size_t i = 0; i < changes; ++i) change(input);
    if (input.size() > kLongest) input.resize(kLongest);
    return input;
  }

 private:
  std::size_t below(std::size_t bound) { return bound == 0 ? 0 : m_random() % bound; }
  const std::string& any() { return m_corpus->at(below(m_corpus->size())); }
  char byte() {
    constexpr unsigned char kOdd[] = {0x00, 0x01, 0x7F, 0x80, 0xFF, 0x22, 0x7B, 0x0A};
    return static_cast<char>(below(2) == 0 ? kOdd[below(sizeof(kOdd))] : below(256));
  }
  void change(std::string& input) {
    const std::size_t at = below(input.size() + 1);
    switch (below(7)) {
      case 0:
        if (at < input.size()) input[at] = static_cast<char>(input[at] ^ (1 << below(8)));
        break;
      case 1:
        if (at < input.size()) input[at] = byte();
        break;
      case 2:
        input.insert(at, 1, byte());
        break;
      case 3:
        input.erase(at, 1 + below(16));
        break;
      case 4:
        input.insert(at, input.substr(below(input.size() + 1), 1 + below(64)));
        break;
      case 5: {  // the beginning of one, the end of another
        const std::string& other = any();
        input = input.substr(0, at) + other.substr(below(other.size() + 1));
        break;
      }
      default:
        input.insert(at, below(200), byte());
    }
  }

  std::mt19937_64 m_random;
  const std::vector<std::string>* m_corpus;
};

class Runner {
 public:
  explicit Runner(std::string last) : m_last(std::move(last)) {}
  void run(const std::string& input) {
    if (!m_last.empty()) std::ofstream(m_last, std::ios::binary | std::ios::trunc) << input;
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(input.data()), input.size());
    ++m_runs;
  }
  unsigned long runs() const { return m_runs; }

 private:
  const std::string m_last;
  unsigned long m_runs = 0;
};

}  // namespace

int main(int argc, char** argv) {
  if (argc < 2) {
    std::fprintf(stderr, "which corpus?\n");
    return 2;
  }
  int seconds = 1;
  std::uint64_t seed = 1;
  std::string last;
  for (int i = 2; i + 1 < argc; i += 2) {
    if (std::strcmp(argv[i], "--seconds") == 0) seconds = std::atoi(argv[i + 1]);
    if (std::strcmp(argv[i], "--seed") == 0) seed = std::strtoull(argv[i + 1], nullptr, 10);
    if (std::strcmp(argv[i], "--last") == 0) last = argv[i + 1];
  }
  const std::vector<std::string> corpus = corpusOf(argv[1]);
  if (corpus.empty()) {
    std::fprintf(stderr, "the corpus is empty: %s\n", argv[1]);
    return 2;
  }
  Runner runner(last);
  for (const auto& input : corpus) runner.run(input);
  runner.run("");
  Mutator mutator(seed, &corpus);
  const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(seconds);
  while (std::chrono::steady_clock::now() < end) runner.run(mutator.next());
  std::printf("%lu inputs, seed %llu, nothing found\n", runner.runs(), static_cast<unsigned long long>(seed));
  return 0;
}
