// Everything of one job read into its file.
#include "core/record/job_file.h"

#include <algorithm>
#include <deque>
#include <set>
#include <utility>

#include "core/materials/ledger_in_brief.h"

namespace headcap::core {
namespace {

// Reads records into the file and keeps the revision of each.
class Loader {
public:
    Loader(const RecordStore& store, JobFile& file) : m_store(store), m_file(file) {}

    [[nodiscard]] const RecordStore& store() const { return m_store; }

    template <class Record>
    std::optional<Record> one(const Id<Record>& id) {
        auto stored = find(m_store, id);
        if (!stored) {
            return std::nullopt;
        }
        m_file.revisions[refOf(id)] = stored->revision;
        return std::move(stored->record);
    }

    template <class Record, class T, class Other>
    void with(std::vector<Record>& into, T Record::*member, const Id<Other>& id) {
        append(into, allWith(m_store, member, id));
    }

    template <class Record>
    void ofJob(std::vector<Record>& into) {
        with(into, &Record::job, m_file.job.id);
    }

    template <class Record>
    void append(std::vector<Record>& into, std::vector<Stored<Record>> found) {
        for (auto& stored : found) {
            m_file.revisions[refOf(stored.record.id)] = stored.revision;
            into.push_back(std::move(stored.record));
        }
    }

private:
    const RecordStore& m_store;
    JobFile& m_file;
};

void loadItems(Loader& load, JobFile& file) {
    load.with(file.parts, &Item::partOf, file.item.id);
    std::sort(file.parts.begin(), file.parts.end(),
              [](const Item& a, const Item& b) { return a.position < b.position; });
    if (file.item.partOf) {
        file.whole = load.one(*file.item.partOf);
    }
    std::vector<Id<Item>> all{file.item.id};
    for (const Item& part : file.parts) {
        all.push_back(part.id);
    }
    for (const auto& id : all) {
        load.with(file.works, &Work::item, id);
    }
    if (file.whole) {
        all.push_back(file.whole->id);
    }
    for (const auto& id : all) {
        load.with(file.hazards, &Hazard::item, id);
        load.with(file.otherJobs, &Job::item, id);
    }
    std::erase_if(file.otherJobs, [&](const Job& job) { return job.id == file.job.id; });
    std::stable_sort(file.works.begin(), file.works.end(),
                     [](const Work& a, const Work& b) { return a.position < b.position; });
}

// The lines of the job's own uses one by one, and in brief what else moved in its lots.
class LedgerLoader {
public:
    LedgerLoader(Loader& load, JobFile& file)
        : m_load(load), m_file(file), m_brief(dynamic_cast<const BriefStore*>(&load.store())) {
        for (const MaterialUse& use : file.uses) {
            m_uses.insert(use.id);
            if (m_brief != nullptr) {
                load.with(file.ledger, &LedgerEntry::use, use.id);
            }
        }
    }

    void add(const Id<Lot>& lot) {
        if (m_brief != nullptr) {
            addAll(m_brief->ledgerInBrief(lot, m_file.job.id));
            return;
        }
        std::vector<LedgerEntry> ours;
        m_load.with(ours, &LedgerEntry::lot, lot);
        const auto others = std::stable_partition(ours.begin(), ours.end(), [&](const auto& entry) {
            return entry.use && m_uses.contains(*entry.use);
        });
        addAll(inBrief({others, ours.end()}));
        ours.erase(others, ours.end());
        addAll(ours);
    }

private:
    void addAll(const std::vector<LedgerEntry>& entries) {
        m_file.ledger.insert(m_file.ledger.end(), entries.begin(), entries.end());
    }

