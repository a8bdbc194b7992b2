#include "core/cutting/house_figures.h"

#include <algorithm>
#include <array>

#include "core/values/decimal.h"
#include "core/values/measure_text.h"

namespace headcap::core {
namespace {

// Beyond these no figure of a bench lies.
constexpr Length kMostLength = Length::millimetres(500);
constexpr std::int64_t kMostPerMille = 5'000;

constexpr std::array kFigures{
    HouseFigure{.key = "cutting.least_strip",
                .words = "Narrowest strip the shear cuts",
                .group = "Cutting",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.rules.leastStrip; }},
    HouseFigure{.key = "cutting.least_offcut",
                .words = "Narrowest offcut worth keeping",
                .group = "Cutting",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.rules.leastOffcut; }},
    HouseFigure{.key = "cutting.kerf",
                .words = "Lost to the blade",
                .group = "Cutting",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.rules.kerf; }},
    HouseFigure{.key = "cutting.edge_trim",
                .words = "Trimmed off every edge of a sheet",
                .group = "Cutting",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.edgeTrim; }},
    HouseFigure{
        .key = "cutting.stretch_across",
        .words = "Stretch of pasted paper across the grain",
        .group = "Cutting",
        .source = "taught, 1 to 2.5 %",
        .ppm = [](CuttingHouse& house) -> std::int64_t& { return house.stretch.acrossPpm; }},
    HouseFigure{.key = "cutting.stretch_along",
                .words = "Stretch of pasted paper along the grain",
                .group = "Cutting",
                .source = "taught, 0.1 to 0.4 %",
                .ppm = [](CuttingHouse& house) -> std::int64_t& { return house.stretch.alongPpm; }},
    HouseFigure{
        .key = "cutting.stretch_handmade",
        .words = "Stretch of pasted handmade paper",
        .group = "Cutting",
        .source = "Cockerell 1901: about equal both ways; the figure is taught",
        .ppm = [](CuttingHouse& house) -> std::int64_t& { return house.handmadeStretchPpm; }},
    HouseFigure{.key = "cutting.offcut_cost",
                .words = "What an offcut counts for against a whole sheet",
                .group = "Cutting",
                .source = "common practice",
                .ppm = [](CuttingHouse& house) -> std::int64_t& { return house.offcutCostPpm; }},
    HouseFigure{.key = "case.square",
                .words = "Square of the boards",
                .group = "Case",
                .source = "published: Dingword, hard cover size, 2012",
                .length = [](CuttingHouse& house) -> Length& { return house.work.square; }},
    HouseFigure{.key = "case.board_set_back",
                .words = "Board narrower than the leaf",
                .group = "Case",
                .source = "published: Dingword, hard cover size, 2012",
                .length = [](CuttingHouse& house) -> Length& { return house.work.boardSetBack; }},
    HouseFigure{.key = "case.spine_ease",
                .words = "Spine piece less than spine and boards",
                .group = "Case",
                .source = "published: Dingword, hard cover size, 2012",
                .length = [](CuttingHouse& house) -> Length& { return house.work.spineEase; }},
    HouseFigure{.key = "case.gap",
                .words = "Gap between board and spine piece",
                .group = "Case",
                .source = "published: Dingword, hard cover size, 2012",
                .length = [](CuttingHouse& house) -> Length& { return house.work.caseGap; }},
    HouseFigure{.key = "case.turn_in",
                .words = "Turn-in",
                .group = "Case",
                .source = "published: Dingword, hard cover size, 2012",
                .length = [](CuttingHouse& house) -> Length& { return house.work.caseTurnIn; }},
    HouseFigure{.key = "endpaper.trim",
                .words = "Left on each edge, cut after drying",
                .group = "Endpapers",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.endpaperTrim; }},
    HouseFigure{.key = "endpaper.tip_strip",
                .words = "Pasted edge of a tipped endpaper",
                .group = "Endpapers",
                .source = "published: 1.6 to 3.2 mm",
                .length = [](CuttingHouse& house) -> Length& { return house.work.tipStrip; }},
    HouseFigure{.key = "endpaper.zigzag",
                .words = "Limb of the zigzag",
                .group = "Endpapers",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.zigzag; }},
    HouseFigure{.key = "endpaper.joint_overlap",
                .words = "Joint on leaf and on board",
                .group = "Endpapers",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.jointOverlap; }},
    HouseFigure{.key = "endpaper.joint",
                .words = "Joint",
                .group = "Endpapers",
                .source = "published: 7 to 10 mm",
                .length = [](CuttingHouse& house) -> Length& { return house.work.joint; }},
    HouseFigure{.key = "endpaper.stub",
                .words = "Stub round a gathering",
                .group = "Endpapers",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.endpaperStub; }},
    HouseFigure{.key = "repair.guard_width",
                .words = "Width of a guard",
                .group = "Guards and linings",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.guardWidth; }},
    HouseFigure{.key = "repair.hinge_width",
                .words = "Width of a hinge",
                .group = "Guards and linings",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.hingeWidth; }},
    HouseFigure{.key = "lining.overlap",
                .words = "First lining on each board",
                .group = "Guards and linings",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.liningOverlap; }},
    HouseFigure{.key = "lining.short",
                .words = "Lining short of head and tail",
                .group = "Guards and linings",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.liningShort; }},
    HouseFigure{.key = "box.wrapper_flap",
                .words = "Flap of a wrapper",
                .group = "Boxes",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.wrapperFlap; }},
    HouseFigure{.key = "box.ease",
                .words = "Room about the book",
                .group = "Boxes",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.boxEase; }},
    HouseFigure{.key = "box.card",
                .words = "Thickness of box card",
                .group = "Boxes",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.card; }},
    HouseFigure{.key = "box.flap",
                .words = "Flaps of a four-flap box over the book",
                .group = "Boxes",
                .source = "common practice",
                .perMille = [](CuttingHouse& house) -> int& { return house.work.flapPerMille; }},
    HouseFigure{.key = "box.tray_ease",
                .words = "Room between tray and lid",
                .group = "Boxes",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.trayEase; }},
    HouseFigure{.key = "box.square",
                .words = "Square of the box's case",
                .group = "Boxes",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.boxSquare; }},
    HouseFigure{.key = "leather.lift",
                .words = "New leather under the old",
                .group = "Leather",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.leatherLift; }},
    HouseFigure{.key = "leather.turn_in",
                .words = "Turn-in of leather",
                .group = "Leather",
                .source = "common practice",
                .length = [](CuttingHouse& house) -> Length& { return house.work.leatherTurnIn; }},
    HouseFigure{
        .key = "leather.spine_arc",
        .words = "Round of the spine to its thickness",
        .group = "Leather",
        .source = "common practice",
        .perMille = [](CuttingHouse& house) -> int& { return house.work.spineArcPerMille; }},
    HouseFigure{.key = "leather.quarter",
                .words = "Quarter leather on the board",
                .group = "Leather",
                .source = "common practice",
                .perMille = [](CuttingHouse& house) -> int& { return house.work.quarterPerMille; }},
    HouseFigure{.key = "leather.corner",
                .words = "Corner along each edge",
                .group = "Leather",
                .source = "common practice",
                .perMille = [](CuttingHouse& house) -> int& { return house.work.cornerPerMille; }},
    HouseFigure{
        .key = "sewing.flattened",
        .words = "Thread left thick under the press",
        .group = "Sewing",
        .source = "common practice",
        .perMille = [](CuttingHouse& house) -> int& { return house.sewing.flattenedPerMille; }},
    HouseFigure{
        .key = "sewing.swell",
        .words = "Swell wanted at the spine",
        .group = "Sewing",
        .source = "about a third is taught; P. Geraty's trial aims at 30 %",
        .perMille = [](CuttingHouse& house) -> int& { return house.sewing.wantedPerMille; }},
    HouseFigure{.key = "sewing.fibre",
                .words = "Fibre in the round of a thread",
                .group = "Sewing",
                .source = "common practice",
                .perMille = [](CuttingHouse& house) -> int& { return house.sewing.fibrePerMille; }},
};

