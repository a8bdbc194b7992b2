#include "app/shell/backup_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "app/session/words.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Backups", text);
}

QString number(std::int64_t count) {
    return QLocale().toString(static_cast<qlonglong>(count));
}

QString ago(core::Instant then, const core::Clock& clock) {
    const int days = core::daysBetween(clock.dayOf(then), clock.today());
    if (days < 0) {
        return tr("in the future: the clock was wrong");
    }
    return days == 0 ? tr("today") : counted(days, tr("yesterday"), tr("%1 days ago")).arg(days);
}

void addFindings(QStringList& lines, const std::vector<core::VerifyFinding>& findings) {
    for (const core::VerifyFinding& finding : findings) {
        lines << fromCore(finding.sentence);
    }
}

} // namespace

QString lastBackupWords(const std::optional<core::Instant>& last, const core::Clock& clock) {
    return last ? QStringLiteral("%1, %2 (%3)")
                      .arg(fullDay(clock.dayOf(*last)), clockTime(*last), ago(*last, clock))
                : tr("none yet");
}

QString backupDueWords(const core::Stores& stores, const core::Clock& clock) {
    using Why = core::BackupDue::Why;
    const auto due =
        core::backupDue(stores.upkeep.lastOutsideBackup(), stores.jobs.count() > 0, clock.now());
    if (!due) {
        return {};
    }
    switch (due->why) {
    case Why::never:
        return tr("No backup outside this workshop has been made yet.");
    case Why::tooOld:
        return tr("The last backup outside this workshop is %1 days old.").arg(due->days);
    case Why::inTheFuture:
        return tr("The last backup outside this workshop is dated in the future; make another.");
    }
    return {};
}

QString sentence(const core::BackupReport& report) {
    return tr("Backed up and checked: %1 files copied, %2 were there already.")
        .arg(number(report.filesCopied), number(report.filesAlreadyThere));
}

QStringList linesOf(const core::VerifyReport& report) {
    if (report.isClean()) {
        QStringList parts;
        for (const auto& [what, count] : report.checked) {
            QString words = fromCore(what);
            parts << QStringLiteral("%1 %2").arg(words.replace(u'_', u' '), number(count));
        }
        return {tr("The workshop is sound. Looked at: %1.").arg(parts.join(QStringLiteral(", ")))};
    }
    QStringList lines;
    addFindings(lines, report.findings);
    return lines;
}

QStringList linesOf(const core::MendReport& report) {
    QStringList lines;
    if (report.mended.empty() && report.left.empty()) {
        lines << tr("No photograph, attachment or report is missing or altered.");
        return lines;
    }
    lines << tr("%1 put back, %2 not found there.")
                 .arg(number(static_cast<std::int64_t>(report.mended.size())),
                      number(static_cast<std::int64_t>(report.left.size())));
    addFindings(lines, report.left);
    return lines;
}

} // namespace headcap::app
