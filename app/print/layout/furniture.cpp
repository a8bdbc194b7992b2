#include "app/print/layout/furniture.h"

#include <QFontMetricsF>

#include "app/print/layout/front.h"
#include "app/print/layout/set_text.h"
#include "app/print/layout/types.h"

namespace headcap::app::print {

namespace {

// Puts the first line of a text with its baseline at y.
void putLine(Page& page, const SetText& text, double left, double baseline) {
    if (text.lines.empty()) {
        return;
    }
    TextLine line = text.lines.front();
    line.at = {line.at.x() + left, baseline};
    page.marks.emplace_back(std::move(line));
}

void addHead(Page& page, const core::Document& document, const PageSetup& setup) {
    const double right = setup.left + kBlockWidth;
    putLine(page, setOneLine(fromUtf8(document.title), kFurniture, kSideWidth), setup.left,
            setup.headLine);
    const std::string& title =
        document.runningTitle.empty() ? document.subtitle : document.runningTitle;
    putLine(page, setOneLine(fromUtf8(title), kRunningTitle, kTextWidth - mm(24)),
            setup.left + kTextLeft, setup.headLine);
    if (document.isDraft) {
        putLine(page, setOneLine(QStringLiteral("DRAFT"), kDraft, mm(24), Align::right),
                right - mm(24), setup.headLine);
    }
    const double y = setup.headLine + 6;
    page.marks.emplace_back(Rule{{setup.left, y}, {right, y}, kHair, Ink::rule});
}

void addFoot(Page& page, std::size_t index, std::size_t count, const core::Document& document,
             const PageSetup& setup) {
    const double y = setup.footLine - 12;
    page.marks.emplace_back(Rule{{setup.left, y}, {setup.left + kBlockWidth, y}, kHair, Ink::rule});
    const QString job = document.jobNumber.empty()
                            ? fromUtf8(document.title)
                            : QStringLiteral("Job %1").arg(fromUtf8(document.jobNumber));
    putLine(page, setOneLine(job, kFurniture, kSideWidth), setup.left, setup.footLine);
    const QString standing = standingText(document);
    putLine(page,
            setOneLine(standing.isEmpty()
                           ? dateText(document)
                           : QStringLiteral("%1 · %2").arg(dateText(document), standing),
                       kFurniture, mm(90)),
            setup.left + kTextLeft, setup.footLine);
    putLine(page,
            setOneLine(QStringLiteral("page %1 of %2").arg(index + 1).arg(count), kFurniture,
                       mm(34), Align::right),
            setup.left + kBlockWidth - mm(34), setup.footLine);
}

// A hatched strip down the outer edge, with the word in it: a draft can't pass for the report even
// where a page is parted from the others.
void addDraftEdge(Page& page, const PageSetup& setup) {
    const double width = mm(2.6);
    const double gap = mm(22);
    const double middle = (setup.top + setup.bottom) / 2;
    const Hatch upper{
        {setup.draftEdge, setup.top, width, middle - gap / 2 - setup.top}, 3.2, 0.5, Ink::warning};
    const Hatch lower{{setup.draftEdge, middle + gap / 2, width, setup.bottom - middle - gap / 2},
                      3.2,
                      0.5,
                      Ink::warning};
    page.marks.emplace_back(upper);
    page.marks.emplace_back(lower);
    TextLine word = setOneLine(QStringLiteral("DRAFT"), kDraftEdge, mm(40)).lines.front();
    word.upward = true;
    word.at = {setup.draftEdge + width - 1, middle + word.width / 2};
    page.marks.emplace_back(std::move(word));
}

} // namespace

void addFurniture(Page& page, std::size_t index, std::size_t count, const core::Document& document,
                  const PageSetup& setup) {
    if (index > 0) {
        addHead(page, document, setup);
    }
    addFoot(page, index, count, document, setup);
    if (document.isDraft) {
        addDraftEdge(page, setup);
    }
}

} // namespace headcap::app::print
