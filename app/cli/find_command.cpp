#include <nlohmann/json.hpp>

#include "app/cli/commands.h"

namespace headcap::app::cli {
namespace {

constexpr std::size_t kMostHits = 200;

nlohmann::json toJson(const core::SearchAnswer& answer) {
    auto results = nlohmann::json::array();
    for (const core::SearchHit& hit : answer.hits) {
        results.push_back({{"kind", core::nameOf(hit.record.kind)},
                           {"record", hit.record.id.text()},
                           {"job", hit.jobNumber},
                           {"item", hit.item},
                           {"place", hit.place},
                           {"text", hit.text}});
    }
    return {{"results", std::move(results)}, {"total", answer.total}};
}

void print(const core::SearchAnswer& answer) {
    for (const core::SearchHit& hit : answer.hits) {
        std::string line = hit.jobNumber.empty() ? "        " : hit.jobNumber;
        for (const std::string& part : {hit.item, hit.place, hit.text}) {
            if (!part.empty()) {
                line += "  " + part;
            }
        }
        printLine(line);
    }
    if (answer.total > answer.hits.size()) {
        printLine("… of " + std::to_string(answer.total) + (answer.totalCapped ? " and more" : "") +
                  " found; the newest are shown.");
    } else if (answer.hits.empty()) {
        printLine("Nothing was found.");
    }
}

Exit run(const Call& call) {
    const auto workshop = call.openWorkshop();
    const auto answer =
        workshop->stores().search.find(call.words().join(u' ').toStdString(), kMostHits);
    if (call.wantsJson()) {
        printLine(toJson(answer).dump());
    } else {
        print(answer);
    }
    return answer.hits.empty() ? Exit::answerIsNo : Exit::done;
}

} // namespace

Command findCommand() {
    return {.name = QStringLiteral("find"),
            .words = QStringLiteral("WORDS…"),
            .purpose = QStringLiteral("searches past treatments"),
            .fewest = 1,
            .most = -1,
            .options = {},
            .run = run};
}

} // namespace headcap::app::cli
