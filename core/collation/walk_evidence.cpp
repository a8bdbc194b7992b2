#include "core/collation/walk_evidence.h"

#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "core/catchwords/comparison.h"
#include "core/catchwords/number_on_page.h"
#include "core/collation/finding_places.h"
#include "core/collation/folds.h"

namespace headcap::core {
namespace {

std::optional<int> valueOf(const std::string& printed) {
    const auto number = readNumberOnPage(printed);
    return number ? std::optional{number->value} : std::nullopt;
}

std::optional<int> ahead(const std::string& printed, const std::optional<LaidNumber>& laid) {
    const auto value = valueOf(printed);
    return value && laid ? std::optional{*value - laid->number.value} : std::nullopt;
}

LeafNumbers numbersAt(const LaidBook& book, std::size_t leaf) {
    return leaf < book.numbers.size() ? book.numbers[leaf] : LeafNumbers{};
}

bool sameSequence(const std::optional<LaidNumber>& a, const std::optional<LaidNumber>& b) {
    return a && b && a->number.style == b->number.style &&
           a->number.sequence == b->number.sequence && a->folio == b->folio;
}

void move(std::optional<LaidNumber>& number, int by) {
    if (number) {
        number->number.value += by;
    }
}

// Where the leaf that bears this mark belongs.
std::optional<std::size_t> leafSigned(const LaidBook& book, const std::string& mark) {
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        const LeafExpectation expected{.ref = leafText(book, i), .mark = leafText(book, i)};
        if (!mark.empty() && !differenceOf({.signature = mark}, expected).signature) {
            return i;
        }
    }
    return std::nullopt;
}

std::optional<std::size_t> leafNumbered(const LaidBook& book, int value, std::size_t near) {
    const auto model = numbersAt(book, near).recto;
    for (std::size_t i = 0; i < book.leaves.size(); ++i) {
        const auto recto = numbersAt(book, i).recto;
        if (sameSequence(recto, model) && recto->number.value == value) {
            return i;
        }
    }
    return std::nullopt;
}

std::optional<bool> textRunsOn(const WalkState& state, std::size_t leaf,
                               const LeafReading& reading) {
    if (reading.runsOn != TextRunsOn::notRead) {
        return reading.runsOn == TextRunsOn::yes;
    }
    const std::string due = catchwordDue(state, leaf);
    if (due.empty() || reading.firstWords.empty()) {
        return std::nullopt;
    }
    const auto met = compareCatchword({.catchword = due, .nextFirstWords = reading.firstWords});
    if (met.verdict == CatchwordVerdict::doubtful) {
        return std::nullopt;
    }
    return met.verdict != CatchwordVerdict::different;
}

std::string carriedBy(const LaidBook& book, std::size_t first, int count) {
    std::vector<std::size_t> leaves;
    for (int i = 0; i < count && first + static_cast<std::size_t>(i) < book.leaves.size(); ++i) {
        leaves.push_back(first + static_cast<std::size_t>(i));
    }
    if (leaves.empty()) {
        return {};
    }
    std::string text = toText(toLeafSet(book, leaves));
    const LeafNumbers from = numbersAt(book, leaves.front());
    const LeafNumbers to = numbersAt(book, leaves.back());
    if (from.recto && from.recto->folio && to.recto) {
        text += count == 1 ? fmt::format(" (f. {})", toText(*from.recto))
                           : fmt::format(" (ff. {}–{})", toText(*from.recto), toText(*to.recto));
    } else if (from.recto && to.verso) {
        text += fmt::format(" (pp. {}–{})", toText(*from.recto), toText(*to.verso));
    }
    return text;
}

// How many of the leaves that would lack from `leaf` on the folds say are gone; none where they say
// nothing. Leaves lacking elsewhere in the gathering are accounted for there.
std::optional<int> foldShort(const LaidBook& book, const WalkState& state,
                             const std::vector<CollationFinding>& findings, std::size_t leaf,
                             int wouldLack) {
    const auto gone = leavesFound(book, findings, CollationKind::lacking);
    auto loose = leavesFound(book, findings, CollationKind::loose);
    const auto off = leavesFound(book, findings, CollationKind::detached);
    loose.insert(loose.end(), off.begin(), off.end());
    const auto isIn = [](const std::vector<std::size_t>& leaves, std::size_t one) {
        return std::ranges::find(leaves, one) != leaves.end();
    };
    // More than the rest of the gathering is no matter of its folds.
    const std::size_t last = lastOfGathering(book, leaf);
    const auto count = static_cast<std::size_t>(wouldLack);
    const std::size_t end = leaf + count <= last + 1 ? leaf + count : leaf;
    int isShort = 0;
    for (std::size_t i = leaf; i < end; ++i) {
        const auto other = book.leaves[i].conjugate;
        const bool isHalfLoose = other && (*other < leaf || *other >= end) && isIn(loose, *other);
        isShort += isIn(gone, i) || isHalfLoose ? 1 : 0;
    }
    if (isShort > 0) {
        return isShort;
    }
    const auto isWhole = [&](std::size_t i) {
        return state.leaves[i].looked != Looked::no && !isIn(gone, i) && !isIn(loose, i);
    };
    for (std::size_t i = firstOfGathering(book, leaf); i <= last; ++i) {
        if (i != leaf && !isWhole(i)) {
            return std::nullopt;
        }
    }
    return 0;
}

} // namespace

