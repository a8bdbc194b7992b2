#include "app/print/layout/layout.h"

#include <utility>

#include "app/print/layout/blocks.h"
#include "app/print/layout/front.h"
#include "app/print/layout/furniture.h"
#include "app/print/layout/paginate.h"

namespace headcap::app::print {

namespace {

Flow flowOf(const core::Document& document) {
    Flow flow;
    addFront(flow, document);
    for (const core::Section& section : document.sections) {
        addSection(flow, section);
    }
    addClose(flow, document);
    return flow;
}

void put(Pages& pages, const Slab& slab, const Placed& placed, double left) {
    while (pages.pages.size() <= placed.page) {
        pages.pages.emplace_back();
    }
    for (const Mark& mark : slab.marks) {
        pages.pages[placed.page].marks.push_back(moved(mark, {left, placed.top}));
    }
    if (slab.entry.has_value()) {
        Entry entry = *slab.entry;
        entry.page = placed.page;
        entry.top = placed.top;
        pages.entries.push_back(std::move(entry));
    }
}

} // namespace

Pages layOut(const core::Document& document, const PageSetup& setup) {
    const Flow flow = flowOf(document);
    Pages pages;
    pages.size = setup.size();
    pages.signsWithoutFace = flow.signsWithoutFace;
    for (const Placed& placed :
         paginate(flow, {setup.firstTop, setup.bottom}, {setup.top, setup.bottom})) {
        put(pages, placed.repeatedHead ? flow.heads[placed.index] : flow.slabs[placed.index],
            placed, setup.left);
    }
    for (std::size_t i = 0; i < pages.pages.size(); ++i) {
        addFurniture(pages.pages[i], i, pages.pages.size(), document, setup);
    }
    return pages;
}

} // namespace headcap::app::print