    Loader& m_load;
    JobFile& m_file;
    const BriefStore* m_brief;
    std::set<Id<MaterialUse>> m_uses{};
};

void loadLots(Loader& load, JobFile& file) {
    std::deque<Id<Lot>> waiting;
    for (const MaterialUse& use : file.uses) {
        if (use.lot) {
            waiting.push_back(*use.lot);
        }
    }
    for (const Facsimile& leaf : file.facsimiles) {
        for (const auto& lot : {leaf.printedOn, leaf.attachedWith}) {
            if (lot) {
                waiting.push_back(*lot);
            }
        }
    }
    LedgerLoader ledger{load, file};
    std::set<Id<Lot>> seen;
    std::set<Id<Material>> kinds;
    while (!waiting.empty()) {
        const Id<Lot> id = waiting.front();
        waiting.pop_front();
        if (!seen.insert(id).second) {
            continue;
        }
        const auto lot = load.one(id);
        if (!lot) {
            continue;
        }
        const std::size_t known = file.lotParts.size();
        load.with(file.lotParts, &LotPart::lot, id);
        for (std::size_t i = known; i < file.lotParts.size(); ++i) {
            waiting.push_back(file.lotParts[i].source);
        }
        if (lot->parent) {
            waiting.push_back(*lot->parent);
        }
        ledger.add(id);
        if (kinds.insert(lot->material).second) {
            if (auto material = load.one(lot->material)) {
                file.materials.push_back(std::move(*material));
            }
        }
        file.lots.push_back(*lot);
    }
}

// Everything that names the job.
void loadOfJob(Loader& load, JobFile& file) {
    load.ofJob(file.stateChanges);
    load.ofJob(file.pieces);
    load.ofJob(file.moves);
    load.ofJob(file.notices);
    load.ofJob(file.followUps);
    load.ofJob(file.attachments);
    load.ofJob(file.examinations);
    load.ofJob(file.findings);
    load.ofJob(file.tests);
    load.ofJob(file.collations);
    load.ofJob(file.collationFindings);
    load.ofJob(file.facsimiles);
    load.ofJob(file.proposals);
    load.ofJob(file.options);
    load.ofJob(file.lines);
    load.ofJob(file.decisions);
    load.ofJob(file.steps);
    load.ofJob(file.uses);
    load.ofJob(file.photographs);
    load.ofJob(file.reports);
    load.ofJob(file.walks);
    load.ofJob(file.walkEntries);
    load.ofJob(file.plates);
    load.ofJob(file.leafTasks);
    load.ofJob(file.cuttings);
    load.ofJob(file.clocks);
    load.ofJob(file.settings);
    load.ofJob(file.stepChecks);
    load.ofJob(file.releaseChecks);
    load.ofJob(file.explanations);
    load.ofJob(file.handBacks);
}

void sortByPlaceAndTime(JobFile& file) {
    std::ranges::stable_sort(file.walkEntries, {}, &WalkEntry::position);
    std::ranges::stable_sort(file.plates, {}, &CalledPlate::position);
    std::ranges::stable_sort(file.leafTasks, {}, &LeafTask::position);
    std::stable_sort(file.steps.begin(), file.steps.end(),
                     [](const Step& a, const Step& b) { return a.at < b.at; });
    std::stable_sort(file.photographs.begin(), file.photographs.end(),
                     [](const Photograph& a, const Photograph& b) {
                         return std::tie(a.role, a.position) < std::tie(b.role, b.position);
                     });
}

} // namespace

std::optional<JobFile> loadJobFile(const RecordStore& store, const Id<Job>& id) {
    auto job = find(store, id);
    if (!job) {
        return std::nullopt;
    }
    auto item = find(store, job->record.item);
    auto owner = find(store, job->record.owner);
    if (!item || !owner) {
        return std::nullopt;
    }
    JobFile file{std::move(job->record), std::move(item->record), std::move(owner->record)};
    file.revisions[refOf(file.job.id)] = job->revision;
    file.revisions[refOf(file.item.id)] = item->revision;
    file.revisions[refOf(file.owner.id)] = owner->revision;

    Loader load{store, file};
    std::vector<Workshop> workshops;
    load.append(workshops, all<Workshop>(store));
    if (!workshops.empty()) {
        file.workshop = std::move(workshops.front());
    }
    load.append(file.people, all<Person>(store));
    file.techniques = loadTechniques(store);
    loadItems(load, file);

    loadOfJob(load, file);
    sortByPlaceAndTime(file);
    loadLots(load, file);
    return file;
}

} // namespace headcap::core
