#include "app/pages/book_page.h"

#include <fstream>

#include <QMimeData>
#include <QPushButton>
#include <QUrl>

#include "app/papers/attachment_list.h"
#include "tests/app/pages/page_test.h"

namespace headcap::app {
namespace {

class BookPageTest : public PageTest<BookPage> {
protected:
    BookPageTest() { EXPECT_TRUE(open(*sample.grafting, core::Page::book)); }

    papers::AttachmentList& papers() { return *page().findChild<papers::AttachmentList*>(); }
    QString letter(const char* words = "Dear Binder, please keep the old label.") {
        const QString path = sample.folder.filePath(QStringLiteral("letter.txt"));
        std::ofstream{path.toStdString()} << words;
        return path;
    }
    // Until the files are kept and the record made.
    bool waitForPapers(std::size_t count) {
        return QTest::qWaitFor([&] { return file().attachments.size() == count; }, 5000);
    }
    template <class Record>
    RecordList<Record>& list() {
        for (ListSection* section : page().findChildren<ListSection*>()) {
            if (auto* found = dynamic_cast<RecordList<Record>*>(section)) {
                return *found;
            }
        }
        throw std::logic_error{"no such list"};
    }
};

TEST_F(BookPageTest, aFollowUpIsWrittenDoneAndTakenBack) {
    auto& list = this->list<core::FollowUp>();
    const auto before = file().followUps.size();
    list.startNew();
    type(list.form(), QStringLiteral("What"), QStringLiteral("Ask again for leaf K2"));
    type(list.form(), QStringLiteral("Due"), QStringLiteral("1 March 2032"));
    ASSERT_TRUE(page().leave());
    ASSERT_EQ(file().followUps.size(), before + 1);
    const core::FollowUp made = file().followUps.back();
    EXPECT_EQ(made.what, "Ask again for leaf K2");
    EXPECT_EQ(core::toText(*made.dueOn), "1 March 2032");
    EXPECT_EQ(made.who, sample.orrin);
    ASSERT_TRUE(list.goTo(made.id.uuid()));
    type(list.form(), QStringLiteral("Done on"), QStringLiteral("6 March 2031"));
    ASSERT_TRUE(page().leave());
    EXPECT_TRUE(file().followUps.back().doneOn);
    session.undo();
    session.undo();
    EXPECT_EQ(file().followUps.size(), before);
}

// What an inch rule gave stands in inches and is kept exactly: 8 1/4 in are 209.55 mm.
TEST_F(BookPageTest, aSideStandsAsItWasMeasured) {
    FormBase* form = nullptr;
    for (FormBase* one : page().findChildren<FormBase*>()) {
        form = form == nullptr && one->rowLabelled(QStringLiteral("Height")) ? one : form;
    }
    ASSERT_NE(form, nullptr);
    type(*form, QStringLiteral("Height"), QStringLiteral("8 1/4 in"));
    ASSERT_TRUE(page().leave());
    EXPECT_EQ(file().item.height, core::Length::micrometres(209'550));
    EXPECT_EQ(form->rowLabelled(QStringLiteral("Height"))->text(), QStringLiteral("8 1/4 in"));
    type(*form, QStringLiteral("Height"), QStringLiteral("21 cm"));
    ASSERT_TRUE(page().leave());
    EXPECT_EQ(form->rowLabelled(QStringLiteral("Height"))->text(), QStringLiteral("210 mm"));
}

TEST_F(BookPageTest, aSizeIsNoFormat) {
    FormBase* form = nullptr;
    for (FormBase* one : page().findChildren<FormBase*>()) {
        form = form == nullptr && one->rowLabelled(QStringLiteral("Format")) ? one : form;
    }
    ASSERT_NE(form, nullptr);
    const std::string before = file().item.format;
    type(*form, QStringLiteral("Format"), QStringLiteral("190 mm"));
    EXPECT_FALSE(page().leave());
    EXPECT_TRUE(form->rowLabelled(QStringLiteral("Format"))->hasError());
    EXPECT_EQ(file().item.format, before);
    type(*form, QStringLiteral("Format"), QStringLiteral("12mo"));
    EXPECT_TRUE(page().leave());
    EXPECT_EQ(file().item.format, "12mo");
}

TEST_F(BookPageTest, escGoesBackToTheRowAndKeepsWhatWasWritten) {
    auto& list = this->list<core::Piece>();
    ASSERT_TRUE(list.goTo(file().pieces.front().id.uuid()));
    type(list.form(), QStringLiteral("At return"), QStringLiteral("given back"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_TRUE(list.list().hasFocus());
    EXPECT_TRUE(QTest::qWaitFor([&] { return file().pieces.front().returned == "given back"; }));
}

TEST_F(BookPageTest, aFileIsAttachedKeptWholeAndOpened) {
    sample.prompts.files = {letter()};
    Q_EMIT papers().addAsked();
    ASSERT_TRUE(waitForPapers(1));
    const core::Attachment made = file().attachments.front();
    EXPECT_EQ(made.fileName, "letter.txt");
    EXPECT_EQ(made.mediaType, "text/plain");
    EXPECT_EQ(made.subject, core::refOf(*sample.grafting));
    std::ifstream kept{sample.files.pathOf(core::FileStore::Shelf::attachment, made.digest)};
    const std::string whole{std::istreambuf_iterator<char>{kept}, {}};
    EXPECT_EQ(whole, "Dear Binder, please keep the old label.");
    EXPECT_EQ(made.bytes, static_cast<std::int64_t>(whole.size()));

    for (QPushButton* button : papers().findChildren<QPushButton*>()) {
        if (button->text() == QStringLiteral("Open the file")) {
            button->click();
        }
    }
    EXPECT_TRUE(sample.prompts.asked.back().contains(fromCore(made.digest.hex())));
}

TEST_F(BookPageTest, anAttachmentIsGivenToTheRecordItBelongsTo) {
    papers().attach({letter()});
    ASSERT_TRUE(waitForPapers(1));
    type(papers().form(), QStringLiteral("Belongs to"), QStringLiteral("the owner"));
    ASSERT_TRUE(page().leave());
    EXPECT_EQ(file().attachments.front().subject, core::refOf(file().owner.id));
    session.undo();
    EXPECT_EQ(file().attachments.front().subject, core::refOf(*sample.grafting));
}

// A drawing of what was laid open is a picture of the step.
TEST_F(BookPageTest, anAttachmentCanBelongToAStep) {
    papers().attach({letter()});
    ASSERT_TRUE(waitForPapers(1));
    const core::Step step = file().steps.front();
    const auto subjects = papers::subjectsOf(file());
    const QString words = papers::subjectWords(core::refOf(step.id), subjects);
    EXPECT_TRUE(words.startsWith(QStringLiteral("step: "))) << words.toStdString();
    type(papers().form(), QStringLiteral("Belongs to"), words);
    ASSERT_TRUE(page().leave());
    EXPECT_EQ(file().attachments.front().subject, core::refOf(step.id));
    // Of what is not offered, it says what it is.
    EXPECT_EQ(papers::subjectWords({core::RecordKind::lot, step.id.uuid()}, subjects),
              QStringLiteral("the lot"));
}

TEST_F(BookPageTest, whatCantBeAttachedIsSaidAndTheRestIsKept) {
    const QString empty = sample.folder.filePath(QStringLiteral("empty.pdf"));
    std::ofstream{empty.toStdString()};
    papers().attach({empty, sample.folder.path(), letter(),
                     sample.folder.filePath(QStringLiteral("nowhere.pdf"))});
    ASSERT_TRUE(waitForPapers(1));
    const QString said = window.notices().sentence();
    EXPECT_TRUE(said.contains(QStringLiteral("empty.pdf is empty"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("is a folder"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("nowhere.pdf can't be read"))) << said.toStdString();
}

TEST_F(BookPageTest, goesToWhatTheMarginNames) {
    papers().attach({letter()});
    ASSERT_TRUE(waitForPapers(1));
    EXPECT_TRUE(page().goTo(core::refOf(file().attachments.front().id)));
    EXPECT_TRUE(page().goTo(core::refOf(file().owner.id)));
    EXPECT_FALSE(page().goTo(core::refOf(file().steps.front().id)));
}

} // namespace
} // namespace headcap::app
