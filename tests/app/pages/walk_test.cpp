// A book of three hundred leaves gone through by keys alone: broken off, taken up again, and the
// statement that comes of it.
#include "app/drawing/gathering_view.h"
#include "app/pages/collation/walk_section.h"

#include <algorithm>
#include <set>

#include <QLabel>
#include <QPushButton>

#include "app/pages/collation/infer_sheet.h"
#include "app/pages/collation/walk_keys.h"
#include "app/pages/collation/walk_sheet.h"
#include "app/pages/collation_page.h"
#include "core/collation/folds.h"
#include "tests/app/pages/page_test.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

class WalkPageTest : public PageTest<CollationPage> {
protected:
    WalkPageTest() {
        core::Collation collation{.id = sample.ids.next<core::Collation>(), .job = *sample.hymnal};
        collation.formula = "8°: A⁴ B-2P⁸";
        collation.extent = "[8], 592 p.";
        sample.store.changeElsewhere(collation);
        come();
    }
    void come() { EXPECT_TRUE(open(*sample.hymnal, core::Page::collation)); }
    Walker& walker() { return page().walk().walker(); }
    WalkSheet& sheet() { return page().walk().sheet(); }
    core::JobFile now() { return sample.file(*sample.hymnal); }
    // To whatever has the focus, as a person's keys go.
    void key(int code, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(code), with);
    }
    void type(const char* text) {
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text));
    }
    void begin() {
        QTest::keySequence(QApplication::focusWidget(), QKeySequence{QLatin1String(kBeginWalkKey)});
    }
    // Leaf by leaf to this one.
    void walkTo(const char* ref) {
        for (int keys = 0; sheet().place() != QLatin1String(ref); ++keys) {
            ASSERT_LT(keys, 400) << "never came to " << ref;
            key(Qt::Key_Space);
        }
    }
    void passTo(const char* ref) {
        for (int keys = 0; sheet().place() != QLatin1String(ref); ++keys) {
            ASSERT_LT(keys, 60) << "never came to " << ref;
            key(Qt::Key_E);
        }
    }
};

TEST_F(WalkPageTest, aKeyALeafAndAKeyForTheRestOfTheGathering) {
    begin();
    ASSERT_TRUE(walker().isWalking());
    EXPECT_EQ(sheet().place(), QStringLiteral("A1"));
    key(Qt::Key_Space);
    EXPECT_EQ(sheet().place(), QStringLiteral("A2"));
    key(Qt::Key_E);
    EXPECT_EQ(sheet().place(), QStringLiteral("B1"));
    const auto entries = now().walkEntries;
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(entries[0].scope, core::WalkScope::leaf);
    EXPECT_EQ(entries[1].scope, core::WalkScope::gathering);
    EXPECT_EQ(entries[1].place, "A2");
}

// The leaf in front has the page: the drawing of the whole book comes back when the walk is left.
TEST_F(WalkPageTest, theWholeBookGivesWayWhileItIsGoneThrough) {
    auto* whole = page().findChild<GatheringView*>();
    ASSERT_NE(whole, nullptr);
    EXPECT_TRUE(whole->isVisibleTo(&page()));
    begin();
    EXPECT_FALSE(whole->isVisibleTo(&page()));
    key(Qt::Key_Space);
    EXPECT_FALSE(whole->isVisibleTo(&page()));
    key(Qt::Key_Escape);
    EXPECT_FALSE(walker().isWalking());
    EXPECT_TRUE(whole->isVisibleTo(&page()));
}

TEST(WalkKeys, giveNoKeyTwice) {
    std::set<QString> seen;
    for (const WalkKey& key : walkKeys()) {
        EXPECT_TRUE(seen.insert(keyText(key)).second) << key.words;
        EXPECT_EQ(&walkKeys()[static_cast<std::size_t>(key.action)], &key);
    }
}

