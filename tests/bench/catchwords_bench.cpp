// How often catchwords of printed books are recognised on the next page, and how often by mistake
// on another page of the same book. `--misses` lists what was not recognised, `--false` what was
// taken for the same by mistake.

#include <chrono>
#include <cstddef>
#include <map>
#include <random>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>

#include "core/catchwords/comparison.h"
#include "core/catchwords/text_table.h"
#include "tests/support/reference_file.h"

namespace headcap {
namespace {

using core::CatchwordVerdict;

bool agrees(CatchwordVerdict verdict) {
    return verdict <= CatchwordVerdict::variant;
}

struct Columns {
    explicit Columns(const core::TextTable& table)
        : book(*table.column("book")), catchword(*table.column("catchword")),
          next(*table.column("next_first_words")), before(*table.column("words_before_catchword")),
          head(*table.column("next_running_head")) {}
    std::size_t book, catchword, next, before, head;
};

core::CatchwordReading reading(const core::TextTable& table, const Columns& columns,
                               std::size_t from, std::size_t to) {
    return {table.cell(from, columns.catchword), table.cell(to, columns.next),
            table.cell(from, columns.before), table.cell(to, columns.head)};
}

void show(const core::CatchwordReading& pair, const core::CatchwordComparison& found) {
    fmt::print("{:9} {:38} | {} … {} | {}\n", wordOf(found.verdict), sentenceOf(found.reason),
               pair.wordsBefore, pair.catchword, pair.nextFirstWords);
}

void printNeighbours(const core::TextTable& table, const Columns& columns, bool list) {
    std::map<CatchwordVerdict, int> counts;
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const auto pair = reading(table, columns, row, row);
        const auto found = compareCatchword(pair);
        ++counts[found.verdict];
        if (list && found.verdict != CatchwordVerdict::same)
            show(pair, found);
    }
    const int good = counts[CatchwordVerdict::same] + counts[CatchwordVerdict::variant];
    fmt::print("neighbours {}: same {} variant {} doubtful {} different {}: {:.2f} % agree\n",
               table.rowCount(), counts[CatchwordVerdict::same], counts[CatchwordVerdict::variant],
               counts[CatchwordVerdict::doubtful], counts[CatchwordVerdict::different],
               100.0 * good / static_cast<double>(table.rowCount()));
}

void printStrangers(const core::TextTable& table, const Columns& columns, bool list) {
    std::map<std::string_view, std::vector<std::size_t>> books;
    for (std::size_t row = 0; row < table.rowCount(); ++row)
        books[table.cell(row, columns.book)].push_back(row);
    std::mt19937 random(20240105);
    int trials = 0;
    int agreed = 0;
    int equal = 0;
    for (const auto& [book, rows] : books) {
        for (const std::size_t row : rows) {
            for (int round = 0; round < 5 && rows.size() > 1; ++round) {
                const std::size_t other = rows[random() % rows.size()];
                if (other == row)
                    continue;
                const auto pair = reading(table, columns, row, other);
                const auto found = compareCatchword(pair);
                ++trials;
                agreed += agrees(found.verdict) ? 1 : 0;
                equal += found.reason == core::CatchwordReason::equal ? 1 : 0;
                if (list && agrees(found.verdict))
                    show(pair, found);
            }
        }
    }
    fmt::print("strangers {}: {:.2f} % agree ({:.2f} % the very same word)\n", trials,
               100.0 * agreed / trials, 100.0 * equal / trials);
}

} // namespace
} // namespace headcap

int main(int argc, char** argv) {
    using namespace headcap;
    const std::string_view option = argc > 1 ? argv[1] : "";
    const auto text = tests::readReference("catchwords.tsv");
    if (!text) {
        fmt::print(stderr, "catchwords.tsv is not in {}\n", HEADCAP_REFERENCE_DIR);
        return 2;
    }
    const core::TextTable table(*text);
    const Columns columns(table);
    const auto begin = std::chrono::steady_clock::now();
    printNeighbours(table, columns, option == "--misses");
    printStrangers(table, columns, option == "--false");
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - begin;
    fmt::print("{:.2f} s\n", taken.count());
    return 0;
}
