#include "app/form/ruled_table_delegate.h"

#include <algorithm>
#include <numeric>

#include <QApplication>
#include <QPainter>

#include "app/form/ruled_table.h"
#include "app/look/grid.h"

namespace headcap::app {
namespace {

constexpr int kPad = 2 * kGrid;
constexpr int kTie = 4 * kGrid; // what hangs on the row above stands in by so much

// Of the interface's own script, set in one font: no other font can make its line higher.
bool isPlainLatin(const QString& text) {
    return std::ranges::all_of(text, [](QChar c) {
        return (c >= u' ' && c < QChar{0x250}) || (c >= QChar{0x2010} && c <= QChar{0x2026}) ||
               c == QChar{0x2212};
    });
}

int heightOf(const TableCell& cell, int width) {
    if (cell.text.isEmpty()) {
        return 0;
    }
    const QFontMetrics metrics{faceFont(cell.face)};
    // Breaking into lines costs several times what measuring one does.
    if (isPlainLatin(cell.text) && metrics.horizontalAdvance(cell.text) < width) {
        return qCeil(QFontMetricsF{faceFont(cell.face)}.height());
    }
    return metrics.boundingRect(QRect{0, 0, std::max(width, 8), 4096}, Qt::TextWordWrap, cell.text)
        .height();
}

int widthOf(const TableCell& cell) {
    // A little over, so that words set in their own width do not wrap.
    return cell.text.isEmpty()
               ? 0
               : QFontMetrics{faceFont(cell.face)}.horizontalAdvance(cell.text) + kGrid / 2;
}

int ascentOf(const TableCell& cell) {
    return QFontMetrics{faceFont(cell.face)}.ascent();
}

using Piece = RuledTableDelegate::Piece;
using Set = RuledTableDelegate::Set;

class RowSetter {
public:
    RowSetter(const TableRow& row, const RuledTable& table, int width)
        : m_row(row), m_table(table), m_width(width) {}

    Set set() {
        m_made.baseline = kPad + ascentOf(m_row.title) + (m_row.id ? kGrid : 3 * kGrid);
        if (!m_row.id) {
            heading();
        } else {
            row();
        }
        return std::move(m_made);
    }

private:
    // On the first line's baseline; gives the foot of it.
    int put(const TableCell& cell, int x, int width, Qt::Alignment alignment = Qt::AlignLeft,
            bool isStruck = false) {
        const int y = m_made.baseline - ascentOf(cell);
        return putAt(cell, x, y, width, alignment, isStruck);
    }
    int putAt(const TableCell& cell, int x, int y, int width,
              Qt::Alignment alignment = Qt::AlignLeft, bool isStruck = false) {
        const int height = heightOf(cell, width);
        if (height > 0) {
            m_made.pieces.push_back({{x, y, width, height}, cell, alignment, isStruck});
        }
        return y + height;
    }

    void heading() {
        const int right = widthOf(m_row.right);
        const int words = m_width - 2 * kPad - (right > 0 ? right + kSpace : 0);
        int foot = put(m_row.title, 0, words);
        put(m_row.right, m_width - kPad - right, right, Qt::AlignRight);
        foot = std::max(foot, putAt(m_row.below, 0, foot, m_width - kPad));
        m_made.height = foot + kPad;
    }

    void row() {
        const int tie = m_row.isTied ? kTie : 0;
        const TableCell mark{m_row.mark, Face::small, Ink::quiet};
        put(mark, kPad + tie, m_table.columns().mark);
        const int left = kPad + m_table.columns().mark;
        const int right = m_table.isNarrow() ? widthOf(m_row.right) : m_table.columns().right;
        put(m_row.right, m_width - kPad - right, right, Qt::AlignRight);
        const int room = m_width - kPad - right - kSpace - left;
        const int foot =
            m_table.isNarrow() ? narrow(left + tie, room - tie) : columns(left, room, tie);
        m_made.height = std::max(foot + kPad + kGrid, kBenchControl);
    }

    int narrow(int left, int room) {
        int foot = put(m_row.title, left, room, Qt::AlignLeft, m_row.isStruck);
        const int wide = m_width - kPad - left;
        foot = run(left, foot + 2, wide);
        return putAt(m_row.below, left, foot, wide);
    }

