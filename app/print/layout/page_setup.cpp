#include "app/print/layout/page_setup.h"

#include <cmath>

namespace headcap::app::print {

PageSetup pageSetup(Sheet sheet) {
    PageSetup setup;
    setup.sheet = sheet;
    setup.width = sheet == Sheet::a4 ? mm(210) : 612;
    setup.height = sheet == Sheet::a4 ? mm(297) : 792;
    // A little more to the left, where the sheets are held together.
    setup.left = (setup.width - kBlockWidth) * 0.56;
    setup.headLine = mm(15);
    setup.top = mm(25);
    setup.firstTop = mm(16);
    setup.footLine = setup.height - mm(14);
    setup.draftEdge = setup.width - mm(9);
    // A whole number of lines, so that full pages end on the same baseline.
    const double room = setup.height - mm(24) - setup.top;
    setup.bottom = setup.top + std::floor(room / kLine) * kLine;
    return setup;
}

} // namespace headcap::app::print
