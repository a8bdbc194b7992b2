#include "core/materials/kind_properties.h"

#include <algorithm>
#include <initializer_list>

namespace headcap::core {

bool matters(KindProperty property, MaterialClass kind) {
    using C = MaterialClass;
    using P = KindProperty;
    const auto isOneOf = [kind](std::initializer_list<MaterialClass> kinds) {
        return std::ranges::find(kinds, kind) != kinds.end();
    };
    switch (property) {
    case P::weight:
        return isOneOf({C::paper, C::tissue, C::board, C::cloth});
    case P::thickness:
        return isOneOf({C::paper, C::tissue, C::board, C::leather, C::vellum, C::cloth, C::thread});
    case P::fibre:
        return isOneOf({C::paper, C::tissue, C::board, C::cloth, C::thread});
    case P::tannage:
        return kind == C::leather;
    case P::watermark:
        return kind == C::paper;
    case P::solids:
        return isOneOf({C::adhesivePrepared, C::consolidant});
    case P::density:
        return isOneOf({C::adhesivePrepared, C::consolidant, C::solvent});
    case P::permanence:
        return isOneOf({C::paper, C::tissue, C::board, C::ink});
    case P::stretch:
        return isOneOf({C::paper, C::tissue});
    case P::shelfLife:
        return isOneOf({C::adhesiveDry, C::adhesivePrepared, C::solvent, C::consolidant, C::ink,
                        C::consumable});
    }
    return false;
}

} // namespace headcap::core
