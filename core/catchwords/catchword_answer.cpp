#include "core/catchwords/catchword_answer.h"

namespace headcap::core {

tl::expected<CatchwordAnswer, PageTableError> compareCatchwords(const TextTable& table) {
    if (!table.hasHeader())
        return tl::unexpected(PageTableError{PageTableProblem::noHeader});
    const auto catchword = table.column("catchword");
    const auto next = table.column("next_first_words");
    if (!catchword || !next)
        return tl::unexpected(PageTableError{PageTableProblem::columnMissing,
                                             catchword ? "next_first_words" : "catchword"});
    const auto before = table.column("words_before_catchword");
    const auto head = table.column("next_running_head");
    CatchwordAnswer answer;
    answer.rows.reserve(table.rowCount());
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const CatchwordReading reading{table.cell(row, catchword), table.cell(row, next),
                                       table.cell(row, before), table.cell(row, head)};
        answer.rows.push_back(compareCatchword(reading));
        ++answer.counts[static_cast<std::size_t>(answer.rows.back().verdict)];
    }
    return answer;
}

} // namespace headcap::core
