// Every reader of text over what people write, changed by chance. A few seconds for each; with
// --minutes N, N minutes in all. Needs no special compiler; reader_fuzz is the same for clang's
// fuzzer.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <random>

#include "tests/fuzz/mutator.h"
#include "tests/fuzz/reader_trials.h"

namespace headcap::fuzz {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t kMost = 4'000;
// No reader may keep a person waiting; far above what any takes, for machines are busy.
constexpr std::chrono::seconds kHang{20};

void readInTime(const Reader& reader, const std::string& text) {
    const auto begun = Clock::now();
    reader.read(text);
    if (Clock::now() - begun > kHang) {
        wrong("too slow", text);
    }
}

long long tryReader(const Reader& reader, std::chrono::milliseconds span, std::uint64_t seed) {
    Mutator mutator(seed);
    for (const char* text : reader.seeds) {
        readInTime(reader, text);
    }
    for (const std::string& extreme :
         {std::string{}, std::string(100'000, 'A'), std::string(100'000, '('),
          std::string(50'000, ' '), std::string(20'000, '\0'), std::string(50'000, '"')}) {
        readInTime(reader, extreme);
    }
    const auto end = Clock::now() + span;
    long long tried = 0;
    while (Clock::now() < end) {
        readInTime(reader, mutator.next(reader.seeds, kMost));
        ++tried;
    }
    return tried;
}

} // namespace
} // namespace headcap::fuzz

int main(int argc, char** argv) {
    using namespace headcap::fuzz;
    double minutes = 0;
    for (int i = 1; i + 1 < argc; ++i) {
        if (std::strcmp(argv[i], "--minutes") == 0) {
            minutes = std::strtod(argv[i + 1], nullptr);
        }
    }
    const auto all = readers();
    const auto each = minutes > 0 ? std::chrono::milliseconds{static_cast<long long>(
                                        minutes * 60'000 / static_cast<double>(all.size()))}
                                  : std::chrono::milliseconds{800};
    const std::uint64_t seed = minutes > 0 ? std::random_device{}() : 1612;
    std::printf("seed %llu\n", static_cast<unsigned long long>(seed));
    for (const Reader& reader : all) {
        const long long tried = tryReader(reader, each, seed);
        std::printf("%-14s %lld tried\n", reader.name, tried);
        std::fflush(stdout);
    }
    return 0;
}
