#include "app/look/fonts.h"

#include <algorithm>
#include <map>
#include <utility>

#include <QApplication>
#include <QFontDatabase>

namespace headcap::app {
namespace {

constexpr double kLeastPoints = 10.5;

struct Cut {
    double share; // of the application's font
    bool isText;  // Gentium Plus
    bool isBold;
    bool isItalic;
};

Cut cutOf(Face face) {
    switch (face) {
    case Face::body:
        return {1.0, false, false, false};
    case Face::strong:
        return {1.0, false, true, false};
    case Face::small:
        return {0.9, false, false, false};
    case Face::smallStrong:
        return {0.9, false, true, false};
    case Face::heading:
        return {1.35, true, false, true};
    case Face::formula:
        return {1.2, true, false, false};
    case Face::slip:
        return {1.4, true, false, false};
    case Face::book:
        return {1.9, true, false, false};
    case Face::title:
        return {2.15, true, false, false};
    case Face::bench:
        return {1.45, false, false, false};
    case Face::clock:
        return {2.5, false, true, false};
    }
    return {1.0, false, false, false};
}

} // namespace

QStringList interfaceFamilies() {
    return {QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Hebrew"),
            QStringLiteral("Noto Sans CJK SC"), QStringLiteral("DejaVu Sans")};
}

QStringList textFamilies() {
    return {QStringLiteral("Gentium Plus"), QStringLiteral("Noto Serif Hebrew"),
            QStringLiteral("Noto Serif CJK SC"), QStringLiteral("DejaVu Sans")};
}

QFont interfaceFont(const QFont& system, double share) {
    QFont made = system;
    made.setFamilies(interfaceFamilies());
    made.setPointSizeF(std::max(kLeastPoints, system.pointSizeF()) * share);
    return made;
}

QFont faceFont(Face face) {
    // Asked for at every word that is measured; made anew only for another font of the program's.
    thread_local std::pair<QFont, std::map<Face, QFont>> kept;
    if (const QFont now = QApplication::font(); kept.first != now) {
        kept = {now, {}};
    }
    const auto [known, isNew] = kept.second.try_emplace(face, kept.first);
    if (isNew) {
        const Cut cut = cutOf(face);
        QFont& made = known->second;
        made.setPointSizeF(made.pointSizeF() * cut.share);
        made.setBold(cut.isBold);
        made.setItalic(cut.isItalic);
        if (cut.isText) {
            made.setFamilies(textFamilies());
        }
    }
    return known->second;
}

std::future<void> readFontsAhead() {
    // Any question reads the whole database, once, under its own lock.
    return std::async(std::launch::async,
                      [] { (void)QFontDatabase::hasFamily(interfaceFamilies().front()); });
}

} // namespace headcap::app
