#include "core/custody/kept_at.h"

#include <algorithm>

namespace headcap::core {

std::optional<CustodyMove> moveBehind(const Job& before, const Job& after,
                                      std::optional<Id<Person>> who, Instant now, IdSource& ids) {
    if (before.keptAt == after.keptAt) {
        return std::nullopt;
    }
    return CustodyMove{.id = ids.next<CustodyMove>(),
                       .job = after.id,
                       .at = now,
                       .who = who,
                       .fromPlace = before.keptAt,
                       .toPlace = after.keptAt};
}

std::optional<Job> jobAfterMove(const JobFile& file, const CustodyMove& move) {
    const bool isLast = std::ranges::none_of(file.moves, [&](const CustodyMove& other) {
        return other.id != move.id && other.at > move.at;
    });
    if (!isLast || move.toPlace.empty() || file.job.keptAt == move.toPlace) {
        return std::nullopt;
    }
    Job job = file.job;
    job.keptAt = move.toPlace;
    return job;
}

} // namespace headcap::core
