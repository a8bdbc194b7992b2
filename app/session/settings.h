// What a person may set, one table: the key it is kept under and its value until it is set.
#pragma once

#include <memory>
#include <span>

#include <QSettings>
#include <QString>
#include <QVariant>

namespace headcap::app {

enum class Setting {
    tone,         // "system", "light", "dark"
    textPercent,  // of the system's size
    person,       // key of who is working here
    workshop,     // folder opened last
    windowPlace,  // geometry
    marginFolded, // the margin of a job
    stepDrafts,   // by job: a step that is written and not yet logged
    worklistAsTable,
    watchedFolder, // where the camera puts its pictures; empty: none is watched
};

struct SettingEntry {
    Setting id;
    const char* key;
    QVariant fallback;
};

[[nodiscard]] std::span<const SettingEntry> settingTable();

class Settings {
public:
    // Kept in this file; empty: where the system keeps such things.
    explicit Settings(const QString& file = {});
    [[nodiscard]] QVariant value(Setting id) const;
    void set(Setting id, const QVariant& value);

private:
    std::unique_ptr<QSettings> m_kept;
};

} // namespace headcap::app
