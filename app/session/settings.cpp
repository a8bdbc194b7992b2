#include "app/session/settings.h"

#include <array>

#include "core/values/contract.h"

namespace headcap::app {

std::span<const SettingEntry> settingTable() {
    static const std::array kTable{
        SettingEntry{Setting::tone, "look/tone", QStringLiteral("system")},
        SettingEntry{Setting::textPercent, "look/text_percent", 100},
        SettingEntry{Setting::person, "session/person", QString{}},
        SettingEntry{Setting::workshop, "session/workshop", QString{}},
        SettingEntry{Setting::windowPlace, "window/place", QByteArray{}},
        SettingEntry{Setting::marginFolded, "job/margin_folded", false},
        SettingEntry{Setting::stepDrafts, "bench/step_drafts", QVariantMap{}},
        SettingEntry{Setting::worklistAsTable, "worklist/as_table", false},
        SettingEntry{Setting::watchedFolder, "photographs/watched_folder", QString{}},
    };
    return kTable;
}

namespace {

const SettingEntry& entryOf(Setting id) {
    for (const SettingEntry& entry : settingTable()) {
        if (entry.id == id) {
            return entry;
        }
    }
    HEADCAP_CONTRACT(false);
    return settingTable().front();
}

} // namespace

Settings::Settings(const QString& file)
    : m_kept(file.isEmpty()
                 ? std::make_unique<QSettings>(QStringLiteral("headcap"), QStringLiteral("headcap"))
                 : std::make_unique<QSettings>(file, QSettings::IniFormat)) {}

QVariant Settings::value(Setting id) const {
    const SettingEntry& entry = entryOf(id);
    return m_kept->value(QLatin1String(entry.key), entry.fallback);
}

void Settings::set(Setting id, const QVariant& value) {
    // What is set is written and synced to the disk, the start's own settings too: a file read
    // back holds text, which is compared as what it stands for.
    QVariant known = this->value(id);
    if (known.metaType() != value.metaType()) {
        known.convert(value.metaType());
    }
    if (known != value) {
        m_kept->setValue(QLatin1String(entryOf(id).key), value);
    }
}

} // namespace headcap::app
