#include "core/treatment/line_completion.h"
#include "core/treatment/line_label.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::JobBuilder;

class LineCompletionTest : public testing::Test {
protected:
    LineCompletionTest() {
        b.person("Jan Roe", "JR");
        b.person("Mara Roe", "MR");
        b.material("kozo tissue", MaterialClass::tissue, Unit::sheet);
        b.lot("26-014", "wheat starch paste", Amount::of(Mass::grams(100)));
        b.lot("26-015", "wheat starch paste", Amount::of(Mass::grams(40)));
        b.lot("26-020", "kozo tissue", Amount::sheets(10));
        shelf = shelfOf(b.file);
    }
    std::vector<std::string> texts(std::string_view line,
                                   const std::vector<std::string>& awaited = {}) const {
        std::vector<std::string> all;
        const LineContext context{.shelf = shelf, .people = b.file.people};
        for (const LineCompletion& one : completionsOf(line, context, awaited, 5)) {
            all.push_back(completed(line, one));
        }
        return all;
    }

    JobBuilder b;
    Shelf shelf;
};

using Lines = std::vector<std::string>;

TEST_F(LineCompletionTest, completesATechniqueAsItIsSaid) {
    EXPECT_EQ(texts("tipp").front(), "tipped in ");
    EXPECT_EQ(texts("20 min guar").front(), "20 min guarded ");
    EXPECT_EQ(texts("lined sp").front(), "lined spine ");
    EXPECT_EQ(texts("Tipp").front(), "tipped in ");
}

TEST_F(LineCompletionTest, whatACompletionSaysIsReadAsThatTechnique) {
    const LineContext context{.shelf = shelf, .people = b.file.people};
    for (const Technique& technique : techniques()) {
        for (const std::string& phrase : technique.said) {
            const std::string typed = phrase.substr(0, phrase.size() - 1);
            const auto all = completionsOf(typed, context, {}, 100);
            const bool isOffered = std::ranges::any_of(all, [&](const LineCompletion& one) {
                return readStepLine(completed(typed, one), context).technique == technique.key;
            });
            const bool isSaid = readStepLine(typed, context).technique == technique.key;
            EXPECT_TRUE(isOffered || isSaid) << typed;
        }
    }
}

TEST_F(LineCompletionTest, whatIsAwaitedComesFirst) {
    EXPECT_NE(texts("re").front(), "rebacked ");
    EXPECT_EQ(texts("re", {"rebacking"}).front(), "rebacked ");
}

TEST_F(LineCompletionTest, completesAPlaceAsTheApprovedLineWordsIt) {
    const auto offered = [&](std::string_view line) {
        const LineContext context{
            .shelf = shelf,
            .people = b.file.people,
            .places = {{"all five", std::nullopt, b.ids.next<ProposalLine>(), "surface_cleaning"},
                       {"SR 11, 12", std::nullopt, b.ids.next<ProposalLine>(), "tear_mending"},
                       {"SR 11", b.ids.next<Item>(), std::nullopt, {}}}};
        std::vector<std::string> all;
        for (const LineCompletion& one : completionsOf(line, context, {}, 5)) {
            all.push_back(completed(line, one) + "| " + one.says);
        }
        return all;
    };
    EXPECT_EQ(offered("cleaned al"), Lines{"cleaned all five | Surface cleaning"});
    EXPECT_EQ(offered("mended sr"),
              (Lines{"mended SR 11, 12 | Mending tears", "mended SR 11 | volume"}));
    EXPECT_EQ(offered("mended S"), Lines{"mended SR 11, 12 | Mending tears"});
    EXPECT_EQ(offered("cleaned SR 1"),
              (Lines{"cleaned SR 11, 12 | Mending tears", "cleaned SR 11 | volume"}));
    EXPECT_EQ(offered("mended SR 11, 12"), Lines{});
}

TEST_F(LineCompletionTest, noSecondTechniqueIsOffered) {
    EXPECT_EQ(texts("tipped in K5 with re"), Lines{});
}

