#include <nlohmann/json.hpp>

#include "core/catchwords/catchword_answer.h"
#include "core/catchwords/leaf_diagnosis.h"

namespace headcap::core {

nlohmann::ordered_json toJson(const LeafDiagnosis& diagnosis, std::string_view book) {
    nlohmann::ordered_json json;
    if (!book.empty())
        json["book"] = book;
    json["formula"] = diagnosis.formula;
    json["extent"] = diagnosis.extent;
    json["gatherings"] = nlohmann::ordered_json::array();
    for (const InferredGathering& gathering : diagnosis.gatherings) {
        json["gatherings"].push_back({{"signature", gathering.signature},
                                      {"leaves", gathering.leaves},
                                      {"lacking", gathering.lackingLeaves},
                                      {"first_row", gathering.firstRow},
                                      {"last_row", gathering.lastRow},
                                      {"marked", gathering.marked},
                                      {"confidence", gathering.sure ? "sure" : "doubtful"}});
    }
    json["findings"] = nlohmann::ordered_json::array();
    for (const LeafFinding& finding : diagnosis.findings) {
        json["findings"].push_back({{"kind", wordOf(finding.kind)},
                                    {"after_row", finding.afterRow},
                                    {"before_row", finding.beforeRow},
                                    {"leaves", finding.leaves},
                                    {"confidence", finding.sure ? "sure" : "doubtful"},
                                    {"sentence", finding.sentence}});
    }
    return json;
}

nlohmann::ordered_json toJson(const CatchwordAnswer& answer) {
    nlohmann::ordered_json json;
    json["rows"] = nlohmann::ordered_json::array();
    for (std::size_t row = 0; row < answer.rows.size(); ++row) {
        json["rows"].push_back({{"row", row + 1},
                                {"verdict", wordOf(answer.rows[row].verdict)},
                                {"reason", sentenceOf(answer.rows[row].reason)}});
    }
    nlohmann::ordered_json counts;
    for (std::size_t verdict = 0; verdict < answer.counts.size(); ++verdict)
        counts[std::string(wordOf(static_cast<CatchwordVerdict>(verdict)))] =
            answer.counts[verdict];
    json["counts"] = std::move(counts);
    return json;
}

} // namespace headcap::core
