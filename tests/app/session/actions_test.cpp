#include "app/session/actions.h"
#include "app/session/actions_by_key.h"

#include <algorithm>
#include <set>

#include <QList>
#include <QRegularExpression>

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

// A key is looked for by its figure or its letter.
TEST(Actions, standInTheSheetInTheOrderOfTheirKeys) {
    QStringList everywhere;
    for (const ActionEntry* entry : actionsByKey(Place::everywhere)) {
        everywhere << keyText(entry->id);
    }
    QStringList figures = everywhere.filter(QRegularExpression(QStringLiteral("^Ctrl\\+\\d$")));
    EXPECT_EQ(figures.size(), 9);
    EXPECT_EQ(figures.first(), QStringLiteral("Ctrl+1"));
    QStringList letters = everywhere.filter(QRegularExpression(QStringLiteral("^Ctrl\\+[A-Z]$")));
    EXPECT_GT(letters.size(), 4);
    for (QStringList* run : {&figures, &letters}) {
        QStringList sorted = *run;
        sorted.sort();
        EXPECT_EQ(*run, sorted);
        const auto first = everywhere.indexOf(run->first());
        EXPECT_EQ(everywhere.mid(first, run->size()), *run) << "one after the other";
    }
    EXPECT_EQ(everywhere.size(),
              std::ranges::count(actionTable(), Place::everywhere, &ActionEntry::place));
    EXPECT_EQ(keyText(ActionId::logStep), QStringLiteral("Ctrl+Enter"));
}

} // namespace
} // namespace headcap::app
