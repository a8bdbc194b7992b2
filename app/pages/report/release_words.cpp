#include "app/pages/report/release_panel.h"

namespace headcap::app {

QString sentence(core::ReleaseProblem problem) {
    using Problem = core::ReleaseProblem;
    switch (problem) {
    case Problem::noSuchRow:
        return ReleasePanel::tr("That row is not in this job's list.");
    case Problem::unexplained:
        return ReleasePanel::tr("Not noted: say why it may leave all the same.");
    case Problem::nobody:
        return ReleasePanel::tr("Not noted: who is working? Choose first.");
    case Problem::stillOpen:
        return ReleasePanel::tr("Not signed off: other rows are still open.");
    case Problem::gone:
        return ReleasePanel::tr("The book has gone back: say why it was not done instead.");
    case Problem::toWhomMissing:
        return ReleasePanel::tr("Not noted: to whom was it given?");
    case Problem::conditionMissing:
        return ReleasePanel::tr("Not noted: in what condition did it leave?");
    }
    return {};
}

} // namespace headcap::app
