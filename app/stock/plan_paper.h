// A cutting plan on paper, a sheet a page: for whom, of what and by whom above it, and boxes to
// tick beside its cuts.
#pragma once

#include <QString>

#include "core/cutting/cut_plan.h"

class QPrinter;

namespace headcap::app {

struct PlanHead {
    QString workshop{};
    QString job{}; // "2031-014, A Booke of Grafting"; empty: for stock
    QString material{};
    QString day{};
    QString by{};
    QString note{};
};

void printPlan(QPrinter& printer, const PlanHead& head, const core::CutProblem& problem,
               const core::CutPlan& plan);

} // namespace headcap::app
