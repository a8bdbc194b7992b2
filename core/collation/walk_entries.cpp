#include "core/collation/walk_entries.h"

#include "core/catchwords/number_on_page.h"
#include "core/catchwords/printed_mark.h"
#include "core/collation/folds.h"

namespace headcap::core {
namespace {

WalkEntry entryAt(const Walk& walk, const LaidBook& book, std::size_t leaf, const WalkPen& pen) {
    return {.id = pen.ids.next<WalkEntry>(),
            .job = walk.job,
            .walk = walk.id,
            .position = static_cast<std::int64_t>(leaf) + 1,
            .gathering = toText(book.makeUp.gatherings[book.leaves[leaf].gathering].signature),
            .place = leafText(book, leaf),
            .at = pen.now,
            .finding = {}};
}

void take(WalkEntry& entry, const LeafReading& reading) {
    entry.signature = reading.signature;
    entry.rectoNumber = reading.recto;
    entry.versoNumber = reading.verso;
    entry.versoCatchword = reading.catchword;
    entry.rectoFirstWords = reading.firstWords;
    entry.runsOn = reading.runsOn;
}

// Brackets say that a number belongs there and is not printed.
std::string_view withoutBrackets(std::string_view text) {
    if (text.size() >= 2 && text.front() == '[' && text.back() == ']') {
        text = text.substr(1, text.size() - 2);
    }
    return text;
}

bool isOtherNumber(const std::string& read, const std::string& expected) {
    if (read.empty()) {
        return false;
    }
    const auto a = readNumberOnPage(withoutBrackets(read));
    const auto b = readNumberOnPage(withoutBrackets(expected));
    return a && b ? a->value != b->value : read != expected;
}

// A mark as pointed at, "2A3", or as printed, "Aa iij": its gathering and leaf. A repeated series
// is signed without its prefix.
struct Mark {
    std::string gathering; // empty where only the leaf was printed
    int leaf = 1;
};

std::optional<Mark> markOf(const std::string& text) {
    if (const auto ref = parseLeafRef(text)) {
        if (const auto* leaf = std::get_if<SignedLeaf>(&*ref)) {
            Signature signature = leaf->signature;
            signature.prefix.clear();
            return Mark{toText(signature), leaf->leaf};
        }
    }
    const auto printed = readPrintedMark(text);
    if (!printed) {
        return std::nullopt;
    }
    return Mark{printed->gathering ? signatureOf(*printed->gathering) : std::string{},
                printed->leaf};
}

bool isOtherMark(const std::string& read, const std::string& expected) {
    if (read.empty()) {
        return false;
    }
    const auto a = markOf(read);
    const auto b = markOf(expected);
    if (!a || !b) {
        return read != expected;
    }
    return a->leaf != b->leaf || (!a->gathering.empty() && a->gathering != b->gathering);
}

} // namespace

Walk beginWalk(const Id<Job>& job, const std::optional<Id<Item>>& part, const Collation& collation,
               WalkKind kind, const WalkPen& pen) {
    const bool isAgainst = kind == WalkKind::againstMakeUp;
    return {.id = pen.ids.next<Walk>(),
            .job = job,
            .part = part,
            .who = pen.who,
            .kind = kind,
            .startedAt = pen.now,
            .formula = isAgainst ? collation.formula : std::string{},
            .extent = isAgainst ? collation.extent : std::string{}};
}

WalkEntry leafAsExpected(const Walk& walk, const LaidBook& book, std::size_t leaf,
                         const WalkPen& pen) {
    return entryAt(walk, book, leaf, pen);
}

WalkEntry restAsExpected(const Walk& walk, const LaidBook& book, std::size_t leaf,
                         const WalkPen& pen) {
    WalkEntry entry = entryAt(walk, book, leaf, pen);
    entry.scope = WalkScope::gathering;
    return entry;
}

bool LeafReading::isEmpty() const {
    return *this == LeafReading{};
}

LeafReading readingOf(const WalkEntry& entry) {
    return {.signature = entry.signature,
            .recto = entry.rectoNumber,
            .verso = entry.versoNumber,
            .catchword = entry.versoCatchword,
            .firstWords = entry.rectoFirstWords,
            .runsOn = entry.runsOn};
}

ReadingDifference differenceOf(const LeafReading& reading, const LeafExpectation& expected) {
    const std::string mark = expected.mark.empty() ? expected.ref : expected.mark;
    return {.signature = isOtherMark(reading.signature, mark),
            .recto = isOtherNumber(reading.recto, expected.recto),
            .verso = isOtherNumber(reading.verso, expected.verso),
            .text = reading.runsOn == TextRunsOn::no};
}

WalkEntry leafRead(const Walk& walk, const LaidBook& book, std::size_t leaf,
                   const LeafReading& reading, bool asExpected, const WalkPen& pen) {
    WalkEntry entry = entryAt(walk, book, leaf, pen);
    take(entry, reading);
    entry.asExpected = asExpected;
    return entry;
}

WalkEntry nextLeafRead(const Walk& walk, std::size_t leavesBefore, const LeafReading& reading,
                       const WalkPen& pen) {
    WalkEntry entry{.id = pen.ids.next<WalkEntry>(),
                    .job = walk.job,
                    .walk = walk.id,
                    .position = static_cast<std::int64_t>(leavesBefore) + 1,
                    .at = pen.now,
                    .finding = {}};
    take(entry, reading);
    return entry;
}

WalkFinding findingAt(const Walk& walk, const LaidBook& book, std::size_t leaf, CollationKind kind,
                      const LeafExpectation& expected, const LeafReading& read,
                      const WalkPen& pen) {
    CollationFinding finding{.id = pen.ids.next<CollationFinding>(),
                             .job = walk.job,
                             .part = walk.part,
                             .kind = kind,
                             .place = leafText(book, leaf),
                             .who = pen.who};
    const ReadingDifference differs = differenceOf(read, expected);
    if (kind == CollationKind::misnumbered) {
        finding.expected =
            differs.recto || expected.verso.empty() ? expected.recto : expected.verso;
        finding.found = differs.recto ? read.recto : read.verso;
    } else if (kind == CollationKind::missigned) {
        finding.expected = expected.mark.empty() ? expected.ref : expected.mark;
        finding.found = read.signature;
    } else if (kind == CollationKind::misbound && leaf > 0) {
        finding.expected = "after " + leafText(book, leaf - 1);
    }
    WalkEntry entry = entryAt(walk, book, leaf, pen);
    take(entry, read);
    entry.asExpected = false;
    entry.finding = finding.id;
    return {std::move(finding), std::move(entry)};
}

} // namespace headcap::core