// "50 %" or "50" as a whole number of 10^-places per cent.
std::optional<std::int64_t> share(std::string_view text, int places) {
    while (!text.empty() && (text.back() == '%' || text.back() == ' ')) {
        text.remove_suffix(1);
    }
    const auto value = parseDecimal(text, places);
    return value && *value >= 0 ? std::optional{*value} : std::nullopt;
}

} // namespace

std::span<const HouseFigure> houseFigures() {
    return kFigures;
}

const HouseFigure* houseFigureNamed(std::string_view key) {
    const auto found = std::ranges::find(kFigures, key, &HouseFigure::key);
    return found == kFigures.end() ? nullptr : &*found;
}

std::string textOf(const HouseFigure& figure, CuttingHouse house) {
    if (figure.length != nullptr) {
        return toText(figure.length(house));
    }
    return figure.perMille != nullptr ? decimalText(figure.perMille(house), 1) + " %"
                                      : decimalText(figure.ppm(house), 4) + " %";
}

bool put(const HouseFigure& figure, std::string_view text, CuttingHouse& house) {
    if (figure.length != nullptr) {
        const auto length = parseLength(text);
        if (!length || length->isNegative() || *length > kMostLength) {
            return false;
        }
        figure.length(house) = *length;
        return true;
    }
    if (figure.perMille != nullptr) {
        const auto value = share(text, 1);
        if (!value || *value > kMostPerMille) {
            return false;
        }
        figure.perMille(house) = static_cast<int>(*value);
        return true;
    }
    const auto value = share(text, 4);
    if (!value || *value > kMostPerMille * 1'000) {
        return false;
    }
    figure.ppm(house) = *value;
    return true;
}

} // namespace headcap::core
