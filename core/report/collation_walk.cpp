#include <algorithm>

#include <fmt/format.h>

#include "core/collation/bound_order.h"
#include "core/collation/copy_records.h"
#include "core/collation/walk_differences.h"
#include "core/report/sections.h"
#include "core/report/trade_words.h"
#include "core/report/writing.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

std::string leavesText(const LaidBook& book, const std::vector<std::size_t>& leaves) {
    return leaves.empty() ? "none" : toText(toLeafSet(book, leaves));
}

TableRow walkRow(const JobFile& file, const Walk& walk, const Clock& clock) {
    const auto entries = entriesOf(walk, file.walkEntries);
    const std::string who = personName(file, walk.who);
    const std::string when = daysOf(entries, walk, clock);
    const std::string head = placeIn(file, walk.part, who.empty() ? "by whom is not said" : who);
    if (walk.kind == WalkKind::inferring) {
        return row({told({joined({head, when}, ", "), walk.note}),
                    counted(entries.size(), "leaf", "leaves") + " as they are bound", "none",
                    "the make-up was inferred"},
                   refOf(walk.id));
    }
    const LaidBook book = walkedBook(walk.formula, walk.extent).book;
    const WalkCoverage seen = coverageOf({stateOf(book, entries)}, book.leaves.size());
    return row({told({joined({head, when}, ", "), walk.note}), leavesText(book, seen.singly),
                leavesText(book, seen.whole), leavesText(book, seen.notLooked)},
               refOf(walk.id));
}

// Calls with each volume's collation and its records.
template <class Visit>
void eachCopy(const JobFile& file, Visit visit) {
    for (const Collation& collation : file.collations) {
        visit(collation, copyOf(file, collation.part, collation));
    }
}

List listOf(const std::vector<std::string>& sentences) {
    List list;
    for (const std::string& one : sentences) {
        list.items.push_back({plain(one), std::nullopt});
    }
    return list;
}

std::string plateText(const CalledPlate& plate) {
    const std::string at = plate.foundAt.empty() ? "" : "at " + plate.foundAt;
    return told({joined({std::string{wordsFor(plate.presence)}, at}, ", "), plate.note});
}

std::string toldText(const Notice& notice) {
    return fmt::format("Told {}{}{}", dayText(notice.onDay),
                       notice.toldTo.empty() ? "" : ", " + notice.toldTo,
                       notice.answer.empty() ? "" : ": " + notice.answer);
}

} // namespace

void addWalks(Section& section, const Context& at) {
    Table walks{{{"Gone through by", 4},
                 {"Leaf by leaf", 4},
                 {"Gatherings passed whole", 4},
                 {"Not looked at", 3}},
                {}};
    for (const Walk& walk : at.file.walks) {
        walks.rows.push_back(walkRow(at.file, walk, at.clock));
    }
    section.blocks.emplace_back(Subheading{"How the leaves were gone through"});
    const bool isSaidAbove = std::ranges::any_of(
        at.file.collations, [](const Collation& one) { return !one.method.empty(); });
    addOr(section, std::move(walks),
          isSaidAbove ? "It was not noted leaf by leaf; how it was established is said above."
                      : "The record does not say that they were gone through one by one.");
    std::vector<std::string> apart;
    eachCopy(at.file, [&](const Collation&, const CopyRecords& copy) {
        for (std::string& one : walkDifferences(copy)) {
            apart.push_back(std::move(one));
        }
    });
    if (!apart.empty()) {
        section.blocks.emplace_back(Paragraph{plain("Two who went through them do not agree:")});
        section.blocks.emplace_back(listOf(apart));
    }
}

void addOrder(Section& section, const Context& at) {
    std::vector<std::string> moves;
    eachCopy(at.file, [&](const Collation& collation, const CopyRecords& copy) {
        const LaidBook book = walkedBook(copy.formula, copy.extent).book;
        const std::string said = sentenceOf(book, movesFor(book, copy.findings));
        if (!said.empty()) {
            moves.push_back(placeIn(at.file, collation.part, said));
        }
    });
    const bool isMisbound = std::ranges::count(at.file.collationFindings, CollationKind::misbound,
                                               &CollationFinding::kind) > 0;
    if (!moves.empty()) {
        section.blocks.emplace_back(Subheading{"Leaves bound out of their place"});
    }
    addOr(section, listOf(moves),
          isMisbound ? "What is misbound is named above; where its leaves belong is not said so "
                       "that the moves can be given."
                     : "No leaf was found bound out of its place.");
}

void addPlates(Section& section, const Context& at) {
    Table plates{{{"Plate", 4}, {"Belongs", 3}, {"Called for by", 3}, {"In this copy", 4}}, {}};
    for (const CalledPlate& plate : at.file.plates) {
        plates.rows.push_back(
            row({placeIn(at.file, plate.part, plate.name),
                 plate.belongsAt.empty() ? "not said" : plate.belongsAt,
                 plate.source.empty() ? "not said" : plate.source, plateText(plate)},
                refOf(plate.id)));
    }
    if (!plates.rows.empty()) {
        section.blocks.emplace_back(Subheading{"Plates called for"});
    }
    const bool isCounted = std::ranges::any_of(
        at.file.collations, [](const Collation& one) { return one.platesCalledFor > 0; });
    addOr(section, std::move(plates),
          isCounted ? "No list plate by plate was kept; the tally above counts them."
                    : "The record names no single plate that is called for.");
}

void addOwnersWord(Section& section, const Context& at) {
    std::vector<std::string> said;
    eachCopy(at.file, [&](const Collation& collation, const CopyRecords& copy) {
        if (const std::string word = wordToOwner(copy); !word.empty()) {
            said.push_back(placeIn(at.file, collation.part, word));
        }
    });
    const bool isGrave = !said.empty();
    const auto& notices = at.file.notices;
    const bool isTold = std::ranges::count(notices, NoticeSubject::collation, &Notice::subject) > 0;
    for (const Notice& notice : notices) {
        if (notice.subject == NoticeSubject::collation) {
            said.push_back(sentence(toldText(notice)));
        }
    }
    if (isGrave && !isTold) {
        said.emplace_back("The owner has not been told of it on record.");
    }
    section.blocks.emplace_back(Subheading{"The owner's word on it"});
    addOr(section, listOf(said), "The collation showed nothing that the owner had to be told.");
}

} // namespace headcap::core::report
