#include "app/session/actions.h"

#include <set>

#include <QList>

#include <gtest/gtest.h>

namespace headcap::app {
namespace {

TEST(Actions, giveNoKeyTwice) {
    for (const ActionEntry& one : actionTable()) {
        for (const ActionEntry& other : actionTable()) {
            const bool canMeet = one.place == other.place || one.place == Place::everywhere ||
                                 other.place == Place::everywhere;
            if (one.id == other.id || !canMeet) {
                continue;
            }
            for (const QKeySequence& key : keysOf(one.id)) {
                EXPECT_FALSE(keysOf(other.id).contains(key))
                    << key.toString().toStdString() << ": " << one.words << " and " << other.words;
            }
        }
    }
}

TEST(Actions, areEachThereOnceWithWordsAndAKey) {
    std::set<ActionId> seen;
    for (const ActionEntry& entry : actionTable()) {
        EXPECT_TRUE(seen.insert(entry.id).second) << entry.words;
        EXPECT_FALSE(wordsOf(entry.id).isEmpty());
        ASSERT_FALSE(keysOf(entry.id).isEmpty()) << entry.words;
        for (const QKeySequence& key : keysOf(entry.id)) {
            EXPECT_FALSE(key.isEmpty()) << entry.words;
        }
        EXPECT_TRUE(tipOf(entry.id).contains(keyText(entry.id)));
    }
}

} // namespace
} // namespace headcap::app
