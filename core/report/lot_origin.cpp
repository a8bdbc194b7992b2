#include "core/report/lot_origin.h"

#include <vector>

#include "core/report/trade_words.h"
#include "core/report/writing.h"
#include "core/values/english.h"

namespace headcap::core::report {
std::string originText(const JobFile& file, const Lot& lot) {
    std::vector<std::string> parts{std::string{wordsFor(lot.origin)}};
    const bool saved = lot.origin == LotOrigin::saved || !lot.savedFrom.empty();
    parts.push_back(saved ? "from " + orNot(lot.savedFrom) : "");
    parts.push_back(lot.whyFree);
    const bool cut = lot.origin == LotOrigin::offcut || lot.parent;
    parts.push_back(cut ? "part of " + orNot(lotText(file, lot.parent)) : "");
    std::vector<std::string> sources;
    for (const LotPart& part : file.lotParts) {
        if (part.lot == lot.id) {
            sources.push_back(amountText(file, part.amount, part.source) + " of " +
                              lotText(file, part.source));
        }
    }
    parts.push_back(sources.empty() ? "" : "made of " + listed(sources));
    parts.push_back(lot.recipe);
    parts.push_back(lot.strength ? toText(*lot.strength) : "");
    parts.push_back(lot.mixedOn ? "mixed on " + dayText(*lot.mixedOn) : "");
    parts.push_back(lot.supplier);
    parts.push_back(lot.maker == lot.supplier ? "" : lot.maker);
    parts.push_back(lot.product);
    parts.push_back(lot.batch.empty() ? "" : "batch " + lot.batch);
    parts.push_back(lot.watermark.empty() ? "" : "watermark " + lot.watermark);
    return joined(parts, ", ");
}

} // namespace headcap::core::report
