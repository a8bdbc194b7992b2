#include "app/shell/view_table.h"

#include "app/keeping/backup_view.h"
#include "app/shell/find_view.h"
#include "app/shell/job_view.h"
#include "app/shell/keys_view.h"
#include "app/shell/materials_view.h"
#include "app/shell/new_job_view.h"
#include "app/shell/worklist_view.h"
#include "app/shell/workshop_view.h"
#include "app/stock/cutting_view.h"
#include "app/stock/mixing_view.h"
#include "app/stock/stock_view.h"
#include "app/work/day_view.h"
#include "app/work/techniques_view.h"

namespace headcap::app {
namespace {

template <class Made>
ViewEntry entry(ViewId id) {
    return {id, [](Session& session) -> View* {
                if constexpr (std::is_constructible_v<Made, Session&>) {
                    return new Made(session);
                } else {
                    return new Made;
                }
            }};
}

} // namespace

const std::vector<ViewEntry>& viewTable() {
    static const std::vector<ViewEntry> kTable{
        entry<WorklistView>(ViewId::worklist),
        entry<JobView>(ViewId::job),
        entry<FindView>(ViewId::find),
        entry<NewJobView>(ViewId::newJob),
        entry<MaterialsView>(ViewId::materials),
        entry<KeysView>(ViewId::keys),
        entry<WorkshopView>(ViewId::workshop),
        entry<MixingView>(ViewId::mixing),
        entry<CuttingView>(ViewId::cutting),
        entry<StockView>(ViewId::stock),
        entry<TechniquesView>(ViewId::techniques),
        entry<DayView>(ViewId::day),
        entry<BackupView>(ViewId::backups),
    };
    return kTable;
}

} // namespace headcap::app
