#include "app/photo/take_in.h"

#include <algorithm>
#include <set>

#include <QCoreApplication>

#include "app/photo/step_photos.h"
#include "app/session/sentences.h"
#include "app/session/words.h"
#include "core/photo/photo_order.h"

namespace headcap::app::photo {
namespace {

constexpr int kReasonsSaid = 2;

class Words {
    Q_DECLARE_TR_FUNCTIONS(photo)
};

QString saidOf(int taken, const PutToSteps& put, const QStringList& refused) {
    QStringList said;
    if (taken > 0) {
        said << counted(taken, Words::tr("%1 photograph taken in."),
                        Words::tr("%1 photographs taken in.")) +
                    put.words();
    }
    for (const QString& one : refused.mid(0, kReasonsSaid)) {
        said << one;
    }
    const int more = static_cast<int>(refused.size()) - kReasonsSaid;
    if (more > 0) {
        said << Words::tr("%1 more could not be taken in.").arg(more);
    }
    return said.join(QLatin1Char(' '));
}

core::Photograph recordOf(const KeptPhoto& kept, Session& session, const IntakePlace& place) {
    return {.id = session.ids().next<core::Photograph>(),
            .job = place.job,
            .role = place.role,
            .digest = kept.digest,
            .mediaType = toCore(kept.mediaType),
            .fileName = toCore(kept.name),
            .bytes = kept.bytes,
            .widthPx = kept.size.width(),
            .heightPx = kept.size.height(),
            .takenAt = kept.takenAt,
            .addedAt = session.clock().now()};
}

std::vector<core::Photograph> photographsOf(Session& session, const core::Id<core::Job>& job) {
    std::vector<core::Photograph> photographs;
    session.guarded([&] {
        for (auto& one : core::allWith(session.records(), &core::Photograph::job, job)) {
            photographs.push_back(std::move(one.record));
        }
    });
    return photographs;
}

} // namespace

Recorded recordKept(Session& session, const IntakeResult& result, const IntakePlace& place) {
    const auto photographs = photographsOf(session, place.job);
    std::set<core::Digest> there;
    for (const core::Photograph& photo : photographs) {
        there.insert(photo.digest);
    }
    QStringList refused = result.refused;
    std::vector<core::Photograph> fresh;
    std::int64_t position = core::nextPosition(photographs, place.role);
    for (const KeptPhoto& kept : result.kept) {
        if (!there.insert(kept.digest).second) {
            refused << Words::tr("%1: this job has it already.").arg(kept.name);
            continue;
        }
        core::Photograph photo = recordOf(kept, session, place);
        photo.position = position++;
        fresh.push_back(std::move(photo));
    }
    const PutToSteps put = putToSteps(session, place.job, fresh);
    core::Change change;
    for (const core::Photograph& photo : fresh) {
        change.add(photo);
    }
    const auto taken = static_cast<int>(fresh.size());
    change.sentence = toCore(
        counted(taken, Words::tr("%1 photograph taken in"), Words::tr("%1 photographs taken in")));
    if (taken > 0 && !session.apply(std::move(change))) {
        return {};
    }
    if (result.failure) {
        session.say({Notice::Kind::failed, sentence(*result.failure)});
    } else if (taken > 0 || !refused.isEmpty()) {
        const auto kind = refused.isEmpty() ? Notice::Kind::done : Notice::Kind::refused;
        session.say({kind, saidOf(taken, put, refused), taken > 0});
    }
    return {.isWhole = !result.failure,
            .first = fresh.empty() ? std::nullopt : std::optional{fresh.front().id}};
}

} // namespace headcap::app::photo
