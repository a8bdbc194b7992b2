// Real catalogue records, errors and all: how many are read, evaluated and agree.
#include <fstream>
#include <iostream>
#include <string>

#include <gtest/gtest.h>

#include "core/collation/collate.h"
#include "tests/support/tsv.h"

namespace headcap::core {
namespace {

struct Figures {
    int all = 0;
    int read = 0;
    int evaluated = 0;
    int agree = 0;
    int exactly = 0;
    int assumed = 0;
    int roundTrips = 0;
};

Figures survey(const tests::Tsv& table) {
    Figures out;
    for (std::size_t row = 0; row < table.size(); ++row) {
        const CollateAnswer answer = collate(
            {table.cell(row, "formula"), table.cell(row, "extent"), table.cell(row, "format")});
        const bool evaluated = answer.leafTotal && answer.extent && answer.extent->leafTotal;
        const bool agrees = evaluated && answer.extent->agrees;
        ++out.all;
        out.read += answer.problems.empty() ? 1 : 0;
        out.evaluated += evaluated ? 1 : 0;
        out.agree += agrees ? 1 : 0;
        out.exactly += agrees && answer.extent->difference == 0 ? 1 : 0;
        out.assumed += agrees && answer.extent->assumedFromExtent ? 1 : 0;
        out.roundTrips += readFormula(answer.formula).makeUp == answer.makeUp ? 1 : 0;
    }
    return out;
}

TEST(Catalogue, isReadEvaluatedAndAgrees) {
    const tests::Tsv table =
        tests::Tsv::read(std::string(HEADCAP_REFERENCE_DIR) + "/signatures.tsv");
    if (table.size() == 0) {
        GTEST_SKIP() << "no signatures.tsv under " HEADCAP_REFERENCE_DIR;
    }
    const Figures f = survey(table);
    std::cout << f.all << " records: " << f.read << " read, " << f.evaluated << " evaluated, "
              << f.agree << " agree (" << f.exactly
              << " to the leaf, the others but for blanks named or "
              << "as fragments; " << f.assumed << " lean on the extent), " << f.roundTrips
              << " print and read back the same\n";
    EXPECT_GE(f.read * 100, f.all * 97);
    EXPECT_GE(f.evaluated * 100, f.all * 90);
    EXPECT_GE(f.agree * 100, f.evaluated * 85);
    EXPECT_GE(f.agree * 100, f.all * 78);
    EXPECT_EQ(f.roundTrips, f.all);
}

} // namespace
} // namespace headcap::core
