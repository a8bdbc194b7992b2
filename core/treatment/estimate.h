// How long it will probably take, learned from the workshop's own finished work: the minutes a
// technique took for one of what it is done to, in jobs alike in size and covering where there are
// enough of them, resampled many times over all lines of an option. Where there is no past, the
// vocabulary's usual minutes stand in, with a spread that is a house value. The same lines over the
// same past always give the same estimate.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/treatment/proposal.h"
#include "core/treatment/techniques.h"
#include "core/values/measures.h"
#include "core/values/time.h"

namespace headcap::core {

// What one finished job took for one technique, all its steps together.
struct PastWork {
    std::string technique;
    std::int64_t count = 1; // of what it was done to
    Minutes minutes{0};
    std::size_t steps = 1;
    std::optional<Length> height{}; // of the book
    std::string covering{};         // "leather"
};

struct WorkAsked {
    std::string technique;
    std::int64_t count = 1;
    Minutes said{0}; // that somebody wrote into the line; 0: nothing
    std::optional<Length> height{};
    std::string covering{};
};

enum class EstimateBasis {
    alike,      // past jobs alike in size, and in covering where it matters
    past,       // all past jobs with this technique
    few,        // fewer than three past jobs, and the vocabulary's usual minutes
    vocabulary, // the usual minutes alone
    said,       // what the line says, and nothing to compare it with
    nothing,
};

// Of one line. The middle half: half of all such work took between the two.
struct LineEstimate {
    EstimateBasis basis = EstimateBasis::nothing;
    std::size_t jobs = 0; // it rests on
    std::size_t steps = 0;
    Minutes quarter{0};
    Minutes median{0};
    Minutes threeQuarters{0};
};

struct OptionEstimate {
    std::vector<LineEstimate> lines; // as asked
    std::size_t steps = 0;           // past steps it rests on, each counted once a line
    std::size_t unknown = 0;         // lines that nothing is known of; not in the sums
    Minutes low{0};                  // one time in ten it takes less
    Minutes quarter{0};
    Minutes median{0};
    Minutes threeQuarters{0};
    Minutes high{0}; // one time in ten it takes more
};

// What the line says is less than three in four of such work took.
[[nodiscard]] bool isLessThanUsual(const ProposalLine& line, const LineEstimate& estimate);

// What the technique usually takes, for so many of what it is done to; 0 where that is not known.
[[nodiscard]] Minutes usualMinutes(const Technique& technique, std::int64_t count);

[[nodiscard]] OptionEstimate estimateOf(std::span<const WorkAsked> asked,
                                        std::span<const PastWork> past,
                                        std::span<const Technique> vocabulary = core::techniques());

// Minutes a piece, by linear interpolation between the values in order (type 7 of Hyndman and Fan,
// The American Statistician 50, 1996): what general statistics tools do by default.
[[nodiscard]] double quantileOf(std::vector<double> values, double share);

} // namespace headcap::core
