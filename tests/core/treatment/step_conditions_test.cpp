#include "core/treatment/step_conditions.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace headcap::core {
namespace {

std::string asked(const char* key) {
    const auto& all = techniques();
    const auto found = std::ranges::find(all, key, &Technique::key);
    EXPECT_NE(found, all.end()) << key;
    std::string letters;
    letters += asksForTemperature(*found) ? "t" : "";
    letters += asksForHumidity(*found) ? "h" : "";
    letters += asksForStrength(*found) ? "s" : "";
    letters += asksForPressure(*found) ? "p" : "";
    return letters;
}

// Common practice: a bath has its warmth, a consolidant its strength, what dries its air and load.
TEST(StepConditions, areThoseThatTheTechniqueAsksFor) {
    EXPECT_NE(asked("washing").find('t'), std::string::npos);
    EXPECT_EQ(asked("tooling"), "");
    EXPECT_EQ(asked("photographing"), "");
    EXPECT_EQ(asked("collating"), "");
    EXPECT_EQ(asked("freezing").front(), 't');
    EXPECT_NE(asked("leather_consolidating").find('s'), std::string::npos);
    EXPECT_NE(asked("media_consolidating").find('s'), std::string::npos);
    EXPECT_NE(asked("humidifying").find("th"), std::string::npos);
    EXPECT_NE(asked("pressing").find('p'), std::string::npos);
    EXPECT_EQ(asked("tear_mending").find('s'), std::string::npos);
}

} // namespace
} // namespace headcap::core
