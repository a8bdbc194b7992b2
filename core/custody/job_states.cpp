#include "core/custody/job_states.h"

#include <fmt/format.h>

namespace headcap::core {
namespace {

constexpr std::array kOrder{JobState::received, JobState::surveyed,   JobState::proposed,
                            JobState::approved, JobState::atTheBench, JobState::passed,
                            JobState::reported, JobState::returned};
constexpr std::array kAside{JobState::onHold, JobState::declined, JobState::withdrawn};

constexpr int placeOf(JobState state) {
    for (std::size_t i = 0; i < kOrder.size(); ++i) {
        if (kOrder[i] == state) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

constexpr bool isAside(JobState state) {
    return placeOf(state) < 0;
}

std::optional<std::string> nextAfter(std::string_view prefix,
                                     const std::optional<std::string>& greatest) {
    std::string_view tail;
    if (greatest && greatest->starts_with(prefix)) {
        tail = std::string_view{*greatest}.substr(prefix.size());
    }
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    const bool lettered = tail.size() == 3 && tail[0] >= 'A' && tail[0] <= 'Z';
    if (tail.size() != 3 || !isDigit(tail[1]) || !isDigit(tail[2]) ||
        (!lettered && !isDigit(tail[0]))) {
        return tail.empty() ? std::optional{std::string{prefix} + "001"} : std::nullopt;
    }
    // The first place counts 0 to 9, then A to Z.
    int first = lettered ? 10 + (tail[0] - 'A') : tail[0] - '0';
    int rest = (tail[1] - '0') * 10 + (tail[2] - '0') + 1;
    if (rest == 100) {
        rest = 0;
        ++first;
    }
    if (first >= 36) {
        return std::nullopt;
    }
    const char head = static_cast<char>(first < 10 ? '0' + first : 'A' + (first - 10));
    return fmt::format("{}{}{:02}", prefix, head, rest);
}

} // namespace

StateWay wayBetween(JobState from, JobState to) {
    if (from == to) {
        return StateWay::none;
    }
    if (isAside(to)) {
        // What has been given back can't be held, declined or withdrawn.
        return from == JobState::returned ? StateWay::none : StateWay::withReason;
    }
    if (isAside(from)) {
        const bool closed = from != JobState::onHold;
        return closed && to == JobState::returned ? StateWay::forward : StateWay::withReason;
    }
    const int steps = placeOf(to) - placeOf(from);
    return steps == 1 ? StateWay::forward : StateWay::withReason;
}

std::vector<JobState> statesAfter(JobState from) {
    std::vector<JobState> states;
    const auto consider = [&](JobState to) {
        if (wayBetween(from, to) != StateWay::none) {
            states.push_back(to);
        }
    };
    for (const JobState to : kOrder) {
        consider(to);
    }
    for (const JobState to : kAside) {
        consider(to);
    }
    return states;
}

bool isInTheHouse(JobState state) {
    return state != JobState::returned && state != JobState::declined &&
           state != JobState::withdrawn;
}

bool hasReached(JobState state, JobState stage) {
    return !isAside(state) && placeOf(state) >= placeOf(stage);
}

std::string_view wordsFor(JobState state) {
    switch (state) {
    case JobState::received:
        return "received";
    case JobState::surveyed:
        return "surveyed";
    case JobState::proposed:
        return "proposed";
    case JobState::approved:
        return "approved";
    case JobState::atTheBench:
        return "at the bench";
    case JobState::passed:
        return "passed";
    case JobState::reported:
        return "reported";
    case JobState::returned:
        return "returned";
    case JobState::onHold:
        return "on hold";
    case JobState::declined:
        return "declined";
    case JobState::withdrawn:
        break;
    }
    return "withdrawn";
}

tl::expected<Change, StateProblem> changeState(const Job& job, Revision read, const StateMove& move,
                                               IdSource& ids) {
    if (job.state == move.to) {
        return tl::unexpected(StateProblem::sameState);
    }
    const StateWay way = wayBetween(job.state, move.to);
    if (way == StateWay::none) {
        return tl::unexpected(StateProblem::notAllowed);
    }
    if (way == StateWay::withReason && move.why.empty()) {
        return tl::unexpected(StateProblem::reasonMissing);
    }
    Change change{.sentence =
                      fmt::format("Job {}: {}, was {}{}", job.number, wordsFor(move.to),
                                  wordsFor(job.state), move.why.empty() ? "" : ": " + move.why),
                  .who = move.who};
    Job moved = job;
    moved.state = move.to;
    change.update(moved, read);
    change.add(StateChange{.id = ids.next<StateChange>(),
                           .job = job.id,
                           .fromState = job.state,
                           .toState = move.to,
                           .at = move.at,
                           .who = move.who,
                           .why = move.why});
    return change;
}

std::string jobNumberPrefix(std::chrono::year year) {
    return fmt::format("{:04}-", static_cast<int>(year));
}

std::string lotNumberPrefix(std::chrono::year year) {
    return fmt::format("{:02}-", static_cast<int>(year) % 100);
}

std::optional<std::string> nextJobNumber(const std::optional<std::string>& greatestOfYear,
                                         std::chrono::year year) {
    return nextAfter(jobNumberPrefix(year), greatestOfYear);
}

std::optional<std::string> nextLotNumber(const std::optional<std::string>& greatestOfYear,
                                         std::chrono::year year) {
    return nextAfter(lotNumberPrefix(year), greatestOfYear);
}

} // namespace headcap::core
