// The pieces that were cut and booked for a job, by the number of the lot they were cut from. They
// have left their lot's ledger with the cutting; a step that uses them names them in words.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/record/job_file.h"

namespace headcap::core {

struct CutForJob {
    std::string lot; // its number
    std::int64_t pieces = 0;
    std::vector<std::string> names{}; // each once: "endpaper fold"
    Id<Cutting> cutting;              // the first of them
};

// Of cuttings that were not taken back, in their order.
[[nodiscard]] std::vector<CutForJob> cutForJob(const JobFile& file);

// Those of which no standing step uses anything.
[[nodiscard]] std::vector<CutForJob> cutAndNotUsed(const JobFile& file);

// Whether the use is of such pieces: of a lot, counted in words and not in the ledger.
[[nodiscard]] bool isOfCutPieces(const MaterialUse& use);

// "2 pieces cut for this job".
[[nodiscard]] std::string cutPiecesText(Amount pieces);

} // namespace headcap::core
