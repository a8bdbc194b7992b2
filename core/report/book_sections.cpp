#include <fmt/format.h>

#include "core/report/sections.h"
#include "core/report/writing.h"
#include "core/values/english.h"
#include "core/values/length_words.h"
#include "core/values/measure_text.h"

namespace headcap::core::report {
namespace {

std::string ownerText(const Owner& owner) {
    const bool isThroughAnother = !owner.contact.empty() && owner.contact != owner.name;
    return joined({owner.name, isThroughAnother ? "through " + owner.contact : ""}, ", ");
}

std::string earlierText(const Job& job) {
    switch (job.earlierRecords) {
    case EarlierRecords::notAsked:
        return told({"not asked for", job.earlierRecordsNote});
    case EarlierRecords::asked:
        return told({"asked for, none received yet", job.earlierRecordsNote});
    case EarlierRecords::received:
        return told({"asked for and received", job.earlierRecordsNote});
    case EarlierRecords::noneExist:
        break;
    }
    return told({"asked for; there are none", job.earlierRecordsNote});
}

// "186 × 118 × 27 mm", height first.
std::string sizeText(const Item& item) {
    std::vector<std::string> sides;
    for (const auto& side : {item.height, item.width, item.thickness}) {
        if (side) {
            sides.push_back(toText(toHalfMillimetre(*side)));
        }
    }
    const bool all = item.height && item.width && item.thickness;
    return sides.empty() ? "" : joined(sides, " × ") + (all ? " (height, width, thickness)" : "");
}

std::string reportText(const ReportRequest& request) {
    // That it is a draft, and of what job, the head of the paper says.
    return request.isDraft
               ? ""
               : fmt::format("version {}, issued on {}", request.version, dayText(request.date));
}

Facts bookFacts(const Item& item, const std::optional<RecordRef>& source) {
    Facts facts;
    addFact(facts, "Author", item.author, source);
    if (!item.title.empty()) {
        facts.facts.push_back({"Title", italic(item.title), source});
    }
    addFact(facts, "Volume", item.volumeLabel, source);
    addFact(facts, "Imprint", item.imprint, source);
    addFact(facts, "Date", item.date ? toText(*item.date) : "", source);
    addFact(facts, "Format", item.format, source);
    addFact(facts, "Language", item.language, source);
    addFact(facts, "Size", sizeText(item), source);
    addFact(facts, "Binding", item.binding, source);
    addFact(facts, "Marks", item.marks, source);
    addFact(facts, "Note", item.note, source);
    return facts;
}

} // namespace

Section jobSection(const Context& at) {
    const Job& job = at.file.job;
    Section section{.key = "job", .title = "This job"};
    Facts facts;
    addFact(facts, "Report", reportText(at.request));
    addFact(facts, "Changes since the version before", at.request.changes);
    addFact(facts, "Owner", ownerText(at.file.owner));
    addFact(facts, "Who decides", at.file.owner.authority);
    addFact(facts, "Received", told({dayText(job.receivedOn), job.receivedAs}));
    addFact(facts, "Asked for", job.request);
    addFact(facts, "Purpose", job.purpose);
    addFact(facts, "Earlier records", earlierText(job));
    addIf(section, std::move(facts));
    return section;
}

Section bookSection(const Context& at) {
    const JobFile& file = at.file;
    Section section{.key = "book", .title = "The book"};
    Facts facts = bookFacts(file.item, std::nullopt);
    if (file.whole) {
        addFact(facts, "Part of", itemTitle(*file.whole));
    }
    if (facts.facts.empty()) {
        section.blocks.emplace_back(Statement{"The book is not described."});
    }
    addIf(section, std::move(facts));
    for (const Item& part : file.parts) {
        section.blocks.emplace_back(
            Subheading{part.volumeLabel.empty() ? itemTitle(part) : capitalised(part.volumeLabel)});
        section.blocks.emplace_back(
            Paragraph{plain(sentence(told({itemTitle(part), part.imprint, part.format,
                                           sizeText(part), part.binding, part.marks, part.note}))),
                      refOf(part.id)});
    }
    Table works{{{"", 1}, {"Work", 6}, {"Leaves", 2}}, {}};
    for (const Work& work : file.works) {
        works.rows.push_back(row({std::to_string(work.position),
                                  told({joined({work.author, work.title}, ", "), work.imprint,
                                        work.date ? toText(*work.date) : "", work.note}),
                                  work.leaves},
                                 refOf(work.id)));
    }
    addPart(section, "Works in this binding", std::move(works));
    Table pieces{{{"Number", 1, true}, {"What came with it", 5}, {"At return", 3}}, {}};
    for (const Piece& piece : file.pieces) {
        pieces.rows.push_back(row({std::to_string(piece.count), joined({piece.what, piece.keptAt}),
                                   piece.returned.empty() ? "not yet noted" : piece.returned},
                                  refOf(piece.id)));
    }
    section.blocks.emplace_back(Subheading{"Accessories and loose pieces"});
    addOr(section, std::move(pieces), "Nothing came with the book.");
    return section;
}

} // namespace headcap::core::report
