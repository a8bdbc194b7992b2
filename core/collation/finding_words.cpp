#include "core/collation/finding_words.h"

#include <array>

#include <fmt/format.h>

#include "core/collation/finding_places.h"

namespace headcap::core {
namespace {

// What a finding comes to in a sentence; {} is the leaves.
constexpr std::array<std::string_view, 17> kSaid{"lacks {}",
                                                 "{} loose",
                                                 "{} detached",
                                                 "{} misbound",
                                                 "{} bound in twice",
                                                 "{} cancelled",
                                                 "{} inserted",
                                                 "{} supplied from another copy",
                                                 "{} in facsimile",
                                                 "{} misnumbered",
                                                 "{} missigned",
                                                 "{} torn with loss",
                                                 "{} torn",
                                                 "{} trimmed into the text",
                                                 "lacks the blank {}",
                                                 "a folded plate at {}",
                                                 "{}"};

// A finding that says more than its kind stands by itself.
bool isPlain(const CollationFinding& finding) {
    const bool saysWhich = finding.kind == CollationKind::foldedPlate && !finding.note.empty();
    return finding.found.empty() && finding.kind != CollationKind::other && !saysWhich;
}

std::string detailOf(const CollationFinding& finding) {
    switch (finding.kind) {
    case CollationKind::misnumbered:
    case CollationKind::missigned:
        return finding.expected.empty()
                   ? " " + finding.found
                   : fmt::format(" {} for {}", finding.found, finding.expected);
    case CollationKind::misbound:
        return finding.expected.empty()
                   ? fmt::format(" ({})", finding.found)
                   : fmt::format(" ({}; belongs {})", finding.found, finding.expected);
    case CollationKind::other:
        return finding.note.empty() ? std::string{} : ": " + finding.note;
    case CollationKind::foldedPlate:
        return fmt::format(" ({})", finding.found.empty() ? finding.note : finding.found);
    default:
        return fmt::format(" ({})", finding.found);
    }
}

std::string said(CollationKind kind, const std::string& place) {
    return fmt::format(fmt::runtime(kSaid[static_cast<std::size_t>(kind)]),
                       place.empty() ? "a leaf" : place);
}

} // namespace

std::vector<std::string> departuresOf(const LaidBook& book,
                                      const std::vector<CollationFinding>& findings) {
    std::vector<std::string> out;
    for (std::size_t at = 0; at < kSaid.size(); ++at) {
        const auto kind = static_cast<CollationKind>(at);
        std::vector<CollationFinding> plain;
        std::vector<std::string> unplaced;
        for (const CollationFinding& finding : findings) {
            if (finding.kind != kind) {
                continue;
            }
            if (!isPlain(finding)) {
                out.push_back(said(kind, finding.place) + detailOf(finding));
            } else if (leavesAt(book, finding.place).empty()) {
                unplaced.push_back(said(kind, finding.place));
            } else {
                plain.push_back(finding);
            }
        }
        if (!plain.empty()) {
            out.push_back(said(kind, toText(toLeafSet(book, leavesFound(book, plain, kind)))));
        }
        out.insert(out.end(), unplaced.begin(), unplaced.end());
    }
    return out;
}

std::string wordsOf(const CollationFinding& finding) {
    std::string kind{kSaid[static_cast<std::size_t>(finding.kind)]};
    switch (finding.kind) {
    case CollationKind::lacking:
        kind = "lacking";
        break;
    case CollationKind::blankLacking:
        kind = "the blank lacking";
        break;
    case CollationKind::foldedPlate:
        kind = "a folded plate";
        break;
    case CollationKind::other:
        return finding.note.empty() ? "something else found" : finding.note;
    default:
        kind.erase(0, std::string_view{"{} "}.size());
    }
    return isPlain(finding) ? kind : kind + detailOf(finding);
}

} // namespace headcap::core