TEST_F(WalkPageTest, everyKindOfFindingHasItsKey) {
    begin();
    for (std::size_t kind = 0; kind < core::EnumNames<core::CollationKind>::kNames.size(); ++kind) {
        const auto at = static_cast<std::size_t>(actionOf(static_cast<core::CollationKind>(kind)));
        QTest::keySequence(QApplication::focusWidget(),
                           QKeySequence{QLatin1String(walkKeys()[at].key)});
        key(Qt::Key_Return);
        const auto findings = now().collationFindings;
        ASSERT_EQ(findings.size(), kind + 1);
        EXPECT_EQ(findings.back().kind, static_cast<core::CollationKind>(kind));
    }
    EXPECT_EQ(now().collationFindings.front().place, "A1");
    EXPECT_EQ(now().collationFindings.back().place, "C5");
}

TEST_F(WalkPageTest, undoTakesBackTheLastKeyAndTheWalkIsThereAgain) {
    begin();
    walkTo("B3");
    key(Qt::Key_E);
    EXPECT_EQ(sheet().place(), QStringLiteral("C1"));
    press(ActionId::undo);
    EXPECT_EQ(sheet().place(), QStringLiteral("B3"));
    press(ActionId::undo);
    EXPECT_EQ(sheet().place(), QStringLiteral("B2"));
    press(ActionId::redo);
    EXPECT_EQ(now().walkEntries.size(), 6U);
}

TEST_F(WalkPageTest, escStepsBackAndLosesNothing) {
    begin();
    key(Qt::Key_T);
    type("along the fold");
    key(Qt::Key_Escape); // from the note to the leaf
    EXPECT_EQ(sheet().place(), QStringLiteral("A1"));
    EXPECT_EQ(now().collationFindings.front().note, "along the fold");
    key(Qt::Key_A);
    type("A9");
    key(Qt::Key_Escape); // from the fields to the leaf
    EXPECT_EQ(sheet().place(), QStringLiteral("A1"));
    EXPECT_EQ(now().walkEntries.back().signature, "A9");
    EXPECT_FALSE(now().walkEntries.back().asExpected);
    EXPECT_TRUE(sheet().said().contains(QStringLiteral("missigned leaf")));
    key(Qt::Key_Escape); // out of the walk
    EXPECT_FALSE(walker().isWalking());
    EXPECT_EQ(window.current(), &job());
    begin();
    EXPECT_EQ(sheet().place(), QStringLiteral("A2"));
}

TEST_F(WalkPageTest, whatIsReadAndDiffersIsExplainedAtOnce) {
    begin();
    passTo("C1");
    key(Qt::Key_Space);
    key(Qt::Key_A);
    key(Qt::Key_Tab);
    type("21");
    key(Qt::Key_Return);
    EXPECT_EQ(sheet().place(), QStringLiteral("C2"));
    EXPECT_TRUE(sheet().said().contains(QStringLiteral("misnumbered"))) << "said nothing";
    key(Qt::Key_Plus);
    EXPECT_TRUE(sheet().said().startsWith(QStringLiteral("The printer misnumbered")));
    key(Qt::Key_N);
    key(Qt::Key_Return);
    EXPECT_EQ(sheet().place(), QStringLiteral("C3"));
    const auto finding = now().collationFindings.back();
    EXPECT_EQ(finding.found, "21");
    EXPECT_EQ(finding.expected, "19");
}

// Wherever the fields are left, what was typed stays with its leaf: it is there again, and a key
// more goes on.
TEST_F(WalkPageTest, whatIsTypedStaysWithItsLeafHoweverTheFieldsAreLeft) {
    begin();
    passTo("C1");
    key(Qt::Key_A);
    key(Qt::Key_Tab);
    type("17");
    key(Qt::Key_Escape);
    ASSERT_EQ(now().walkEntries.back().rectoNumber, "17");
    EXPECT_TRUE(now().walkEntries.back().asExpected);
    const std::size_t entries = now().walkEntries.size();
    key(Qt::Key_Space);
    EXPECT_EQ(sheet().place(), QStringLiteral("C2"));
    EXPECT_EQ(now().walkEntries.size(), entries);
    key(Qt::Key_A);
    for (int fields = 0; fields < 4; ++fields) {
        key(Qt::Key_Tab);
    }
    type("vpon");
    sheet().setFocus();
    EXPECT_EQ(now().walkEntries.back().versoCatchword, "vpon");
    EXPECT_EQ(sheet().place(), QStringLiteral("C2"));
}

