#include "core/cutting/greedy_fill.h"

#include <algorithm>
#include <limits>

namespace headcap::core {

namespace {

struct FreeRect {
    std::size_t entry = 0; // of the filling
    TaskRect rect;
};

class Filler {
public:
    Filler(const StockTasks& tasks, const std::vector<std::size_t>& sheets, const FillRules& rules)
        : m_tasks(tasks), m_rules(rules) {
        m_result.placed.resize(tasks.fitsSomewhere.size());
        m_options.resize(tasks.sheets.size());
        for (const std::size_t sheet : sheets) {
            m_result.filling.push_back({sheet, {}});
            indexOptions(sheet);
        }
        while (rules.opensAllAtOnce && m_opened < m_result.filling.size()) {
            openNext();
        }
    }

    FillResult run(const std::vector<int>& pieces) {
        int full = -1; // a type that found no room finds none later
        for (const int type : pieces) {
            if (type != full && !place(type)) {
                full = type;
            }
        }
        finish();
        return std::move(m_result);
    }

private:
    struct Choice {
        std::size_t free = 0;
        int option = -1;
        std::int64_t first = std::numeric_limits<std::int64_t>::max();
        std::int64_t second = std::numeric_limits<std::int64_t>::max();
    };

    void indexOptions(std::size_t sheet) {
        std::vector<std::vector<int>>& byType = m_options[sheet];
        if (!byType.empty()) {
            return;
        }
        byType.resize(m_result.placed.size());
        const std::vector<SheetOption>& options = m_tasks.sheets[sheet].task.options;
        for (std::size_t i = 0; i < options.size(); ++i) {
            byType[static_cast<std::size_t>(options[i].type)].push_back(static_cast<int>(i));
        }
    }

    void openNext() {
        const SheetTask& task = m_tasks.sheets[m_result.filling[m_opened].sheet].task;
        m_free.push_back({m_opened, {0, 0, task.width, task.height}});
        ++m_opened;
    }

    bool place(int type) {
        Choice best;
        for (std::size_t i = 0; i < m_free.size(); ++i) {
            consider(type, i, best);
        }
        while (best.option < 0 && m_opened < m_result.filling.size()) {
            openNext();
            consider(type, m_free.size() - 1, best);
        }
        if (best.option < 0) {
            return false;
        }
        cutOut(best);
        ++m_result.placed[static_cast<std::size_t>(type)];
        return true;
    }

    void consider(int type, std::size_t index, Choice& best) {
        const FreeRect& free = m_free[index];
        const std::size_t sheet = m_result.filling[free.entry].sheet;
        const SheetTask& task = m_tasks.sheets[sheet].task;
        ++m_result.work;
        for (const int option : m_options[sheet][static_cast<std::size_t>(type)]) {
            const SheetOption& size = task.options[static_cast<std::size_t>(option)];
            const std::int64_t right = free.rect.width - size.width;
            const std::int64_t below = free.rect.height - size.height;
            if (!isSlackAllowed(right, task) || !isSlackAllowed(below, task)) {
                continue;
            }
            Choice choice{index, option, std::min(right, below), std::max(right, below)};
            if (m_rules.fit == FillFit::leastLongSide) {
                std::swap(choice.first, choice.second);
            } else if (m_rules.fit == FillFit::leastArea) {
                choice.second = choice.first;
                choice.first = free.rect.width / 1000 * (free.rect.height / 1000) -
                               size.width / 1000 * (size.height / 1000);
            }
            if (choice.first < best.first ||
                (choice.first == best.first && choice.second < best.second)) {
                best = choice;
            }
        }
    }

    static bool isSlackAllowed(std::int64_t slack, const SheetTask& task) {
        return slack == 0 || slack >= std::max<std::int64_t>(task.leastSlack, 1);
    }

