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
namespace {

constexpr int kIndicator = 18;
constexpr int kScroll = 12;
constexpr int kFieldPad = 2 * kGrid;

bool isInsideCombo(const QWidget* widget) {
    return widget != nullptr && qobject_cast<const QComboBox*>(widget->parentWidget()) != nullptr;
}

} // namespace

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

int Style::pixelMetric(PixelMetric metric, const QStyleOption* option,
                       const QWidget* widget) const {
    switch (metric) {
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
        return kIndicator;
    case PM_CheckBoxLabelSpacing:
    case PM_RadioButtonLabelSpacing:
        return kGap;
    case PM_ScrollBarExtent:
        return kScroll;
    case PM_ScrollView_ScrollBarSpacing:
    case PM_ScrollView_ScrollBarOverlap:
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
    case PM_TabBarBaseHeight:
    case PM_TabBarBaseOverlap:
        return 0;
    case PM_FocusFrameHMargin:
        return 2 * kGrid; // beside the words of a cell
    case PM_HeaderMargin:
        return 2 * kGrid + 2; // over them
    case PM_TabBarTabHSpace:
        return 4 * kGrid;
    case PM_ButtonMargin:
        return 2 * kGrid;
    case PM_MenuPanelWidth:
        return 1;
    case PM_MenuVMargin:
    case PM_MenuHMargin:
        return kGrid;
    case PM_SplitterWidth:
        return 1;
    case PM_ToolTipLabelFrameWidth:
        return 6;
    case PM_TextCursorWidth:
        return 2;
    default:
        return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

int Style::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                     QStyleHintReturn* data) const {
    switch (hint) {
    case SH_ComboBox_Popup:
        return 0; // a list below the field, not a menu over it
    case SH_EtchDisabledText:
    case SH_DitherDisabledText:
    case SH_ItemView_ArrowKeysNavigateIntoChildren:
        return 0;
    case SH_ScrollBar_LeftClickAbsolutePosition:
        return 1;
    case SH_ItemView_ShowDecorationSelected:
        return 1;
    case SH_ToolTip_WakeUpDelay:
        return 500;
    case SH_UnderlineShortcut:
        return 1;
    case SH_DialogButtonBox_ButtonsHaveIcons:
        return 0;
    default:
        return QProxyStyle::styleHint(hint, option, widget, data);
    }
}

QSize Style::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                              const QWidget* widget) const {
    QSize made = QProxyStyle::sizeFromContents(type, option, size, widget);
    const QFontMetrics metrics =
        option != nullptr ? option->fontMetrics : QFontMetrics(QApplication::font());
    switch (type) {
    case CT_LineEdit:
        if (!isInsideCombo(widget)) {
            made.setHeight(std::max(made.height(), controlHeight(metrics)));
        }
        return made;
    case CT_ComboBox:
        return {made.width() + 2 * kFieldPad, std::max(made.height(), controlHeight(metrics))};
    case CT_PushButton: {
        const bool isQuiet = widget != nullptr && widget->property(kQuietButton).toBool();
        return {size.width() + (isQuiet ? 4 : 8) * kGrid,
                std::max(size.height(), controlHeight(metrics))};
    }
    case CT_CheckBox:
    case CT_RadioButton:
        return {made.width(), std::max(made.height(), controlHeight(metrics))};
    case CT_MenuItem: {
        const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
        if (item != nullptr && item->menuItemType == QStyleOptionMenuItem::Separator) {
            return made;
        }
        return {made.width() + 4 * kGrid, std::max(made.height(), controlHeight(metrics) - kGrid)};
    }
    case CT_ItemViewItem:
        return {made.width(), std::max(made.height(), controlHeight(metrics))};
    case CT_HeaderSection:
    case CT_TabBarTab:
        return {made.width(), controlHeight(metrics)};
    default:
        return made;
    }
}

QRect Style::subControlRect(ComplexControl control, const QStyleOptionComplex* option,
                            SubControl sub, const QWidget* widget) const {
    if (control == CC_ScrollBar) {
        const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option);
        if (slider != nullptr) {
            // No arrows: the groove is the whole bar.
            const QRect bar = slider->rect;
            const bool isUpright = slider->orientation == Qt::Vertical;
            const int length = isUpright ? bar.height() : bar.width();
            const auto span = static_cast<qint64>(slider->maximum) - slider->minimum;
            int grip = length;
            if (span > 0) {
                grip = static_cast<int>(static_cast<qint64>(slider->pageStep) * length /
                                        (span + slider->pageStep));
                grip = std::min(length, std::max(grip, 8 * kGrid));
            }
            const int start =
                sliderPositionFromValue(slider->minimum, slider->maximum, slider->sliderPosition,
                                        length - grip, slider->upsideDown);
            const auto along = [&](int from, int size) {
                return isUpright ? QRect(bar.left(), bar.top() + from, bar.width(), size)
                                 : QRect(bar.left() + from, bar.top(), size, bar.height());
            };
            switch (sub) {
            case SC_ScrollBarGroove:
                return bar;
            case SC_ScrollBarSlider:
                return along(start, grip);
            case SC_ScrollBarSubPage:
                return along(0, start);
            case SC_ScrollBarAddPage:
                return along(start + grip, length - start - grip);
            default:
                return {};
            }
        }
    }
    if (control == CC_ComboBox) {
        const QRect all = option->rect;
        constexpr int kArrow = 28;
        switch (sub) {
        case SC_ComboBoxArrow:
            return visualRect(option->direction, all,
                              QRect(all.right() - kArrow, all.top(), kArrow, all.height()));
        case SC_ComboBoxEditField:
            return visualRect(option->direction, all, all.adjusted(kFieldPad, 1, -kArrow, -1));
        default:
            break;
        }
    }
    return QProxyStyle::subControlRect(control, option, sub, widget);
}

QRect Style::subElementRect(SubElement element, const QStyleOption* option,
                            const QWidget* widget) const {
    if (element == SE_LineEditContents && !isInsideCombo(widget)) {
        if (widget != nullptr && widget->property(kBare).toBool()) {
            return option->rect.adjusted(-2, 0, 0, 0); // the field's own margin
        }
        return option->rect.adjusted(kFieldPad - 2, 0, -(kFieldPad - 2), -2);
    }
    if (element == SE_PushButtonFocusRect) {
        return option->rect;
    }
    return QProxyStyle::subElementRect(element, option, widget);
}

void Style::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                          const QWidget* widget) const {
    const Colours& c = coloursFor(option->palette);
    const bool hasFocus = option->state & State_HasFocus;
    switch (element) {
    case PE_PanelLineEdit:
        if (!isInsideCombo(widget)) {
            controls::field(*painter, option->rect, c, hasFocus, widget);
        }
        return;
    case PE_FrameLineEdit:
        return;
    case PE_Frame:
        // Text areas with a frame are fields; whatever else is framed has no line.
        if (widget != nullptr && widget->inherits("QPlainTextEdit")) {
            controls::field(*painter, option->rect, c, widget->hasFocus(), widget);
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
