// Draws the rows of a RuledTable, in columns or, where it is narrow, below one another; and says
// how high they are.
#pragma once

#include <optional>
#include <vector>

#include <QStyledItemDelegate>

#include "app/form/ruled_table.h"

namespace headcap::app {

class RuledTableDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    // A piece of text and where it stands in the row.
    struct Piece {
        QRect at;
        TableCell cell;
        Qt::Alignment alignment = Qt::AlignLeft;
        bool isStruck = false;
    };
    struct Set {
        std::vector<Piece> pieces;
        int height = 0;
        int baseline = 0; // of the first line
    };

    explicit RuledTableDelegate(RuledTable& table);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

private:
    [[nodiscard]] const Set& setOf(const QModelIndex& index) const;

    RuledTable& m_table;
    // What was set once, as long as rows, width and font are the same.
    mutable std::vector<std::optional<Set>> m_sets;
    mutable int m_width = -1;
    mutable QFont m_font{};
};

} // namespace headcap::app
