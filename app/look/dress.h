// Puts the program's look on: style, faces and palette, for every window at once.
#pragma once

#include <optional>

#include "app/look/palette.h"

class QApplication;

namespace headcap::app {

struct Look {
    std::optional<Tone> tone{}; // nothing: as the system's palette
    double textShare = 1.0;     // of the system's size
};

// May be called again when the person changes the look.
void dress(QApplication& application, const Look& look);

} // namespace headcap::app
