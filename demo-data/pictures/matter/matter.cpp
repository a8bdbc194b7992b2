#include "demo-data/pictures/matter/matter.h"

#include <array>
#include <string_view>

namespace headcap::demo {
namespace {

struct Drawer {
    const char* name;
    void (*draw)(QPainter&, const Json&, const QSizeF&, Ink, Seed);
};
constexpr std::array kDrawers{
    Drawer{"title", drawTitle}, Drawer{"prose", drawProse},       Drawer{"music", drawMusic},
    Drawer{"map", drawMap},     Drawer{"accounts", drawAccounts},
};

} // namespace

QString textOf(const Json& object, const char* member) {
    return QString::fromStdString(object.value(member, std::string{}));
}

void drawMatter(QPainter& painter, const Json& matter, const QSizeF& leaf, Ink ink, Seed seed) {
    for (const Drawer& drawer : kDrawers) {
        if (const auto part = matter.find(drawer.name); part != matter.end()) {
            painter.save();
            drawer.draw(painter, *part, leaf, ink, mixed(seed, seedOf(drawer.name)));
            painter.restore();
        }
    }
}

} // namespace headcap::demo