    // The middle cells one after the other, on one baseline; what is too long begins a line.
    int run(int left, int top, int wide) {
        int tallest = 0;
        for (const TableCell& cell : m_row.middle) {
            tallest = std::max(tallest, cell.text.isEmpty() ? 0 : ascentOf(cell));
        }
        int baseline = top + tallest;
        int foot = top;
        int x = left;
        for (const TableCell& cell : m_row.middle) {
            if (cell.text.isEmpty() || cell.text == QStringLiteral("—")) {
                continue;
            }
            if (x > left && widthOf(cell) > left + wide - x && left + wide - x < wide / 2) {
                x = left;
                baseline = foot + 2 + ascentOf(cell);
            }
            const int span = std::min(widthOf(cell), left + wide - x);
            foot = std::max(foot, putAt(cell, x, baseline - ascentOf(cell), span));
            x += span + kSpace;
        }
        return foot;
    }

    int columns(int left, int room, int tie) {
        const auto& columns = m_table.columns();
        const int shares =
            std::accumulate(columns.middle.begin(), columns.middle.end(), columns.title);
        const auto widthFor = [&](int share) { return room * share / shares - kSpace; };
        const int wide = widthFor(columns.title) - tie;
        int foot = put(m_row.title, left + tie, wide, Qt::AlignLeft, m_row.isStruck);
        foot = putAt(m_row.below, left + tie, foot, wide);
        int x = left + room * columns.title / shares;
        for (std::size_t i = 0; i < m_row.middle.size() && i < columns.middle.size(); ++i) {
            foot = std::max(foot, put(m_row.middle[i], x, widthFor(columns.middle[i])));
            x += room * columns.middle[i] / shares;
        }
        return foot;
    }

    const TableRow& m_row;
    const RuledTable& m_table;
    int m_width;
    Set m_made;
};

// From the row above down to this one.
void drawTie(QPainter& painter, const Set& set, const QColor& ink) {
    const int x = kPad + kGrid;
    const int y = set.baseline - kGrid;
    painter.setPen(QPen{ink, 1});
    painter.drawLine(x, 0, x, y);
    painter.drawLine(x, y, x + 2 * kGrid, y);
}

} // namespace

RuledTableDelegate::RuledTableDelegate(RuledTable& table)
    : QStyledItemDelegate(&table), m_table(table) {
    connect(&table.rows(), &QAbstractItemModel::modelAboutToBeReset, this,
            [this] { m_sets.clear(); });
}

const RuledTableDelegate::Set& RuledTableDelegate::setOf(const QModelIndex& index) const {
    const int width = m_table.viewport()->width();
    if (m_width != width || m_font != QApplication::font()) {
        m_sets.clear();
        m_width = width;
        m_font = QApplication::font();
    }
    m_sets.resize(static_cast<std::size_t>(m_table.rows().rowCount()));
    auto& set = m_sets[static_cast<std::size_t>(index.row())];
    if (!set) {
        set = RowSetter{m_table.rows().row(index.row()), m_table, width}.set();
    }
    return *set;
}

void RuledTableDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                               const QModelIndex& index) const {
    const TableRow& row = m_table.rows().row(index.row());
    const Colours& c = coloursFor(option.palette);
    const QRect rect = option.rect;
    const Set& set = setOf(index);
    painter->save();
    const bool isFresh = row.id && m_table.fresh() == row.id;
    if (row.id && (option.state & QStyle::State_Selected)) {
        painter->fillRect(rect, c.picked);
    }
    if (isFresh ||
        (row.id && (option.state & QStyle::State_HasFocus) && m_table.currentIndex() == index)) {
        painter->fillRect(QRect(rect.topLeft(), QSize(3, rect.height())), c.accent);
    }
    painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), c.rule);
    painter->translate(rect.topLeft());
    if (row.isTied) {
        drawTie(*painter, set, c.edge);
    }
    for (const Piece& piece : set.pieces) {
        QFont face = faceFont(piece.cell.face);
        face.setStrikeOut(piece.isStruck);
        painter->setFont(face);
        painter->setPen(piece.isStruck ? c.quiet : colourOf(c, piece.cell.ink));
        painter->drawText(piece.at, static_cast<int>(piece.alignment) | Qt::TextWordWrap,
                          piece.cell.text);
    }
    painter->restore();
}

QSize RuledTableDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    return {200, setOf(index).height};
}

} // namespace headcap::app
