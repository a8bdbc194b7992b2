// The program's keys are not taken by a field's own editing.
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>

#include <gtest/gtest.h>

#include "app/session/actions.h"
#include "app/session/keys_first.h"

namespace headcap::app {
namespace {

// A field that claims every key, as line editing does with some on some systems.
class GreedyField : public QLineEdit {
public:
    bool event(QEvent* event) override {
        if (event->type() == QEvent::ShortcutOverride) {
            event->accept();
            return true;
        }
        return QLineEdit::event(event);
    }
};

class KeysFirstTest : public testing::Test {
protected:
    bool isClaimed(const QKeyCombination& key) {
        QKeyEvent event{QEvent::ShortcutOverride, key.key(), key.keyboardModifiers()};
        event.ignore();
        QCoreApplication::sendEvent(&field, &event);
        return event.isAccepted();
    }
    bool isClaimed(ActionId id) { return isClaimed(keysOf(id).front()[0]); }

    KeysFirst keys{nullptr};
    GreedyField field;
};

TEST_F(KeysFirstTest, ofTheWindowAndOfAJobReachTheirActions) {
    for (const ActionEntry& entry : actionTable()) {
        const bool isOfTheWindow = entry.place == Place::everywhere || entry.place == Place::job;
        const bool hasControl =
            keysOf(entry.id).front()[0].keyboardModifiers().testFlag(Qt::ControlModifier);
        if (isOfTheWindow && hasControl && entry.id != ActionId::undo &&
            entry.id != ActionId::redo) {
            EXPECT_FALSE(isClaimed(entry.id)) << entry.words;
        }
    }
}

TEST_F(KeysFirstTest, leavesTheFieldItsOwnEditing) {
    EXPECT_TRUE(isClaimed(ActionId::undo));
    EXPECT_TRUE(isClaimed(ActionId::redo));
    EXPECT_TRUE(isClaimed(ActionId::back));
    for (const Qt::Key key : {Qt::Key_A, Qt::Key_C, Qt::Key_X, Qt::Key_V}) {
        EXPECT_TRUE(isClaimed(Qt::CTRL | key));
    }
}

} // namespace
} // namespace headcap::app
