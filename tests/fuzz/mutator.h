// What people write, or what a program wrote, changed by chance: bytes flipped, cut, doubled,
// strange signs put in.
#pragma once

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <random>
#include <string>

namespace headcap::fuzz {

class Mutator {
public:
    explicit Mutator(std::uint64_t seed) : m_chance(seed) {}

    // At most about `most` bytes long, or as long as the seed where that is longer.
    template <class Seeds>
    std::string next(const Seeds& seeds, std::size_t most) {
        std::string text = seeds[upTo(std::size(seeds))];
        for (std::size_t n = upTo(8); n > 0 && text.size() < most; --n) {
            change(text, seeds);
        }
        return text;
    }
    // Of a file of fixed places: bytes written over, a stretch set to one value, the end cut off.
    std::string written(const std::string& seed) {
        std::string bytes = seed;
        for (std::size_t n = 1 + upTo(12); n > 0 && !bytes.empty(); --n) {
            const std::size_t at = upTo(bytes.size());
            switch (upTo(5)) {
            case 0:
                bytes.resize(at);
                break;
            case 1:
                for (std::size_t i = at; i < std::min(bytes.size(), at + upTo(64)); ++i) {
                    bytes[i] = static_cast<char>(n % 2 == 0 ? 0xff : 0);
                }
                break;
            default:
                bytes[at] = static_cast<char>(upTo(256));
            }
        }
        return bytes;
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
    template <class Seeds>
    void change(std::string& text, const Seeds& seeds) {
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
            text.insert(at, seeds[upTo(std::size(seeds))]);
            break;
        default:
            for (std::size_t i = upTo(20); i > 0; --i) {
                text.insert(at, strange());
            }
        }
    }

    std::mt19937_64 m_chance;
};

} // namespace headcap::fuzz
