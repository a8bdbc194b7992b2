// Paints the rows of a ruled list.
#pragma once

#include <QStyledItemDelegate>

namespace headcap::app {

class RuledDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void setMarkWidth(int width) { m_markWidth = width; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

private:
    int m_markWidth = 56;
};

} // namespace headcap::app
