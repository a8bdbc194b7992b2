#include <algorithm>
#include <utility>

#include "app/print/layout/blocks.h"
#include "app/print/layout/page_setup.h"
#include "app/print/layout/row_slabs.h"
#include "app/print/layout/types.h"

namespace headcap::app::print {

namespace {

constexpr double kBelowRule = kHalfLine;
constexpr double kShort = mm(58); // of a section: an option of two lines with its sum

bool goesAcross(const core::Block& block) {
    return std::holds_alternative<core::Table>(block) ||
           std::holds_alternative<core::Figures>(block);
}

bool startsBesideText(const core::Section& section) {
    const auto first =
        std::find_if(section.blocks.begin(), section.blocks.end(), [](const core::Block& block) {
            return !std::holds_alternative<core::Subheading>(block);
        });
    return !section.blocks.empty() && (first == section.blocks.end() || !goesAcross(*first));
}

// A heading beside text hangs in the side column, its first baseline that of the text; above a
// table or a figure, and where nothing follows, it has lines of its own.
Slab headingSlab(Flow& flow, const core::Section& section) {
    const bool isMain = section.level <= 1;
    const bool beside = startsBesideText(section);
    const Type& type = isMain ? kSection : kSubsection;
    const SetText text = setText(fromUtf8(section.title), type, beside ? kSideWidth : kBlockWidth);
    noteSigns(flow, text.signsWithoutFace);

    Slab slab;
    slab.marks.emplace_back(Rule{{0, 0}, {kBlockWidth, 0}, kHair, Ink::rule});
    if (isMain) {
        slab.marks.emplace_back(Rule{{0, 0}, {kSideWidth, 0}, 1.2, Ink::text});
    }
    const double raise = text.lines.front().at.y() - kBody.leading * 0.75;
    for (const TextLine& line : text.lines) {
        slab.marks.push_back(moved(line, {0, kBelowRule - raise}));
    }
    slab.height = beside ? kBelowRule : kBelowRule - raise + text.height();
    slab.overhang = beside ? kBelowRule - raise + text.height() : 0;
    slab.onGrid = true;
    slab.clearsSide = true;
    slab.keepWithNext = true;
    slab.gap = isMain ? 2 * kLine : kLine;
    slab.entry = Entry{fromUtf8(section.title), section.level, 0, 0};
    return slab;
}

double gapBetween(const core::Block* before, const core::Block& block) {
    const bool across = goesAcross(block);
    if (before == nullptr || std::holds_alternative<core::Subheading>(*before)) {
        return across ? kHalfLine : 0;
    }
    if (across || goesAcross(*before) || std::holds_alternative<core::Subheading>(block)) {
        return kLine;
    }
    return kHalfLine;
}

// What is signed stands on one page with what is signed for.
bool isSigned(const core::Section& section) {
    return section.key.ends_with("_signed");
}

// Nor is a short section parted.
void keepWhole(Flow& flow, std::size_t begin, bool isAlways) {
    double height = 0;
    for (std::size_t i = begin; i < flow.slabs.size(); ++i) {
        height += flow.slabs[i].gap + flow.slabs[i].height;
    }
    for (std::size_t i = begin; (isAlways || height <= kShort) && i + 1 < flow.slabs.size(); ++i) {
        flow.slabs[i].keepWithNext = true;
    }
}

struct BlockAdder {
    Flow& flow;
    double gap = 0;
    bool aboveAcross = false;

    void operator()(const core::Subheading& subheading) const {
        addSubheading(flow, subheading, gap, aboveAcross);
    }
    void operator()(const auto& block) const { addBlock(flow, block, gap); }
};

} // namespace

void addSection(Flow& flow, const core::Section& section) {
    const std::size_t begin = flow.slabs.size();
    flow.slabs.push_back(headingSlab(flow, section));
    const core::Block* before = nullptr;
    for (std::size_t i = 0; i < section.blocks.size(); ++i) {
        const core::Block& block = section.blocks[i];
        const double gap = gapBetween(before, block);
        const bool aboveAcross = i + 1 < section.blocks.size() && goesAcross(section.blocks[i + 1]);
        std::visit(BlockAdder{flow, gap, aboveAcross}, block);
        before = &block;
    }
    keepWhole(flow, begin, isSigned(section));
}

} // namespace headcap::app::print
