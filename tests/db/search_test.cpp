#include <gtest/gtest.h>

#include "tests/db/database_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::core {
namespace {

class SearchTest : public test::WorkshopFixture {
protected:
    SearchAnswer search(std::string_view words) { return stores().search.find(words, 50); }
    bool isFound(std::string_view words, const RecordRef& ref) {
        const auto hits = search(words).hits;
        return std::any_of(hits.begin(), hits.end(),
                           [&](const SearchHit& hit) { return hit.record == ref; });
    }
};

TEST_F(SearchTest, findsByEveryWordTheLastAsABeginning) {
    const Step step = aStep("Spine lined with Japanese tissue");
    test::mustApply(records(), Change{.sentence = "Step"}.add(step));
    EXPECT_TRUE(isFound("spine tiss", refOf(step.id)));
    EXPECT_TRUE(isFound("TISSUE japanese", refOf(step.id)));
    EXPECT_FALSE(isFound("spi tissue", refOf(step.id)));
    EXPECT_FALSE(isFound("spine leather", refOf(step.id)));
    EXPECT_TRUE(search("").hits.empty());
    EXPECT_TRUE(search(" · - ").hits.empty());
}

TEST_F(SearchTest, findsWhatIsPrintedByWhatIsTyped) {
    const Finding finding = aFinding("Rüſtung, œuvre, Þorn, Straße");
    test::mustApply(records(), Change{.sentence = "Finding"}.add(finding));
    for (const char* words : {"rustung", "oeuvre", "thorn", "strasse", "STRASSE"}) {
        EXPECT_TRUE(isFound(words, refOf(finding.id))) << words;
    }
}

TEST_F(SearchTest, takesAnyTypedTextAsWords) {
    for (const char* words :
         {"\"", "a\"b", "NEAR(", "a OR b", "* ^ :", "word:x", "2031-001", "(", "'; DROP", "π2",
          "“quoted” — dash", "שלום", "×", "\xff", "a،b", "x\u2E3Ay", "\u05BEa"}) {
        EXPECT_NO_THROW((void)search(words)) << words;
    }
    EXPECT_TRUE(isFound("2031-001", refOf(job.id)));
}

TEST_F(SearchTest, findsAJobByItsItemAndItsOwner) {
    EXPECT_TRUE(isFound("kell hymnal", refOf(job.id)));
    Owner renamed = owner;
    renamed.name = "Marsh End Library";
    test::mustApply(records(), Change{.sentence = "Owner"}.update(renamed, firstRevision));
    EXPECT_TRUE(isFound("marsh 2031-001", refOf(job.id)));
    EXPECT_FALSE(isFound("chapel 2031-001", refOf(job.id)));
}

TEST_F(SearchTest, findsThoseOfOneKindTheNewestFirst) {
    Owner second = owner;
    second.id = ids.next<Owner>();
    second.name = "Chapel of Kell, lending library";
    test::mustApply(
        records(), Change{.sentence = "Owner"}.add(second).add(aStep("the chapel's label lifted")));
    const auto owners = [&](std::string_view words, std::size_t limit) {
        return stores().search.findOf(RecordKind::owner, words, limit);
    };
    EXPECT_EQ(owners("chap", 9), (std::vector<RecordRef>{refOf(second.id), refOf(owner.id)}));
    EXPECT_EQ(owners("chap", 1), (std::vector<RecordRef>{refOf(second.id)}));
    EXPECT_TRUE(owners("label", 9).empty()) << "of another kind";
    EXPECT_TRUE(owners("", 9).empty());
    EXPECT_TRUE(owners("x\u2E3Ay", 9).empty()) << "no such word, and no error";
}

TEST_F(SearchTest, saysWhereAHitBelongs) {
    Step step = aStep("Sized\nwith gelatine");
    step.place = "C4r";
    test::mustApply(records(), Change{.sentence = "Step"}.add(step));
    const auto answer = search("gelat");
    ASSERT_EQ(answer.hits.size(), 1U);
    EXPECT_EQ(answer.total, 1U);
    EXPECT_FALSE(answer.totalCapped);
    EXPECT_EQ(answer.hits[0].record, refOf(step.id));
    EXPECT_EQ(answer.hits[0].job, job.id);
    EXPECT_EQ(answer.hits[0].jobNumber, "2031-001");
    EXPECT_EQ(answer.hits[0].item, "Hymnal");
    EXPECT_EQ(answer.hits[0].place, "C4r");
    EXPECT_EQ(answer.hits[0].text, "Sized with gelatine");
}

TEST_F(SearchTest, showsTheNewestFirst) {
    const Finding older = aFinding("foxing");
    const Finding newer = aFinding("foxing");
    test::mustApply(records(), Change{.sentence = "one"}.add(older));
    test::mustApply(records(), Change{.sentence = "two"}.add(newer));
    const auto hits = search("foxing").hits;
    ASSERT_EQ(hits.size(), 2U);
    EXPECT_EQ(hits[0].record, refOf(newer.id));
    EXPECT_EQ(stores().search.find("foxing", 1).hits.size(), 1U);
    EXPECT_EQ(stores().search.find("foxing", 1).total, 2U);
    stores().upkeep.rebuildSearch();
    EXPECT_EQ(search("foxing").hits[0].record, refOf(newer.id));
}

TEST_F(SearchTest, followsChangesUndoAndRedo) {
    Finding finding = aFinding("foxing");
    auto revision = test::mustApply(records(), Change{.sentence = "one"}.add(finding));
    finding.observed = "tide line";
    revision = test::mustApply(records(), Change{.sentence = "two"}.update(finding, revision));
    EXPECT_FALSE(isFound("foxing", refOf(finding.id)));
    ASSERT_TRUE(journal().undo(std::nullopt));
    EXPECT_TRUE(isFound("foxing", refOf(finding.id)));
    EXPECT_FALSE(isFound("tide", refOf(finding.id)));
    ASSERT_TRUE(journal().redo(std::nullopt));
    EXPECT_TRUE(isFound("tide", refOf(finding.id)));
    const auto now = find(records(), finding.id);
    test::mustApply(records(), Change{.sentence = "three"}.remove(now->record, now->revision));
    EXPECT_FALSE(isFound("tide", refOf(finding.id)));
}

TEST_F(SearchTest, countsNoFurtherThanItMust) {
    Change many{.sentence = "Findings"};
    for (int i = 0; i < 1'100; ++i) {
        many.add(aFinding("foxing"));
    }
    test::mustApply(records(), many);
    const auto answer = stores().search.find("foxing", 10);
    EXPECT_EQ(answer.hits.size(), 10U);
    EXPECT_EQ(answer.total, 1'000U);
    EXPECT_TRUE(answer.totalCapped);
}

} // namespace
} // namespace headcap::core
