#include "core/treatment/estimate.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace headcap::core {
namespace {

constexpr std::size_t kDraws = 4000;
constexpr std::size_t kAlikeEnough = 5; // jobs alike, before the others are left out
constexpr std::size_t kOwnEnough = 3;   // jobs, before the vocabulary is left out
constexpr double kHouseSpread = 0.4;    // of usual minutes, as a standard deviation of logarithms
constexpr double kKernel = 0.5;         // smoothing, as a share of the past's own spread
constexpr double kFewness = 0.6;        // wider by this share over the past jobs but one
constexpr std::int64_t kSizeTolerance = 4; // a quarter more or less

constexpr std::array kOfLeaves = std::to_array<std::string_view>(
    {"a leaf", "a tear", "a loss", "a fold", "a strip", "a fill", "a gathering", "a medium"});

// Where its logarithms of minutes lie, and how they are drawn again.
struct Past {
    std::vector<double> logs;
    double mean = 0;
    double noise = 0;   // of the kernel
    double stretch = 1; // of the distance from the mean
};

// Portable, so that every machine draws the same.
class Chance {
public:
    double uniform() {
        constexpr double kScale = 1.0 / 9007199254740992.0; // 2^53
        return static_cast<double>(m_engine() >> 11U) * kScale;
    }
    double normal() { // Box and Muller
        const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform()));
        return radius * std::cos(2.0 * std::numbers::pi * uniform());
    }
    std::size_t below(std::size_t n) {
        return std::min(n - 1, static_cast<std::size_t>(uniform() * static_cast<double>(n)));
    }

private:
    std::mt19937_64 m_engine{1996};
};

bool isAlikeInSize(const PastWork& work, const WorkAsked& asked) {
    if (!work.height || !asked.height) {
        return false;
    }
    const std::int64_t a = work.height->count();
    const std::int64_t b = asked.height->count();
    return std::abs(a - b) * kSizeTolerance <= b;
}

double rateOf(const PastWork& work) {
    return static_cast<double>(work.minutes.count()) / static_cast<double>(work.count);
}

std::vector<const PastWork*> chosen(std::span<const PastWork> past, const WorkAsked& asked,
                                    const Technique* technique, EstimateBasis& basis) {
    std::vector<const PastWork*> all;
    for (const PastWork& work : past) {
        if (work.technique == asked.technique && work.count > 0 && work.minutes > Minutes{0}) {
            all.push_back(&work);
        }
    }
    const bool isOfLeaves =
        technique != nullptr &&
        std::ranges::find(kOfLeaves, technique->minutesBasis) != kOfLeaves.end();
    std::vector<const PastWork*> alike;
    std::ranges::copy_if(all, std::back_inserter(alike), [&](const PastWork* work) {
        return isAlikeInSize(*work, asked) && (isOfLeaves || work->covering == asked.covering);
    });
    const bool isEnough = alike.size() >= kAlikeEnough;
    basis = isEnough ? EstimateBasis::alike : EstimateBasis::past;
    return isEnough ? alike : all;
}

// Drawn again with a little noise, so that what lies between and beyond the few past values can
// come up too, and stretched so that its spread is that of one more job to come.
Past pastOf(const std::vector<double>& rates) {
    Past past;
    for (const double rate : rates) {
        past.logs.push_back(std::log(rate));
        past.mean += past.logs.back();
    }
    const auto k = static_cast<double>(rates.size());
    past.mean /= k;
    double squares = 0;
    for (const double one : past.logs) {
        squares += (one - past.mean) * (one - past.mean);
    }
    const double spread = std::sqrt(squares / (k - 1));
    past.noise = kKernel * spread;
    past.stretch = std::sqrt(1 + 1 / k) * (1 + kFewness / (k - 1)) /
                   std::sqrt((k - 1) / k + kKernel * kKernel);
    return past;
}

double draw(const Past& past, Chance& chance) {
    const double one = past.logs[chance.below(past.logs.size())];
    const double noise = past.noise > 0 ? past.noise * chance.normal() : 0;
    return std::exp(past.mean + (one - past.mean + noise) * past.stretch);
}

Past houseValue(double minutes, double spread) {
    return {{std::log(minutes)}, std::log(minutes), spread, 1};
}

struct Known {
    LineEstimate line;
    std::optional<Past> past;
};

