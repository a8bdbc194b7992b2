#include "app/print/layout/layout.h"

#include <algorithm>
#include <array>
#include <optional>
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

// What comes before the first figure is set once; the rest at its full size and, where smaller
// photographs spare a page, at the largest share that does.
class LayingOut::Setting {
public:
    Setting(core::Document document, const PageSetup& setup)
        : m_document(std::move(document)), m_setup(setup),
          m_rest(static_cast<std::size_t>(std::ranges::find_if(m_document.sections, hasFigures) -
                                          m_document.sections.begin())) {}

    bool step() {
        if (!m_hasFront) {
            addFront(m_begun, m_document);
            m_hasFront = true;
        } else if (m_next < m_rest) {
            addSection(m_begun, m_document.sections[m_next++]);
        } else if (!m_isSetting) {
            m_isSetting = true;
            m_flow = m_begun;
            m_flow.figureShare = m_share;
            m_next = m_rest;
        } else if (m_next < m_document.sections.size()) {
            addSection(m_flow, m_document.sections[m_next++]);
        } else {
            m_isSetting = false;
            return close();
        }
        return true;
    }

    [[nodiscard]] Pages pages() const {
        Pages pages;
        pages.size = m_setup.size();
        pages.signsWithoutFace = m_flow.signsWithoutFace;
        for (const Placed& placed : m_placed) {
            put(pages,
                placed.repeatedHead ? m_flow.heads[placed.index] : m_flow.slabs[placed.index],
                placed, m_setup.left);
        }
        for (std::size_t i = 0; i < pages.pages.size(); ++i) {
            addFurniture(pages.pages[i], i, pages.pages.size(), m_document, m_setup);
        }
        return pages;
    }

private:
    // False: nothing more is to be tried.
    bool close() {
        addClose(m_flow, m_document);
        auto placed =
            paginate(m_flow, {m_setup.firstTop, m_setup.bottom}, {m_setup.top, m_setup.bottom});
        const std::size_t pages = placed.empty() ? 0 : placed.back().page + 1;
        m_placed = std::move(placed);
        if (m_rest == m_document.sections.size()) {
            return false;
        }
        if (!m_whole) { // at full size
            m_whole = Tried{m_flow, m_placed, pages};
            m_share = kFigureShares.back();
            return true;
        }
        if (!m_fewest) { // at the smallest
            m_fewest = pages;
            m_share = kFigureShares.front();
            if (pages == m_whole->pages) {
                m_flow = std::move(m_whole->flow);
                m_placed = std::move(m_whole->placed);
                return false;
            }
            return true;
        }
        const auto* share = std::ranges::find(kFigureShares, m_share);
        if (pages == *m_fewest || share + 1 == kFigureShares.end()) {
            return false;
        }
        m_share = *(share + 1);
        return true;
    }

    struct Tried {
        Flow flow;
        std::vector<Placed> placed;
        std::size_t pages = 0;
    };

    core::Document m_document;
    PageSetup m_setup;
    std::size_t m_rest; // the first section with figures
    std::size_t m_next = 0;
    bool m_hasFront = false;
    bool m_isSetting = false;
    double m_share = 1;
    Flow m_begun{}; // all before the first figure
    Flow m_flow{};
    std::vector<Placed> m_placed{};
    std::optional<Tried> m_whole{};
    std::optional<std::size_t> m_fewest{};
};

LayingOut::LayingOut(core::Document document, const PageSetup& setup)
    : m_setting(std::make_unique<Setting>(std::move(document), setup)) {}

LayingOut::~LayingOut() = default;

bool LayingOut::step() {
    return m_setting->step();
}

Pages LayingOut::pages() const {
    return m_setting->pages();
}

Pages layOut(const core::Document& document, const PageSetup& setup) {
    LayingOut laying(document, setup);
    while (laying.step()) {
    }
    return laying.pages();
}

} // namespace headcap::app::print
