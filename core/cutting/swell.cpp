#include "core/cutting/swell.h"

#include <cmath>
#include <numbers>

namespace headcap::core {

namespace {

constexpr double kMicrogramsInPound = 453'592'370.0; // exact by definition of 1959
constexpr double kMetresOfNumberOne = 300 * 0.9144;
constexpr double kFlaxMicrogramsInCubicMetre = 1.5e12;

int sectionsALength(SewingWay way) {
    switch (way) {
    case SewingWay::allAlong:
        return 1;
    case SewingWay::twoOn:
        return 2;
    case SewingWay::threeOn:
        return 3;
    }
    return 1;
}

Length swellOfRepairs(const FoldRepairs& repairs) {
    return repairs.guardThickness * (2 * repairs.guardedFolds) +
           repairs.mendThickness * repairs.mends;
}

} // namespace

SpineSwell spineSwell(int sections, Length threadThickness, SewingWay way,
                      const FoldRepairs& repairs, Length bulk, const SewingHouseValues& house) {
    SpineSwell swell;
    swell.thread = Length::nanometres(threadThickness.count() * sections * house.flattenedPerMille /
                                      1'000 / sectionsALength(way));
    swell.repairs = swellOfRepairs(repairs);
    swell.total = swell.thread + swell.repairs;
    if (bulk > Length{}) {
        swell.perMille = static_cast<int>(swell.total.count() * 1'000 / bulk.count());
    }
    return swell;
}

std::optional<Length> threadWanted(int sections, SewingWay way, const FoldRepairs& repairs,
                                   Length bulk, const SewingHouseValues& house) {
    const Length wanted =
        Length::nanometres(bulk.count() / 1'000 * house.wantedPerMille) - swellOfRepairs(repairs);
    if (sections <= 0 || house.flattenedPerMille <= 0 || wanted <= Length{}) {
        return std::nullopt;
    }
    return Length::nanometres(wanted.count() * sectionsALength(way) * 1'000 /
                              house.flattenedPerMille / sections);
}

Mass massOfMetre(const LinenThread& thread) {
    const double micrograms =
        kMicrogramsInPound / (kMetresOfNumberOne * thread.number) * thread.plies;
    return Mass::micrograms(std::llround(micrograms));
}

Length thicknessOf(const LinenThread& thread, const SewingHouseValues& house) {
    const double fibre = static_cast<double>(massOfMetre(thread).count()) /
                         kFlaxMicrogramsInCubicMetre; // m², across
    const double round = fibre * 1'000 / house.fibrePerMille;
    return Length::nanometres(std::llround(std::sqrt(round * 4 / std::numbers::pi) * 1e9));
}

std::optional<std::size_t> nearestThread(const std::vector<Length>& shelf, Length wanted) {
    std::optional<std::size_t> nearest;
    std::int64_t least = 0;
    for (std::size_t i = 0; i < shelf.size(); ++i) {
        const std::int64_t off = std::abs((shelf[i] - wanted).count());
        if (!nearest || off < least) {
            nearest = i;
            least = off;
        }
    }
    return nearest;
}

} // namespace headcap::core
