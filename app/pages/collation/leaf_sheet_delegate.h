// How a cell of the leaf sheet is drawn: a box to be ticked, ticked, or a hair dash where the leaf
// is not of that work; told by shape, a rule under each row.
#pragma once

#include <QStyledItemDelegate>

namespace headcap::app {

class LeafSheetDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
};

} // namespace headcap::app
