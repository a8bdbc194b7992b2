#include "app/session/sentences.h"

#include <QCoreApplication>

#include "app/session/words.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("sentences", text);
}

QString detailOf(const std::string& detail) {
    return detail.empty() ? QString{} : QStringLiteral(" (%1)").arg(fromCore(detail));
}

} // namespace

QString sentence(const core::Refusal& refusal) {
    const QString what = refusal.record ? words(refusal.record->kind) : tr("the record");
    const QString detail = fromCore(refusal.detail);
    using Code = core::Refusal::Code;
    switch (refusal.code) {
    case Code::changedSince:
        return tr("Somebody has changed %1 meanwhile; nothing was overwritten.").arg(what);
    case Code::missing:
        return tr("Nothing was changed: somebody has removed %1 meanwhile.").arg(what);
    case Code::keyTaken:
        return tr("Nothing was added: %1 is already there.").arg(what);
    case Code::numberTaken:
        // The storage's own words name no number.
        return detail.isEmpty() || detail.contains(QLatin1Char(' '))
                   ? tr("That number is already in use; choose another.")
                   : tr("The number %1 is already in use; choose another.").arg(detail);
    case Code::stillNamed:
        return detail.isEmpty() ? tr("It stays, because other records still name %1.").arg(what)
                                : tr("It stays: %1 is still named by %2.").arg(what, detail);
    case Code::neverDeleted:
        return tr("The log, the ledger and issued reports are never deleted; make a contrary "
                  "entry instead.");
    case Code::neverChanged:
        return tr("What is written in the log, the ledger or an issued report is never rewritten; "
                  "add a correction instead.");
    case Code::namesNothing:
        return tr("Nothing was saved: it names %1 that is no longer there.")
            .arg(detail.isEmpty() ? tr("something") : detail);
    case Code::breaksRule:
        return tr("Nothing was saved: a value of %1 is outside what may be kept%2.")
            .arg(what, detailOf(refusal.detail));
    case Code::cannotUndo:
        return detail.isEmpty() ? tr("That can't be undone.")
                                : tr("That can't be undone: %1.").arg(detail);
    case Code::nothingToUndo:
        return tr("There is nothing to undo.");
    }
    return {};
}

QString sentence(const core::StoreError& error) {
    using Code = core::StoreError::Code;
    switch (error.code()) {
    case Code::missing:
        return tr("There is no workshop there.");
    case Code::notAWorkshop:
        return tr("That is not a workshop; nothing in it was changed.");
    case Code::truncated:
        return tr("The workshop's file is cut short or damaged; nothing was changed. “headcap "
                  "salvage” makes a new workshop of its latest backup and its journal.");
    case Code::newerProgram:
        return tr("This workshop was made by a newer Headcap; nothing was changed. Update the "
                  "program to open it.");
    case Code::readOnly:
        return tr("The workshop's folder is read-only, so nothing can be saved in it.");
    case Code::busy:
        return tr("Not saved yet: another window has been writing for a long time. Try again in "
                  "a moment.");
    case Code::diskFull:
        return tr("Not saved: the disk is full. Make room, then try again; nothing saved before "
                  "is lost.");
    case Code::ioFailed:
        return tr("Not saved: the disk did not take it. Nothing saved before is lost.");
    case Code::outcomeUnknown:
        return tr("The disk failed while saving, so it is not known whether this was kept. The "
                  "workshop will be opened again to look.");
    case Code::networkFolder:
        return tr("The workshop lies on a network folder, where it can't be kept safely; move it "
                  "to a disk of this machine.");
    case Code::migrationFailed:
        return tr("The workshop could not be brought up to date; it is as it was, and a backup "
                  "was made.");
    case Code::fileMissing:
        return tr("A file of the workshop is not where it should be.");
    case Code::fileAltered:
        return tr("A file of the workshop is no longer what was kept.");
    case Code::internal:
        return tr("Something went wrong inside Headcap, and nothing was saved: %1")
            .arg(fromCore(error.what()));
    }
    return {};
}

QString sentence(core::StepProblem problem) {
    using Problem = core::StepProblem;
    switch (problem) {
    case Problem::nothingSaid:
        return tr("Not logged: say what was done, and where.");
    case Problem::negativeTime:
        return tr("Not logged: no work takes less than no time.");
    case Problem::lotUnknown:
        return tr("Not logged: there is no such lot on the shelf.");
    case Problem::unitDiffers:
        return tr("Not logged: that lot is counted in another unit.");
    case Problem::amountNotAbove:
        return tr("Not logged: the amount must be above nothing.");
    case Problem::reasonMissing:
        return tr("Not changed: say why.");
    case Problem::alreadyStruck:
        return tr("That step is struck already.");
    case Problem::notAStep:
        return tr("That step is not in this job's log.");
    }
    return {};
}

QString example(Reading reading) {
    switch (reading) {
    case Reading::length:
        return tr("148 mm, 14.8 cm or 5 3/4 in");
    case Reading::amount:
        return tr("0.4 g, 12 ml, 2 sheets or 3 pieces");
    case Reading::money:
        return tr("1250 or 1,250.50 EUR");
    case Reading::strength:
        return tr("2 % w/v");
    case Reading::day:
        return tr("14 March, tomorrow or in 2 weeks");
    case Reading::bookDate:
        return tr("1612, ca. 1590, 1702-1741 or 16th century");
    case Reading::minutes:
        return tr("45 or 1 h 20");
    case Reading::number:
        return tr("a whole number");
    }
    return {};
}

QString sentence(const core::TextError& error, Reading reading) {
    const QString like = example(reading);
    switch (error.problem) {
    case core::TextProblem::empty:
        return tr("Something is needed here: %1.").arg(like);
    case core::TextProblem::notANumber:
        return tr("A number is needed: %1.").arg(like);
    case core::TextProblem::unitMissing:
        return reading == Reading::strength
                   ? tr("Say of what: w/v, w/w or v/v, as in %1.").arg(like)
                   : tr("Which unit? Write it like %1.").arg(like);
    case core::TextProblem::unitUnknown:
        if (reading == Reading::strength) {
            return tr("Say of what, as in %1: a bare ratio means nothing, 1 : 4 is 25 % w/v or "
                      "20 % w/w.")
                .arg(like);
        }
        return tr("That unit is not known here: %1.").arg(like);
    case core::TextProblem::tooLarge:
        return tr("That is too large to be kept.");
    case core::TextProblem::tooFine:
        return tr("That is finer than can be kept exactly.");
    case core::TextProblem::outOfRange:
        return reading == Reading::day ? tr("There is no such day.")
                                       : tr("That is outside what is possible here.");
    case core::TextProblem::trailing:
        return tr("Something is left over; write it like %1.").arg(like);
    case core::TextProblem::malformed:
        return tr("Not understood; write it like %1.").arg(like);
    }
    return {};
}

} // namespace headcap::app