TEST_F(WalkPageTest, aMisboundLeafSaysWhatPutsItRight) {
    begin();
    passTo("E1");
    walkTo("E3");
    key(Qt::Key_M);
    type("after E5");
    key(Qt::Key_Escape);
    EXPECT_TRUE(sheet().said().contains(
        QStringLiteral("One move puts the leaves in order: E3 goes after E2.")));
}

// In a low window the note's field must not push the leaf's name off the page.
TEST_F(WalkPageTest, theLeafInFrontStaysInSightAtEveryKey) {
    window.resize(1100, 640);
    begin();
    const auto isInSight = [&] {
        tests::settle();
        const auto labels = sheet().findChildren<QLabel*>();
        const auto name = std::ranges::find_if(
            labels, [&](const QLabel* label) { return label->text() == sheet().place(); });
        return name != labels.end() &&
               (*name)->visibleRegion().boundingRect().height() == (*name)->height();
    };
    EXPECT_TRUE(isInSight());
    for (int leaf = 0; leaf < 6; ++leaf) {
        key(leaf % 2 == 0 ? Qt::Key_L : Qt::Key_O);
        EXPECT_TRUE(isInSight()) << "with the note open at leaf " << leaf;
        key(Qt::Key_Return);
        EXPECT_TRUE(isInSight()) << "after leaf " << leaf;
        key(Qt::Key_Space);
        EXPECT_TRUE(isInSight()) << "after leaf " << leaf;
    }
}

TEST_F(WalkPageTest, aStatementThatSomebodyTypedIsNotWrittenOver) {
    core::Collation typed = now().collations.front();
    typed.statement = "lacks C2, seen at the door";
    typed.method = "Against the owner's other copy.";
    sample.store.changeElsewhere(typed);
    come();
    begin();
    for (int keys = 0; walker().here() && keys < 60; ++keys) {
        key(Qt::Key_E);
    }
    EXPECT_TRUE(sheet().said().contains(QStringLiteral("stays")));
    key(Qt::Key_Return);
    const core::Collation kept = now().collations.front();
    EXPECT_TRUE(kept.finishedOn.has_value());
    EXPECT_EQ(kept.statement, "lacks C2, seen at the door");
    EXPECT_TRUE(kept.method.starts_with("Against the owner's other copy. Gone through by "))
        << kept.method;
}

TEST_F(WalkPageTest, whereTwoPeopleDoNotAgreeThePageSaysSo) {
    begin();
    key(Qt::Key_E);
    key(Qt::Key_Escape);
    session.setPerson(std::nullopt);
    begin();
    key(Qt::Key_Space);
    key(Qt::Key_X);
    key(Qt::Key_Return);
    key(Qt::Key_Escape);
    const auto labels = page().walk().findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->isVisible() &&
               label->text().contains(QStringLiteral("Leaf A2: as expected for")) &&
               label->text().contains(QStringLiteral("torn with loss for somebody not named"));
    }));
}

TEST_F(WalkPageTest, twoPeoplesWalksAreBothKept) {
    begin();
    walkTo("A3");
    key(Qt::Key_Escape);
    session.setPerson(std::nullopt);
    begin();
    EXPECT_EQ(sheet().place(), QStringLiteral("A1"));
    key(Qt::Key_E);
    EXPECT_EQ(now().walks.size(), 2U);
    key(Qt::Key_Escape);
    session.setPerson(sample.orrin);
    begin();
    EXPECT_EQ(sheet().place(), QStringLiteral("A3"));
}

