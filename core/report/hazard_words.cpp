#include "core/report/hazard_words.h"

#include <fmt/format.h>

#include "core/custody/hazard_evidence.h"
#include "core/custody/hazards.h"
#include "core/report/writing.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

std::string cautionOf(const Hazard& hazard, HazardReader reader) {
    const HazardKind* kind = hazardNamed(hazard.term);
    if (kind == nullptr) {
        return "Ask a qualified person before use.";
    }
    return reader == HazardReader::bench ? sentence(kind->caution) : sentence(kind->report);
}

} // namespace

void addHazards(Section& section, const JobFile& file, HazardReader reader) {
    for (const Hazard& hazard : file.hazards) {
        if (stillWarns(hazard)) {
            section.blocks.emplace_back(Caution{
                fmt::format("{}, {}", hazardName(hazard.term), standingOf(hazard)),
                joined({capitalised(sentence(hazard.place)), cautionOf(hazard, reader)}, " "),
                refOf(hazard.id)});
        }
    }
}

} // namespace headcap::core::report
