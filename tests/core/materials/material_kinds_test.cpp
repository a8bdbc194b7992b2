#include "core/materials/material_kinds.h"

#include <set>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

TEST(MaterialKinds, areReadWhole) {
    std::set<std::string> keys;
    std::set<MaterialClass> classes;
    for (const MaterialKind& kind : materialKinds()) {
        EXPECT_TRUE(keys.insert(kind.key).second) << kind.key;
        EXPECT_FALSE(kind.sources.empty()) << kind.key;
        EXPECT_TRUE(kind.key.starts_with(std::string{nameOf(kind.kind)} + "/")) << kind.key;
        classes.insert(kind.kind);
    }
    EXPECT_EQ(classes.size(), EnumNames<MaterialClass>::kNames.size());
}

// Cautions on what burns or bites defer to local rules and to qualified persons.
TEST(MaterialKinds, solventsWarn) {
    for (const char* key : {"solvent/ethanol", "solvent/isopropanol", "consolidant/hpc"}) {
        const MaterialKind* kind = materialKindNamed(key);
        ASSERT_NE(kind, nullptr) << key;
        EXPECT_NE(kind->caution.find("local rules"), std::string::npos) << key;
    }
}

} // namespace
} // namespace headcap::core
