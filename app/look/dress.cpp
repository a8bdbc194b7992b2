#include "app/look/dress.h"

#include <QApplication>
#include <QToolTip>

#include "app/look/fonts.h"
#include "app/look/style.h"

namespace headcap::app {

void dress(QApplication& application, const Look& look) {
    // What the system had, before we put ours over it.
    static const Tone kSystemTone = toneOf(QApplication::palette());
    static const QFont kSystemFont = QApplication::font();
    if (qobject_cast<Style*>(QApplication::style()) == nullptr) {
        QApplication::setStyle(new Style);
    }
    const QPalette palette = paletteFor(look.tone.value_or(kSystemTone));
    QApplication::setPalette(palette);
    QToolTip::setPalette(palette);
    const QFont font = interfaceFont(kSystemFont, look.textShare);
    application.setFont(font);
    QToolTip::setFont(font);
}

} // namespace headcap::app
