// The diagnosis of whole printed books against what was done to them: for each arm how often the
// fault is named in its place, and how many leaves are called lacking in books left alone.
// `--list` prints what was missed and every leaf called lacking in an untouched book;
// `--findings BOOK` prints all findings of one book.

#include <algorithm>
#include <ctime>
#include <random>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include <fmt/format.h>

#include "core/catchwords/leaf_diagnosis.h"
#include "tests/support/leaf_trials.h"
#include "tests/support/reference_file.h"

namespace headcap {
namespace {

using tests::Arm;

constexpr std::uint32_t kSeed = 1727;
constexpr int kTrialsEach = 20;

void printFindings(const core::LeafDiagnosis& diagnosis, bool lackingOnly) {
    for (const core::LeafFinding& finding : diagnosis.findings) {
        if (!lackingOnly || finding.kind == core::LeafFindingKind::leafLacking)
            fmt::print("    {:4}–{:<4} {} {} {}: {}\n", finding.afterRow, finding.beforeRow,
                       wordOf(finding.kind), finding.leaves, finding.sure ? "sure" : "doubtful",
                       finding.sentence);
    }
}

void printUntouched(const std::vector<tests::TrialBook>& books, bool numbered, bool list) {
    int lacking = 0;
    int others = 0;
    std::size_t pages = 0;
    for (const tests::TrialBook& book : books) {
        const auto rows = numbered ? book.pages : tests::withoutNumbers(book.pages);
        const auto diagnosis = core::diagnoseLeaves(rows);
        const int found = tests::lackingFindings(diagnosis);
        lacking += found;
        others += static_cast<int>(diagnosis.findings.size()) - found;
        pages += rows.size();
        if (list && found > 0) {
            fmt::print("  {}\n", book.name);
            printFindings(diagnosis, true);
        }
    }
    fmt::print("untouched, {}: {} leaves called lacking in {} pages, {:.3f} in 1,500; {} other "
               "findings\n",
               numbered ? "as printed" : "numbers blanked", lacking, pages,
               1500.0 * lacking / static_cast<double>(pages), others);
}

void printArm(const std::vector<tests::TrialBook>& books, Arm arm, std::string_view name,
              bool numberedOnly, bool list) {
    std::mt19937 random(kSeed);
    int trials = 0;
    int named = 0;
    int lacking = 0;
    for (const tests::TrialBook& book : books) {
        for (int round = 0; round < kTrialsEach; ++round) {
            const tests::Trial trial = tests::makeTrial(book, arm, numberedOnly, random);
            const auto diagnosis = core::diagnoseLeaves(trial.pages);
            const auto result = tests::judge(trial, diagnosis);
            ++trials;
            named += result.named ? 1 : 0;
            lacking += result.lacking ? 1 : 0;
            if (list && !result.named) {
                fmt::print("  {} missed after row {}\n", book.name, trial.afterRow);
                auto near = diagnosis;
                std::erase_if(near.findings, [&](const core::LeafFinding& finding) {
                    return std::abs(finding.afterRow - trial.afterRow) > 12;
                });
                printFindings(near, false);
            }
        }
    }
    fmt::print("{}, {}: {} trials, named in place {:.2f} %, called lacking {:.2f} %\n", name,
               numberedOnly ? "numbered leaves" : "any printed leaf", trials,
               100.0 * named / trials, 100.0 * lacking / trials);
}

// Processor time of books put one behind another, so that the machine's other work does not count.
void printTime(const std::vector<tests::TrialBook>& books) {
    std::vector<core::PageRow> rows;
    for (const tests::TrialBook& book : books)
        rows.insert(rows.end(), book.pages.begin(), book.pages.end());
    for (const std::size_t pages : {std::size_t{1'200}, std::size_t{4'800}, std::size_t{19'200}}) {
        const std::span<const core::PageRow> some(rows.data(), std::min(pages, rows.size()));
        double least = 1e9;
        for (int round = 0; round < 5; ++round) {
            const std::clock_t begin = std::clock();
            const auto diagnosis = core::diagnoseLeaves(some);
            const double taken = 1000.0 * static_cast<double>(std::clock() - begin) /
                                 static_cast<double>(CLOCKS_PER_SEC);
            least = std::min(least, taken);
        }
        fmt::print("{} pages: {:.1f} ms\n", some.size(), least);
    }
}

} // namespace
} // namespace headcap

int main(int argc, char** argv) {
    using namespace headcap;
    const std::string_view option = argc > 1 ? argv[1] : "";
    const std::string_view which = argc > 2 ? argv[2] : "";
    const bool list = option == "--list";
    const auto text = tests::readReference("pages.tsv");
    if (!text) {
        fmt::print(stderr, "pages.tsv is not in {}\n", HEADCAP_REFERENCE_DIR);
        return 2;
    }
    const core::TextTable table(*text);
    const auto books = tests::trialBooks(table);
    if (option == "--findings") {
        for (const tests::TrialBook& book : books) {
            if (!book.name.starts_with(which))
                continue;
            const auto diagnosis = core::diagnoseLeaves(book.pages);
            fmt::print("{}: {} ({})\n", book.name, diagnosis.formula, diagnosis.extent);
            printFindings(diagnosis, false);
        }
        return 0;
    }
    const auto wanted = [&](std::string_view arm) { return which.empty() || which == arm; };
    if (wanted("0"))
        printUntouched(books, true, list);
    if (wanted("1"))
        printUntouched(books, false, list);
    const std::pair<std::string_view, std::pair<Arm, std::string_view>> arms[] = {
        {"a", {Arm::leafOut, "a. as printed, a leaf out"}},
        {"b", {Arm::leafOutUnnumbered, "b. numbers blanked, a leaf out"}},
        {"c", {Arm::numbersRaised, "c. numbers raised by 2"}},
        {"d", {Arm::leafOutFoliated, "d. foliated, a leaf out"}},
        {"e", {Arm::leavesExchanged, "e. neighbouring leaves exchanged"}},
    };
    for (const auto& [key, arm] : arms) {
        if (!wanted(key))
            continue;
        printArm(books, arm.first, arm.second, true, list);
        printArm(books, arm.first, arm.second, false, list);
    }
    if (wanted("t"))
        printTime(books);
    return 0;
}
