#include "app/look/quiet_button.h"

#include <QPushButton>

#include "app/look/style.h"

namespace headcap::app {

QPushButton* quietButton(const QString& words, const QString& tip) {
    auto* button = new QPushButton(words);
    button->setProperty(kQuietButton, true);
    button->setToolTip(tip);
    return button;
}

} // namespace headcap::app
