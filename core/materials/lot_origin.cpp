#include "core/materials/lot_origin.h"

#include <vector>

#include "core/materials/shelf.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

std::string named(const JobFile& file, const std::optional<Id<Lot>>& id) {
    const Lot* lot = file.lot(id);
    return lot ? "lot " + lotName(*lot, file.material(lot->material)) : "a lot not recorded";
}

} // namespace

std::string originText(const JobFile& file, const Lot& lot) {
    std::vector<std::string> parts;
    switch (lot.origin) {
    case LotOrigin::bought:
        parts.push_back("bought");
        break;
    case LotOrigin::saved:
        parts.push_back("saved from " +
                        (lot.savedFrom.empty() ? "a source not recorded" : lot.savedFrom));
        parts.push_back(lot.whyFree);
        break;
    case LotOrigin::mixed:
        parts.push_back("mixed in the workshop");
        break;
    case LotOrigin::offcut:
        parts.push_back("cut from " + named(file, lot.parent));
        break;
    }
    std::vector<std::string> sources;
    for (const LotPart& part : file.lotParts) {
        if (part.lot == lot.id) {
            sources.push_back(toText(part.amount) + " of " + named(file, part.source));
        }
    }
    parts.push_back(sources.empty() ? "" : "from " + listed(sources));
    parts.push_back(lot.recipe);
    parts.push_back(lot.strength ? toText(*lot.strength) : "");
    parts.push_back(lot.mixedOn ? "mixed on " + dayText(*lot.mixedOn) : "");
    parts.push_back(lot.supplier);
    parts.push_back(lot.maker == lot.supplier ? "" : lot.maker);
    parts.push_back(lot.product);
    parts.push_back(lot.batch.empty() ? "" : "batch " + lot.batch);
    parts.push_back(lot.watermark.empty() ? "" : "watermark " + lot.watermark);
    std::erase(parts, std::string{});
    std::string all;
    for (const std::string& part : parts) {
        all += (all.empty() ? "" : ", ") + part;
    }
    return all;
}

} // namespace headcap::core
