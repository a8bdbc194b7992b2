#include "app/form/column_layout.h"

#include <QWidget>

#include "app/look/grid.h"

namespace headcap::app {
namespace {

constexpr int kBetweenColumns = 8 * kGrid;
constexpr int kBetweenRows = 2 * kGrid;
constexpr int kTwoFrom = 720; // wide enough for two columns

int heightOf(const QLayoutItem& item, int width) {
    return item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
}

} // namespace

ColumnLayout::ColumnLayout(QWidget* parent) : QLayout(parent) {
    setContentsMargins(0, 0, 0, 0);
}

ColumnLayout::~ColumnLayout() {
    for (const Row& row : m_rows) {
        delete row.item;
    }
}

void ColumnLayout::addRow(QWidget* row, bool isWide) {
    addChildWidget(row);
    m_rows.push_back({new QWidgetItem(row), isWide});
    invalidate();
}

void ColumnLayout::addItem(QLayoutItem* item) {
    m_rows.push_back({item, false});
    invalidate();
}

int ColumnLayout::count() const {
    return static_cast<int>(m_rows.size());
}

QLayoutItem* ColumnLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? m_rows[static_cast<std::size_t>(index)].item : nullptr;
}

QLayoutItem* ColumnLayout::takeAt(int index) {
    if (index < 0 || index >= count()) {
        return nullptr;
    }
    QLayoutItem* item = m_rows[static_cast<std::size_t>(index)].item;
    m_rows.erase(m_rows.begin() + index);
    return item;
}

int ColumnLayout::arrange(const QRect& rect, bool isReal) const {
    const bool isTwo = rect.width() >= kTwoFrom;
    const int half = (rect.width() - kBetweenColumns) / 2;
    int y = rect.top();
    for (std::size_t i = 0; i < m_rows.size();) {
        if (m_rows[i].item->isEmpty()) {
            ++i;
            continue;
        }
        std::size_t next = i + 1;
        while (next < m_rows.size() && m_rows[next].item->isEmpty()) {
            ++next;
        }
        const bool isPair =
            isTwo && !m_rows[i].isWide && next < m_rows.size() && !m_rows[next].isWide;
        const int width = isTwo && !m_rows[i].isWide ? half : rect.width();
        int height = heightOf(*m_rows[i].item, width);
        if (isPair) {
            height = std::max(height, heightOf(*m_rows[next].item, half));
        }
        if (isReal) {
            m_rows[i].item->setGeometry({rect.left(), y, width, height});
            if (isPair) {
                m_rows[next].item->setGeometry(
                    {rect.left() + half + kBetweenColumns, y, half, height});
            }
        }
        y += height + kBetweenRows;
        i = isPair ? next + 1 : next;
    }
    return std::max(0, y - kBetweenRows - rect.top());
}

int ColumnLayout::heightForWidth(int width) const {
    return arrange({0, 0, width, 0}, false);
}

QSize ColumnLayout::sizeHint() const {
    return {kTwoFrom, heightForWidth(kTwoFrom)};
}

QSize ColumnLayout::minimumSize() const {
    int width = 0;
    for (const Row& row : m_rows) {
        width = std::max(width, row.item->minimumSize().width());
    }
    return {width, 0};
}

void ColumnLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

} // namespace headcap::app
