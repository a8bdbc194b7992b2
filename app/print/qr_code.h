// A QR code (ISO/IEC 18004, by libqrencode) as rows of dark and light modules, without its quiet
// zone; a scanner that types reads it back into any field.
#pragma once

#include <string>
#include <vector>

#include <QPainter>
#include <QRectF>

namespace headcap::app::print {

struct QrCode {
    int side = 0; // modules; 0: the text is too long
    std::vector<bool> dark;
    [[nodiscard]] bool isDark(int x, int y) const {
        return dark[static_cast<std::size_t>(y * side + x)];
    }
};

[[nodiscard]] QrCode qrCode(const std::string& text);

// With its quiet zone of four modules, black on white whatever the palette: that is what scans.
void paintQr(QPainter& painter, const QrCode& code, const QRectF& area);

} // namespace headcap::app::print
