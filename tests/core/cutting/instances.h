// Reads the published guillotine instances where they lie: OR-Library's gcut and cgcut, and Wang's.
#pragma once

#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include "core/cutting/cut_plan.h"

namespace headcap::core::test {

inline std::string cuttingFolder() {
    return std::string(HEADCAP_REFERENCE_DIR) + "/cutting/";
}

enum class InstanceForm { gcut, cgcut, wang };

// With `limited` false any number of each piece may be cut.
inline std::optional<CutProblem> readInstance(const std::string& file, InstanceForm form,
                                              bool limited, bool mayTurn) {
    std::ifstream in(cuttingFolder() + file);
    if (!in) {
        return std::nullopt;
    }
    int types = 0;
    std::int64_t width = 0, height = 0;
    in >> types >> width >> height;
    CutProblem problem;
    problem.objective = CutObjective::mostValue;
    problem.rules.mayTurn = mayTurn;
    problem.sheets.push_back({"sheet", Length::millimetres(width), Length::millimetres(height)});
    for (int i = 0; i < types; ++i) {
        std::int64_t w = 0, h = 0, value = 0;
        int most = 10'000;
        if (form == InstanceForm::wang) {
            in >> value >> w >> h >> most;
        } else if (form == InstanceForm::cgcut) {
            in >> w >> h >> most >> value;
        } else {
            in >> w >> h >> value;
        }
        WantedPiece piece{std::to_string(i), Length::millimetres(w), Length::millimetres(h)};
        piece.count = limited ? most : 10'000;
        piece.value = value * 1'000'000;
        problem.pieces.push_back(piece);
    }
    return in ? std::optional(problem) : std::nullopt;
}

struct PublishedOptimum {
    std::string instance, variant, rotation, status;
    std::int64_t value = 0;

    [[nodiscard]] bool isProven() const { return status == "proven"; }
    [[nodiscard]] std::optional<CutProblem> problem() const {
        const bool isConstrained = instance.starts_with("cgcut");
        return readInstance(instance + ".txt",
                            isConstrained ? InstanceForm::cgcut : InstanceForm::gcut,
                            variant == "constrained", rotation == "90deg");
    }
};

inline std::vector<PublishedOptimum> publishedOptima() {
    std::vector<PublishedOptimum> rows;
    std::ifstream in(cuttingFolder() + "optima.tsv");
    std::string line;
    std::getline(in, line);
    while (std::getline(in, line)) {
        std::vector<std::string> fields;
        std::stringstream cells(line);
        for (std::string cell; std::getline(cells, cell, '\t');) {
            fields.push_back(cell);
        }
        if (fields.size() >= 9) {
            rows.push_back({fields[0], fields[5], fields[6], fields[8], std::stoll(fields[7])});
        }
    }
    return rows;
}

} // namespace headcap::core::test
