#include "core/materials/cut_for_job.h"

#include <algorithm>

#include <nlohmann/json.hpp>

namespace headcap::core {

std::vector<CutForJob> cutForJob(const JobFile& file) {
    std::vector<CutForJob> all;
    for (const Cutting& cutting : file.cuttings) {
        const auto plan = nlohmann::json::parse(cutting.plan, nullptr, false);
        if (cutting.takenBackAt || !plan.is_object() || !plan.contains("placed") ||
            !plan["placed"].is_array()) {
            continue;
        }
        for (const auto& placed : plan["placed"]) {
            if (!placed.is_object() || !placed.contains("sheet") || !placed["sheet"].is_string()) {
                continue;
            }
            const auto lot = placed["sheet"].get<std::string>();
            auto known = std::ranges::find(all, lot, &CutForJob::lot);
            if (known == all.end()) {
                all.push_back({.lot = lot, .cutting = cutting.id});
                known = std::prev(all.end());
            }
            ++known->pieces;
            const auto name = placed.value("piece", std::string{});
            if (!name.empty() && std::ranges::find(known->names, name) == known->names.end()) {
                known->names.push_back(name);
            }
        }
    }
    return all;
}

std::vector<CutForJob> cutAndNotUsed(const JobFile& file) {
    auto all = cutForJob(file);
    std::erase_if(all, [&](const CutForJob& cut) {
        return std::ranges::any_of(file.uses, [&](const MaterialUse& use) {
            const Lot* lot = file.lot(use.lot);
            const Step* step = file.step(use.step);
            return lot != nullptr && lot->number == cut.lot && step != nullptr && !step->struckAt;
        });
    });
    return all;
}

bool isOfCutPieces(const MaterialUse& use) {
    return use.lot && !use.amount && !use.material.empty();
}

std::string cutPiecesText(Amount pieces) {
    return toText(pieces) + " cut for this job";
}

} // namespace headcap::core
