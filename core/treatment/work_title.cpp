#include "core/treatment/work_title.h"

#include <algorithm>

#include "core/values/small_letters.h"

namespace headcap::core {
namespace {

bool isLetter(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (smallLetter(c) >= 'a' && smallLetter(c) <= 'z') || (c >= '0' && c <= '9') ||
           byte >= 0x80;
}

// As a word of it or several, letters of any case.
bool names(std::string_view work, std::string_view place) {
    const auto isSame = [](char a, char b) { return smallLetter(a) == smallLetter(b); };
    for (auto at = work.begin();;) {
        at = std::search(at, work.end(), place.begin(), place.end(), isSame);
        if (at == work.end()) {
            return false;
        }
        const auto after = at + static_cast<std::ptrdiff_t>(place.size());
        if ((at == work.begin() || !isLetter(at[-1])) &&
            (after == work.end() || !isLetter(*after))) {
            return true;
        }
        ++at;
    }
}

} // namespace

std::string workTitle(const std::string& work, const std::string& place) {
    if (work.empty() || place.empty()) {
        return work.empty() ? place : work;
    }
    return names(work, place) ? work : work + ", " + place;
}

} // namespace headcap::core
