#include "app/look/style.h"

#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <gtest/gtest.h>

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

} // namespace
} // namespace headcap::app
