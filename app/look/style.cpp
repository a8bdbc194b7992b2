#include "app/look/style.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QStyleOption>

#include "app/look/grid.h"
#include "app/look/style_controls.h"

namespace headcap::app {

Style::Style() : QProxyStyle(QStringLiteral("Fusion")) {}

void Style::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    if (qobject_cast<QAbstractButton*>(widget) != nullptr ||
        qobject_cast<QComboBox*>(widget) != nullptr) {
        widget->setAttribute(Qt::WA_Hover);
    }
    // Enter presses the button the hand is on, outside of dialogs too. The toolkit moves the
    // default with the focus; the fill stays with the main action.
    if (auto* button = qobject_cast<QPushButton*>(widget)) {
        if (!button->property(kMainButton).isValid()) {
            button->setProperty(kMainButton, button->isDefault());
        }
        button->setAutoDefault(true);
    }
}

void Style::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                          const QWidget* widget) const {
    const Colours& c = coloursFor(option->palette);
    const bool hasFocus = option->state & State_HasFocus;
    switch (element) {
    case PE_PanelLineEdit:
        if (!controls::isInsideCombo(widget)) {
            controls::field(*painter, option->rect, c, hasFocus, widget);
        }
        return;
    case PE_FrameLineEdit:
        return;
    case PE_Frame:
        // Text areas with a frame are fields; an opened list has an edge against what it lies on;
        // whatever else is framed has no line.
        if (widget != nullptr && widget->inherits("QPlainTextEdit")) {
            controls::field(*painter, option->rect, c, widget->hasFocus(), widget);
        } else if (widget != nullptr && widget->windowType() == Qt::Popup) {
            controls::edge(*painter, option->rect, c);
        }
        return;
    case PE_FrameGroupBox:
    case PE_FrameStatusBarItem:
    case PE_FrameTabWidget:
    case PE_FrameTabBarBase:
    case PE_PanelButtonTool:
        return;
    case PE_FrameMenu:
    case PE_PanelMenu:
        painter->fillRect(option->rect, c.edge);
        painter->fillRect(option->rect.adjusted(1, 1, -1, -1), c.raised);
        return;
    case PE_PanelTipLabel:
        painter->fillRect(option->rect, c.edge);
        painter->fillRect(option->rect.adjusted(1, 1, -1, -1), c.raised);
        return;
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck:
        controls::checkMark(*painter, *option);
        return;
    case PE_IndicatorRadioButton:
        controls::radioMark(*painter, *option);
        return;
    case PE_IndicatorArrowDown:
        controls::chevron(*painter, option->rect, c.quiet, Qt::DownArrow);
        return;
    case PE_IndicatorArrowUp:
        controls::chevron(*painter, option->rect, c.quiet, Qt::UpArrow);
        return;
    case PE_FrameFocusRect:
        if (qobject_cast<const QAbstractItemView*>(widget) == nullptr) {
            controls::focusRing(*painter, option->rect, c, widget);
        }
        return;
    case PE_PanelItemViewItem:
    case PE_PanelItemViewRow:
        controls::rowGround(*painter, *option);
        if (widget != nullptr && widget->inherits("QTableView")) {
            painter->fillRect(
                QRect(option->rect.left(), option->rect.bottom(), option->rect.width(), 1), c.rule);
        }
        return;
    default:
        QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void Style::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                        const QWidget* widget) const {
    const Colours& c = coloursFor(option->palette);
    switch (element) {
    case CE_PushButton: {
        // The toolkit's own styles show the focus of a button on some platforms only.
        const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
        drawControl(CE_PushButtonBevel, button, painter, widget);
        QStyleOptionButton words = *button;
        words.rect = subElementRect(SE_PushButtonContents, button, widget);
        drawControl(CE_PushButtonLabel, &words, painter, widget);
        if (button->state & State_HasFocus) {
            controls::focusRing(*painter, button->rect, c, widget);
        }
        return;
    }
    case CE_PushButtonBevel:
        controls::button(*painter, *qstyleoption_cast<const QStyleOptionButton*>(option), widget);
        return;
    case CE_PushButtonLabel: {
        QStyleOptionButton words = *qstyleoption_cast<const QStyleOptionButton*>(option);
        // Our buttons hold words, which may have an ampersand; those of the toolkit's own dialogs
        // have mnemonics.
        if (widget == nullptr || qobject_cast<const QDialog*>(widget->window()) == nullptr) {
            words.text.replace(u'&', QLatin1String("&&"));
        }
        const bool isQuiet = widget != nullptr && widget->property(kQuietButton).toBool();
        const bool isMain = widget != nullptr && widget->property(kMainButton).toBool();
        if (!(option->state & State_Enabled)) {
            words.palette.setColor(QPalette::ButtonText, c.quiet);
        } else if (isQuiet) {
            words.palette.setColor(QPalette::ButtonText, c.accent);
        } else if (isMain) {
            words.palette.setColor(QPalette::ButtonText, c.paper);
        }
        QProxyStyle::drawControl(element, &words, painter, widget);
        return;
    }
    case CE_ComboBoxLabel: {
        const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option);
        if (combo->editable) {
            return;
        }
        const QRect where = subControlRect(CC_ComboBox, combo, SC_ComboBoxEditField, widget);
        proxy()->drawItemText(
            painter, where, Qt::AlignLeft | Qt::AlignVCenter, combo->palette,
            combo->state & State_Enabled,
            combo->fontMetrics.elidedText(combo->currentText, Qt::ElideRight, where.width()),
            QPalette::Text);
        return;
    }
    case CE_MenuItem: {
        // The row it is on, as in our lists: no box within the box.
        QStyleOptionMenuItem row = *qstyleoption_cast<const QStyleOptionMenuItem*>(option);
        if ((row.state & State_Selected) && (row.state & State_Enabled)) {
            painter->fillRect(row.rect, c.picked);
            painter->fillRect(QRect(row.rect.topLeft(), QSize(3, row.rect.height())), c.accent);
        }
        row.state &= ~State_Selected;
        QProxyStyle::drawControl(element, &row, painter, widget);
        return;
    }
    case CE_HeaderSection:
        controls::header(*painter, *qstyleoption_cast<const QStyleOptionHeader*>(option));
        return;
    case CE_HeaderEmptyArea:
        painter->fillRect(option->rect, c.paper);
        return;
    case CE_TabBarTabShape:
        controls::tab(*painter, *qstyleoption_cast<const QStyleOptionTab*>(option));
        return;
    case CE_ProgressBar:
    case CE_ProgressBarGroove:
        controls::progress(*painter, *qstyleoption_cast<const QStyleOptionProgressBar*>(option));
        return;
    case CE_Splitter:
        painter->fillRect(option->rect, c.rule);
        return;
    case CE_ShapedFrame:
        drawPrimitive(PE_Frame, option, painter, widget);
        return;
    default:
        QProxyStyle::drawControl(element, option, painter, widget);
    }
}

void Style::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                               QPainter* painter, const QWidget* widget) const {
    const Colours& c = coloursFor(option->palette);
    if (control == CC_ComboBox) {
        const bool hasFocus = option->state & State_HasFocus;
        controls::field(*painter, option->rect, c, hasFocus, widget);
        controls::chevron(*painter, subControlRect(control, option, SC_ComboBoxArrow, widget),
                          c.quiet, Qt::DownArrow);
        return;
    }
    if (control == CC_ScrollBar) {
        const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option);
        controls::scrollBar(*painter, *slider,
                            subControlRect(control, slider, SC_ScrollBarSlider, widget));
        return;
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

} // namespace headcap::app
