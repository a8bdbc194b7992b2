#include <fmt/format.h>

#include "core/report/labels.h"
#include "core/report/sections.h"
#include "core/report/trade_words.h"
#include "core/report/writing.h"
#include "core/values/decimal.h"
#include "core/values/english.h"

namespace headcap::core::report {
namespace {

// "21 °C, 55 % RH, 2 % w/v, under 6 kg, set for 2 h".
std::string conditionsText(const Step& step) {
    std::vector<std::string> said;
    if (step.temperatureTenthsC) {
        said.push_back(decimalText(*step.temperatureTenthsC, 1) + " °C");
    }
    if (step.humidityPercent) {
        said.push_back(fmt::format("{} % RH", *step.humidityPercent));
    }
    said.push_back(step.concentration);
    said.push_back(step.pressure);
    const Instant end = step.at + step.minutes;
    if (step.setsUntil && *step.setsUntil > end) {
        said.push_back("set for " +
                       minutesText(std::chrono::round<Minutes>(*step.setsUntil - end)));
    }
    return joined(said, ", ");
}

// The checks of the technique as they were answered; of those not made, why.
std::string checksText(const JobFile& file, const Step& step) {
    std::vector<std::string> made;
    std::vector<std::string> refused;
    for (const StepCheck& check : file.stepChecks) {
        if (check.step == step.id) {
            (check.done ? made : refused)
                .push_back(check.done ? check.what
                                      : fmt::format("{} (because {})", check.what, check.whyNot));
        }
    }
    return told({made.empty() ? "" : "Checked: " + joined(made),
                 refused.empty() ? "" : "Not checked: " + joined(refused)});
}

std::string whatText(const Context& at, const Step& step) {
    const Step* corrected = at.file.step(step.corrects);
    return told({step.kind == StepKind::incident ? "Incident" : "",
                 at.file.techniques.nameOf(step.technique), step.description,
                 step.minutes.count() > 0 ? minutesText(step.minutes) : "", conditionsText(step),
                 step.removed.empty() ? "" : "taken out: " + step.removed,
                 checksText(at.file, step),
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
