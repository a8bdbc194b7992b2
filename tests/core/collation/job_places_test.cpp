#include "core/collation/job_places.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

class JobPlacesTest : public testing::Test {
protected:
    tests::JobBuilder job;

    Id<Item> volume(const char* label) {
        Item item{.id = job.ids.next<Item>(), .owner = job.file.owner.id, .volumeLabel = label};
        job.file.parts.push_back(item);
        return item.id;
    }
    void collate(const std::optional<Id<Item>>& part, const char* formula, const char* extent) {
        Collation made{.id = job.ids.next<Collation>(), .job = job.file.job.id, .part = part};
        made.formula = formula;
        made.extent = extent;
        job.file.collations.push_back(made);
    }
    std::string read(const char* text, const std::optional<Id<Item>>& part = {}) {
        const auto said = readPlace(booksOf(job.file), part, text);
        return said ? (said->isAbsent ? "! " : said->isThere ? "" : "? ") + said->text : "nothing";
    }
};

TEST_F(JobPlacesTest, aBookNotCollatedSaysNothing) {
    EXPECT_EQ(read("K5"), "nothing");
    collate({}, "", "");
    EXPECT_EQ(read("K5"), "nothing");
}

TEST_F(JobPlacesTest, aPlaceIsReadInTheVolumeNamedOrInTheOneThatHasIt) {
    const auto one = volume("vol. 1");
    const auto two = volume("vol. 2");
    collate(one, "8°: A-C⁸", "48 p.");
    collate(two, "8°: A-K⁸", "160 p.");
    EXPECT_EQ(read("K5"), "vol. 2: K5 · pp. 153–154");
    EXPECT_EQ(read("K5", two), "K5 · pp. 153–154");
    EXPECT_EQ(read("K5", one), "! no gathering of this book is signed so");
    EXPECT_EQ(read("L1"), "! no gathering of this book is signed so");
}

TEST_F(JobPlacesTest, knowsThePlatesTheBookCallsFor) {
    collate({}, "8°: A-C⁸", "48 p., 2 plates");
    CalledPlate plate{.id = job.ids.next<CalledPlate>(), .job = job.file.job.id, .part = {}};
    plate.name = "7";
    job.file.plates = {plate};
    EXPECT_EQ(read("pl. 7"), "nothing"); // there, and no leaf
    EXPECT_EQ(read("pl. 9"), "! no such plate is called for");
}

} // namespace
} // namespace headcap::core
