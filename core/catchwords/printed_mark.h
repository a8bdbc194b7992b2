// A signature mark as printed at the foot of a recto: "A", "A 2", "Aa iij", ")( 4", "(b) 2",
// with or without a short title beside it ("II. Theil. A", "A Eulers Artillerie"). It names a
// gathering in a series and a leaf in the gathering. Letters are those of the printer's alphabet
// of 23: I and J, U and V are one; W, where it is used, stands between V and X.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace headcap::core {

// A place in a series of gatherings, comparable within the series. Ranks go up by two from letter
// to letter, so that W can stand in between.
struct GatheringRank {
    std::string series; // "A", "a", "(a)" for letters; the sign itself for signs: "*", ")("
    int rank = 0;

    friend bool operator==(const GatheringRank&, const GatheringRank&) = default;
};

struct PrintedMark {
    std::optional<GatheringRank> gathering; // nothing where only a figure was printed
    int leaf = 1;

    friend bool operator==(const PrintedMark&, const PrintedMark&) = default;
};

[[nodiscard]] std::optional<PrintedMark> readPrintedMark(std::string_view text);

// How many gatherings on `to` is from `from`: 1 is the next. Nothing across series.
[[nodiscard]] std::optional<int> gatheringsBetween(const GatheringRank& from,
                                                   const GatheringRank& to);
// The next gathering of the series, W left out.
[[nodiscard]] GatheringRank nextGathering(const GatheringRank& gathering);
// As bibliographers write it: A, 2A, )(, 2)(.
[[nodiscard]] std::string signatureOf(const GatheringRank& gathering);

} // namespace headcap::core
