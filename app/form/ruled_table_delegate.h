// Draws the rows of a RuledTable, in columns or, where it is narrow, below one another; and says
// how high they are.
#pragma once

#include <QStyledItemDelegate>

namespace headcap::app {

class RuledTable;

class RuledTableDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit RuledTableDelegate(RuledTable& table);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

private:
    RuledTable& m_table;
};

} // namespace headcap::app
