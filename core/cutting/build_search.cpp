#include "core/cutting/build_search.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <queue>

#include "core/cutting/build_bounds.h"
#include "core/cutting/builds_by_counts.h"
#include "core/cutting/piece_counts.h"

namespace headcap::core {

namespace {

constexpr std::size_t kMostBuilds = 3'000'000;

struct Build {
    std::int16_t x = 0, y = 0; // points of its size
    bool isSideBySide = false;
    int first = -1, second = -1; // first is the option where second is −1
    int sameCounts = -1;         // the next build of the same pieces
    double value = 0, worth = 0; // worth: value less prices
};

class BuildSearch {
public:
    BuildSearch(const SheetTask& task, const CutGrid& grid, const std::vector<double>& price,
                std::int64_t known, SearchBudget& budget)
        : m_task(task), m_grid(grid), m_budget(budget), m_bounds(task, grid, price),
          m_packing(task.most), m_words(m_packing.words()), m_byCounts(m_words), m_sum(m_words),
          m_byWidth(static_cast<std::size_t>(grid.across.size())),
          m_byHeight(static_cast<std::size_t>(grid.down.size())), m_value(known) {}

    BuildAnswer run() {
        if (!m_bounds.prepare(m_budget)) {
            return {{}, m_value, kNoBound};
        }
        for (std::size_t i = 0; i < m_task.options.size(); ++i) {
            addPiece(static_cast<int>(i));
        }
        while (!m_open.empty() && m_open.top().bound > m_value) {
            if (m_budget.isSpent() || m_builds.size() > kMostBuilds) {
                return answer(m_open.top().bound);
            }
            const int index = m_open.top().build;
            m_open.pop();
            close(index);
            joinWithClosed(index);
        }
        return answer(m_value);
    }

    static constexpr std::int64_t kNoBound = std::numeric_limits<std::int64_t>::max();

private:
    struct Open {
        std::int64_t bound;
        std::int64_t value;
        int build;
        bool operator<(const Open& o) const {
            return bound != o.bound   ? bound < o.bound
                   : value != o.value ? value < o.value
                                      : build > o.build;
        }
    };
    struct Closed {
        int other; // the point of the side across the join
        int build;
        double value, worth;
    };

    void addPiece(int option) {
        const auto i = static_cast<std::size_t>(option);
        const int type = m_task.options[i].type;
        std::ranges::fill(m_sum, 0);
        m_packing.addOne(m_sum.data(), type);
        Build build;
        build.x = static_cast<std::int16_t>(m_grid.optionX[i]);
        build.y = static_cast<std::int16_t>(m_grid.optionY[i]);
        build.first = option;
        build.value = static_cast<double>(m_task.value[static_cast<std::size_t>(type)]);
        build.worth = m_bounds.worthOf(type);
        add(build);
    }

    // Keeps a build, whose counts are in m_sum, unless one of the same pieces is no larger.
    void add(Build build) {
        const double bound =
            m_bounds.boundOf(build.value, build.worth, m_grid.cell(build.x, build.y));
        if (bound < static_cast<double>(m_value) + 1) {
            considerBest(build);
            return;
        }
        int& head = m_byCounts.head(m_sum.data(), m_counts);
        for (int i = head; i >= 0; i = m_builds[static_cast<std::size_t>(i)].sameCounts) {
            const Build& other = m_builds[static_cast<std::size_t>(i)];
            if (other.x <= build.x && other.y <= build.y) {
                return;
            }
        }
        const int index = static_cast<int>(m_builds.size());
        build.sameCounts = head;
        head = index;
        m_counts.insert(m_counts.end(), m_sum.begin(), m_sum.end());
        m_builds.push_back(build);
        considerBest(build);
        m_open.push({static_cast<std::int64_t>(std::floor(bound)),
                     static_cast<std::int64_t>(build.value), index});
    }

    void considerBest(const Build& build) {
        const auto value = static_cast<std::int64_t>(build.value);
        if (value > m_value && isSlackAllowed(m_task.width - m_grid.across.at(build.x)) &&
            isSlackAllowed(m_task.height - m_grid.down.at(build.y))) {
            m_value = value;
            m_best = build;
            m_hasBest = true;
        }
    }

    [[nodiscard]] bool isSlackAllowed(std::int64_t slack) const {
        return slack == 0 || slack >= m_task.leastSlack;
    }

    void close(int index) {
        const Build& build = m_builds[static_cast<std::size_t>(index)];
        m_byWidth[static_cast<std::size_t>(build.x)].push_back(
            {build.y, index, build.value, build.worth});
        m_byHeight[static_cast<std::size_t>(build.y)].push_back(
            {build.x, index, build.value, build.worth});
    }

