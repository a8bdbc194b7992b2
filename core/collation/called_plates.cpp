#include "core/collation/called_plates.h"

namespace headcap::core {
namespace {

std::string remark(const PlateFinding& finding, const CalledPlate& plate) {
    switch (finding.problem) {
    case PlateProblem::placeNotInBook:
        return "its place is not in this book's make-up";
    case PlateProblem::labelTwice:
        return "another is called the same";
    case PlateProblem::outOfOrder:
        return "it belongs before the one listed ahead of it";
    case PlateProblem::unplaced:
        return plate.belongsAt.empty() || parsePlatePlace(plate.belongsAt)
                   ? "where it belongs is not said"
                   : "where it belongs is not understood; say it like “to face A1r”";
    case PlateProblem::lacking:
        break; // its presence says so
    }
    return {};
}

} // namespace

PlateCheck checkPlates(const LaidBook& book, const std::vector<CalledPlate>& plates) {
    std::vector<PlateCalled> called;
    for (const CalledPlate& plate : plates) {
        const auto place = parsePlatePlace(plate.belongsAt);
        called.push_back({.label = plate.name,
                          .place = place.value_or(PlatePlace{}),
                          .source = plate.source,
                          .present = plate.presence != PlatePresence::lacking &&
                                     plate.presence != PlatePresence::notLookedFor});
    }
    return checkPlates(book, called);
}

std::string remarkOn(const PlateCheck& check, const std::vector<CalledPlate>& plates,
                     std::size_t plate) {
    std::string text;
    for (const PlateFinding& finding : check.findings) {
        const std::string one =
            finding.plate == plate ? remark(finding, plates[plate]) : std::string{};
        text += (text.empty() || one.empty() ? "" : "; ") + one;
    }
    return text;
}

} // namespace headcap::core
