#include "app/session/settings.h"

#include <functional>

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace headcap::app {
namespace {

class SettingsTest : public testing::Test {
protected:
    // What a program leaves behind, read by the next as another process would.
    void leave(const std::function<void(Settings&)>& work) {
        Settings settings(file);
        work(settings);
    }
    QByteArray kept() {
        QFile in(file);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray{};
    }

    QTemporaryDir folder;
    QString file = folder.filePath(QStringLiteral("settings.ini"));
};

TEST_F(SettingsTest, WhatHoldsUnsetIsNotWritten) {
    leave([](Settings& settings) {
        for (const SettingEntry& entry : settingTable()) {
            settings.set(entry.id, entry.fallback);
        }
    });
    EXPECT_FALSE(QFile::exists(file));
}

TEST_F(SettingsTest, WhatHoldsAlreadyIsNotWrittenAgain) {
    const auto setAll = [](Settings& settings) {
        settings.set(Setting::worklistAsTable, true);
        settings.set(Setting::textPercent, 125);
        settings.set(Setting::windowPlace, QByteArray("\x01\xfe\x00 place", 9));
        settings.set(Setting::stepDrafts,
                     QVariantMap{{QStringLiteral("job"), QStringLiteral("guarded K7")}});
    };
    leave(setAll);
    ASSERT_FALSE(kept().isEmpty());
    // A program that writes would put its own text in the place of this one.
    const QByteArray marked = kept() + "; by hand\n";
    QFile out(file);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(marked);
    out.close();
    leave(setAll);
    EXPECT_EQ(kept(), marked);
}

TEST_F(SettingsTest, EverySettingComesBackAndCanGoBackToWhatItWas) {
    leave([](Settings& settings) {
        settings.set(Setting::marginFolded, true);
        settings.set(Setting::textPercent, 125);
    });
    leave([](Settings& settings) {
        EXPECT_TRUE(settings.value(Setting::marginFolded).toBool());
        EXPECT_EQ(settings.value(Setting::textPercent).toInt(), 125);
        settings.set(Setting::marginFolded, false);
    });
    leave([](Settings& settings) {
        EXPECT_FALSE(settings.value(Setting::marginFolded).toBool());
        EXPECT_EQ(settings.value(Setting::textPercent).toInt(), 125);
    });
}

} // namespace
} // namespace headcap::app
