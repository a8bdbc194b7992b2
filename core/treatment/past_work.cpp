#include "core/treatment/past_work.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "core/collation/leaf_ref.h"
#include "core/custody/job_states.h"
#include "core/treatment/approval.h"
#include "core/treatment/totals.h"
#include "core/values/small_letters.h"

namespace headcap::core {
namespace {

// How far back an estimate looks, so that it is as quick in a workshop of many years.
constexpr std::size_t kMostSteps = 500;

struct CoveringWord {
    std::string_view word;
    std::string_view covering;
};
constexpr std::array kCoverings = std::to_array<CoveringWord>({{"vellum", "vellum"},
                                                               {"parchment", "vellum"},
                                                               {"calf", "leather"},
                                                               {"sheep", "leather"},
                                                               {"goat", "leather"},
                                                               {"morocco", "leather"},
                                                               {"pigskin", "leather"},
                                                               {"roan", "leather"},
                                                               {"russia", "leather"},
                                                               {"leather", "leather"},
                                                               {"buckram", "cloth"},
                                                               {"cloth", "cloth"},
                                                               {"linen", "cloth"},
                                                               {"wrapper", "paper"},
                                                               {"paper", "paper"}});

std::int64_t between(std::int64_t first, std::int64_t last) {
    return last < first ? 1 : last - first + 1;
}

std::int64_t countOf(const LeafSpan& span) {
    if (!span.last) {
        return 1;
    }
    const auto* from = std::get_if<SignedLeaf>(&span.first);
    const auto* to = std::get_if<SignedLeaf>(&*span.last);
    if (from != nullptr && to != nullptr && from->signature == to->signature) {
        return between(from->leaf, to->leaf);
    }
    const auto* page = std::get_if<PageRef>(&span.first);
    const auto* lastPage = std::get_if<PageRef>(&*span.last);
    if (page != nullptr && lastPage != nullptr) {
        return (between(page->page.number.value, lastPage->page.number.value) + 1) / 2;
    }
    const auto* folio = std::get_if<FolioRef>(&span.first);
    const auto* lastFolio = std::get_if<FolioRef>(&*span.last);
    if (folio != nullptr && lastFolio != nullptr) {
        return between(folio->folio.number.value, lastFolio->folio.number.value);
    }
    return 1;
}

} // namespace

std::int64_t countOfPlace(const std::string& place) {
    const auto set = parseLeafSet(place);
    if (!set) {
        return 1;
    }
    std::int64_t count = 0;
    for (const LeafSetItem& item : set->items) {
        if (const auto* span = std::get_if<LeafSpan>(&item)) {
            count += countOf(*span);
        } else if (const auto* counted = std::get_if<CountOf>(&item)) {
            count += counted->count;
        } else {
            ++count;
        }
    }
    return std::max<std::int64_t>(count, 1);
}

std::string coveringOf(std::string_view binding) {
    const std::string lower = inSmallLetters(binding);
    // The first that is named: "calf over pasteboard, paper sides" is leather.
    std::size_t first = std::string::npos;
    std::string found;
    for (const CoveringWord& one : kCoverings) {
        const std::size_t at = lower.find(one.word);
        if (at < first) {
            first = at;
            found = one.covering;
        }
    }
    return found;
}

std::optional<PastWork> pastWorkOf(const Item& item, std::span<const Step> steps,
                                   std::span<const ProposalLine> lines) {
    PastWork work{
        .count = 0, .steps = 0, .height = item.height, .covering = coveringOf(item.binding)};
    std::map<std::optional<Id<ProposalLine>>, std::int64_t> places;
    for (const Step& step : steps) {
        if (step.struckAt || step.minutes <= Minutes{0}) {
            continue;
        }
        work.technique = step.technique;
        work.minutes += step.minutes;
        ++work.steps;
        places[step.line] += countOfPlace(step.place);
    }
    for (const auto& [line, count] : places) {
        const auto named = std::ranges::find_if(
            lines, [&wanted = line](const ProposalLine& one) { return wanted == one.id; });
        work.count += named == lines.end() ? count : std::max<std::int64_t>(named->count, 1);
    }
    return work.steps == 0 ? std::nullopt : std::optional{work};
}

std::vector<PastWork> loadPastWork(const RecordStore& store,
                                   const std::vector<std::string>& techniques,
                                   const Id<Job>& butFor) {
    std::vector<PastWork> past;
    for (const std::string& technique :
         std::set<std::string>(techniques.begin(), techniques.end())) {
        if (technique.empty()) {
            continue;
        }
        std::map<Id<Job>, std::vector<Step>> byJob;
        auto newest = typed<Step>(
            store.newestWith(RecordKind::step, fieldName(&Step::technique), technique, kMostSteps));
        const bool isCutOff = newest.size() == kMostSteps;
        for (auto& step : newest) {
            byJob[step.record.job].push_back(std::move(step.record));
        }
        // The job of the last may have had more.
        if (isCutOff) {
            byJob.erase(newest.back().record.job);
        }
        byJob.erase(butFor);
        for (const auto& [id, steps] : byJob) {
            const auto job = find(store, id);
            const auto item = job ? find(store, job->record.item) : std::nullopt;
            if (!item || !hasReached(job->record.state, JobState::passed)) {
                continue;
            }
            std::vector<ProposalLine> lines;
            for (const Step& step : steps) {
                const auto line = step.line ? find(store, *step.line) : std::nullopt;
                if (line) {
                    lines.push_back(line->record);
                }
            }
            if (const auto work = pastWorkOf(item->record, steps, lines)) {
                past.push_back(*work);
            }
        }
    }
    return past;
}

WorkAsked askedOf(const ProposalLine& line, const Item& item) {
    return {.technique = line.technique,
            .count = line.count > 1 ? line.count : countOfPlace(line.place),
            .said = line.minutes,
            .height = item.height,
            .covering = coveringOf(item.binding)};
}

} // namespace headcap::core
