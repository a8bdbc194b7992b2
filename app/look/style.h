// The one style of the program, over Fusion: fields are ruled, buttons are words in a hair line,
// lists are ruled lines. All colours come from the palette of the widget drawn.
//
// Widgets say what they are by property: kBoxed (a field with a line all round: find boxes),
// kWrong (the field's text can't be read), kQuietButton (a button without its line: links, undo).
#pragma once

#include <QProxyStyle>

namespace headcap::app {

inline constexpr const char* kBoxed = "headcapBoxed";
inline constexpr const char* kBare = "headcapBare"; // a field that is drawn by what holds it
inline constexpr const char* kWrong = "headcapWrong";
// The main action of its page: filled. Of a button made the default one; set by the style.
inline constexpr const char* kMainButton = "headcapMain";
inline constexpr const char* kQuietButton = "headcapQuiet";

class Style : public QProxyStyle {
    Q_OBJECT
public:
    Style();

    int pixelMetric(PixelMetric metric, const QStyleOption* option,
                    const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                           const QWidget* widget) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl sub,
                         const QWidget* widget) const override;
    QRect subElementRect(SubElement element, const QStyleOption* option,
                         const QWidget* widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                            QPainter* painter, const QWidget* widget) const override;
    void polish(QWidget* widget) override;
    using QProxyStyle::polish;
};

} // namespace headcap::app
