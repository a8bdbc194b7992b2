#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/collation/collate.h"

namespace headcap::core {
namespace {

nlohmann::ordered_json answered(const CollateRequest& request) {
    return toJson(collate(request), request);
}

TEST(CollateJson, hasTheKeysOthersRelyOn) {
    const auto json = answered({"8vo: A⁴(-A4) [B]²(B1+1)", "[6] p., 4 leaves", ""});
    EXPECT_EQ(json["formula"], "A⁴(−A4) [B]²(B1+1)");
    EXPECT_EQ(json["format"], "8o");
    EXPECT_EQ(json["leaf_total"], 6);
    EXPECT_EQ(json["present_total"], 6);
    EXPECT_EQ(json["page_total"], 12);
    EXPECT_EQ(json["gatherings"][0].dump(),
              R"({"signature":"A","leaves":3,"inferred":false,"lacking":["A4"],"added":[]})");
    EXPECT_EQ(json["gatherings"][1].dump(),
              R"({"signature":"B","leaves":3,"inferred":true,"lacking":[],"added":["B1+1"]})");
    EXPECT_EQ(json["leaves"][1].dump(),
              R"({"index":2,"ref":"A2","gathering":"A","position":2,"conjugate":3,)"
              R"("recto_number":null,"verso_number":null})");
    EXPECT_EQ(json["extent"]["leaf_total"], 7);
    EXPECT_EQ(json["extent"]["agrees"], false);
    EXPECT_EQ(json["extent"]["difference"], 1);
    EXPECT_TRUE(json["problems"].empty());
}

TEST(CollateJson, saysWhatItDoesNotKnow) {
    const auto json = answered({"A-D", "", ""});
    EXPECT_TRUE(json["leaf_total"].is_null());
    EXPECT_TRUE(json["format"].is_null());
    EXPECT_TRUE(json["extent"].is_null());
    EXPECT_TRUE(json["gatherings"][0]["leaves"].is_null());
    EXPECT_EQ(json["assumptions"][0]["from"], "formula");
}

TEST(CollateJson, placesProblemsByCharacter) {
    const auto json = answered({"¶⁴ A-F⁴ G-Gx", "", ""});
    EXPECT_EQ(json["problems"][0]["at"], 8);
    EXPECT_EQ(json["problems"][0]["message"], "after 'G' a leaf count is expected, found 'x'");
}

TEST(ExitStatus, tellsAgreementDisagreementAndWhatWasNotRead) {
    EXPECT_EQ(exitStatus(collate({"A⁴", "[8] p.", ""})), 0);
    EXPECT_EQ(exitStatus(collate({"A⁴", "", ""})), 0);
    EXPECT_EQ(exitStatus(collate({"A⁴", "[10] p.", ""})), 1);
    EXPECT_EQ(exitStatus(collate({"A⁴ ?!", "[8] p.", ""})), 2);
}

TEST(Collate, readsTheExtentInsideTheStatement) { // DCRMR 6.215.44.9
    const CollateRequest request{
        "Collation: 8vo: A-H⁴; 32 leaves: p. [1-2] 3-62 [63-64]; $3(-H3) signed. H4 blank", "", ""};
    const CollateAnswer answer = collate(request);
    EXPECT_TRUE(answer.problems.empty());
    ASSERT_TRUE(answer.extent);
    EXPECT_EQ(answer.extent->statement, "p. [1-2] 3-62 [63-64]");
    EXPECT_TRUE(answer.extent->agrees);
    EXPECT_EQ(answer.formula, "A–G⁴ H⁴(H4 blank)");
}

} // namespace
} // namespace headcap::core
