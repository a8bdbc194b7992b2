#include <fmt/format.h>

#include "core/report/labels.h"
#include "core/report/sections.h"
#include "core/report/trade_words.h"
#include "core/report/writing.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

std::string whatText(const Context& at, const Step& step) {
    const Step* corrected = at.file.step(step.corrects);
    return told({step.kind == StepKind::incident ? "Incident" : "",
                 at.file.techniques.nameOf(step.technique), step.description,
                 step.minutes.count() > 0 ? minutesText(step.minutes) : "",
                 step.removed.empty() ? "" : "taken out: " + step.removed,
                 corrected == nullptr
                     ? ""
                     : "corrects the struck entry of " + dayText(at.clock.dayOf(corrected->at))});
}

// Under the entry that is struck, and not struck itself.
TableRow struckRow(const Context& at, const Step& step) {
    return row({"", "",
                sentence(fmt::format("{} {} by {}: {}", labels::kStruckOn,
                                     dayText(at.clock.dayOf(*step.struckAt)),
                                     personName(at.file, step.struckBy), step.struckWhy)),
                "", ""},
               refOf(step.id));
}

std::string materialsText(const JobFile& file, const Step& step) {
    std::vector<std::string> uses;
    for (const MaterialUse* use : file.usesOf(step)) {
        uses.push_back(useText(file, *use));
    }
    return joined(uses);
}

} // namespace

Section logSection(const Context& at) {
    Section section{.key = "log", .title = "Log of the work"};
    Table table{{{"Date", 3}, {"By", 3}, {"What was done", 7}, {"Where", 3}, {"Materials", 5}}, {}};
    for (const Step& step : at.file.steps) {
        TableRow made = row({dayText(at.clock.dayOf(step.at)), personName(at.file, step.who),
                             whatText(at, step), placeIn(at.file, step.part, step.place),
                             materialsText(at.file, step)},
                            refOf(step.id));
        made.struck = step.struckAt.has_value();
        table.rows.push_back(std::move(made));
        if (step.struckAt) {
            table.rows.push_back(struckRow(at, step));
        }
    }
    addOr(section, std::move(table), "No step of work is logged.");
    return section;
}

} // namespace headcap::core::report
