#include "core/treatment/departures.h"

#include <algorithm>
#include <limits>

#include <fmt/format.h>

#include "core/custody/job_states.h"
#include "core/treatment/approval.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/cost.h"
#include "core/treatment/techniques.h"
#include "core/treatment/totals.h"
#include "core/values/english.h"

namespace headcap::core {
namespace {

// Told of a change by that day or after it: both settle it.
const Notice* noticeOfChange(const JobFile& file) {
    const auto found = std::ranges::find(file.notices, NoticeSubject::change, &Notice::subject);
    return found == file.notices.end() ? nullptr : &*found;
}

void addDoneNotApproved(const JobFile& file, const Clock& clock, std::vector<Departure>& all) {
    for (const Step* step : unapprovedSteps(file)) {
        const RecordRef ref = refOf(step->id);
        all.push_back({DepartureKind::doneNotApproved, ref,
                       fmt::format("{}, on {}: no line that the owner approved covers it.",
                                   capitalised(stepTitle(*step, file.techniques)),
                                   dayText(clock.dayOf(step->at))),
                       explanationOf(file, ref, ruleOf(DepartureKind::doneNotApproved)),
                       noticeOfChange(file)});
    }
}

void addApprovedNotDone(const JobFile& file, std::vector<Departure>& all) {
    if (!hasReached(file.job.state, JobState::passed)) {
        return;
    }
    for (const ProposalLine* line : openLines(file)) {
        const RecordRef ref = refOf(line->id);
        all.push_back({DepartureKind::approvedNotDone, ref,
                       fmt::format("{} was approved, and no step carries it out.",
                                   capitalised(lineTitle(*line, file.techniques))),
                       explanationOf(file, ref, ruleOf(DepartureKind::approvedNotDone)), nullptr});
    }
}

void addOverLimit(const JobFile& file, std::vector<Departure>& all) {
    const Decision* decision = approval(file);
    if (decision == nullptr || !decision->limit) {
        return;
    }
    const auto done = costAsDone(file, decision->limit->currency);
    if (!done || done->gross.minor <= decision->limit->minor) {
        return;
    }
    const RecordRef ref = refOf(decision->id);
    all.push_back({DepartureKind::overLimit, ref,
                   fmt::format("The work done comes to {}{}, above the owner's limit of {}.",
                               toText(done->gross), done->gross == done->net ? "" : " with its tax",
                               toText(*decision->limit)),
                   explanationOf(file, ref, ruleOf(DepartureKind::overLimit)),
                   noticeOfChange(file)});
}

// Sums by currency; what is beyond counting is the most that can be counted.
class Bill {
public:
    explicit Bill(const Proposal* proposal)
        : m_taxPpm(proposal == nullptr ? 0 : proposal->taxPpm),
          m_isPerLine(proposal != nullptr && proposal->taxPerLine) {}

    // One line of the bill: its work and its materials, of one currency as a rule.
    void add(const std::optional<Money>& work, const std::optional<Money>& materials = {}) {
        const auto both = work && materials ? sum(*work, *materials) : std::nullopt;
        for (const auto& part : both ? std::vector{both} : std::vector{work, materials}) {
            if (part) {
                addTo(inCurrency(part->currency), *part);
            }
        }
    }

    [[nodiscard]] std::vector<CostAsDone> total() const {
        std::vector<CostAsDone> all = m_sums;
        for (CostAsDone& one : all) {
            one.gross = m_isPerLine ? one.gross : more(one.net, shareOf(one.net, m_taxPpm));
        }
        return all;
    }

private:
    static Money more(const Money& a, const Money& b) {
        return sum(a, b).value_or(Money{std::numeric_limits<std::int64_t>::max(), a.currency});
    }

    CostAsDone& inCurrency(const std::string& currency) {
        for (CostAsDone& one : m_sums) {
            if (one.net.currency == currency) {
                return one;
            }
        }
        return m_sums.emplace_back(CostAsDone{{0, currency}, {0, currency}});
    }

    void addTo(CostAsDone& one, const Money& cost) const {
        one.net = more(one.net, cost);
        one.gross = more(one.gross, more(cost, shareOf(cost, m_taxPpm)));
    }

    std::int64_t m_taxPpm;
    bool m_isPerLine;
    std::vector<CostAsDone> m_sums{};
};

// A line's price, and more where it took longer than it says; by the rate where it has none.
std::optional<Money> workAsDone(const JobFile& file, const ProposalLine& line,
                                const LineWork& work) {
    const bool isLonger = line.minutes > Minutes{0} && work.minutes > line.minutes;
    if (line.price) {
        return isLonger ? inProportion(*line.price, work.minutes, line.minutes) : line.price;
    }
    const bool hasRate = file.workshop && file.workshop->hourlyRate;
    return hasRate ? std::optional{priceAt(*file.workshop->hourlyRate, work.minutes)}
                   : std::nullopt;
}

const Proposal* approvedProposal(const JobFile& file) {
    const Decision* decision = approval(file);
    const auto found = decision == nullptr
                           ? file.proposals.end()
                           : std::ranges::find(file.proposals, decision->proposal, &Proposal::id);
    return found == file.proposals.end() ? nullptr : &*found;
}

} // namespace

std::string ruleOf(DepartureKind kind) {
    switch (kind) {
    case DepartureKind::doneNotApproved:
        return "done_not_approved";
    case DepartureKind::approvedNotDone:
        return "approved_not_done";
    case DepartureKind::overLimit:
        break;
    }
    return "over_limit";
}

std::vector<Departure> departures(const JobFile& file, const Clock& clock) {
    std::vector<Departure> all;
    addDoneNotApproved(file, clock, all);
    addApprovedNotDone(file, all);
    addOverLimit(file, all);
    return all;
}

std::vector<CostAsDone> costAsDone(const JobFile& file) {
    Bill bill{approvedProposal(file)};
    for (const ProposalLine* line : approvedLines(file)) {
        if (const LineWork work = workedOn(file, *line); work.steps > 0) {
            bill.add(workAsDone(file, *line, work), line->materialsCost);
        }
    }
    if (file.workshop && file.workshop->hourlyRate) {
        for (const Step* step : unapprovedSteps(file)) {
            bill.add(priceAt(*file.workshop->hourlyRate, step->minutes));
        }
    }
    return bill.total();
}

std::optional<CostAsDone> costAsDone(const JobFile& file, std::string_view currency) {
    for (const CostAsDone& one : costAsDone(file)) {
        if (one.net.currency == currency) {
            return one;
        }
    }
    return std::nullopt;
}

const Explanation* explanationOf(const JobFile& file, const RecordRef& subject,
                                 const std::string& rule) {
    const auto found = std::ranges::find_if(file.explanations, [&](const Explanation& one) {
        return one.subject == subject && (one.rule.empty() || one.rule == rule) &&
               !one.text.empty();
    });
    return found == file.explanations.end() ? nullptr : &*found;
}

Change explain(const JobFile& file, const RecordRef& subject, const std::string& rule,
               const std::string& text, std::optional<Id<Person>> who, Instant now, IdSource& ids) {
    Change change{.sentence = "Explained: " + sentence(text), .who = who};
    change.add(Explanation{.id = ids.next<Explanation>(),
                           .job = file.job.id,
                           .subject = subject,
                           .rule = rule,
                           .text = text,
                           .who = who,
                           .at = now});
    return change;
}

} // namespace headcap::core