Known knownOf(const WorkAsked& asked, std::span<const PastWork> past,
              std::span<const Technique> vocabulary) {
    Known known;
    const auto found = std::ranges::find(vocabulary, asked.technique, &Technique::key);
    const Technique* technique = found == vocabulary.end() ? nullptr : &*found;
    const auto own = chosen(past, asked, technique, known.line.basis);
    std::vector<double> rates;
    for (const PastWork* work : own) {
        rates.push_back(rateOf(*work));
        known.line.steps += work->steps;
    }
    known.line.jobs = own.size();
    const double usual = technique == nullptr ? 0 : static_cast<double>(technique->minutes.count());
    if (rates.size() >= kOwnEnough) {
        known.past = pastOf(rates);
        return known;
    }
    if (!rates.empty()) {
        known.line.basis = EstimateBasis::few;
        double logs = usual > 0 ? std::log(usual) : 0;
        for (const double rate : rates) {
            logs += std::log(rate);
        }
        const double count = static_cast<double>(rates.size()) + (usual > 0 ? 1 : 0);
        known.past = houseValue(std::exp(logs / count), kHouseSpread);
    } else if (usual > 0) {
        known.line.basis = EstimateBasis::vocabulary;
        known.past = houseValue(usual, kHouseSpread);
    } else if (asked.said > Minutes{0}) {
        known.line.basis = EstimateBasis::said;
        const auto count = static_cast<double>(std::max<std::int64_t>(asked.count, 1));
        known.past = houseValue(static_cast<double>(asked.said.count()) / count, kHouseSpread);
    } else {
        known.line.basis = EstimateBasis::nothing;
    }
    return known;
}

Minutes rounded(double minutes) {
    return Minutes{std::llround(minutes)};
}

double sortedQuantile(const std::vector<double>& sorted, double share) {
    const double place = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const double beyond = place - static_cast<double>(below);
    const double next = sorted[std::min(below + 1, sorted.size() - 1)];
    return sorted[below] + beyond * (next - sorted[below]);
}

} // namespace

double quantileOf(std::vector<double> values, double share) {
    std::ranges::sort(values);
    return values.empty() ? 0 : sortedQuantile(values, share);
}

bool isLessThanUsual(const ProposalLine& line, const LineEstimate& estimate) {
    const bool isKnown =
        estimate.basis != EstimateBasis::nothing && estimate.basis != EstimateBasis::said;
    return isKnown && line.minutes > Minutes{0} && line.minutes < estimate.quarter;
}

Minutes usualMinutes(const Technique& technique, std::int64_t count) {
    constexpr std::int64_t kMost = 10'000; // of anything in a book
    return technique.minutes * std::clamp<std::int64_t>(count, 1, kMost);
}

OptionEstimate estimateOf(std::span<const WorkAsked> asked, std::span<const PastWork> past,
                          std::span<const Technique> vocabulary) {
    OptionEstimate estimate;
    Chance chance;
    std::vector<double> totals(kDraws, 0.0);
    for (const WorkAsked& one : asked) {
        Known known = knownOf(one, past, vocabulary);
        if (known.past) {
            const auto count = static_cast<double>(std::max<std::int64_t>(one.count, 1));
            std::vector<double> drawn;
            drawn.reserve(kDraws);
            for (double& total : totals) {
                drawn.push_back(count * draw(*known.past, chance));
                total += drawn.back();
            }
            std::ranges::sort(drawn);
            known.line.quarter = rounded(sortedQuantile(drawn, 0.25));
            known.line.median = rounded(sortedQuantile(drawn, 0.5));
            known.line.threeQuarters = rounded(sortedQuantile(drawn, 0.75));
        } else {
            ++estimate.unknown;
        }
        estimate.steps += known.line.steps;
        estimate.lines.push_back(known.line);
    }
    std::ranges::sort(totals);
    estimate.low = rounded(sortedQuantile(totals, 0.1));
    estimate.quarter = rounded(sortedQuantile(totals, 0.25));
    estimate.median = rounded(sortedQuantile(totals, 0.5));
    estimate.threeQuarters = rounded(sortedQuantile(totals, 0.75));
    estimate.high = rounded(sortedQuantile(totals, 0.9));
    return estimate;
}

} // namespace headcap::core
