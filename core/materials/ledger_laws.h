// What must hold of the ledger whatever has happened: nothing comes from nowhere, and what went
// is said. `headcap verify` tells every breach.
#pragma once

#include <string>
#include <vector>

#include "core/materials/cutting_record.h"
#include "core/materials/shelf.h"

namespace headcap::core {

enum class LedgerLaw {
    sameUnit, // an entry is in the unit its lot is counted in
    contrary, // and its contrary takes back exactly what it said, once
    notBelowNothing,
    mixTook,     // what left a lot for mixes is what they say they were made of
    mixGave,     // a mix is made of something, and never weighs more than that
    useBooked,   // what a step used is what the ledger says, and nothing where it is struck
    useSaid,     // what the ledger says was used, a step says
    sheetAddsUp, // pieces, offcuts and waste of a cut sheet make up the sheet
    cutBooked,   // and the sheets that cuttings say were cut are those that left
};

struct LedgerBook {
    Shelf shelf{};
    std::vector<MaterialUse> uses{};
    std::vector<Step> steps{};
    std::vector<Cutting> cuttings{};
    std::vector<CutPart> cutParts{};
    TechniquesInForce techniques{};
};

struct LedgerBreach {
    LedgerLaw law = LedgerLaw::sameUnit;
    RecordRef record;
    std::string sentence{};
};

[[nodiscard]] std::vector<LedgerBreach> ledgerBreaches(const LedgerBook& book);

} // namespace headcap::core
