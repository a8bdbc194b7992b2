// How long a formula takes to be read, expanded and laid against its extent: a 600-leaf book, and
// one of ten times the leaves, for the ratio. Prints the best of many runs, in microseconds.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>

#include <malloc.h>

#include "core/collation/collate.h"

namespace {

using headcap::core::collate;
using headcap::core::CollateAnswer;
using headcap::core::CollateRequest;

double bestMicroseconds(const CollateRequest& request, int runs) {
    double best = 1e12;
    for (int i = 0; i < runs; ++i) {
        const auto start = std::chrono::steady_clock::now();
        const CollateAnswer answer = collate(request);
        const std::chrono::duration<double, std::micro> took =
            std::chrono::steady_clock::now() - start;
        if (!answer.extent || !answer.extent->agrees) {
            std::puts("the formula and its extent should agree");
            return -1;
        }
        best = std::min(best, took.count());
    }
    return best;
}

} // namespace

int main() {
    // Memory once had is kept: what is measured is the reading, not the kernel's handing out of
    // pages.
    mallopt(M_MMAP_THRESHOLD, 64 << 20);
    mallopt(M_TRIM_THRESHOLD, 256 << 20);
    const CollateRequest small{"8vo: π⁴ A-3V⁸ 3X⁶(-3X6) a-h⁸ i⁸(i8 blank)", "[8], 1066, 142 p.",
                               ""};
    CollateRequest large{"", "", ""};
    for (int part = 0; part < 10; ++part) {
        large.formula +=
            (part == 0 ? "" : "; ") + std::string("π⁴ A-3V⁸ 3X⁶(-3X6) a-h⁸ i⁸(i8 blank)");
        large.extent += (part == 0 ? "" : "; ") + std::string("[8], 1066, 142");
    }
    large.extent += " p.";
    const double one = bestMicroseconds(small, 400);
    const double ten = bestMicroseconds(large, 60);
    std::printf("%zu leaves: %.0f us; %zu leaves: %.0f us; ratio %.1f\n",
                collate(small).leaves.size(), one, collate(large).leaves.size(), ten, ten / one);
    return one > 0 && one < 1000 && ten / one < 12 ? 0 : 1;
}
