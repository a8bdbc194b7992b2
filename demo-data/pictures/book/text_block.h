// A book lying open: the edges of its boards, the leaves under the open ones, and how a page
// darkens as it turns down into the fold.
#pragma once

#include "demo-data/pictures/book/binding.h"

namespace headcap::demo {

struct OpenBook {
    QSizeF page;
    double square = 3.5; // how far the boards stand out
    int leavesLeft = 60;
    int leavesRight = 60;

    // How far the edges of the leaves beneath are seen at either side.
    [[nodiscard]] double left() const { return 1.2 + leavesLeft * 0.045; }
    [[nodiscard]] double right() const { return 1.2 + leavesRight * 0.045; }
    [[nodiscard]] QSizeF size() const {
        return {2 * page.width() + left() + right() + 2 * square, page.height() + 2 * square};
    }
};

[[nodiscard]] Surface drawOpenBook(const OpenBook& book, const BindingView& binding, double scale);
void curveTowardsFold(Surface& page, bool foldAtRight);

} // namespace headcap::demo
