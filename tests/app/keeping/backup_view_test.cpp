// Backups from the window, by keys: the work runs beside, the store is looked at afterwards.
#include "app/keeping/backup_view.h"

#include <atomic>
#include <deque>
#include <thread>

#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "app/look/label.h"
#include "app/session/actions.h"
#include "app/shell/main_window.h"
#include "app/shell/worklist_view.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

using namespace std::chrono_literals;

constexpr int kLongEnoughMs = 10'000;

// Answers each question for a folder with the next of those laid ready.
class FolderPrompts final : public Prompts {
public:
    std::deque<QString> folders;
    QStringList filesToOpen(const QString&, const QString&) override { return {}; }
    std::optional<QString> fileToSave(const QString&, const QString&, const QString&) override {
        return std::nullopt;
    }
    std::optional<QString> folder(const QString&) override {
        if (folders.empty()) {
            return std::nullopt;
        }
        const QString next = folders.front();
        folders.pop_front();
        return next;
    }
    void open(const QUrl&) override {}
};

class BackupViewTest : public testing::Test {
protected:
    BackupViewTest() {
        sample.upkeep.onBackup = [this](const std::filesystem::path& folder,
                                        const core::Progress& progress) {
            backedUpTo.push_back(folder);
            isOffTheWindowsThread = std::this_thread::get_id() != windowsThread;
            while (isHeld && progress(3, 10)) {
                std::this_thread::sleep_for(1ms);
            }
            return core::BackupReport{folder, 12, 3, 4'000};
        };
    }
    void open() {
        window = std::make_unique<MainWindow>(session);
        window->setVisible(true);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        press(ActionId::backups);
        ASSERT_EQ(window->currentId(), ViewId::backups);
    }
    BackupView& view() { return *qobject_cast<BackupView*>(window->current()); }
    void press(ActionId id) {
        QWidget* at = QApplication::focusWidget();
        QTest::keySequence(at != nullptr ? at : window.get(), keysOf(id).front());
    }
    bool says(const QString& words) const {
        for (const Label* label : window->current()->findChildren<Label*>()) {
            if (label->isVisible() && label->text().contains(words)) {
                return true;
            }
        }
        return false;
    }
    bool comesToSay(const QString& words) {
        return QTest::qWaitFor([&] { return says(words); }, kLongEnoughMs);
    }
    QPushButton* shownButton(const QString& words) const {
        for (QPushButton* button : window->current()->findChildren<QPushButton*>()) {
            if (button->isVisible() && button->text().startsWith(words)) {
                return button;
            }
        }
        return nullptr;
    }

    tests::SampleWorkshop sample;
    FolderPrompts prompts;
    Session session{[this] {
        return Session::Means{.stores = sample.means().stores,
                              .clock = sample.clock,
                              .ids = sample.ids,
                              .prompts = prompts,
                              .settings = sample.settings};
    }()};
    std::unique_ptr<MainWindow> window;
    std::vector<std::filesystem::path> backedUpTo;
    std::thread::id windowsThread = std::this_thread::get_id();
    std::atomic_bool isOffTheWindowsThread = false;
    std::atomic_bool isHeld = false;
};

TEST_F(BackupViewTest, backsUpToAFolderThatIsChosenAndSaysWhatCameOfIt) {
    open();
    prompts.folders = {QStringLiteral("/media/blue/headcap")};
    press(ActionId::backUpElsewhere);
    EXPECT_TRUE(comesToSay(QStringLiteral(
        "Backed up to /media/blue/headcap and checked: 12 files copied, 3 there already.")));
    EXPECT_EQ(backedUpTo, std::vector<std::filesystem::path>{"/media/blue/headcap"});
    EXPECT_TRUE(isOffTheWindowsThread);
}

TEST_F(BackupViewTest, backsUpAgainToTheSameFolderWithoutAsking) {
    sample.upkeep.outside = sample.clock.now() - 24h;
    sample.upkeep.outsideAt = "/media/blue/headcap";
    open();
    EXPECT_TRUE(says(QStringLiteral("1 day ago")));
    press(ActionId::backUp);
    EXPECT_TRUE(comesToSay(QStringLiteral("Backed up to /media/blue/headcap")));
}

TEST_F(BackupViewTest, nothingIsDoneWhereNoFolderIsChosen) {
    open();
    press(ActionId::backUp);
    press(ActionId::restoreBackup);
    EXPECT_FALSE(view().work().isRunning());
    EXPECT_TRUE(backedUpTo.empty());
}

TEST_F(BackupViewTest, saysHowFarItIsAndEscStopsIt) {
    sample.upkeep.outsideAt = "/media/blue/headcap";
    isHeld = true;
    open();
    press(ActionId::backUp);
    EXPECT_TRUE(comesToSay(QStringLiteral("3 of 10 files")));
    // Nothing else is begun meanwhile.
    prompts.folders = {QStringLiteral("/elsewhere")};
    press(ActionId::backUpElsewhere);
    EXPECT_EQ(backedUpTo.size(), 1U);
    press(ActionId::back);
    EXPECT_TRUE(comesToSay(QStringLiteral("Stopped. The backup before this one is as it was")));
    EXPECT_EQ(window->currentId(), ViewId::backups);
    press(ActionId::back);
    EXPECT_EQ(window->currentId(), ViewId::worklist);
}

TEST_F(BackupViewTest, saysWhyABackupWasNotMade) {
    sample.upkeep.outsideAt = "/media/blue/headcap";
    sample.upkeep.onBackup = [](const std::filesystem::path&,
                                const core::Progress&) -> core::BackupReport {
        throw core::StoreError{core::StoreError::Code::ioFailed,
                               "/media/blue/headcap holds the backup of another workshop"};
    };
    open();
    press(ActionId::backUp);
    EXPECT_TRUE(comesToSay(QStringLiteral(
        "Not backed up: /media/blue/headcap holds the backup of another workshop.")));
}

TEST_F(BackupViewTest, restoresIntoANewFolderAndOffersToOpenIt) {
    std::vector<std::filesystem::path> given;
    sample.upkeep.onRestore = [&](const auto& backup, const auto& folder, const auto&) {
        given = {backup, folder};
        return true;
    };
    open();
    prompts.folders = {QStringLiteral("/media/blue/headcap"), QStringLiteral("/home/una/again")};
    press(ActionId::restoreBackup);
    EXPECT_TRUE(comesToSay(QStringLiteral("Restored to /home/una/again")));
    EXPECT_EQ(given,
              (std::vector<std::filesystem::path>{"/media/blue/headcap", "/home/una/again"}));
    QString wanted;
    QObject::connect(window.get(), &MainWindow::otherWorkshopAsked, window.get(),
                     [&](const QString& folder) { wanted = folder; });
    QPushButton* offer = shownButton(QStringLiteral("Open the restored workshop"));
    ASSERT_NE(offer, nullptr);
    EXPECT_TRUE(offer->hasFocus());
    QTest::keyClick(offer, Qt::Key_Space);
    EXPECT_EQ(wanted, QStringLiteral("/home/una/again"));
    EXPECT_FALSE(window->isVisible());
}

TEST_F(BackupViewTest, theWindowMayCloseWhileItRuns) {
    sample.upkeep.outsideAt = "/media/blue/headcap";
    isHeld = true;
    open();
    press(ActionId::backUp);
    EXPECT_TRUE(comesToSay(QStringLiteral("3 of 10 files")));
    window.reset();
    EXPECT_EQ(backedUpTo.size(), 1U);
}

TEST_F(BackupViewTest, theWorklistSaysThatABackupIsWantedAndOpensThePage) {
    sample.upkeep.outside = sample.clock.now() - 9 * 24h;
    open();
    press(ActionId::worklist);
    QPushButton* line =
        shownButton(QStringLiteral("The last backup on another disk is 9 days old: back up now"));
    ASSERT_NE(line, nullptr);
    line->setFocus();
    QTest::keyClick(line, Qt::Key_Space);
    EXPECT_EQ(window->currentId(), ViewId::backups);
    sample.upkeep.outside = sample.clock.now() - 6 * 24h;
    press(ActionId::worklist);
    EXPECT_EQ(shownButton(QStringLiteral("The last backup")), nullptr);
}

} // namespace
} // namespace headcap::app
