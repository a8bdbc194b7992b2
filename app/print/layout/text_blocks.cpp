#include <utility>

#include "app/print/layout/blocks.h"
#include "app/print/layout/page_setup.h"
#include "app/print/layout/row_slabs.h"
#include "app/print/layout/types.h"
#include "core/report/sign_line.h"

namespace headcap::app::print {

namespace {

constexpr double kFactLabelWidth = mm(34);
constexpr double kFactValueLeft = kTextLeft + mm(37);
constexpr double kFactValueWidth = kBlockWidth - kFactValueLeft;
constexpr double kListIndent = mm(5);
constexpr double kCautionEdge = mm(2.2);

const RowStyle kTextRow{};

SetText noted(Flow& flow, SetText text) {
    noteSigns(flow, text.signsWithoutFace);
    return text;
}

void keepFirstWithNext(std::vector<Slab>& slabs) {
    slabs.back().keepWithNext = true;
}

// The hatched edge of a caution, beside all its lines; strokes of neighbouring slabs meet.
void hatchEdge(std::vector<Slab>& slabs) {
    for (Slab& slab : slabs) {
        slab.marks.emplace_back(
            Hatch{{kTextLeft, 0, kCautionEdge, slab.height}, 2.6, 0.6, Ink::warning});
    }
}

} // namespace

void addBlock(Flow& flow, const core::Paragraph& paragraph, double gap) {
    SetText text = noted(flow, setText(paragraph.runs, kBody, kTextWidth));
    append(flow, rowSlabs({{kTextLeft, std::move(text)}}, kTextRow), gap);
}

void addBlock(Flow& flow, const core::Statement& statement, double gap) {
    SetText text = noted(flow, setText(fromUtf8(statement.text), kStatement, kTextWidth));
    append(flow, rowSlabs({{kTextLeft, std::move(text)}}, kTextRow), gap);
}

void addBlock(Flow& flow, const core::Caution& caution, double gap) {
    const double left = kTextLeft + mm(6);
    const double width = kBlockWidth - left;
    SetText title = noted(flow, setText(fromUtf8(caution.title), kCautionTitle, width));
    SetText text = noted(flow, setText(fromUtf8(caution.text), kBody, width));
    std::vector<Slab> slabs = rowSlabs({{left, std::move(title)}}, kTextRow);
    keepFirstWithNext(slabs);
    for (Slab& slab : rowSlabs({{left, std::move(text)}}, kTextRow)) {
        slabs.push_back(std::move(slab));
    }
    slabs.back().height += 2; // below the letters, for the edge
    hatchEdge(slabs);
    append(flow, std::move(slabs), gap);
}

namespace {

// A rule to sign on, with room for a hand above it.
void addSignLine(Flow& flow, const core::Fact& fact) {
    const SetText label = noted(flow, setText(fromUtf8(fact.label), kLabel, kFactLabelWidth));
    Slab slab;
    slab.height = kSignHeight;
    for (const TextLine& line : label.lines) {
        slab.marks.push_back(moved(line, {kTextLeft, kSignHeight - label.height()}));
    }
    slab.marks.emplace_back(
        Rule{{kFactValueLeft, kSignHeight - 2}, {kBlockWidth, kSignHeight - 2}, kHair, Ink::text});
    append(flow, {std::move(slab)}, 0, false);
}

} // namespace

void addBlock(Flow& flow, const core::Facts& facts, double gap) {
    const std::size_t count = facts.facts.size();
    for (std::size_t i = 0; i < count; ++i) {
        const core::Fact& fact = facts.facts[i];
        if (core::plainText(fact.value) == core::report::kSignLine) {
            addSignLine(flow, fact);
            gap = 0;
            continue;
        }
        SetText label = noted(flow, setText(fromUtf8(fact.label), kLabel, kFactLabelWidth));
        SetText value = noted(flow, setText(fact.value, kBody, kFactValueWidth));
        std::vector<Slab> slabs =
            rowSlabs({{kTextLeft, std::move(label)}, {kFactValueLeft, std::move(value)}}, kTextRow);
        // No page begins with the last two, nor ends with the first.
        slabs.back().keepWithNext = i + 1 < count && (i == 0 || i + 3 >= count);
        append(flow, std::move(slabs), gap);
        gap = 0;
    }
}

void addBlock(Flow& flow, const core::List& list, double gap) {
    const std::size_t count = list.items.size();
    for (std::size_t i = 0; i < count; ++i) {
        SetText dash = setText(QStringLiteral("–"), kBody, kListIndent);
        SetText text = noted(flow, setText(list.items[i].runs, kBody, kTextWidth - kListIndent));
        std::vector<Slab> slabs = rowSlabs(
            {{kTextLeft, std::move(dash)}, {kTextLeft + kListIndent, std::move(text)}}, kTextRow);
        // The first item and the last are not parted from their neighbours.
        slabs.back().keepWithNext = i + 1 < count && (i == 0 || i + 2 == count);
        append(flow, std::move(slabs), gap);
        gap = 0;
    }
}

void addSubheading(Flow& flow, const core::Subheading& subheading, double gap, bool aboveAcross) {
    const double left = aboveAcross ? 0 : kTextLeft;
    SetText text = noted(flow, setText(fromUtf8(subheading.text), kSubheading, kBlockWidth - left));
    std::vector<Slab> slabs = rowSlabs({{left, std::move(text)}}, kTextRow);
    for (Slab& slab : slabs) {
        slab.keepWithNext = true;
    }
    slabs.front().clearsSide = aboveAcross;
    append(flow, std::move(slabs), gap);
}

} // namespace headcap::app::print
