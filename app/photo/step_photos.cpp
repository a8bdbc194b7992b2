#include "app/photo/step_photos.h"

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/techniques_in_force.h"

namespace headcap::app::photo {
namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(photo)
};

template <class Record>
std::vector<Record> ofJob(const core::RecordStore& store, const core::Id<core::Job>& job) {
    std::vector<Record> records;
    for (auto& one : core::allWith(store, &Record::job, job)) {
        records.push_back(std::move(one.record));
    }
    return records;
}

core::PhotoTimes timesOf(const core::RecordStore& store) {
    std::vector<core::HouseValue> own;
    for (auto& one : core::all<core::HouseValue>(store)) {
        own.push_back(std::move(one.record));
    }
    return core::photoTimesOf(own);
}

} // namespace

QString PutToSteps::words() const {
    QString said;
    if (put > 0) {
        said = counted(put, Words::tr(" %1 is put to its step, by its time."),
                       Words::tr(" %1 are put to their steps, by their time."));
    }
    if (undecided > 0) {
        said += counted(undecided, Words::tr(" %1 could be of two steps: say which."),
                        Words::tr(" %1 could be of two steps: say which."));
    }
    return said;
}

PutToSteps putToSteps(Session& session, const core::Id<core::Job>& job,
                      std::vector<core::Photograph>& photographs) {
    PutToSteps done;
    session.guarded([&] {
        const auto steps = ofJob<core::Step>(session.records(), job);
        for (const core::PhotoOfStep& one :
             core::photographsInSteps(photographs, steps, timesOf(session.records()))) {
            if (one.step == nullptr) {
                ++done.undecided;
                continue;
            }
            for (core::Photograph& photograph : photographs) {
                if (photograph.id == one.photograph->id) {
                    photograph.step = one.step->id;
                    photograph.place = one.step->place;
                }
            }
            ++done.put;
        }
    });
    return done;
}

void putToNewStep(Session& session, const core::Id<core::Step>& id, const QString& said) {
    session.guarded([&] {
        const auto step = core::find(session.records(), id);
        if (!step) {
            return;
        }
        const auto job = step->record.job;
        const auto stored = core::allWith(session.records(), &core::Photograph::job, job);
        std::vector<core::Photograph> photographs;
        for (const auto& one : stored) {
            photographs.push_back(one.record);
        }
        const auto steps = ofJob<core::Step>(session.records(), job);
        core::Change change;
        for (const core::PhotoOfStep& one :
             core::photographsInSteps(photographs, steps, timesOf(session.records()))) {
            if (one.step == nullptr || one.step->id != id) {
                continue;
            }
            const auto at = static_cast<std::size_t>(one.photograph - photographs.data());
            core::Photograph put = stored[at].record;
            put.step = id;
            put.place = put.place.empty() ? step->record.place : put.place;
            change.update(put, stored[at].revision);
        }
        const auto count = static_cast<int>(change.writes.size());
        if (count == 0) {
            return;
        }
        const auto techniques = core::loadTechniques(session.records());
        change.sentence = toCore(counted(count, Words::tr("%1 photograph put to %2, by its time"),
                                         Words::tr("%1 photographs put to %2, by their time"))
                                     .arg(fromCore(core::stepTitle(step->record, techniques))));
        if (session.apply(std::move(change))) {
            session.say({Notice::Kind::done,
                         said + QLatin1Char('.') +
                             counted(count, Words::tr(" %1 photograph is put to it, by its time."),
                                     Words::tr(" %1 photographs are put to it, by their time.")),
                         true});
        }
    });
}

} // namespace headcap::app::photo
