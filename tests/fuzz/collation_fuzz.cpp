// Any bytes through both readers, the printer, the places and the answer: no crash, no hang, and
// what was printed reads back the same.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

#include "core/collation/collate.h"
#include "core/collation/leaf_places.h"
#include "core/collation/plates.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace headcap::core;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const std::size_t cut = text.find('\t');
    const CollateRequest request{
        std::string(text.substr(0, cut)),
        cut == text.npos ? std::string() : std::string(text.substr(cut + 1)), ""};
    const CollateAnswer answer = collate(request);
    if (answer.leaves.size() > static_cast<std::size_t>(kMostLeavesInBook)) {
        std::abort();
    }
    for (std::size_t i = 0; i < answer.leaves.size(); ++i) {
        const auto& other = answer.leaves[i].conjugate;
        if (other && answer.leaves[*other].conjugate != i) {
            std::abort();
        }
    }
    (void)toJson(answer, request).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
    (void)parsePlatePlace(text);
    if (const auto set = parseLeafSet(text)) {
        if (parseLeafSet(toText(*set)) != set) {
            std::abort();
        }
        (void)locate(layBook(answer.makeUp), *set);
    }
    return 0;
}
