// The backups page: what it says, what it asks of the store, and that long work can be stopped.
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "app/look/label.h"
#include "app/session/actions.h"
#include "app/shell/backup_view.h"
#include "app/shell/main_window.h"
#include "app/shell/notice_bar.h"
#include "tests/support/fake_keeping.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

using namespace std::chrono_literals;
using namespace Qt::StringLiterals;

class BackupViewTest : public testing::Test {
protected:
    BackupViewTest() {
        window.resize(1440, 900);
        window.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
    }
    Session::Means means() {
        return {.stores = {sample.store, sample.store, sample.store, sample.search, sample.files,
                           keeping},
                .clock = sample.clock,
                .ids = sample.ids,
                .prompts = sample.prompts,
                .settings = sample.settings};
    }
    BackupView& open() {
        QTest::keySequence(&window, keysOf(ActionId::backups).front());
        return *qobject_cast<BackupView*>(window.current());
    }
    QString said(const QString& name) {
        for (const Label* label : window.current()->findChildren<Label*>()) {
            if (label->accessibleName() == name) {
                return label->isVisible() ? label->text() : QString{};
            }
        }
        ADD_FAILURE() << "no " << name.toStdString();
        return {};
    }
    void press(const QString& words) {
        for (auto* button : window.current()->findChildren<QPushButton*>()) {
            if (button->text() == words) {
                EXPECT_TRUE(button->isEnabled());
                button->setFocus();
                QTest::keyClick(button, Qt::Key_Space);
                return;
            }
        }
        ADD_FAILURE() << "no button " << words.toStdString();
    }
    void waitUntilDone() {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !open().work().isBusy(); }));
        QCoreApplication::processEvents();
    }

    tests::SampleWorkshop sample;
    tests::FakeKeeping keeping;
    Session session{means()};
    MainWindow window{session};
};

TEST_F(BackupViewTest, saysWhenTheLastWere) {
    keeping.lastOutside = sample.clock.at - 24h * 9;
    keeping.lastInside = sample.clock.at;
    keeping.lastFolder = "/media/disk";
    (void)open();
    EXPECT_TRUE(said(u"Last backup outside"_s).contains(u"Tuesday 25 February 2031"_s))
        << said(u"Last backup outside"_s).toStdString();
    EXPECT_TRUE(said(u"Last backup outside"_s).contains(u"(9 days ago)"_s));
    EXPECT_EQ(said(u"Folder of the backups"_s), u"Into /media/disk"_s);
    EXPECT_TRUE(said(u"Last copy inside"_s).contains(u"(today)"_s));
}

TEST_F(BackupViewTest, theFirstBackupAsksForItsFolderAndTheNextGoesThere) {
    (void)open();
    press(u"Back up now"_s);
    EXPECT_EQ(sample.prompts.asked.size(), 1);
    EXPECT_TRUE(keeping.asked.empty()) << "the person thought better of it";
    sample.prompts.file = u"/media/disk"_s;
    press(u"Back up now"_s);
    waitUntilDone();
    ASSERT_EQ(keeping.asked.size(), 1U);
    EXPECT_EQ(keeping.asked[0], "backup /media/disk");
    EXPECT_TRUE(window.notices().sentence().contains(u"12 files copied"_s))
        << window.notices().sentence().toStdString();
    press(u"Back up now"_s);
    waitUntilDone();
    EXPECT_EQ(keeping.asked.size(), 2U);
    EXPECT_EQ(sample.prompts.asked.size(), 2);
}

TEST_F(BackupViewTest, aBackupCanBeStopped) {
    keeping.lastFolder = "/media/disk";
    keeping.goesOn = true;
    BackupView& view = open();
    press(u"Back up now"_s);
    EXPECT_TRUE(view.work().isBusy());
    QTest::qWait(60);
    press(u"Stop"_s);
    waitUntilDone();
    EXPECT_TRUE(window.notices().sentence().startsWith(u"Stopped."_s))
        << window.notices().sentence().toStdString();
}

TEST_F(BackupViewTest, aBackupThatFailsSaysWhy) {
    keeping.lastFolder = "/media/disk";
    keeping.failure =
        core::StoreError(core::StoreError::Code::diskFull, "writing /media/disk/x: no space");
    (void)open();
    press(u"Back up now"_s);
    waitUntilDone();
    EXPECT_EQ(window.notices().sentence(),
              u"The backup was not made: writing /media/disk/x: no space."_s);
}

TEST_F(BackupViewTest, checksAndNamesWhatItFinds) {
    (void)open();
    press(u"Check everything"_s);
    waitUntilDone();
    EXPECT_TRUE(said(u"What was found"_s).startsWith(u"The workshop is sound."_s));
    keeping.found.findings.push_back({"photograph", std::nullopt, "The photograph is missing."});
    press(u"Check everything"_s);
    waitUntilDone();
    EXPECT_EQ(said(u"What was found"_s), u"The photograph is missing."_s);
    sample.prompts.file = u"/media/card"_s;
    keeping.mended.mended.push_back(keeping.found.findings.front());
    press(u"Look for missing files …"_s);
    waitUntilDone();
    EXPECT_EQ(said(u"What was found"_s), u"1 put back, 0 not found there."_s);
    EXPECT_EQ(keeping.asked.back(), "mend /media/card");
}

TEST_F(BackupViewTest, restoresIntoANewFolder) {
    (void)open();
    sample.prompts.file = u"/media/disk"_s;
    press(u"Restore a backup …"_s);
    waitUntilDone();
    EXPECT_EQ(sample.prompts.asked.size(), 2) << "from where, and to where";
    EXPECT_EQ(keeping.asked.back(), "restore /media/disk /media/disk");
    EXPECT_TRUE(window.notices().sentence().startsWith(u"Restored to /media/disk."_s));
}

TEST_F(BackupViewTest, theWorklistSaysThatABackupIsDueAndLeadsThere) {
    const auto shown = [&](const char* words) {
        for (const Label* label : window.current()->findChildren<Label*>()) {
            if (label->isVisible() && label->text().contains(QLatin1String(words))) {
                return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(shown("No backup outside this workshop has been made yet."));
    press(u"Backups"_s);
    EXPECT_EQ(window.currentId(), ViewId::backups);
    keeping.lastOutside = sample.clock.at - 24h * 8;
    window.back();
    EXPECT_TRUE(shown("The last backup outside this workshop is 8 days old."));
    keeping.lastOutside = sample.clock.at - 24h * 6;
    window.current()->refresh();
    EXPECT_FALSE(shown("backup outside"));
}

} // namespace
} // namespace headcap::app
