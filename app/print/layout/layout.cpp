#include "app/print/layout/layout.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "app/print/layout/blocks.h"
#include "app/print/layout/front.h"
#include "app/print/layout/furniture.h"
#include "app/print/layout/paginate.h"

namespace headcap::app::print {

namespace {

// Tried in turn: photographs are a little smaller where that spares a page.
constexpr std::array kFigureShares{0.92, 0.84, 0.76};

bool hasFigures(const core::Section& section) {
    return std::any_of(section.blocks.begin(), section.blocks.end(), [](const core::Block& block) {
        return std::holds_alternative<core::Figures>(block);
    });
}

class Setting {
public:
    Setting(const core::Document& document, const PageSetup& setup)
        : m_document(document), m_setup(setup) {}

    Flow flow;
    std::vector<Placed> placed;

    void run() {
        const auto& sections = m_document.sections;
        const auto figures = std::find_if(sections.begin(), sections.end(), hasFigures);
        addFront(m_begun, m_document);
        for (auto section = sections.begin(); section != figures; ++section) {
            addSection(m_begun, *section);
        }
        m_rest = static_cast<std::size_t>(figures - sections.begin());
        set(1);
        if (figures == sections.end()) {
            return;
        }
        Setting least = *this;
        least.set(kFigureShares.back());
        if (least.pages() == pages()) {
            return;
        }
        for (const double share : kFigureShares) {
            set(share);
            if (pages() == least.pages()) {
                return;
            }
        }
    }

private:
    [[nodiscard]] std::size_t pages() const { return placed.empty() ? 0 : placed.back().page + 1; }

    void set(double share) {
        flow = m_begun;
        flow.figureShare = share;
        for (std::size_t i = m_rest; i < m_document.sections.size(); ++i) {
            addSection(flow, m_document.sections[i]);
        }
        addClose(flow, m_document);
        placed = paginate(flow, {m_setup.firstTop, m_setup.bottom}, {m_setup.top, m_setup.bottom});
    }

    const core::Document& m_document;
    const PageSetup& m_setup;
    Flow m_begun{}; // all before the first figure
    std::size_t m_rest = 0;
};

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
    Setting setting{document, setup};
    setting.run();
    const Flow& flow = setting.flow;
    Pages pages;
    pages.size = setup.size();
    pages.signsWithoutFace = flow.signsWithoutFace;
    for (const Placed& placed : setting.placed) {
        put(pages, placed.repeatedHead ? flow.heads[placed.index] : flow.slabs[placed.index],
            placed, setup.left);
    }
    for (std::size_t i = 0; i < pages.pages.size(); ++i) {
        addFurniture(pages.pages[i], i, pages.pages.size(), document, setup);
    }
    return pages;
}

} // namespace headcap::app::print
