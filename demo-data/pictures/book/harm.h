// What happens to leaves, and how each harm looks once it has been treated.
#pragma once

#include "demo-data/loader/moment.h"
#include "demo-data/pictures/base/surface.h"

namespace headcap::demo {

struct Harm {
    const Json& what;
    QSizeF leaf;
    Seed seed;
    bool isTreated;
};

// Spread over the leaf.
void addFoxing(Surface& surface, const Harm& harm);
void addTideLine(Surface& surface, const Harm& harm);
void addStain(Surface& surface, const Harm& harm);
void addMould(Surface& surface, const Harm& harm);
void addThumbing(Surface& surface, const Harm& harm);

// Of the paper itself.
void addTear(Surface& surface, const Harm& harm);
void addLoss(Surface& surface, const Harm& harm);
void addWorm(Surface& surface, const Harm& harm);
void addCrease(Surface& surface, const Harm& harm);
void addGuard(Surface& surface, const Harm& harm);
void addTape(Surface& surface, const Harm& harm);
void addPlateMark(Surface& surface, const Harm& harm);
void addStatement(Surface& surface, const Harm& harm);

} // namespace headcap::demo
