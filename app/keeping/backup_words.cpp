#include "app/keeping/backup_words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>
#include <QStorageInfo>

#include "app/session/words.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Backups", text);
}

QString shown(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

QString agoWords(int days) {
    return days <= 0 ? tr("today") : counted(days, tr("%1 day ago"), tr("%1 days ago"));
}

QString number(qint64 n) {
    return QLocale{QLocale::English}.toString(n);
}

QString filesCopied(const core::BackupReport& report) {
    return counted(static_cast<int>(report.filesCopied), tr("%1 file copied"),
                   tr("%1 files copied")) +
           tr(", %1 there already").arg(number(report.filesAlreadyThere));
}

// The code where it has words of its own; what the store says of the rest.
QString failureWords(KeepingWork::Kind kind, const core::StoreError& error) {
    const QString detail = fromCore(error.what());
    using Code = core::StoreError::Code;
    const bool isBackup = kind == KeepingWork::Kind::backup;
    if (error.code() == Code::fileAltered) {
        return tr("Not whole: %1.").arg(detail);
    }
    if (error.code() == Code::diskFull) {
        return isBackup ? tr("Not backed up: the disk there is full. The backup before this one "
                             "is as it was.")
                        : tr("Not restored: the disk there is full.");
    }
    return (isBackup ? tr("Not backed up: %1.") : tr("Not restored: %1.")).arg(detail);
}

} // namespace

QString needWords(const core::BackupStanding& standing, core::Instant now) {
    switch (standing.need) {
    case core::BackupNeed::none:
        return {};
    case core::BackupNeed::first:
        return tr("There is no backup on another disk yet: back up now");
    case core::BackupNeed::again:
        return tr("The last backup on another disk is %1 days old: back up now")
            .arg(core::daysSince(*standing.outside, now));
    case core::BackupNeed::undated:
        return tr("The last backup on another disk bears a time to come: is the clock right?");
    }
    return {};
}

QString whenWords(const std::optional<core::Instant>& at, const core::Clock& clock,
                  const QString& never) {
    if (!at) {
        return never;
    }
    const core::Day day = clock.dayOf(*at);
    const int days = core::daysBetween(day, clock.today());
    const QString when = tr("%1, %2").arg(fullDay(day), clockTime(*at));
    return days < 0 ? when : dotted({when, agoWords(days)});
}

QString progressWords(KeepingWork::Kind kind, qint64 done, qint64 total) {
    if (total == 0) {
        return kind == KeepingWork::Kind::backup ? tr("The records are being copied and checked …")
                                                 : tr("The backup is being read …");
    }
    return tr("%1 of %2 files looked at, each copy checked …").arg(number(done), number(total));
}

QString outcomeWords(const KeepingWork::Outcome& outcome) {
    const bool isBackup = outcome.kind == KeepingWork::Kind::backup;
    if (outcome.failure) {
        return failureWords(outcome.kind, *outcome.failure);
    }
    if (outcome.wasStopped) {
        return isBackup ? tr("Stopped. The backup before this one is as it was; what was copied "
                             "need not be copied again.")
                        : tr("Stopped. Nothing was left in %1.").arg(shown(outcome.folder));
    }
    return isBackup ? tr("Backed up to %1 and checked: %2.")
                          .arg(shown(outcome.folder), filesCopied(outcome.report))
                    : tr("Restored to %1; every file was checked.").arg(shown(outcome.folder));
}

OutsidePlace lookAt(const std::filesystem::path& outside, const std::filesystem::path& workshop) {
    if (!QFileInfo::exists(shown(outside))) {
        return {};
    }
    return {.isThere = true,
            .isSameDisk =
                QStorageInfo{shown(outside)}.device() == QStorageInfo{shown(workshop)}.device()};
}

QString placeWords(const OutsidePlace& place) {
    if (!place.isThere) {
        return tr("can't be reached just now: is it attached?");
    }
    return place.isSameDisk ? tr("the same as the workshop's: if it is lost, both are")
                            : tr("another than the workshop's");
}

} // namespace headcap::app
