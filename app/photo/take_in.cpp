#include "app/photo/take_in.h"

#include <algorithm>
#include <set>

#include <QCoreApplication>

#include "app/session/sentences.h"
#include "app/session/words.h"
#include "core/photo/photo_order.h"

namespace headcap::app::photo {
namespace {

constexpr int kReasonsSaid = 2;

class Words {
    Q_DECLARE_TR_FUNCTIONS(photo)
};

QString saidOf(int taken, const QStringList& refused) {
    QStringList said;
    if (taken > 0) {
        said << counted(taken, Words::tr("%1 photograph taken in."),
                        Words::tr("%1 photographs taken in."));
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

std::optional<core::Id<core::Photograph>> recordKept(Session& session, const IntakeResult& result,
                                                     const IntakePlace& place) {
    const auto photographs = photographsOf(session, place.job);
    std::set<core::Digest> there;
    for (const core::Photograph& photo : photographs) {
        there.insert(photo.digest);
    }
    QStringList refused = result.refused;
    core::Change change;
    std::optional<core::Id<core::Photograph>> first;
    std::int64_t position = core::nextPosition(photographs, place.role);
    int taken = 0;
    for (const KeptPhoto& kept : result.kept) {
        if (!there.insert(kept.digest).second) {
            refused << Words::tr("%1: this job has it already.").arg(kept.name);
            continue;
        }
        core::Photograph photo = recordOf(kept, session, place);
        photo.position = position++;
        first = first ? first : std::optional{photo.id};
        change.add(photo);
        ++taken;
    }
    change.sentence = toCore(
        counted(taken, Words::tr("%1 photograph taken in"), Words::tr("%1 photographs taken in")));
    if (taken > 0 && !session.apply(std::move(change))) {
        return std::nullopt;
    }
    if (result.failure) {
        session.say({Notice::Kind::failed, sentence(*result.failure)});
    } else if (taken > 0 || !refused.isEmpty()) {
        const auto kind = refused.isEmpty() ? Notice::Kind::done : Notice::Kind::refused;
        session.say({kind, saidOf(taken, refused), taken > 0});
    }
    return first;
}

} // namespace headcap::app::photo
