#include "demo-data/build_demo.h"

#include "demo-data/data_files.h"
#include "demo-data/loader/data_error.h"
#include "demo-data/loader/teller.h"
#include "demo-data/make_files.h"

namespace headcap::demo {
namespace {

core::Id<core::Job> jobNamed(const KnownNames& names, const std::string& scope,
                             const std::string& name) {
    const auto ref = names.find(scope, name);
    if (!ref || ref->kind != core::RecordKind::job) {
        throw DataError{scope + ": " + name + " is no job"};
    }
    return core::Id<core::Job>{ref->id};
}

void issue(const Group& group, const Moment& moment, StoryClock& clock, const core::Stores& stores,
           const DemoWishes& wishes) {
    const std::string name = group.text("issue");
    if (name.empty() || !wishes.issueReport) {
        return;
    }
    const auto who = moment.names.find(moment.scope, moment.who);
    if (!who) {
        throw DataError{group.file->name + ": a report is issued by nobody"};
    }
    clock.set(group.at);
    wishes.issueReport(stores, clock, jobNamed(moment.names, moment.scope, name),
                       core::Id<core::Person>{who->id});
}

std::string tellAll(const Story& story, const DemoDays& days, const core::Clock& clock,
                    const core::Stores& stores, const DemoWishes& wishes) {
    StoryClock storyClock{clock};
    MadeFiles files{story, days, stores.files, wishes.photographScale};
    Teller teller{story, days, storyClock, stores.records, files};
    std::string first;
    for (const Group& group : story.groups()) {
        issue(group, story.momentOf(group, teller.names()), storyClock, stores, wishes);
        teller.tell(group);
    }
    for (const DataFile& file : story.files()) {
        if (file.content.value("shown_first", false)) {
            const auto job = jobNamed(teller.names(), file.scope, file.content.at("job"));
            first = teller.names().numberOf(core::refOf(job)).value_or("");
        }
    }
    return first;
}

} // namespace

std::string buildDemo(core::Workshops& workshops, const core::Clock& clock,
                      const std::filesystem::path& folder, const DemoWishes& wishes) {
    try {
        const DemoDays days{clock};
        const Story story{demoFiles(), days};
        const auto workshop = workshops.create(folder);
        return tellAll(story, days, clock, workshop->stores(), wishes);
    } catch (const DataError& error) {
        throw core::StoreError{core::StoreError::Code::internal, error.what()};
    } catch (const Json::exception& error) {
        throw core::StoreError{core::StoreError::Code::internal, error.what()};
    }
}

} // namespace headcap::demo
