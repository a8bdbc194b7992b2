// A table as high as its rows, up to a height from which it scrolls.
#pragma once

#include <algorithm>

#include <QListView>

namespace headcap::app {

inline void fitHeight(QListView& table, int most) {
    int rows = 2 * table.frameWidth() + 2;
    for (int i = 0; i < table.model()->rowCount() && rows < most; ++i) {
        rows += table.sizeHintForIndex(table.model()->index(i, 0)).height();
    }
    table.setFixedHeight(std::min(rows, most));
}

} // namespace headcap::app
