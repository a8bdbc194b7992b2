// The parts of sheets while they are cut, for the check of a plan.
#pragma once

#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "core/cutting/cut_plan.h"

namespace headcap::core {

class CutSimulation {
public:
    struct Parts {
        Length first, second; // widths of what the cut left on either side; may be nothing
    };

    void addSheet(SheetPlace on, Length width, Length height);
    [[nodiscard]] bool hasSheet(const SheetPlace& on) const { return m_sheets.contains(on); }
    // Nothing where no part lies under the cut from edge to edge.
    std::optional<Parts> cut(const SheetCut& cut, Length kerf);
    // Takes a part of exactly this place and size; says whether there was one.
    bool take(const SheetPlace& on, const CutRect& rect);

private:
    using Interval = std::pair<Length, Length>; // start, length
    // Parts by their extent across a cut, in order along it.
    using Bands = std::map<Interval, std::map<Length, Length>>;
    struct Sheet {
        Bands byRows;    // y and height → x → width
        Bands byColumns; // x and width → y → height
    };
    static void add(Sheet& sheet, const CutRect& rect);
    static void remove(Sheet& sheet, const CutRect& rect);

    std::map<SheetPlace, Sheet> m_sheets;
};

} // namespace headcap::core
