#include "app/shell/start_window.h"

#include <fstream>

#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include "app/form/ruled_list.h"
#include "app/look/label.h"
#include "tests/support/sample_workshop.h"

namespace headcap::app {
namespace {

constexpr int kLongEnoughMs = 10'000;

class StartWindowTest : public testing::Test {
protected:
    std::filesystem::path at(const char* name) const {
        return std::filesystem::path{folder.path().toStdString()} / name;
    }
    void makeWorkshop(const char* name) const {
        std::filesystem::create_directories(at(name));
        std::ofstream{at(name) / "workshop.sqlite"} << "there";
    }
    // A program that stands in for the one that builds the demo.
    QStringList builder(const char* script) const {
        const auto path = at("builder.sh");
        std::ofstream{path} << "#!/bin/sh\n" << script << '\n';
        std::filesystem::permissions(path, std::filesystem::perms::owner_all);
        return {QString::fromStdString(path.string()), QStringLiteral("demo")};
    }
    StartWindow& open(const QStringList& demoCommand = {QStringLiteral("/bin/false")}) {
        window = std::make_unique<StartWindow>(StartWindow::Means{.prompts = prompts,
                                                                  .usual = at("usual"),
                                                                  .demo = at("demo"),
                                                                  .demoCommand = demoCommand,
                                                                  .last = last});
        QObject::connect(window.get(), &StartWindow::chosen, window.get(),
                         [this](const StartWindow::Choice& made) { choice = made; });
        window->show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        return *window;
    }
    RuledList& list() { return *window->findChild<RuledList*>(); }
    // Goes down to the row whose title begins so, and takes it.
    void take(const QString& title) {
        const auto& rows = dynamic_cast<const RuledModel&>(*list().model());
        for (int row = 0; row < rows.rowCount(); ++row) {
            if (rows.row(row).words.title.startsWith(title)) {
                QTest::keyClick(&list(), Qt::Key_Return);
                return;
            }
            QTest::keyClick(&list(), Qt::Key_Down);
        }
        FAIL() << title.toStdString();
    }
    bool says(const char* words) const {
        for (const Label* label : window->findChildren<Label*>()) {
            if (label->isVisible() && label->text().contains(QLatin1String(words))) {
                return true;
            }
        }
        return false;
    }

    QTemporaryDir folder;
    tests::FakePrompts prompts;
    std::filesystem::path last;
    std::unique_ptr<StartWindow> window;
    std::optional<StartWindow::Choice> choice;
};

TEST_F(StartWindowTest, beginsAWorkshopInTheUsualPlaceByEnterAlone) {
    open();
    QTest::keyClick(&list(), Qt::Key_Return);
    ASSERT_TRUE(choice);
    EXPECT_EQ(choice->kind, StartWindow::Kind::begin);
    EXPECT_EQ(choice->folder, at("usual"));
}

TEST_F(StartWindowTest, goesOnWithTheLastWorkshop) {
    makeWorkshop("elsewhere");
    last = at("elsewhere");
    open();
    QTest::keyClick(&list(), Qt::Key_Return);
    ASSERT_TRUE(choice);
    EXPECT_EQ(choice->kind, StartWindow::Kind::open);
    EXPECT_EQ(choice->folder, last);
}

TEST_F(StartWindowTest, opensTheFolderThatIsChosen) {
    prompts.file = QStringLiteral("/some/folder");
    open();
    take(QStringLiteral("Open another"));
    ASSERT_TRUE(choice);
    EXPECT_EQ(choice->kind, StartWindow::Kind::open);
    EXPECT_EQ(choice->folder, "/some/folder");
}

TEST_F(StartWindowTest, buildsTheDemoAndOpensIt) {
    open(builder("mkdir \"$2\" && echo there > \"$2/workshop.sqlite\""));
    take(QStringLiteral("Look round"));
    EXPECT_TRUE(says("being drawn"));
    EXPECT_TRUE(QTest::qWaitFor([this] { return choice.has_value(); }, kLongEnoughMs));
    ASSERT_TRUE(choice);
    EXPECT_EQ(choice->folder, at("demo"));
    EXPECT_TRUE(std::filesystem::exists(at("demo") / "workshop.sqlite"));
}

TEST_F(StartWindowTest, saysWhyTheDemoCouldNotBeBuiltAndLeavesNothing) {
    open(builder("mkdir \"$2\"; echo 'The disk is full.' >&2; exit 3"));
    take(QStringLiteral("Look round"));
    EXPECT_TRUE(QTest::qWaitFor([this] { return says("disk is full"); }, kLongEnoughMs));
    EXPECT_FALSE(choice);
    EXPECT_FALSE(std::filesystem::exists(at("demo.part")));
}

TEST_F(StartWindowTest, stopsWithEscAndLeavesNothing) {
    open(builder("mkdir \"$2\"; exec sleep 30"));
    take(QStringLiteral("Look round"));
    const auto isBegun = [this] { return std::filesystem::exists(at("demo.part")); };
    EXPECT_TRUE(QTest::qWaitFor(isBegun, kLongEnoughMs));
    QTest::keyClick(window->focusWidget(), Qt::Key_Escape);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !isBegun(); }, kLongEnoughMs));
    EXPECT_FALSE(choice);
    EXPECT_TRUE(window->isVisible());
    EXPECT_TRUE(list().isEnabled());
}

TEST_F(StartWindowTest, showsWhyAFolderCouldNotBeOpened) {
    open().setProblem(QStringLiteral("There is no workshop in that folder."));
    EXPECT_TRUE(says("no workshop"));
}

} // namespace
} // namespace headcap::app
