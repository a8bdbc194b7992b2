#include "core/report/receipt.h"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/custody/leaf_count.h"
#include "core/report/hazard_words.h"
#include "core/report/letterhead.h"
#include "core/report/sections.h"
#include "core/report/sign_line.h"
#include "core/report/writing.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

using report::addFact;
using report::addIf;
using report::personName;
using report::plain;

std::string said(const std::string& text) {
    return capitalised(sentence(text));
}

// As they were counted out, or as they are due.
std::string leavesText(const JobFile& file) {
    const LeafCount count = leafCountOf(file);
    return count.leaves.out ? leavesAndPlates(count.leaves.out, count.plates.out) + ", counted"
                            : capitalised(leafCountText(file));
}

std::string pieceText(const Piece& piece) {
    return piece.count > 1 ? fmt::format("{} × {}", piece.count, piece.what) : piece.what;
}

// With what became of it.
std::string returnedText(const Piece& piece) {
    const std::string what = pieceText(piece);
    return piece.returned.empty() ? what : fmt::format("{} ({})", what, piece.returned);
}

Section bookSection(const JobFile& file, const HandBack& back) {
    Section section{.key = "receipt_book", .title = "What goes back"};
    Facts facts;
    addFact(facts, "Owner", file.owner.name, refOf(file.owner.id));
    addFact(facts, "Book", report::itemTitle(file.item), refOf(file.item.id));
    addFact(facts, "Marks", said(file.item.marks), refOf(file.item.id));
    addFact(facts, "Leaves", leavesText(file));
    addFact(facts, "Its condition", said(back.condition), refOf(back.id));
    addFact(facts, "With it go", said(back.wentWith), refOf(back.id));
    for (const Piece& piece : file.pieces) {
        addFact(facts, "Came with it", returnedText(piece), refOf(piece.id));
    }
    addIf(section, std::move(facts));
    report::addHazards(section, file, report::HazardReader::owner);
    return section;
}

// On which day and by whom stands at the head of the paper.
Section handingSection(const HandBack& back) {
    Section section{.key = "receipt_handing", .title = "The return"};
    Facts facts;
    addFact(facts, "Given to", back.givenTo, refOf(back.id));
    addFact(facts, "How", back.means, refOf(back.id));
    addFact(facts, "To object by", back.objectBy ? dayText(*back.objectBy) : "", refOf(back.id));
    addFact(facts, "Next look", back.nextLookOn ? dayText(*back.nextLookOn) : "", refOf(back.id));
    addFact(facts, "Note", said(back.note), refOf(back.id));
    addIf(section, std::move(facts));
    if (back.objectBy) {
        section.blocks.emplace_back(Paragraph{
            plain(fmt::format("Whatever is not as this paper says it, please tell us by {}.",
                              dayText(*back.objectBy)))});
    }
    return section;
}

Section arrivedSection(const JobFile& file) {
    Section section{.key = "receipt_arrived", .title = "What came in"};
    Facts facts;
    addFact(facts, "Owner", file.owner.name, refOf(file.owner.id));
    addFact(facts, "Book", report::itemTitle(file.item), refOf(file.item.id));
    addFact(facts, "Binding", said(file.item.binding), refOf(file.item.id));
    addFact(facts, "Marks", said(file.item.marks), refOf(file.item.id));
    addFact(facts, "Received",
            sentence(report::told({dayText(file.job.receivedOn), file.job.receivedAs})),
            refOf(file.job.id));
    for (const Piece& piece : file.pieces) {
        addFact(facts, "With it came", pieceText(piece), refOf(piece.id));
    }
    addIf(section, std::move(facts));
    report::addHazards(section, file, report::HazardReader::owner);
    return section;
}

Section keepingSection(const JobFile& file) {
    Section section{.key = "receipt_keeping", .title = "While it is here"};
    Facts facts;
    addFact(facts, "Asked for", said(file.job.request), refOf(file.job.id));
    addFact(facts, "Value", file.job.value ? toText(*file.job.value) : "not said",
            refOf(file.job.id));
    addFact(facts, "Due", file.job.dueOn ? dayText(*file.job.dueOn) : "not agreed yet",
            refOf(file.job.id));
    if (file.workshop) {
        addFact(facts, "Always", said(file.workshop->terms), refOf(file.workshop->id));
    }
    addIf(section, std::move(facts));
    section.blocks.emplace_back(
        Paragraph{plain("Nothing is done to it before a proposal has been agreed to.")});
    return section;
}

Section signatures(const HandBack& back) {
    Section section{.key = "receipt_signed", .title = "Received, as described above"};
    Facts facts;
    addFact(facts, "Already signed", back.receipt, refOf(back.id));
    facts.facts.push_back({"Name", plain(report::kSignLine)});
    facts.facts.push_back({"By what right", plain(report::kSignLine)});
    facts.facts.push_back({"Date, signature", plain(report::kSignLine)});
    facts.facts.push_back({"For the workshop", plain(report::kSignLine)});
    section.blocks.emplace_back(std::move(facts));
    return section;
}

// Its hazards stand with what goes back, above the signature.
Section adviceOf(const JobFile& file, const Clock& clock) {
    const ReportRequest request{.date = clock.today()};
    Section section = report::adviceSection({file, request, clock});
    for (Block& block : section.blocks) {
        if (auto* list = std::get_if<List>(&block)) {
            std::erase_if(list->items, [&](const ListItem& item) {
                return std::ranges::any_of(file.hazards, [&](const Hazard& hazard) {
                    return item.source == refOf(hazard.id);
                });
            });
        }
    }
    return section;
}

} // namespace

Document arrivalReceiptOf(const JobFile& file, const Clock& clock) {
    Document document{.title = "Receipt",
                      .subtitle = report::itemTitle(file.item),
                      .jobNumber = file.job.number,
                      .date = clock.today(),
                      .isDraft = false,
                      .letterhead = report::letterheadOf(file)};
    Section handedOver{.key = "receipt_arrived_signed", .title = "Handed over"};
    Facts facts;
    facts.facts.push_back({"Name", plain(report::kSignLine)});
    facts.facts.push_back({"Date, signature", plain(report::kSignLine)});
    facts.facts.push_back({"For the workshop", plain(report::kSignLine)});
    handedOver.blocks.emplace_back(std::move(facts));
    document.runningTitle = headingOf(file.item);
    document.sections = {arrivedSection(file), keepingSection(file), std::move(handedOver)};
    return document;
}

Document receiptOf(const JobFile& file, const HandBack& back, const Clock& clock) {
    Document document{.title = "Receipt for the return",
                      .subtitle = report::itemTitle(file.item),
                      .jobNumber = file.job.number,
                      .date = back.onDay,
                      .isDraft = false,
                      .author = personName(file, back.who),
                      .letterhead = report::letterheadOf(file)};
    document.runningTitle = headingOf(file.item);
    // What is signed stands with what is signed for; the advice is for taking along.
    document.sections.push_back(bookSection(file, back));
    if (Section handing = handingSection(back); !handing.blocks.empty()) {
        document.sections.push_back(std::move(handing));
    }
    document.sections.push_back(signatures(back));
    document.sections.push_back(adviceOf(file, clock));
    return document;
}

} // namespace headcap::core
