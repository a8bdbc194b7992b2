// Which words choose an owner: common practice of any card index.
#include "core/custody/owner_words.h"

#include <set>

#include <gtest/gtest.h>

#include "core/record/stores.h"

namespace headcap::core {
namespace {

class OwnerWordsTest : public testing::Test {
protected:
    Owner named(const std::string& name) { return {.id = m_ids.next<Owner>(), .name = name}; }

private:
    SystemClock m_clock;
    IdSource m_ids{m_clock, 7};
};

TEST_F(OwnerWordsTest, aloneTheNameIsEnough) {
    Owner hale = named("R. Hale");
    hale.address = "Harrow Lane 4\nStell";
    const std::vector<Owner> owners{hale, named("E. Sandrey")};
    EXPECT_EQ(ownerWords(hale, owners), "R. Hale");
}

TEST_F(OwnerWordsTest, twoOfAByNameAreToldApartByWhatIsKnownOfEach) {
    Owner lane = named("R. Hale");
    lane.address = "Harrow Lane 4\nStell";
    Owner shop = named("R. Hale");
    shop.telephone = "555 0142";
    Owner bare = named("R. Hale");
    bare.kind = OwnerKind::dealer;
    const std::vector<Owner> owners{lane, shop, bare};
    EXPECT_EQ(ownerWords(lane, owners), "R. Hale, Harrow Lane 4");
    std::set<std::string> words;
    for (const Owner& owner : owners) {
        words.insert(ownerWords(owner, owners));
    }
    EXPECT_EQ(words.size(), owners.size());
}

} // namespace
} // namespace headcap::core
