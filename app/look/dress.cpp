#include "app/look/dress.h"

#include <QApplication>
#include <QToolTip>

#include "app/look/fonts.h"
#include "app/look/plain_tips.h"
#include "app/look/style.h"

// Qt's, which is in none of its headers.
Q_GUI_EXPORT void qt_set_sequence_auto_mnemonic(bool isOn);

namespace headcap::app {

void dress(QApplication& application, const Look& look) {
    // What the system had, before we put ours over it.
    static const Tone kSystemTone = toneOf(QApplication::palette());
    static const QFont kSystemFont = QApplication::font();
    if (qobject_cast<Style*>(QApplication::style()) == nullptr) {
        QApplication::setStyle(new Style);
        application.installEventFilter(new PlainTips(&application));
        // An ampersand in a name is one; keys are in the catalogue.
        qt_set_sequence_auto_mnemonic(false);
    }
    const QPalette palette = paletteFor(look.tone.value_or(kSystemTone));
    QApplication::setPalette(palette);
    QToolTip::setPalette(palette);
    const QFont font = interfaceFont(kSystemFont, look.textShare);
    application.setFont(font);
    QToolTip::setFont(font);
}

} // namespace headcap::app
