#include "core/treatment/work_title.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

TEST(WorkTitle, saysThePlaceUnlessTheWorkNamesIt) {
    EXPECT_EQ(workTitle("Guarding", "K7"), "Guarding, K7");
    EXPECT_EQ(workTitle("Lining the spine", "spine"), "Lining the spine");
    EXPECT_EQ(workTitle("Spine cleaned", "spine"), "Spine cleaned");
    EXPECT_EQ(workTitle("Lining the spine", "spine, upper joint"),
              "Lining the spine, spine, upper joint");
    EXPECT_EQ(workTitle("Respining", "spine"), "Respining, spine") << "not a word of it";
    EXPECT_EQ(workTitle("Bookplate lifted", "plate"), "Bookplate lifted, plate");
    EXPECT_EQ(workTitle("", "K7"), "K7");
    EXPECT_EQ(workTitle("Washing", ""), "Washing");
}

} // namespace
} // namespace headcap::core
