#include "core/custody/next_step_file.h"

#include <algorithm>

namespace headcap::core {
namespace {

template <class Record>
void readOfJob(std::vector<Record>& into, const RecordStore& store, const Id<Job>& job) {
    for (auto& stored : allWith(store, &Record::job, job)) {
        into.push_back(std::move(stored.record));
    }
}

} // namespace

std::optional<JobFile> fileForNextStep(const RecordStore& store, const Id<Job>& id,
                                       const TechniquesInForce& techniques) {
    auto job = find(store, id);
    const bool isGoneThrough =
        job && (job->record.state == JobState::passed || job->record.state == JobState::reported);
    if (!job || isGoneThrough) {
        return loadJobFile(store, id); // by the audit, or the release list
    }
    auto item = find(store, job->record.item);
    auto owner = find(store, job->record.owner);
    if (!item || !owner) {
        return std::nullopt;
    }
    JobFile file{std::move(job->record), std::move(item->record), std::move(owner->record)};
    file.techniques = techniques;
    readOfJob(file.stateChanges, store, id);
    readOfJob(file.notices, store, id);
    readOfJob(file.followUps, store, id);
    readOfJob(file.examinations, store, id);
    readOfJob(file.findings, store, id);
    readOfJob(file.collations, store, id);
    readOfJob(file.collationFindings, store, id);
    readOfJob(file.proposals, store, id);
    readOfJob(file.options, store, id);
    readOfJob(file.lines, store, id);
    readOfJob(file.decisions, store, id);
    readOfJob(file.steps, store, id);
    readOfJob(file.photographs, store, id);
    readOfJob(file.settings, store, id);
    std::ranges::stable_sort(file.steps, {}, &Step::at);
    return file;
}

} // namespace headcap::core
