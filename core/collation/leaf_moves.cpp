#include "core/collation/leaf_moves.h"

#include <algorithm>

#include <fmt/format.h>

#include "core/collation/folds.h"

namespace headcap::core {
namespace {

// Leaves that stand together as they belong together.
struct Run {
    std::size_t first;
    std::size_t last;
    std::size_t leaves; // not said to be misplaced
};

// Lacking leaves leave no gap: the leaf after one is the next there is.
std::vector<Run> runsOf(const std::vector<std::size_t>& bound,
                        const std::vector<std::size_t>& misplaced) {
    std::vector<std::size_t> order = bound;
    std::ranges::sort(order);
    const auto rank = [&](std::size_t leaf) {
        return std::ranges::lower_bound(order, leaf) - order.begin();
    };
    std::vector<Run> runs;
    for (const std::size_t leaf : bound) {
        const std::size_t counts = std::ranges::find(misplaced, leaf) == misplaced.end() ? 1 : 0;
        if (!runs.empty() && rank(leaf) == rank(runs.back().last) + 1) {
            runs.back().last = leaf;
            runs.back().leaves += counts;
        } else {
            runs.push_back({leaf, leaf, counts});
        }
    }
    return runs;
}

// Which runs stay: as many as can in rising order, and of such choices the one of most leaves.
std::vector<bool> stays(const std::vector<Run>& runs) {
    struct Best {
        std::size_t runs = 1;
        std::size_t leaves = 0;
        std::optional<std::size_t> before;
    };
    std::vector<Best> best(runs.size());
    const auto better = [](const Best& a, const Best& b) {
        return a.runs != b.runs ? a.runs > b.runs : a.leaves > b.leaves;
    };
    std::optional<std::size_t> end;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        best[i].leaves = runs[i].leaves;
        for (std::size_t j = 0; j < i; ++j) {
            const Best longer{best[j].runs + 1, best[j].leaves + runs[i].leaves, j};
            if (runs[j].last < runs[i].first && better(longer, best[i])) {
                best[i] = longer;
            }
        }
        if (!end || better(best[i], best[*end])) {
            end = i;
        }
    }
    std::vector<bool> kept(runs.size(), false);
    for (; end; end = best[*end].before) {
        kept[*end] = true;
    }
    return kept;
}

// "K5–K6 go after K4".
std::string clause(const LaidBook& book, const LeafMove& move) {
    const std::string first = leafText(book, move.first);
    const bool isOne = move.first == move.last;
    const std::string what = isOne ? first : fmt::format("{}–{}", first, leafText(book, move.last));
    const std::string where =
        move.after ? "after " + leafText(book, *move.after) : std::string("to the beginning");
    return fmt::format("{} {} {}", what, isOne ? "goes" : "go", where);
}

} // namespace

std::vector<LeafMove> movesToOrder(const std::vector<std::size_t>& bound,
                                   const std::vector<std::size_t>& misplaced) {
    const std::vector<Run> runs = runsOf(bound, misplaced);
    const std::vector<bool> kept = stays(runs);
    std::vector<std::size_t> standing; // in order, those put right among them
    std::vector<Run> away;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        if (kept[i]) {
            standing.push_back(runs[i].last);
        } else {
            away.push_back(runs[i]);
        }
    }
    std::ranges::sort(away, {}, &Run::first);
    std::vector<LeafMove> moves;
    for (const Run& run : away) {
        const auto next = std::ranges::lower_bound(standing, run.first);
        LeafMove move{run.first, run.last, std::nullopt};
        if (next != standing.begin()) {
            move.after = *std::prev(next);
        }
        standing.insert(next, run.last);
        moves.push_back(move);
    }
    return moves;
}

std::vector<std::size_t> moved(std::vector<std::size_t> bound, const LeafMove& move) {
    const auto first = std::ranges::find(bound, move.first);
    const auto last = std::ranges::find(bound, move.last);
    if (first == bound.end() || last == bound.end() || last < first) {
        return bound;
    }
    const std::vector<std::size_t> run(first, last + 1);
    bound.erase(first, last + 1);
    const auto after = move.after ? std::ranges::find(bound, *move.after) : bound.end();
    bound.insert(after == bound.end() ? bound.begin() : after + 1, run.begin(), run.end());
    return bound;
}

std::string sentenceOf(const LaidBook& book, const LeafMove& move) {
    return fmt::format("{} {}.", move.first == move.last ? "Leaf" : "Leaves", clause(book, move));
}

std::string sentenceOf(const LaidBook& book, const std::vector<LeafMove>& moves) {
    if (moves.empty()) {
        return {};
    }
    std::vector<std::string> clauses;
    std::ranges::transform(moves, std::back_inserter(clauses),
                           [&](const LeafMove& move) { return clause(book, move); });
    return fmt::format("{} the leaves in order: {}.",
                       moves.size() == 1 ? "One move puts"
                                         : std::to_string(moves.size()) + " moves put",
                       fmt::join(clauses, "; then "));
}

} // namespace headcap::core
