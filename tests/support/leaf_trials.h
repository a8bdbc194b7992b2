// Trials on whole printed books: a leaf taken out, numbers blanked or raised, books foliated,
// neighbouring leaves exchanged; and whether the diagnosis names what was done, in its place.
#pragma once

#include <cstddef>
#include <random>
#include <string>
#include <vector>

#include "core/catchwords/leaf_diagnosis.h"
#include "core/catchwords/page_table.h"

namespace headcap::tests {

struct TrialBook {
    std::string name;
    std::vector<core::PageRow> pages;
    std::size_t firstRecto = 0; // 0 or 1: where signature marks mostly stand
    // Rectos of leaves with text on both sides, the first and last left out; and of those that
    // bear printed numbers and follow one that does.
    std::vector<std::size_t> printed;
    std::vector<std::size_t> numbered;
};

[[nodiscard]] std::vector<TrialBook> trialBooks(const core::TextTable& table);

enum class Arm {
    leafOut,           // as printed
    leafOutUnnumbered, // all numbers blanked
    numbersRaised,     // by 2 from a leaf on
    leafOutFoliated,   // one number a leaf, on rectos
    leavesExchanged,
};

struct Trial {
    std::vector<core::PageRow> pages;
    std::vector<std::string> texts; // numbers written for the trial
    Arm arm = Arm::leafOut;
    int afterRow = 0; // the last row before the place, from 1
};

[[nodiscard]] Trial makeTrial(const TrialBook& book, Arm arm, bool numberedOnly,
                              std::mt19937& random);
[[nodiscard]] std::vector<core::PageRow> withoutNumbers(std::vector<core::PageRow> pages);

struct TrialResult {
    bool named = false;   // the right kind in the right place
    bool lacking = false; // a leaf lacking was found near the place
};

[[nodiscard]] TrialResult judge(const Trial& trial, const core::LeafDiagnosis& diagnosis);
[[nodiscard]] int lackingFindings(const core::LeafDiagnosis& diagnosis);

} // namespace headcap::tests
