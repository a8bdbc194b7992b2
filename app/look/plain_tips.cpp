#include "app/look/plain_tips.h"

#include <QAbstractItemView>
#include <QHelpEvent>
#include <QTextDocument>
#include <QToolTip>

namespace headcap::app {
namespace {

QString tipAt(const QWidget& widget, const QPoint& at) {
    const auto* view = qobject_cast<const QAbstractItemView*>(widget.parentWidget());
    const QString ofRow = view != nullptr && view->viewport() == &widget
                              ? view->indexAt(at).data(Qt::ToolTipRole).toString()
                              : QString{};
    return ofRow.isEmpty() ? widget.toolTip() : ofRow;
}

} // namespace

bool PlainTips::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ToolTip && watched->isWidgetType()) {
        auto* widget = static_cast<QWidget*>(watched);
        const auto* help = static_cast<QHelpEvent*>(event);
        if (const QString tip = tipAt(*widget, help->pos()); Qt::mightBeRichText(tip)) {
            QToolTip::showText(help->globalPos(), tip.toHtmlEscaped(), widget);
            return true;
        }
    }
    return QObject::eventFilter(watched, event);
}

} // namespace headcap::app
