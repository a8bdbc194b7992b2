// The rows of the release list answered, and the book given back.
#include "core/custody/release_list.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/custody/job_states.h"

namespace headcap::core {
namespace {

// What became of it stands with the piece itself, where the report reads it.
Change answerPiece(const JobFile& file, const ReleaseRow& row, const ReleaseAnswering& answering) {
    Piece piece = *std::ranges::find(file.pieces, *row.piece, &Piece::id);
    const bool isOpen = answering.answer == ReleaseAnswer::open;
    piece.returned = isOpen                                    ? std::string{}
                     : answering.answer == ReleaseAnswer::done ? "given back with the book"
                                                               : answering.why;
    Change change{.sentence = isOpen
                                  ? "Open again: " + row.asks
                                  : fmt::format("Release: {}: {}", nameOf(piece), piece.returned),
                  .who = answering.who};
    change.update(piece, file.revisionOf(refOf(piece.id)));
    return change;
}

} // namespace

tl::expected<Change, ReleaseProblem> answerRow(const JobFile& file, const Clock& clock,
                                               const ReleaseAnswering& answering, IdSource& ids) {
    const auto rows = releaseList(file, clock);
    const auto row = std::ranges::find(rows, answering.key, &ReleaseRow::key);
    if (row == rows.end()) {
        return tl::unexpected(ReleaseProblem::noSuchRow);
    }
    if (!answering.who) {
        return tl::unexpected(ReleaseProblem::nobody);
    }
    if (isListClosed(file) && answering.answer != ReleaseAnswer::explained) {
        return tl::unexpected(ReleaseProblem::gone);
    }
    // What the record says of itself can only be explained away, not ticked.
    const bool needsWhy = answering.answer == ReleaseAnswer::explained ||
                          (row->isByRecord && answering.answer == ReleaseAnswer::done);
    if (needsWhy && answering.why.empty()) {
        return tl::unexpected(ReleaseProblem::unexplained);
    }
    const bool isSigning =
        answering.key == kSignOff && answering.answer != ReleaseAnswer::open && !isListClosed(file);
    const bool isOpen = std::ranges::any_of(
        rows, [](const ReleaseRow& one) { return one.key != kSignOff && !one.isSettled(); });
    if (isSigning && isOpen) {
        return tl::unexpected(ReleaseProblem::stillOpen);
    }
    if (row->piece) {
        return answerPiece(file, *row, answering);
    }
    ReleaseCheck check = row->answer != nullptr
                             ? *row->answer
                             : ReleaseCheck{.id = ids.next<ReleaseCheck>(), .job = file.job.id};
    check.key = answering.key;
    check.answer = answering.answer;
    check.why = answering.why;
    check.who = answering.who;
    check.at = clock.now();
    Change change{.sentence =
                      (answering.answer == ReleaseAnswer::open ? "Open again: " : "Release: ") +
                      row->asks + (check.why.empty() ? "" : ": " + check.why),
                  .who = answering.who};
    if (row->answer != nullptr) {
        change.update(check, file.revisionOf(refOf(check.id)));
    } else {
        change.add(check);
    }
    return change;
}

tl::expected<Change, ReleaseProblem> giveBack(const JobFile& file, const HandBack& back,
                                              const Clock& clock, IdSource& ids) {
    if (back.givenTo.empty()) {
        return tl::unexpected(ReleaseProblem::toWhomMissing);
    }
    if (back.condition.empty()) {
        return tl::unexpected(ReleaseProblem::conditionMissing);
    }
    Change change{.sentence = "Given back to " + back.givenTo, .who = back.who};
    change.add(back);
    change.add(CustodyMove{.id = ids.next<CustodyMove>(),
                           .job = file.job.id,
                           .at = clock.now(),
                           .who = back.who,
                           .fromPlace = file.job.keptAt,
                           .toPlace = "with " + back.givenTo,
                           .why = "given back"});
    if (back.nextLookOn) {
        change.add(FollowUp{.id = ids.next<FollowUp>(),
                            .job = file.job.id,
                            .what = "Look at it again",
                            .dueOn = back.nextLookOn,
                            .why = "agreed at its return",
                            .who = back.who});
    }
    Job job = file.job;
    job.keptAt = "with " + back.givenTo;
    const StateMove move{JobState::returned, back.who, clock.now(),
                         "given back to " + back.givenTo};
    auto moved = wayBetween(job.state, move.to) == StateWay::forward
                     ? changeState(job, file.revisionOf(refOf(job.id)), move, ids)
                     : tl::expected<Change, StateProblem>{tl::unexpected(StateProblem::notAllowed)};
    if (!moved) {
        change.update(job, file.revisionOf(refOf(job.id)));
        return change;
    }
    for (Write& write : moved->writes) {
        change.writes.push_back(std::move(write));
    }
    return change;
}

} // namespace headcap::core
