// Which properties matter of which kinds of material: what is asked first of a kind and of its
// lots. Others may be noted all the same.
#pragma once

#include "core/materials/material.h"

namespace headcap::core {

enum class KindProperty {
    weight, // g/m²
    thickness,
    fibre,
    tannage,
    watermark,
    solids,
    density,
    permanence, // pH, alkali reserve, the standard met and its evidence
    stretch,    // when pasted
    shelfLife,
};

[[nodiscard]] bool matters(KindProperty property, MaterialClass kind);

} // namespace headcap::core
