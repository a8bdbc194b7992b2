#include "app/look/style.h"

#include <QApplication>
#include <QComboBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <gtest/gtest.h>

#include "app/look/palette.h"

namespace headcap::app {
namespace {

// Whoever has come to a button by Tab presses it as it comes to hand: Enter or the space bar.
TEST(Button, isPressedByEnterAndBySpace) {
    Style style;
    QWidget window;
    auto* down = new QVBoxLayout(&window);
    auto* before = new QPushButton(QStringLiteral("before"));
    auto* chosen = new QPushButton(QStringLiteral("chosen"));
    for (QPushButton* button : {before, chosen}) {
        button->setStyle(&style);
        down->addWidget(button);
    }
    const QSignalSpy other(before, &QPushButton::clicked);
    const QSignalSpy pressed(chosen, &QPushButton::clicked);
    window.show();
    chosen->setFocus();
    QTest::keyClick(chosen, Qt::Key_Return);
    QTest::keyClick(chosen, Qt::Key_Enter);
    QTest::keyClick(chosen, Qt::Key_Space);
    EXPECT_EQ(pressed.count(), 3);
    EXPECT_EQ(other.count(), 0);
}

// Nobody presses blind: the button that has the focus looks unlike itself without it.
TEST(Button, showsThatItHasTheFocus) {
    Style style;
    for (const char* kind : {"", kQuietButton, kMainButton}) {
        QWidget window;
        auto* down = new QVBoxLayout(&window);
        auto* other = new QPushButton(QStringLiteral("other"));
        auto* chosen = new QPushButton(QStringLiteral("chosen"));
        if (kind[0] != '\0') {
            chosen->setProperty(kind, true);
        }
        for (QPushButton* button : {other, chosen}) {
            button->setStyle(&style);
            down->addWidget(button);
        }
        window.show();
        window.activateWindow();
        other->setFocus();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        const QImage without = chosen->grab().toImage();
        chosen->setFocus();
        EXPECT_NE(chosen->grab().toImage(), without) << "a button of kind " << kind;
    }
}

// Fields are of the same ground: without an edge a list could not be told from what it lies on.
TEST(Style, anOpenedListHasAnEdge) {
    QWidget window;
    auto* box = new QComboBox(&window);
    box->addItems({QStringLiteral("bought"), QStringLiteral("saved from an old binding")});
    window.setVisible(true);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    box->showPopup();
    QWidget* list = QApplication::activePopupWidget();
    ASSERT_NE(list, nullptr);
    const QImage shot = list->grab().toImage();
    const QColor edge = coloursFor(list->palette()).accent;
    const int middle = shot.height() / 2;
    EXPECT_EQ(shot.pixelColor(0, middle), edge);
    EXPECT_EQ(shot.pixelColor(shot.width() - 1, middle), edge);
    EXPECT_NE(shot.pixelColor(shot.width() / 2, middle), edge);
    box->hidePopup();
}

} // namespace
} // namespace headcap::app
