#include "core/audit/same_leaves.h"

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

TEST(SameLeaves, areToldFromOthers) {
    for (const auto& [a, b] : {std::pair{"K5", "K5"},
                               {"K5", "K5r"},
                               {"K5", "K4–K6"},
                               {"B2, K5", "K5"},
                               {"pl. 7", "plate 7"},
                               {"B2", "A1–C4"},
                               {"upper cover", "the upper cover"}}) {
        EXPECT_TRUE(mayShareLeaves(a, b)) << a << " and " << b;
        EXPECT_TRUE(mayShareLeaves(b, a)) << b << " and " << a;
    }
    for (const auto& [a, b] : {std::pair{"K5", "K15"},
                               {"K5", "K6–K8"},
                               {"K5", "L5"},
                               {"pl. 7", "pl. 17"},
                               {"cover", "discovered leaf"},
                               {"", "K5"},
                               {"", ""}}) {
        EXPECT_FALSE(mayShareLeaves(a, b)) << a << " and " << b;
        EXPECT_FALSE(mayShareLeaves(b, a)) << b << " and " << a;
    }
}

} // namespace
} // namespace headcap::core
