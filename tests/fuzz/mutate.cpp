// Every reader over what people write, changed by chance: bytes flipped, cut, doubled, strange
// signs put in. A few seconds for each; with --minutes N, N minutes in all. Needs no special
// compiler; reader_fuzz is the same for clang's fuzzer.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <random>

#include "tests/fuzz/reader_trials.h"

namespace headcap::fuzz {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t kMost = 4'000;
// No reader may keep a person waiting; far above what any takes, for machines are busy.
constexpr std::chrono::seconds kHang{20};

class Mutator {
public:
    explicit Mutator(std::uint64_t seed) : m_chance(seed) {}

    std::string next(std::span<const char* const> seeds) {
        std::string text = seeds[upTo(seeds.size())];
        for (std::size_t n = upTo(8); n > 0 && text.size() < kMost; --n) {
            change(text, seeds);
        }
        return text;
    }

private:
    std::size_t upTo(std::size_t n) {
        return n == 0 ? 0 : std::uniform_int_distribution<std::size_t>{0, n - 1}(m_chance);
    }
    std::string strange() {
        static constexpr const char* kSigns[] = {
            "\0",     "\xff", "\xc3", "\xe2\x80", "ſ",  "π",  "–", "²",     "⁸",
            "\u202e", "(",    ")",    "[",        "]",  "-",  ",", ".",     "9999999999999999999",
            "-1",     "0",    "1e9",  "\t",       "\n", "\"", "{", "}",     "%",
            " ",      "½",    "A",    "z",        "¶",  "†",  "ꝑ", "\u0301"};
        return kSigns[upTo(std::size(kSigns))];
    }
    void change(std::string& text, std::span<const char* const> seeds) {
        const std::size_t at = upTo(text.size() + 1);
        switch (upTo(7)) {
        case 0:
            text.insert(at, 1, static_cast<char>(upTo(256)));
            break;
        case 1:
            text.erase(at, upTo(6));
            break;
        case 2:
            if (at < text.size()) {
                text[at] = static_cast<char>(upTo(256));
            }
            break;
        case 3:
            text.insert(at, text.substr(upTo(text.size() + 1), upTo(30)));
            break;
        case 4:
            text.insert(at, strange());
            break;
        case 5:
            text.insert(at, seeds[upTo(seeds.size())]);
            break;
        default:
            for (std::size_t i = upTo(20); i > 0; --i) {
                text.insert(at, strange());
            }
        }
    }

    std::mt19937_64 m_chance;
};

long long tryReader(const Reader& reader, std::chrono::milliseconds span, std::uint64_t seed) {
    Mutator mutator(seed);
    const auto end = Clock::now() + span;
    long long tried = 0;
    for (const char* text : reader.seeds) {
        reader.read(text);
    }
    for (const std::string& extreme :
         {std::string{}, std::string(100'000, 'A'), std::string(100'000, '('),
          std::string(50'000, ' '), std::string(20'000, '\0')}) {
        reader.read(extreme);
    }
    while (Clock::now() < end) {
        const std::string text = mutator.next(reader.seeds);
        const auto begun = Clock::now();
        reader.read(text);
        if (Clock::now() - begun > kHang) {
            wrong("too slow", text);
        }
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
