// How long a trace takes over ten thousand lots and a hundred thousand movements, and over a tenth
// of that, for the ratio. Of the lot that reaches furthest; the best of several runs.
#include <algorithm>
#include <chrono>
#include <cstdio>

#include "core/materials/trace.h"
#include "tests/support/random_shelf.h"

namespace {

using namespace headcap::core;

double milliseconds(const tests::RandomShelf& r, const Id<Lot>& lot, std::size_t& found) {
    const auto start = std::chrono::steady_clock::now();
    const auto trace = traceLot(r.all, lot);
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
    found = trace->lots.size();
    return took.count();
}

double worst(const tests::ShelfSizes& sizes) {
    const tests::RandomShelf r{31, sizes};
    double longest = 0;
    std::size_t most = 0;
    // The oldest lots reach furthest.
    for (std::size_t i = 0; i < 10; ++i) {
        double best = 1e12;
        std::size_t found = 0;
        for (int run = 0; run < 5; ++run) {
            best = std::min(best, milliseconds(r, r.all.lots[i].id, found));
        }
        longest = std::max(longest, best);
        most = std::max(most, found);
    }
    std::printf("%zu lots, %zu movements, at most %zu lots reached: %.1f ms\n", r.all.lots.size(),
                r.shelf.ledger.size(), most, longest);
    return longest;
}

} // namespace

int main() {
    const double tenth = worst({.lots = 1'000, .jobs = 200, .uses = 7'500});
    const double whole = worst({.lots = 10'000, .jobs = 2'000, .uses = 75'000});
    std::printf("ratio %.1f\n", whole / tenth);
    return whole < 50 && whole / tenth < 25 ? 0 : 1;
}
