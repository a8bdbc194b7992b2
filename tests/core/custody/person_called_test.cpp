#include "core/custody/person_called.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

class PersonCalledTest : public testing::Test {
protected:
    Id<Person> add(const char* name, const char* initials, bool active = true) {
        people.push_back(
            {.id = b.ids.next<Person>(), .name = name, .initials = initials, .active = active});
        return people.back().id;
    }
    std::optional<Id<Person>> called(std::string_view words) { return personCalled(people, words); }

    tests::JobBuilder b;
    std::vector<Person> people;
};

TEST_F(PersonCalledTest, byInitialsOrTheWholeNameInWhateverCase) {
    const auto ines = add("Inês Márrow", "IM");
    add("Orrin Pell", "OP");
    EXPECT_EQ(called("IM"), ines);
    EXPECT_EQ(called("im"), ines);
    EXPECT_EQ(called("ines marrow"), ines);
    EXPECT_EQ(called("Ines"), std::nullopt);
    EXPECT_EQ(called(""), std::nullopt);
}

TEST_F(PersonCalledTest, nobodyWhereTwoAreCalledSoOrTheOneHasLeft) {
    add("Ines Marrow", "IM");
    const auto second = add("Ida Moll", "IM");
    add("Jon Sallow", "JS", false);
    add("Ana", "");
    EXPECT_EQ(called("IM"), std::nullopt);
    EXPECT_EQ(called("Ida Moll"), second);
    EXPECT_EQ(called("JS"), std::nullopt);
    EXPECT_EQ(called(""), std::nullopt) << "no initials are not those of somebody without";
}

} // namespace
} // namespace headcap::core
