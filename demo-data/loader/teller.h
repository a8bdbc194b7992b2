// Tells the story to a store: each group becomes one change, kept as the program itself would have
// kept it. What leaves a lot for a step or a mix is written in its ledger.
#pragma once

#include <memory>
#include <vector>

#include "core/record/stores.h"
#include "demo-data/loader/kept_files.h"
#include "demo-data/loader/record_reader.h"
#include "demo-data/loader/story.h"

namespace headcap::demo {

class Teller {
public:
    Teller(const Story& story, const DemoDays& days, StoryClock& clock, core::RecordStore& store,
           KeptFiles& files);

    // Throws DataError naming file and record, and what the store throws.
    void tell(const Group& group);
    [[nodiscard]] const KnownNames& names() const { return m_names; }

private:
    using Told = std::vector<std::unique_ptr<ToldRecord>>;
    void gather(core::RecordKind kind, const Json& objects, const ToldRecord* parent,
                const std::string& scope, Told& told);
    [[nodiscard]] Json filesOf(const ToldRecord& told, const std::string& scope);
    void addRecords(const Group& group, const Moment& moment, core::Change& change);
    void addLedger(const core::AnyRecord& record, const Moment& moment, core::Change& change);
    void addUpdates(const Group& group, const Moment& moment, core::Change& change);
    [[nodiscard]] core::Found stored(const std::string& name, const Moment& moment) const;

    const Story& m_story;
    const DemoDays& m_days;
    StoryClock& m_clock;
    core::RecordStore& m_store;
    KeptFiles& m_files;
    core::IdSource m_ids;
    Defaults m_defaults;
    KnownNames m_names;
};

} // namespace headcap::demo
