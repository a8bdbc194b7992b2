#include "core/record/any_record.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/support/random_record.h"

namespace headcap::core {
namespace {

using test::Chance;

TEST(AnyRecord, comesBackFromItsColumnsWhateverItHolds) {
    Chance chance{1612};
    for (int round = 0; round < 200; ++round) {
        for (const AnyRecord& record : test::oneOfEachKind(chance)) {
            const auto back = recordFrom(kindOf(record), valuesOf(record));
            ASSERT_TRUE(back) << nameOf(kindOf(record)) << ": " << back.error().column;
            EXPECT_EQ(*back, record) << nameOf(kindOf(record));
        }
    }
}

TEST(AnyRecord, comesBackFromItsJson) {
    Chance chance{1655};
    for (int round = 0; round < 50; ++round) {
        for (const AnyRecord& record : test::oneOfEachKind(chance)) {
            const auto text = toJson(record).dump();
            const auto back = recordFrom(kindOf(record), nlohmann::json::parse(text));
            ASSERT_TRUE(back) << text;
            EXPECT_EQ(*back, record) << text;
        }
    }
}

TEST(AnyRecord, namesTheColumnThatCannotBeRead) {
    Chance chance{7};
    const AnyRecord record = test::randomRecord<Job>(chance);
    auto values = valuesOf(record);
    const auto& columns = columnsOf(RecordKind::job);
    const auto state = std::find_if(columns.begin(), columns.end(),
                                    [](const Column& c) { return c.name == "state"; });
    values[static_cast<std::size_t>(state - columns.begin())] = std::string{"mislaid"};
    const auto back = recordFrom(RecordKind::job, values);
    ASSERT_FALSE(back);
    EXPECT_EQ(back.error().column, "state");
}

TEST(AnyRecord, sayColumnsWithTheirUnits) {
    std::set<std::string> names;
    for (const Column& column : columnsOf(RecordKind::item)) {
        names.insert(column.name);
    }
    EXPECT_TRUE(names.contains("height_nm"));
    EXPECT_TRUE(names.contains("part_of"));
    EXPECT_FALSE(names.contains("height"));
}

TEST(AnyRecord, namesEveryRecordItPointsTo) {
    Chance chance{3};
    MaterialUse use = test::randomRecord<MaterialUse>(chance);
    use.lot = Id<Lot>{Uuid::make(Instant{}, chance.engine())};
    const auto refs = referencesOf(use);
    EXPECT_EQ(refs, (std::vector<RecordRef>{refOf(use.job), refOf(use.step), refOf(*use.lot)}));
    EXPECT_EQ(jobOf(use), use.job);
}

TEST(AnyRecord, isFoundByItsSearchedFieldsAlone) {
    Chance chance{9};
    Owner owner = test::randomRecord<Owner>(chance);
    owner.name = "Kell Chapel";
    owner.contact = "the verger";
    owner.address = owner.note = "";
    owner.email = "verger@kell.invalid";
    EXPECT_EQ(searchTextOf(owner), "Kell Chapel · the verger");
}

TEST(Description, givesTheNameOfAMember) {
    EXPECT_EQ(fieldName(&Finding::job), "job");
    EXPECT_EQ(fieldName(&Lot::mixedBy), "mixed_by");
}

} // namespace
} // namespace headcap::core
