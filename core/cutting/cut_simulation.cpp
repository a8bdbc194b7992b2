#include "core/cutting/cut_simulation.h"

#include <algorithm>

namespace headcap::core {

void CutSimulation::add(Sheet& sheet, const CutRect& r) {
    if (r.width > Length{} && r.height > Length{}) {
        sheet.byRows[{r.y, r.height}][r.x] = r.width;
        sheet.byColumns[{r.x, r.width}][r.y] = r.height;
    }
}

void CutSimulation::remove(Sheet& sheet, const CutRect& r) {
    sheet.byRows[{r.y, r.height}].erase(r.x);
    sheet.byColumns[{r.x, r.width}].erase(r.y);
}

void CutSimulation::addSheet(SheetPlace on, Length width, Length height) {
    add(m_sheets[on], {{}, {}, width, height});
}

std::optional<CutSimulation::Parts> CutSimulation::cut(const SheetCut& cut, Length kerf) {
    const auto sheet = m_sheets.find(cut.on);
    if (sheet == m_sheets.end()) {
        return std::nullopt;
    }
    const bool isAtX = cut.axis == CutAxis::x;
    const Bands& bands = isAtX ? sheet->second.byRows : sheet->second.byColumns;
    const auto band = bands.find({cut.from, cut.to - cut.from});
    if (band == bands.end()) {
        return std::nullopt;
    }
    auto part = band->second.upper_bound(cut.at);
    if (part == band->second.begin()) {
        return std::nullopt;
    }
    --part;
    const auto [start, length] = *part;
    const bool cutsNothingOff = cut.at == start && kerf.isZero();
    if (cut.at >= start + length || cutsNothingOff) {
        return std::nullopt;
    }
    const Parts parts{cut.at - start, std::max(start + length - cut.at - kerf, Length{})};
    const Length after = cut.at + kerf;
    const Length breadth = cut.to - cut.from;
    const auto rect = [&](Length at, Length size) {
        return isAtX ? CutRect{at, cut.from, size, breadth} : CutRect{cut.from, at, breadth, size};
    };
    remove(sheet->second, rect(start, length));
    add(sheet->second, rect(start, parts.first));
    add(sheet->second, rect(after, parts.second));
    return parts;
}

bool CutSimulation::take(const SheetPlace& on, const CutRect& rect) {
    const auto sheet = m_sheets.find(on);
    if (sheet == m_sheets.end()) {
        return false;
    }
    const auto band = sheet->second.byRows.find({rect.y, rect.height});
    if (band == sheet->second.byRows.end()) {
        return false;
    }
    const auto part = band->second.find(rect.x);
    if (part == band->second.end() || part->second != rect.width) {
        return false;
    }
    remove(sheet->second, rect);
    return true;
}

} // namespace headcap::core
