#include <array>
#include <string>

#include "demo-data/loader/data_error.h"
#include "demo-data/pictures/book/harm.h"
#include "demo-data/pictures/book/leaf.h"

namespace headcap::demo {
namespace {

struct Adder {
    const char* name;
    void (*add)(Surface&, const Harm&);
};
constexpr std::array kAdders{
    Adder{"foxing", addFoxing},       Adder{"tide line", addTideLine},
    Adder{"stain", addStain},         Adder{"mould", addMould},
    Adder{"thumbing", addThumbing},   Adder{"tear", addTear},
    Adder{"loss", addLoss},           Adder{"worm", addWorm},
    Adder{"crease", addCrease},       Adder{"guard", addGuard},
    Adder{"tape", addTape},           Adder{"plate mark", addPlateMark},
    Adder{"statement", addStatement},
};

bool isSeen(const Json& what, bool treated) {
    const std::string when = what.value("seen", std::string{"always"});
    return when == "always" || when == (treated ? "after" : "before");
}

} // namespace

void age(Surface& surface, const LeafView& view) {
    Seed seed = mixed(view.seed, 500);
    for (const Json& what : view.leaf.value("harm", Json::array())) {
        const std::string kind = what.at("kind").get<std::string>();
        ++seed;
        if (!isSeen(what, view.isTreated)) {
            continue;
        }
        bool known = false;
        for (const Adder& adder : kAdders) {
            if (kind == adder.name) {
                adder.add(surface, {what, leafSize(view.leaf), seed, view.isTreated});
                known = true;
            }
        }
        if (!known) {
            throw DataError{"there is no harm \"" + kind + "\" to draw"};
        }
    }
}

} // namespace headcap::demo
