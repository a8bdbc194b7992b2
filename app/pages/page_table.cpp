#include "app/pages/page_table.h"

#include "app/pages/bench_page.h"
#include "app/pages/book_page.h"
#include "app/pages/collation_page.h"
#include "app/pages/job_materials_page.h"
#include "app/pages/photographs_page.h"
#include "app/pages/proposal_page.h"
#include "app/pages/report_page.h"
#include "app/pages/survey_page.h"

namespace headcap::app {
namespace {

template <class Page>
PageEntry entry(core::Page page) {
    return {page, [](Session& session) -> JobPage* { return new Page(session); }};
}

} // namespace

const std::vector<PageEntry>& pageTable() {
    static const std::vector<PageEntry> kTable{
        entry<BookPage>(core::Page::book),
        entry<CollationPage>(core::Page::collation),
        entry<SurveyPage>(core::Page::survey),
        entry<ProposalPage>(core::Page::proposal),
        entry<BenchPage>(core::Page::bench),
        entry<JobMaterialsPage>(core::Page::materials),
        entry<PhotographsPage>(core::Page::photographs),
        entry<ReportPage>(core::Page::report),
    };
    return kTable;
}

} // namespace headcap::app
