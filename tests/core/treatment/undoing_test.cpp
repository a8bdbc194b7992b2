#include "core/treatment/undoing.h"

#include <gtest/gtest.h>

#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

class UndoingTest : public testing::Test {
protected:
    UndoingTest() {
        b.material("linen thread", MaterialClass::thread, Unit::metre);
        b.material("kozo tissue", MaterialClass::tissue, Unit::sheet);
        b.material("calf", MaterialClass::leather, Unit::piece);
        b.material("PVA", MaterialClass::adhesivePrepared, Unit::gram).removal =
            "not readily taken off paper";
        b.lot("26-014", "wheat starch paste", Amount::of(Mass::grams(100)));
        b.lot("26-020", "kozo tissue", Amount::sheets(10));
        b.lot("26-031", "linen thread", Amount::of(Length::millimetres(90'000)));
        b.lot("26-015", "calf", Amount::pieces(1));
        b.lot("26-050", "PVA", Amount::of(Mass::grams(100)));
        shelf = shelfOf(b.file);
    }
    std::string doubt(std::string_view line) const {
        const LineContext context{.shelf = shelf, .people = b.file.people};
        return undoingDoubt(readStepLine(line, context), context);
    }

    JobBuilder b;
    Shelf shelf;
};

TEST_F(UndoingTest, theUsualSentenceMustNotNameWhatIsNotThere) {
    EXPECT_EQ(doubt("reattached boards 26-031 2 m 26-014 3 g"),
              "speaks of tissue, and none is used");
    EXPECT_EQ(doubt("reattached boards 26-020 1 sheet 26-014 3 g"), "");
    EXPECT_EQ(doubt("rebacked 26-020 1 sheet 26-014 9 g"), "speaks of leather, and none is used");
    EXPECT_EQ(doubt("rebacked 26-015 1/4 skin 26-014 9 g"), "");
    EXPECT_EQ(doubt("covered 26-020 1 sheet"), "speaks of leather or vellum, and none is used");
    EXPECT_EQ(doubt("reattached boards kozo 5gsm 26-014 3 g"), ""); // in words
}

TEST_F(UndoingTest, norPromiseThatMoistureTakesOffWhatItDoesNot) {
    EXPECT_EQ(doubt("mended B2 26-020 1 sheet 26-050 2 g"),
              "speaks of moisture, and PVA does not give way to it");
    EXPECT_EQ(doubt("mended B2 26-020 1 sheet EVA 2 g"),
              "speaks of moisture, and EVA does not give way to it");
    EXPECT_EQ(doubt("mended B2 26-020 1 sheet 26-014 2 g"), "");
}

TEST_F(UndoingTest, whereNoMaterialIsNamedThatIsAskedForInstead) {
    EXPECT_EQ(doubt("reattached boards 2 h"), "");
}

TEST_F(UndoingTest, whatSomebodyWroteIsTheirs) {
    Step& step = b.step("board_reattaching", "boards", day(2031, 3, 18));
    step.undoing = TechniquesInForce{}.named("board_reattaching")->undoing;
    b.use(step, "26-031", Amount::of(Length::millimetres(2'000)));
    EXPECT_EQ(undoingDoubt(b.file, b.file.steps.back()), "speaks of tissue, and none is used");
    b.file.steps.back().undoing = "The thread is cut at the joint.";
    EXPECT_EQ(undoingDoubt(b.file, b.file.steps.back()), "");
}

// What a technique usually takes must bear out its own sentence.
TEST(Undoing, everyUsualSentenceIsTrueOfTheUsualMaterials) {
    for (const Technique& technique : techniques()) {
        std::vector<UsedInStep> used;
        for (const std::string& material : technique.materials) {
            used.push_back({.name = material, .words = material});
        }
        EXPECT_EQ(undoingDoubt(&technique, technique.undoing, used), "") << technique.key;
    }
}

} // namespace
} // namespace headcap::core
