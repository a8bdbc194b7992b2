#include "app/print/qr_code.h"

#include <memory>

#include <qrencode.h>

namespace headcap::app::print {
namespace {

constexpr int kQuietZone = 4;

} // namespace

QrCode qrCode(const std::string& text) {
    // Middle correction: labels get pasty fingers.
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> made{
        QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_M, QR_MODE_8, 1), &QRcode_free};
    QrCode code;
    if (made == nullptr) {
        return code;
    }
    code.side = made->width;
    const int count = code.side * code.side;
    for (int i = 0; i < count; ++i) {
        code.dark.push_back((made->data[i] & 1) != 0);
    }
    return code;
}

void paintQr(QPainter& painter, const QrCode& code, const QRectF& area) {
    if (code.side == 0) {
        return;
    }
    const double side = std::min(area.width(), area.height());
    const double module = side / (code.side + 2 * kQuietZone);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(QRectF{area.topLeft(), QSizeF{side, side}}, Qt::white);
    for (int y = 0; y < code.side; ++y) {
        for (int x = 0; x < code.side; ++x) {
            if (code.isDark(x, y)) {
                painter.fillRect(QRectF{area.left() + (x + kQuietZone) * module,
                                        area.top() + (y + kQuietZone) * module, module, module},
                                 Qt::black);
            }
        }
    }
    painter.restore();
}

} // namespace headcap::app::print
