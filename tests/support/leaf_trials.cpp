#include "tests/support/leaf_trials.h"

#include <algorithm>
#include <array>
#include <cstdlib>

#include "core/catchwords/number_on_page.h"

namespace headcap::tests {
namespace {

bool bearsText(const core::PageRow& page) {
    return !page.firstWords.empty();
}

bool isNumbered(const TrialBook& book, std::size_t recto) {
    for (const std::size_t row : {recto, recto + 1}) {
        const auto number = core::readNumberOnPage(book.pages[row].number);
        if (!number || number->supplied)
            return false;
    }
    return true;
}

// Between printed leaves on both sides; bare plates beside the place leave it open.
bool holdsPlace(const core::LeafFinding& finding, int afterRow) {
    return finding.afterRow <= afterRow && finding.beforeRow > afterRow;
}

} // namespace

std::vector<TrialBook> trialBooks(const core::TextTable& table) {
    std::vector<TrialBook> books;
    for (auto& read : core::readPages(table)) {
        TrialBook book{std::string(read.book), std::move(read.pages), 0, {}};
        std::array<int, 2> marks{};
        for (std::size_t row = 0; row < book.pages.size(); ++row)
            marks[row % 2] += book.pages[row].signature.empty() ? 0 : 1;
        book.firstRecto = marks[1] > marks[0] ? 1 : 0;
        for (std::size_t row = book.firstRecto + 2; row + 3 < book.pages.size(); row += 2) {
            if (bearsText(book.pages[row]) && bearsText(book.pages[row + 1]))
                book.printed.push_back(row);
        }
        if (book.printed.size() > 4) {
            book.printed.erase(book.printed.begin());
            book.printed.pop_back();
        }
        for (const std::size_t row : book.printed) {
            if (isNumbered(book, row) && isNumbered(book, row - 2))
                book.numbered.push_back(row);
        }
        books.push_back(std::move(book));
    }
    return books;
}

std::vector<core::PageRow> withoutNumbers(std::vector<core::PageRow> pages) {
    for (core::PageRow& page : pages)
        page.number = {};
    return pages;
}

Trial makeTrial(const TrialBook& book, Arm arm, bool numberedOnly, std::mt19937& random) {
    Trial trial{.pages = book.pages, .arm = arm};
    const auto& leaves = numberedOnly ? book.numbered : book.printed;
    std::size_t at = leaves[random() % leaves.size()];
    while (arm == Arm::leavesExchanged && !std::ranges::binary_search(leaves, at + 2))
        at = leaves[random() % leaves.size()];
    trial.afterRow = static_cast<int>(at);
    trial.texts.reserve(book.pages.size());
    if (arm == Arm::leafOutUnnumbered)
        trial.pages = withoutNumbers(book.pages);
    if (arm == Arm::numbersRaised || arm == Arm::leafOutFoliated) {
        const std::size_t from = arm == Arm::numbersRaised ? at : 0;
        for (std::size_t row = from; row < trial.pages.size(); ++row) {
            auto& number = trial.pages[row].number;
            const auto read = core::readNumberOnPage(number);
            if (!read || read->style != core::PrintedNumerals::arabic)
                continue;
            const bool recto = row % 2 == book.firstRecto;
            const std::string open = read->supplied ? "[" : "";
            const std::string close = read->supplied ? "]" : "";
            if (arm == Arm::numbersRaised)
                trial.texts.push_back(open + std::to_string(read->value + 2) + close);
            else
                trial.texts.push_back(recto ? open + std::to_string((read->value + 1) / 2) + close
                                            : "");
            number = trial.texts.back();
        }
    }
    const auto leaf = trial.pages.begin() + static_cast<std::ptrdiff_t>(at);
    if (arm == Arm::leavesExchanged)
        std::rotate(leaf, leaf + 2, leaf + 4);
    else if (arm != Arm::numbersRaised)
        trial.pages.erase(leaf, leaf + 2);
    return trial;
}

TrialResult judge(const Trial& trial, const core::LeafDiagnosis& diagnosis) {
    using Kind = core::LeafFindingKind;
    TrialResult result;
    for (const core::LeafFinding& finding : diagnosis.findings) {
        const int off = std::abs(finding.afterRow - trial.afterRow);
        if (finding.kind == Kind::leafLacking && off <= 4)
            result.lacking = true;
        switch (trial.arm) {
        case Arm::numbersRaised:
            // The leaf may be unnumbered: then the place shows with the first number after it.
            result.named |= finding.kind == Kind::misnumbered && off <= 6;
            break;
        case Arm::leavesExchanged:
            result.named |= finding.kind == Kind::misbound && holdsPlace(finding, trial.afterRow);
            break;
        default:
            result.named |=
                finding.kind == Kind::leafLacking && holdsPlace(finding, trial.afterRow);
        }
    }
    return result;
}

int lackingFindings(const core::LeafDiagnosis& diagnosis) {
    return static_cast<int>(std::ranges::count(
        diagnosis.findings, core::LeafFindingKind::leafLacking, &core::LeafFinding::kind));
}

} // namespace headcap::tests
