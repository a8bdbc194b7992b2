#include "app/print/layout/paginate.h"

#include <algorithm>
#include <cmath>

#include "app/print/layout/page_setup.h"

namespace headcap::app::print {

namespace {

constexpr double kSlack = 0.01; // sums of fractions

class Paginator {
public:
    Paginator(const Flow& flow, Span firstPage, Span otherPages)
        : m_flow(flow), m_span(firstPage), m_otherPages(otherPages), m_at{firstPage.top} {}

    std::vector<Placed> run() {
        const auto& slabs = m_flow.slabs;
        for (std::size_t begin = 0; begin < slabs.size();) {
            std::size_t end = begin + 1;
            while (end < slabs.size() && slabs[end - 1].keepWithNext) {
                ++end;
            }
            placeChain(begin, end);
            begin = end;
        }
        return std::move(m_placed);
    }

private:
    struct At {
        double y = 0;
        double hanging = 0;  // bottom of side matter
        bool isEmpty = true; // the page
    };

    // Moves past one slab; its top is where it would stand.
    double advance(At& at, const Slab& slab) const {
        double y = at.y;
        if (at.isEmpty) {
            if (slab.head.has_value()) {
                y += m_flow.heads[*slab.head].height;
            }
        } else {
            y += slab.gap;
            if (slab.clearsSide) {
                y = std::max(y, at.hanging + slab.gap);
            }
            if (slab.onGrid) {
                y = m_span.top + std::ceil((y - m_span.top - kSlack) / kHalfLine) * kHalfLine;
            }
        }
        if (slab.overhang > 0) {
            at.hanging = std::max(at.hanging, y + slab.overhang);
        }
        at.y = y + slab.height;
        at.isEmpty = false;
        return y;
    }

    bool fits(At at, std::size_t begin, std::size_t end) const {
        double lowest = at.y;
        for (std::size_t i = begin; i < end; ++i) {
            advance(at, m_flow.slabs[i]);
            lowest = std::max({lowest, at.y, m_flow.slabs[i].overhang > 0 ? at.hanging : 0});
        }
        return lowest <= m_span.bottom + kSlack;
    }

    void place(std::size_t index) {
        const Slab& slab = m_flow.slabs[index];
        const double pageTop = m_at.y;
        const bool repeats = m_at.isEmpty && slab.head.has_value();
        const double top = advance(m_at, slab);
        if (repeats) {
            m_placed.push_back({*slab.head, true, m_page, pageTop});
        }
        m_placed.push_back({index, false, m_page, top});
    }

    void nextPage() {
        ++m_page;
        m_span = m_otherPages;
        m_at = At{m_span.top};
    }

    void placeChain(std::size_t begin, std::size_t end) {
        if (fits(m_at, begin, end)) {
            for (std::size_t i = begin; i < end; ++i) {
                place(i);
            }
            return;
        }
        if (!m_at.isEmpty) {
            nextPage();
            placeChain(begin, end);
            return;
        }
        for (std::size_t i = begin; i < end; ++i) { // longer than a page
            if (!m_at.isEmpty && !fits(m_at, i, i + 1)) {
                nextPage();
            }
            place(i);
        }
    }

    const Flow& m_flow;
    Span m_span;
    Span m_otherPages;
    At m_at;
    std::size_t m_page = 0;
    std::vector<Placed> m_placed;
};

} // namespace

std::vector<Placed> paginate(const Flow& flow, Span firstPage, Span otherPages) {
    return Paginator(flow, firstPage, otherPages).run();
}

} // namespace headcap::app::print