TEST_F(WalkPageTest, aBookOfThreeHundredLeavesWithFaultsInTwoSittings) {
    begin();
    walkTo("C3");
    key(Qt::Key_A); // as read
    key(Qt::Key_Tab);
    type("12");
    key(Qt::Key_Return);
    key(Qt::Key_N);
    key(Qt::Key_Return);
    walkTo("E3");
    key(Qt::Key_M);
    type("after E5");
    key(Qt::Key_Return);
    passTo("G1");
    walkTo("G4");

    // Broken off; weeks later the page is come to afresh.
    ASSERT_TRUE(window.go({ViewId::worklist}));
    sample.clock.at += std::chrono::hours{24 * 30};
    come();
    begin();
    EXPECT_EQ(sheet().place(), QStringLiteral("G4"));

    passTo("K1");
    walkTo("K2");
    key(Qt::Key_L);
    key(Qt::Key_Return);
    walkTo("K7");
    EXPECT_TRUE(sheet().said().contains(QStringLiteral("Leaf K2 is lacking: K7")));
    key(Qt::Key_O);
    key(Qt::Key_Return);
    passTo("2B1");
    key(Qt::Key_X);
    type("lower corner");
    key(Qt::Key_Return);
    for (int keys = 0; walker().here() && keys < 60; ++keys) {
        key(Qt::Key_E);
    }
    ASSERT_FALSE(walker().here());
    key(Qt::Key_Return); // finishes

    const core::JobFile file = now();
    ASSERT_EQ(file.collations.size(), 1U);
    const core::Collation& collation = file.collations.front();
    EXPECT_EQ(
        collation.statement,
        "8°: A⁴ B–2P⁸. Lacks K2; K7 loose; E3 misbound (after E5; belongs after E2); C3 "
        "misnumbered 12 for 21; 2B1 torn with loss. One move puts the leaves in order: E3 goes "
        "after E2. 300 leaves called for, 299 present, 1 lacking.");
    EXPECT_EQ(collation.leavesCalledFor, 300);
    EXPECT_EQ(collation.leavesPresent, 299);
    EXPECT_EQ(collation.finishedOn, sample.clock.today());
    EXPECT_EQ(collation.who, sample.orrin);
    EXPECT_TRUE(collation.notExamined.empty());
    EXPECT_TRUE(collation.method.starts_with("Gone through by "));
    ASSERT_EQ(file.walks.size(), 1U);
    EXPECT_TRUE(file.walks.front().finishedAt.has_value());
    EXPECT_LT(file.walkEntries.size(), 120U);
}

// The sample's other job has no formula here: what the leaves bear is typed, Enter a leaf.
TEST_F(WalkPageTest, aBookWithoutAFormulaIsInferredFromWhatIsTyped) {
    core::Collation bare = now().collations.front();
    bare.formula = "";
    bare.extent = "";
    sample.store.changeElsewhere(bare);
    session.poll();
    begin();
    InferSheet& sheet = page().walk().inferring();
    ASSERT_TRUE(sheet.isTyping());
    int number = 1;
    for (const char* gathering : {"A", "B", "C", "D"}) {
        for (int leaf = 1; leaf <= 8; ++leaf) {
            type(leaf == 1   ? gathering
                 : leaf <= 4 ? (std::string{gathering} + std::to_string(leaf)).c_str()
                             : "");
            key(Qt::Key_Tab);
            type(std::to_string(number).c_str());
            number += 2;
            key(Qt::Key_Return);
        }
    }
    EXPECT_EQ(sheet.inferred().diagnosis.formula, "A-D⁸");
    EXPECT_TRUE(sheet.said().startsWith(QStringLiteral("4 of 4 gatherings are sure.")));
    press(ActionId::undo);
    EXPECT_EQ(sheet.inferred().leaves, 31U);
    press(ActionId::redo);
    EXPECT_EQ(sheet.inferred().leaves, 32U);
    sheet.takeMakeUp().click();
    EXPECT_FALSE(sheet.isTyping());
    EXPECT_EQ(now().collations.front().formula, "A-D⁸");
    EXPECT_TRUE(walker().canBegin());
}

} // namespace
} // namespace headcap::app
