// A button that is a word to press: no frame until it is under the hand.
#pragma once

#include <QString>

class QPushButton;

namespace headcap::app {

[[nodiscard]] QPushButton* quietButton(const QString& words, const QString& tip = {});

} // namespace headcap::app
