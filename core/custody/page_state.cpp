#include "core/custody/page_state.h"

#include <algorithm>

#include "core/custody/job_states.h"

namespace headcap::core {
namespace {

// How far a page has come by its records alone.
struct Come {
    bool begun = false;
    bool done = false;
};

Come book(const JobFile& file) {
    const Item& item = file.item;
    const bool measured = item.height && item.width && item.thickness;
    const bool whole = item.nature != ItemNature::volume;
    return {!item.title.empty() || !file.job.request.empty(),
            !item.title.empty() && !file.job.request.empty() && !file.job.receivedAs.empty() &&
                (measured || whole)};
}

Come collation(const JobFile& file) {
    const auto& all = file.collations;
    const bool finished = !all.empty() && std::ranges::all_of(all, [](const Collation& c) {
        return c.finishedOn.has_value();
    });
    return {!all.empty() || !file.collationFindings.empty(), finished};
}

Come survey(const JobFile& file) {
    const bool begun = !file.examinations.empty() || !file.findings.empty() || !file.tests.empty();
    return {begun, !file.examinations.empty() && !file.findings.empty() &&
                       file.job.state != JobState::received};
}

Come proposal(const JobFile& file) {
    const bool decided = std::ranges::any_of(
        file.decisions, [](const Decision& d) { return d.kind != DecisionKind::moreAsked; });
    return {!file.proposals.empty(), decided};
}

Come photographs(const JobFile& file) {
    const auto has = [&](PhotoRole role) {
        return std::ranges::find(file.photographs, role, &Photograph::role) !=
               file.photographs.end();
    };
    return {!file.photographs.empty(), has(PhotoRole::before) && has(PhotoRole::after)};
}

Come comeOf(Page page, const JobFile& file) {
    const bool passed = hasReached(file.job.state, JobState::passed);
    switch (page) {
    case Page::book:
        return book(file);
    case Page::collation:
        return collation(file);
    case Page::survey:
        return survey(file);
    case Page::proposal:
        return proposal(file);
    case Page::bench:
        return {!file.steps.empty(), passed && !file.steps.empty()};
    case Page::materials:
        return {!file.uses.empty(), passed && !file.uses.empty()};
    case Page::photographs:
        return photographs(file);
    case Page::report:
        break;
    }
    return {!file.reports.empty() || passed, !file.reports.empty()};
}

} // namespace

std::array<PageState, 8> pageStates(const JobFile& file, std::span<const AuditPoint> points) {
    std::array<PageState, 8> states;
    for (std::size_t i = 0; i < states.size(); ++i) {
        PageState& state = states[i];
        state.page = static_cast<Page>(i);
        for (const AuditPoint& point : points) {
            if (point.page == state.page) {
                ++(point.severity == AuditSeverity::mustSettle ? state.mustSettle
                                                               : state.worthKnowing);
            }
        }
        const Come come = comeOf(state.page, file);
        if (come.done && state.mustSettle == 0) {
            state.progress = PageProgress::settled;
        } else if (come.begun || come.done) {
            state.progress = PageProgress::begun;
        }
    }
    return states;
}

} // namespace headcap::core