    void joinWithClosed(int index) {
        const Build build = m_builds[static_cast<std::size_t>(index)];
        std::uint64_t work = 1;
        for (int x = 1; x < m_grid.across.size(); ++x) {
            const std::vector<Closed>& row = m_byWidth[static_cast<std::size_t>(x)];
            const int sum = row.empty() ? -1 : m_grid.across.sum(build.x, x);
            if (sum >= 0) {
                work += row.size();
                joinRow(index, build, row, true, sum);
            }
        }
        for (int y = 1; y < m_grid.down.size(); ++y) {
            const std::vector<Closed>& row = m_byHeight[static_cast<std::size_t>(y)];
            const int sum = row.empty() ? -1 : m_grid.down.sum(build.y, y);
            if (sum >= 0) {
                work += row.size();
                joinRow(index, build, row, false, sum);
            }
        }
        m_budget.spend(2 * work);
    }

    void joinRow(int index, const Build& build, const std::vector<Closed>& row, bool sideBySide,
                 int sum) {
        const int mine = sideBySide ? build.y : build.x;
        const std::size_t start = sideBySide ? m_grid.cell(sum, 0) : m_grid.cell(0, sum);
        const std::size_t stride = sideBySide ? 1 : static_cast<std::size_t>(m_grid.down.size());
        for (const Closed& other : row) {
            const int larger = std::max(mine, other.other);
            const std::size_t cell = start + stride * static_cast<std::size_t>(larger);
            const double value = build.value + other.value;
            const double worth = build.worth + other.worth;
            if (m_bounds.boundOf(value, worth, cell) >= static_cast<double>(m_value) + 1) {
                join(index, other, sideBySide, sum, larger);
            }
        }
    }

    void join(int index, const Closed& other, bool sideBySide, int sum, int larger) {
        const std::uint64_t* a = &m_counts[static_cast<std::size_t>(index) * m_words];
        const std::uint64_t* b = &m_counts[static_cast<std::size_t>(other.build) * m_words];
        const Build& mine = m_builds[static_cast<std::size_t>(index)];
        const Build& theirs = m_builds[static_cast<std::size_t>(other.build)];
        if (!m_packing.isWithin(a, b) || !isEdgeAllowed(mine, theirs, sideBySide)) {
            return;
        }
        m_packing.add(a, b, m_sum.data());
        Build build;
        build.x = static_cast<std::int16_t>(sideBySide ? sum : larger);
        build.y = static_cast<std::int16_t>(sideBySide ? larger : sum);
        build.isSideBySide = sideBySide;
        build.first = index;
        build.second = other.build;
        build.value = mine.value + theirs.value;
        build.worth = mine.worth + theirs.worth;
        add(build);
    }

    [[nodiscard]] bool isEdgeAllowed(const Build& a, const Build& b, bool sideBySide) const {
        const std::int64_t difference = sideBySide ? m_grid.down.at(a.y) - m_grid.down.at(b.y)
                                                   : m_grid.across.at(a.x) - m_grid.across.at(b.x);
        return isSlackAllowed(difference < 0 ? -difference : difference);
    }

    BuildAnswer answer(std::int64_t bound) {
        BuildAnswer found{{}, m_value, std::max(bound, m_value)};
        if (m_hasBest) {
            found.tree.root = write(m_best, found.tree);
        }
        return found;
    }

    int write(const Build& build, CutTree& tree) const {
        if (build.second < 0) {
            return tree.addPiece(build.first);
        }
        const int first = write(m_builds[static_cast<std::size_t>(build.first)], tree);
        const int second = write(m_builds[static_cast<std::size_t>(build.second)], tree);
        return tree.addJoin(build.isSideBySide, first, second);
    }

    const SheetTask& m_task;
    const CutGrid& m_grid;
    SearchBudget& m_budget;
    BuildBounds m_bounds;
    PieceCounts m_packing;
    std::size_t m_words;
    BuildsByCounts m_byCounts;
    std::vector<std::uint64_t> m_sum;
    std::vector<std::vector<Closed>> m_byWidth, m_byHeight;
    std::vector<Build> m_builds;
    std::vector<std::uint64_t> m_counts;
    std::priority_queue<Open> m_open;
    std::int64_t m_value;
    Build m_best;
    bool m_hasBest = false;
};

} // namespace

BuildAnswer searchBuilds(const SheetTask& task, const CutGrid& grid,
                         const std::vector<double>& price, std::int64_t known,
                         SearchBudget& budget) {
    return BuildSearch(task, grid, price, known, budget).run();
}

} // namespace headcap::core