int numberShift(const LaidBook& book, const std::vector<WalkEntry>& entries, std::size_t leaf) {
    const WalkState state = stateOf(book, entries);
    const auto here = numbersAt(book, leaf).recto;
    std::optional<int> rectoBefore;
    for (std::size_t back = leaf; back-- > 0;) {
        const LeafNumbers laid = numbersAt(book, back);
        if (!sameSequence(laid.recto, here)) {
            return 0;
        }
        const WalkEntry* read = state.leaves[back].read;
        if (read == nullptr || (read->rectoNumber.empty() && read->versoNumber.empty())) {
            continue;
        }
        const auto recto = ahead(read->rectoNumber, laid.recto);
        const auto verso = ahead(read->versoNumber, laid.verso);
        const bool both = recto && verso && *recto == *verso;
        if (recto && (both || recto == rectoBefore)) {
            return *recto;
        }
        rectoBefore = recto ? recto : rectoBefore;
    }
    return 0;
}

LeafExpectation expectationInWalk(const WalkedBook& walked, const std::vector<WalkEntry>& entries,
                                  std::size_t leaf) {
    LeafExpectation out = expectationAt(walked.book, walked.format, leaf);
    const int shift = numberShift(walked.book, entries, leaf);
    LeafNumbers numbers = numbersAt(walked.book, leaf);
    move(numbers.recto, shift);
    move(numbers.verso, shift);
    out.recto = numbers.recto ? toText(*numbers.recto) : out.recto;
    out.verso = numbers.verso ? toText(*numbers.verso) : out.verso;
    return out;
}

std::string catchwordDue(const WalkState& state, std::size_t leaf) {
    const WalkEntry* before = leaf > 0 ? state.leaves[leaf - 1].read : nullptr;
    return before == nullptr ? std::string{} : before->versoCatchword;
}

BreakEvidence evidenceAt(const WalkedBook& walked, const std::vector<WalkEntry>& entries,
                         const std::vector<CollationFinding>& findings, std::size_t leaf,
                         const LeafReading& reading) {
    const LaidBook& book = walked.book;
    const WalkState state = stateOf(book, entries);
    BreakEvidence at;
    at.before = leaf > 0 ? leafText(book, leaf - 1) : std::string{};
    at.after = leafText(book, leaf);
    at.textRunsOn = textRunsOn(state, leaf, reading);

    const LeafNumbers laid = numbersAt(book, leaf);
    const int shift = numberShift(book, entries, leaf);
    const int unit = laid.recto && laid.recto->folio ? 1 : 2;
    const auto recto = ahead(reading.recto, laid.recto);
    const auto number = recto ? recto : ahead(reading.verso, laid.verso);
    if (number && (*number - shift) % unit == 0) {
        at.numbersAhead = (*number - shift) / unit;
    }
    std::optional<std::size_t> belongs;
    if (!reading.signature.empty()) {
        const auto marked = leafSigned(book, reading.signature);
        belongs = marked;
        at.signaturesAhead = marked ? static_cast<int>(*marked) - static_cast<int>(leaf) : 1;
    }
    if (recto && !belongs) {
        belongs = leafNumbered(book, *valueOf(reading.recto) - shift, leaf);
    }
    if (belongs && *belongs < leaf) {
        const bool wasThere =
            state.leaves[*belongs].looked != Looked::no && state.leaves[*belongs].asExpected;
        at.isRepeated = wasThere;
        if (!wasThere && *belongs > 0) {
            at.belongsAfter = leafText(book, *belongs - 1);
        }
    }
    const int lost = std::max(at.numbersAhead.value_or(0), at.signaturesAhead.value_or(0));
    if (at.numbersAhead.value_or(0) != 0 || at.signaturesAhead.value_or(0) != 0 ||
        at.textRunsOn == false) {
        at.foldShort = foldShort(walked.book, state, findings, leaf, std::max(lost, 1));
    }
    if (lost > 0) {
        at.carries = carriedBy(book, leaf, lost);
        at.after =
            leafText(book, std::min(leaf + static_cast<std::size_t>(lost), book.leaves.size() - 1));
    }
    return at;
}

} // namespace headcap::core
