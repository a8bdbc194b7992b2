// The arithmetic of sewing: how much thicker a spine becomes than its fore edge, and which thread
// gives the swell that is wanted. Thread lies in the fold of every section and is pressed flat by
// some part; mends and guards at the fold add their paper. An estimate: a trial with the thread
// itself, wound round as many times as there are sections, is better.
#pragma once

#include <optional>
#include <vector>

#include "core/values/measures.h"

namespace headcap::core {

enum class SewingWay {
    allAlong, // thread the whole length of every section
    twoOn,    // two sections share each length
    threeOn,
};

// Paper added at the fold: a guard round a fold lies twice in the thickness of the spine.
struct FoldRepairs {
    int guardedFolds = 0;
    Length guardThickness;
    int mends = 0; // on one leaf
    Length mendThickness;
};

struct SewingHouseValues {
    int flattenedPerMille = 700; // what is left of the thread's thickness under the press
    // The swell that makes a good round: about a third more at the spine is taught; P. Geraty's
    // trial aims at 30 % of the bulk.
    int wantedPerMille = 300;
    // For a thread of which only its number is known: how much of its round is fibre.
    int fibrePerMille = 600;
};

struct SpineSwell {
    Length thread, repairs, total;
    int perMille = 0; // of the bulk at the fore edge
};

[[nodiscard]] SpineSwell spineSwell(int sections, Length threadThickness, SewingWay way,
                                    const FoldRepairs& repairs, Length bulk,
                                    const SewingHouseValues& house);

// The thickness of thread that would give the swell wanted, less what repairs give already. Nothing
// where repairs alone give more, or there is nothing to sew.
[[nodiscard]] std::optional<Length> threadWanted(int sections, SewingWay way,
                                                 const FoldRepairs& repairs, Length bulk,
                                                 const SewingHouseValues& house);

// A linen thread by its number: one pound of number 1 runs 300 yards, of number n 300·n yards, and
// a cord of it has so many plies (Roberts & Etherington, Bookbinding and the Conservation of
// Books, "sewing thread").
struct LinenThread {
    int number = 18;
    int plies = 3;
};

// Milligrams a metre, exact to the microgram.
[[nodiscard]] Mass massOfMetre(const LinenThread& thread);
// A round thread of that mass, of flax (1.5 g/cm³).
[[nodiscard]] Length thicknessOf(const LinenThread& thread, const SewingHouseValues& house);

// Of the threads on the shelf, by thickness, the one nearest to what is wanted. Its index.
[[nodiscard]] std::optional<std::size_t> nearestThread(const std::vector<Length>& shelf,
                                                       Length wanted);

} // namespace headcap::core
