#include "app/look/tab_order.h"

#include <vector>

#include <QLayout>
#include <QScrollArea>
#include <QWidget>

namespace headcap::app {
namespace {

void collect(QWidget& widget, std::vector<QWidget*>& found);

void collect(QLayout& layout, std::vector<QWidget*>& found) {
    for (int i = 0; i < layout.count(); ++i) {
        QLayoutItem* item = layout.itemAt(i);
        if (item->widget() != nullptr) {
            collect(*item->widget(), found);
        } else if (item->layout() != nullptr) {
            collect(*item->layout(), found);
        }
    }
}

void collect(QWidget& widget, std::vector<QWidget*>& found) {
    if ((widget.focusPolicy() & Qt::TabFocus) != 0) {
        found.push_back(&widget);
        return;
    }
    auto* scroll = qobject_cast<QScrollArea*>(&widget);
    if (scroll != nullptr && scroll->widget() != nullptr) {
        collect(*scroll->widget(), found);
    } else if (widget.layout() != nullptr) {
        collect(*widget.layout(), found);
    }
}

} // namespace

void tabAsSet(QWidget& sheet) {
    std::vector<QWidget*> found;
    collect(sheet, found);
    for (std::size_t i = 1; i < found.size(); ++i) {
        QWidget::setTabOrder(found[i - 1], found[i]);
    }
}

} // namespace headcap::app
