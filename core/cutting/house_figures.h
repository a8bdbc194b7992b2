// The house values of cutting, case making and sewing as a table: each by its key, with what it is
// called and where it comes from, read and written as text, so that a workshop keeps its own
// (HouseValue records) and the rest stays as it ships.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/cutting/cut_plan.h"
#include "core/cutting/pieces_of_work.h"
#include "core/cutting/swell.h"

namespace headcap::core {

struct CuttingHouse {
    WorkHouseValues work{};
    SewingHouseValues sewing{};
    CutRules rules{
        .kerf = {}, .leastStrip = Length::millimetres(5), .leastOffcut = Length::millimetres(40)};
    Length edgeTrim{}; // off every sheet
    Stretch stretch{.acrossPpm = 15'000,
                    .alongPpm = 2'000};      // pasted paper that says nothing itself
    std::int64_t handmadeStretchPpm = 8'000; // and of paper without grain, either way
    std::int64_t offcutCostPpm = 500'000;    // of what a whole sheet of the size would cost
};

struct HouseFigure {
    std::string_view key;   // "cutting.square"
    std::string_view words; // "Square of the boards"
    std::string_view group; // "Case"
    std::string_view source;
    // One of these.
    Length& (*length)(CuttingHouse&) = nullptr;
    int& (*perMille)(CuttingHouse&) = nullptr;
    std::int64_t& (*ppm)(CuttingHouse&) = nullptr;
};

[[nodiscard]] std::span<const HouseFigure> houseFigures();
[[nodiscard]] const HouseFigure* houseFigureNamed(std::string_view key);

// "3 mm", "50 %".
[[nodiscard]] std::string textOf(const HouseFigure& figure, CuttingHouse house);
// False where the text is no measure, or no share, that can be; then nothing is changed.
[[nodiscard]] bool put(const HouseFigure& figure, std::string_view text, CuttingHouse& house);

} // namespace headcap::core