    [[nodiscard]] bool cutsAcrossFirst(std::int64_t right, std::int64_t below,
                                       const TaskRect& r) const {
        const bool isLargerAcross = static_cast<double>(right) * static_cast<double>(r.height) >=
                                    static_cast<double>(below) * static_cast<double>(r.width);
        switch (m_rules.split) {
        case FillSplit::largestRemainder:
            return isLargerAcross;
        case FillSplit::leastRemainder:
            return !isLargerAcross;
        case FillSplit::acrossFirst:
            return true;
        case FillSplit::downFirst:
            return false;
        }
        return true;
    }

    void cutOut(const Choice& choice) {
        const FreeRect free = m_free[choice.free];
        m_free.erase(m_free.begin() + static_cast<std::ptrdiff_t>(choice.free));
        FilledSheet& filled = m_result.filling[free.entry];
        const SheetOption& size =
            m_tasks.sheets[filled.sheet].task.options[static_cast<std::size_t>(choice.option)];
        TaskRect r = free.rect;
        const std::int64_t right = r.width - size.width;
        const std::int64_t below = r.height - size.height;
        const bool acrossFirst = cutsAcrossFirst(right, below, r);
        for (const bool across : {acrossFirst, !acrossFirst}) {
            if (across && right > 0) {
                const std::int64_t at = r.x + size.width;
                filled.layout.cuts.push_back({true, at, r.y, r.y + r.height});
                m_free.push_back({free.entry, {at, r.y, right, r.height}});
                r.width = size.width;
            } else if (!across && below > 0) {
                const std::int64_t at = r.y + size.height;
                filled.layout.cuts.push_back({false, at, r.x, r.x + r.width});
                m_free.push_back({free.entry, {r.x, at, r.width, below}});
                r.height = size.height;
            }
        }
        filled.layout.placed.push_back({choice.option, r.x, r.y});
    }

    void finish() {
        for (const FreeRect& free : m_free) {
            FilledSheet& filled = m_result.filling[free.entry];
            if (!filled.layout.placed.empty()) {
                filled.layout.free.push_back(free.rect);
            }
        }
    }

    const StockTasks& m_tasks;
    FillRules m_rules;
    FillResult m_result;
    std::vector<std::vector<std::vector<int>>> m_options; // by sheet and type
    std::vector<FreeRect> m_free;
    std::size_t m_opened = 0;
};

double sizeKey(const WantedPiece& piece, int kind) {
    const auto width = static_cast<double>(piece.width.count());
    const auto height = static_cast<double>(piece.height.count());
    switch (kind) {
    case 0:
        return width * height;
    case 1:
        return std::max(width, height) * std::max(width, height);
    case 2:
        return width * width;
    case 3:
        return height * height;
    default:
        return (width + height) * (width + height);
    }
}

} // namespace

FillResult fillGreedily(const StockTasks& tasks, const std::vector<std::size_t>& sheets,
                        const std::vector<int>& pieces, const FillRules& rules) {
    return Filler(tasks, sheets, rules).run(pieces);
}

std::vector<int> drawOrder(const CutProblem& problem, const std::vector<int>& counts,
                           PlanDice& dice) {
    const int kind = dice.below(5);
    const double noise = dice.below(3) == 0 ? 0.0 : dice.unit();
    const bool keepsTypesTogether = dice.below(2) == 0;
    struct Entry {
        double key;
        int type;
    };
    std::vector<Entry> entries;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        double factor = 1 - noise * dice.unit();
        for (int copy = 0; copy < counts[i]; ++copy) {
            entries.push_back({sizeKey(problem.pieces[i], kind) * factor, static_cast<int>(i)});
            factor = keepsTypesTogether ? factor : 1 - noise * dice.unit();
        }
    }
    std::ranges::stable_sort(entries, std::greater{}, &Entry::key);
    std::vector<int> order;
    for (const Entry& entry : entries) {
        order.push_back(entry.type);
    }
    return order;
}

FillRules drawRules(PlanDice& dice) {
    return {static_cast<FillFit>(dice.below(3)), static_cast<FillSplit>(dice.below(4)),
            dice.below(2) == 0};
}

} // namespace headcap::core