TEST_F(LineCompletionTest, completesALotByItsNumberOrItsKindTheNewestFirst) {
    EXPECT_EQ(texts("tipped in K5 with 26-01"),
              (Lines{"tipped in K5 with 26-015 ", "tipped in K5 with 26-014 "}));
    EXPECT_EQ(texts("tipped in K5 with past"),
              (Lines{"tipped in K5 with 26-015 ", "tipped in K5 with 26-014 "}));
    EXPECT_EQ(texts("tipped in K5 with tis"), Lines{"tipped in K5 with 26-020 "});
}

TEST_F(LineCompletionTest, neitherAFinishedLotNorOneAlreadyNamed) {
    EXPECT_EQ(texts("tipped in K5 with 26-015 past"), Lines{"tipped in K5 with 26-015 26-014 "});
    shelf.lots.back().finished = true;
    EXPECT_EQ(texts("tipped in K5 with tis"), Lines{});
}

TEST_F(LineCompletionTest, saysHowMuchOfALotIsLeft) {
    const LineContext context{.shelf = shelf, .people = b.file.people};
    const auto all = completionsOf("guarded K5 tis", context, {}, 5);
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all.front().says, "kozo tissue, 10 sheets left");
}

TEST_F(LineCompletionTest, completesAPersonAfterBy) {
    EXPECT_EQ(texts("pulled 2 h by ma"), Lines{"pulled 2 h by Mara Roe "});
    EXPECT_EQ(texts("pulled 2 h ma"), Lines{});
}

TEST_F(LineCompletionTest, offersNothingForAWordThatIsDone) {
    EXPECT_EQ(texts("tipped in "), Lines{});
    EXPECT_EQ(texts(""), Lines{});
    EXPECT_EQ(texts("t"), Lines{});
    EXPECT_EQ(texts("tipped in K5 with 26-014"), Lines{});
}

TEST_F(LineCompletionTest, aScannedLabelIsSetApartByBlanks) {
    const Lot& lot = *lotOnLabel("26-014", shelf);
    EXPECT_EQ(dropInto("", 0, lot).line, "26-014 ");
    EXPECT_EQ(dropInto("guarded K7 with", 15, lot).line, "guarded K7 with 26-014 ");
    const Dropped amid = dropInto("guarded K7 0.6 g", 10, lot);
    EXPECT_EQ(amid.line, "guarded K7 26-014 0.6 g");
    EXPECT_EQ(amid.cursor, 18U);
}

TEST_F(LineCompletionTest, aLabelIsTheNumberOfALot) {
    for (const char* label : {"26-014", "#26-014", "LOT:26-014", "lot:26-014"}) {
        ASSERT_NE(lotOnLabel(label, shelf), nullptr) << label;
        EXPECT_EQ(lotOnLabel(label, shelf)->number, "26-014");
    }
    for (const char* label : {"", "#", "26-999", "K5", "lot"}) {
        EXPECT_EQ(lotOnLabel(label, shelf), nullptr) << label;
    }
}

TEST(LineCompletion, offersThePiecesCutForTheJobBeforeWholeSheets) {
    JobBuilder b;
    b.material("text paper", MaterialClass::paper, Unit::sheet);
    b.lot("26-003", "text paper", Amount::sheets(10));
    const Shelf shelf = shelfOf(b.file);
    const LineContext context{.shelf = shelf,
                              .cut = {{.lot = "26-003",
                                       .pieces = 2,
                                       .names = {"endpaper fold"},
                                       .cutting = Id<Cutting>{b.file.job.id.uuid()}}}};
    for (const char* typed : {"sewed on 26-0", "sewed on pap", "sewed on fol"}) {
        const auto offers = completionsOf(typed, context, {}, 5);
        ASSERT_FALSE(offers.empty()) << typed;
        EXPECT_EQ(offers.front().text, "26-003 2 pieces") << typed;
        EXPECT_EQ(offers.front().says, "cut for this job: endpaper fold") << typed;
    }
}

} // namespace
} // namespace headcap::core
