// The file of one job: everything the record says of it, as values. Windows show it, the audit
// judges it, the report is composed from it; all of them pure functions over this struct.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/record/stores.h"
#include "core/treatment/techniques_in_force.h"

namespace headcap::core {

struct JobFile {
    // Out of line: they make and unmake some sixty kinds of records, which no reader of a file
    // need compile again.
    JobFile(Job theJob, Item theItem, Owner theOwner);
    JobFile(const JobFile&);
    JobFile(JobFile&&) noexcept;
    JobFile& operator=(const JobFile&);
    JobFile& operator=(JobFile&&) noexcept;
    ~JobFile();

    Job job;
    Item item;
    Owner owner;
    std::optional<Workshop> workshop{};
    std::optional<Item> whole{};   // the set or batch the item is part of
    std::vector<Item> parts{};     // the volumes of a set, in order
    std::vector<Work> works{};     // of the item and its parts
    std::vector<Hazard> hazards{}; // of the item, its whole and its parts
    std::vector<Job> otherJobs{};  // on the same item, its whole or its parts
    std::vector<Person> people{};  // all of the workshop
    TechniquesInForce techniques{};

    std::vector<StateChange> stateChanges{};
    std::vector<Piece> pieces{};
    std::vector<CustodyMove> moves{};
    std::vector<Notice> notices{};
    std::vector<FollowUp> followUps{};
    std::vector<Attachment> attachments{};
    std::vector<Examination> examinations{};
    std::vector<Finding> findings{};
    std::vector<Test> tests{};
    std::vector<Collation> collations{};
    std::vector<CollationFinding> collationFindings{};
    std::vector<Facsimile> facsimiles{};
    std::vector<Proposal> proposals{};
    std::vector<ProposalOption> options{};
    std::vector<ProposalLine> lines{};
    std::vector<Decision> decisions{};
    std::vector<Step> steps{}; // in order of time, struck ones among them
    std::vector<MaterialUse> uses{};
    std::vector<Photograph> photographs{};
    std::vector<IssuedReport> reports{};
    std::vector<Walk> walks{};            // each person's own
    std::vector<WalkEntry> walkEntries{}; // of all walks, by their place in the book
    std::vector<CalledPlate> plates{};    // in the order they are called for
    std::vector<LeafTask> leafTasks{};
    std::vector<Cutting> cuttings{}; // those taken back among them
    std::vector<BenchClock> clocks{};
    std::vector<Setting> settings{};
    std::vector<StepCheck> stepChecks{};
    std::vector<ReleaseCheck> releaseChecks{};
    std::vector<Explanation> explanations{};
    std::vector<HandBack> handBacks{};

    // The lots the job names, those they were mixed from or cut off through any number of steps,
    // with their kinds, parts and the ledger of each in brief.
    std::vector<Material> materials{};
    std::vector<Lot> lots{};
    std::vector<LotPart> lotParts{};
    std::vector<LedgerEntry> ledger{};

    // The revision each of these records was read at.
    std::map<RecordRef, Revision> revisions{};
    [[nodiscard]] Revision revisionOf(const RecordRef& ref) const;

    [[nodiscard]] const Person* person(const std::optional<Id<Person>>& id) const;
    [[nodiscard]] const Lot* lot(const std::optional<Id<Lot>>& id) const;
    [[nodiscard]] const Material* material(const Id<Material>& id) const;
    [[nodiscard]] const Item* part(const std::optional<Id<Item>>& id) const;
    [[nodiscard]] const Step* step(const std::optional<Id<Step>>& id) const;
    [[nodiscard]] std::vector<const MaterialUse*> usesOf(const Step& step) const;
};

// Nothing where there is no such job.
[[nodiscard]] std::optional<JobFile> loadJobFile(const RecordStore& store, const Id<Job>& id);

// What slips, headings and reports call the item: its short title or title, and its date.
[[nodiscard]] std::string headingOf(const Item& item);

} // namespace headcap::core
