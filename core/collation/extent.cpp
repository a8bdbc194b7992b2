#include "core/collation/extent.h"

#include <algorithm>

#include "core/collation/extent_reader.h"

namespace headcap::core {

bool Extent::counted() const {
    return std::any_of(runs.begin(), runs.end(), [](const ExtentRun& run) {
        return run.unit != ExtentUnit::columns && run.count > 0;
    });
}

Extent readExtent(std::string_view statement, int reading) {
    return ExtentReader(statement, reading).read();
}

int leafTotal(const Extent& extent) {
    int leaves = 0;
    int pages = 0;
    int part = 0;
    for (const ExtentRun& run : extent.runs) {
        if (run.part != part) {
            leaves += (pages + 1) / 2;
            pages = 0;
            part = run.part;
        }
        pages += run.unit == ExtentUnit::pages ? run.count : 0;
        leaves += run.unit == ExtentUnit::leaves ? run.count : 0;
    }
    return leaves + (pages + 1) / 2;
}

int pageTotal(const Extent& extent) {
    int pages = 0;
    for (const ExtentRun& run : extent.runs) {
        pages += run.unit == ExtentUnit::pages    ? run.count
                 : run.unit == ExtentUnit::leaves ? 2 * run.count
                                                  : 0;
    }
    return pages;
}

} // namespace headcap::core
