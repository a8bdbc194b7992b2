// Sizes and places of the controls, and how they behave.
#include <algorithm>

#include <QApplication>
#include <QStyleOption>

#include "app/look/grid.h"
#include "app/look/style.h"
#include "app/look/style_controls.h"

namespace headcap::app {
namespace {

constexpr int kIndicator = 18;
constexpr int kScroll = 12;

} // namespace

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
        return kGrid;
    case PM_MenuHMargin:
        return 0;
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
    case SH_UnderlineShortcut: // keys are in the catalogue: an underline would promise one
        return 0;
    case SH_ScrollBar_LeftClickAbsolutePosition:
        return 1;
    case SH_ItemView_ShowDecorationSelected:
        return 1;
    case SH_ToolTip_WakeUpDelay:
        return 500;
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
        if (!controls::isInsideCombo(widget)) {
            made.setHeight(std::max(made.height(), controlHeight(metrics)));
        }
        return made;
    case CT_ComboBox:
        return {made.width() + 2 * controls::kFieldPad,
                std::max(made.height(), controlHeight(metrics))};
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
            return visualRect(option->direction, all,
                              all.adjusted(controls::kFieldPad, 1, -kArrow, -1));
        default:
            break;
        }
    }
    return QProxyStyle::subControlRect(control, option, sub, widget);
}

QRect Style::subElementRect(SubElement element, const QStyleOption* option,
                            const QWidget* widget) const {
    if (element == SE_LineEditContents && !controls::isInsideCombo(widget)) {
        if (widget != nullptr && widget->property(kBare).toBool()) {
            return option->rect.adjusted(-2, 0, 0, 0); // the field's own margin
        }
        return option->rect.adjusted(controls::kFieldPad - 2, 0, -(controls::kFieldPad - 2), -2);
    }
    if (element == SE_HeaderLabel) { // as high as its section: nothing below the line is cut
        return option->rect.adjusted(controls::kFieldPad, 0, -controls::kFieldPad, 0);
    }
    if (element == SE_PushButtonFocusRect) {
        return option->rect;
    }
    return QProxyStyle::subElementRect(element, option, widget);
}

} // namespace headcap::app
