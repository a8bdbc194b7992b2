// A workshop's shelf with a chance history: lots bought and saved, mixed from earlier ones, cut
// off them, used in the steps of several jobs, some struck. Every movement is booked as the
// program books it.
#pragma once

#include <cstdint>
#include <random>

#include "core/materials/shelf.h"
#include "core/materials/trace.h"
#include "tests/support/fixed_clock.h"

namespace headcap::core::tests {

struct ShelfSizes {
    int lots = 60;
    int jobs = 6;
    int uses = 200;
    int nearest = 0; // a mix is made only of so many last lots; 0: of any
};

struct RandomShelf {
    RandomShelf(std::uint64_t seed, const ShelfSizes& sizes);
    RandomShelf(const RandomShelf&) = delete; // the keys hold on to the clock
    RandomShelf& operator=(const RandomShelf&) = delete;

    FixedClock clock;
    IdSource ids;
    Shelf shelf;
    Whereabouts all; // the same lots and parts, and where they were used

private:
    void addLot(std::mt19937_64& chance, int number, const ShelfSizes& sizes);
    void addUse(std::mt19937_64& chance);
};

} // namespace headcap::core::tests
