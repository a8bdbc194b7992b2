#include "app/session/session.h"

#include <gtest/gtest.h>

#include "app/session/words.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

class SessionTest : public testing::Test {
protected:
    SessionTest() {
        QObject::connect(&session, &Session::said,
                         [this](const Notice& n) { notices.push_back(n); });
        QObject::connect(&session, &Session::changed, [this] { ++changes; });
    }

    core::Change retitle(const std::string& title) {
        auto file = sample.file(*sample.hymnal);
        core::Item item = file.item;
        item.title = title;
        core::Change change{.sentence = "Book: title changed"};
        change.update(item, file.revisionOf(core::refOf(item.id)));
        return change;
    }
    std::string title() { return sample.file(*sample.hymnal).item.title; }

    tests::SampleWorkshop sample;
    Session session{sample.means()};
    std::vector<Notice> notices;
    int changes = 0;
};

TEST_F(SessionTest, appliesAChangeInTheNameOfWhoIsWorking) {
    EXPECT_TRUE(session.apply(retitle("Hymns")));
    EXPECT_EQ(title(), "Hymns");
    EXPECT_EQ(sample.store.last().who, sample.orrin);
    EXPECT_EQ(changes, 1);
    EXPECT_TRUE(notices.empty());
}

TEST_F(SessionTest, saysInOneSentenceThatTheDiskIsFullAndChangesNothing) {
    sample.store.failNext = core::StoreError::Code::diskFull;
    const std::string before = title();
    EXPECT_FALSE(session.apply(retitle("Hymns")));
    EXPECT_EQ(title(), before);
    ASSERT_EQ(notices.size(), 1U);
    EXPECT_EQ(notices[0].kind, Notice::Kind::failed);
    EXPECT_TRUE(notices[0].sentence.contains(QStringLiteral("disk is full")));
}

TEST_F(SessionTest, leavesSomebodyElsesChangeAlone) {
    const core::Change mine = retitle("Mine");
    auto theirs = sample.file(*sample.hymnal).item;
    theirs.title = "Theirs";
    sample.store.changeElsewhere(theirs);
    EXPECT_FALSE(session.apply(mine));
    EXPECT_EQ(title(), "Theirs");
    ASSERT_EQ(notices.size(), 1U);
    EXPECT_EQ(notices[0].kind, Notice::Kind::refused);
}

TEST_F(SessionTest, tellsOfAChangeMadeElsewhereOnce) {
    session.poll();
    EXPECT_EQ(changes, 0);
    auto theirs = sample.file(*sample.hymnal).item;
    theirs.title = "Theirs";
    sample.store.changeElsewhere(theirs);
    session.poll();
    session.poll();
    EXPECT_EQ(changes, 1);
}

TEST_F(SessionTest, undoesAndBringsBackWithTheSentenceOfWhatItWas) {
    const std::string before = title();
    ASSERT_TRUE(session.apply(retitle("Hymns")));
    EXPECT_EQ(session.undoable(), QStringLiteral("Book: title changed"));
    session.undo();
    EXPECT_EQ(title(), before);
    ASSERT_FALSE(notices.empty());
    EXPECT_EQ(notices.back().sentence, QStringLiteral("Undone: Book: title changed"));
    EXPECT_EQ(session.redoable(), QStringLiteral("Book: title changed"));
    session.redo();
    EXPECT_EQ(title(), "Hymns");
}

// What is undone may be of another book than the one that lies open.
TEST_F(SessionTest, saysOfWhichJobItWasWhatIsUndone) {
    const core::JobFile file = sample.file(*sample.hymnal);
    const core::FollowUp later{
        .id = sample.ids.next<core::FollowUp>(), .job = file.job.id, .what = "Look again"};
    ASSERT_TRUE(session.apply(core::Change{.sentence = "Follow-up added"}.add(later)));
    const QString number = fromCore(file.job.number);
    session.undo();
    EXPECT_EQ(notices.back().sentence, QStringLiteral("Undone: Follow-up added (%1)").arg(number));
    session.redo();
    EXPECT_EQ(notices.back().sentence,
              QStringLiteral("Done again: Follow-up added (%1)").arg(number));
}

TEST_F(SessionTest, saysThatThereIsNothingToUndo) {
    session.undo();
    ASSERT_EQ(notices.size(), 1U);
    EXPECT_EQ(notices[0].sentence, QStringLiteral("There is nothing to undo."));
}

TEST_F(SessionTest, remembersWhoIsWorking) {
    EXPECT_EQ(session.person(), sample.orrin);
    session.setPerson(std::nullopt);
    const Session later{sample.means()};
    EXPECT_EQ(later.person(), std::nullopt);
}

} // namespace
} // namespace headcap::app
