#include "app/session/actions.h"

#include <array>

#include <QAction>
#include <QCoreApplication>
#include <QWidget>

#include "core/values/contract.h"

namespace headcap::app {
namespace {

#define HEADCAP_WORDS(text) QT_TRANSLATE_NOOP("actions", text)

constexpr std::array kTable{
    ActionEntry{ActionId::newJob, Place::everywhere, HEADCAP_WORDS("New job"), "Ctrl+N",
                HEADCAP_WORDS("Takes in a book")},
    ActionEntry{ActionId::find, Place::everywhere, HEADCAP_WORDS("Find"), "Ctrl+F",
                HEADCAP_WORDS("Finds a book, a step, a lot, a leaf")},
    ActionEntry{ActionId::print, Place::everywhere, HEADCAP_WORDS("Print"), "Ctrl+P",
                HEADCAP_WORDS("Prints what is shown")},
    ActionEntry{ActionId::undo, Place::everywhere, HEADCAP_WORDS("Undo"), "Ctrl+Z",
                HEADCAP_WORDS("Takes back the last change")},
    ActionEntry{ActionId::redo, Place::everywhere, HEADCAP_WORDS("Redo"), "Ctrl+Shift+Z",
                HEADCAP_WORDS("Does again what was undone")},
    ActionEntry{ActionId::keys, Place::everywhere, HEADCAP_WORDS("Keys"), "F1",
                HEADCAP_WORDS("Shows every key")},
    ActionEntry{ActionId::back, Place::everywhere, HEADCAP_WORDS("Step back"), "Esc",
                HEADCAP_WORDS("Steps back; nothing is lost")},
    ActionEntry{ActionId::quit, Place::everywhere, HEADCAP_WORDS("Quit"), "Ctrl+Q",
                HEADCAP_WORDS("Saves and closes")},
    ActionEntry{ActionId::worklist, Place::everywhere, HEADCAP_WORDS("Worklist"), "Ctrl+1",
                HEADCAP_WORDS("What needs you")},
    ActionEntry{ActionId::materials, Place::everywhere, HEADCAP_WORDS("Materials and lots"),
                "Ctrl+2", HEADCAP_WORDS("What is on the shelf")},
    ActionEntry{ActionId::workshop, Place::everywhere, HEADCAP_WORDS("Workshop and people"),
                "Ctrl+3", HEADCAP_WORDS("The workshop's letterhead, and who works here")},
    ActionEntry{ActionId::dayOfWork, Place::everywhere, HEADCAP_WORDS("The day’s work"), "Ctrl+4",
                HEADCAP_WORDS("What was done today in every job, and hours by person")},
    ActionEntry{ActionId::mixing, Place::everywhere, HEADCAP_WORDS("Mixing"), "Ctrl+5",
                HEADCAP_WORDS("Recipes, strengths, and a mix booked as a lot")},
    ActionEntry{ActionId::cutting, Place::everywhere, HEADCAP_WORDS("Cutting"), "Ctrl+6",
                HEADCAP_WORDS("Plans the cutting of sheets and books it")},
    ActionEntry{ActionId::stockList, Place::everywhere, HEADCAP_WORDS("Stock and labels"), "Ctrl+7",
                HEADCAP_WORDS("Stock on a date, what runs out, use by year, labels to print")},
    ActionEntry{ActionId::techniques, Place::everywhere, HEADCAP_WORDS("Techniques"), "Ctrl+8",
                HEADCAP_WORDS("What is done to a book, how long it takes, and your own ways")},
    ActionEntry{ActionId::backups, Place::everywhere, HEADCAP_WORDS("Backups"), "Ctrl+9",
                HEADCAP_WORDS("What would outlive this disk, and the way back from it")},
    ActionEntry{ActionId::toSetting, Place::everywhere, HEADCAP_WORDS("Go to what has set"),
                "Ctrl+K", HEADCAP_WORDS("Goes to the bench of the job whose setting time is over")},
    ActionEntry{ActionId::seeToSetting, Place::everywhere, HEADCAP_WORDS("What has set is seen to"),
                "Ctrl+Shift+K", HEADCAP_WORDS("Notes that what has set is seen to")},
    ActionEntry{ActionId::takeFromCamera, Place::everywhere,
                HEADCAP_WORDS("Take in from the camera"), "Ctrl+Shift+P",
                HEADCAP_WORDS("Takes the new photographs of the watched folder into this job")},
    ActionEntry{ActionId::backUp, Place::backups, HEADCAP_WORDS("Back up now"), "Ctrl+B",
                HEADCAP_WORDS("Copies what is lacking to the folder of the last backup")},
    ActionEntry{ActionId::backUpElsewhere, Place::backups, HEADCAP_WORDS("Back up to"),
                "Ctrl+Shift+B", HEADCAP_WORDS("Backs up to a folder you choose")},
    ActionEntry{ActionId::restoreBackup, Place::backups, HEADCAP_WORDS("Restore a backup"),
                "Ctrl+R", HEADCAP_WORDS("Makes a new workshop from a backup; this one stays")},
    ActionEntry{ActionId::otherWorkshop, Place::everywhere, HEADCAP_WORDS("Another workshop"),
                "Ctrl+Shift+O", HEADCAP_WORDS("Saves, closes this workshop, and opens another")},
    ActionEntry{ActionId::allJobs, Place::worklist, HEADCAP_WORDS("All jobs"), "Ctrl+T",
                HEADCAP_WORDS("A plain table of all jobs, and back to the slips")},
    ActionEntry{ActionId::toBook, Place::job, HEADCAP_WORDS("Book"), "Alt+1",
                HEADCAP_WORDS("The book, its owner and how it came")},
    ActionEntry{ActionId::toCollation, Place::job, HEADCAP_WORDS("Collation"), "Alt+2",
                HEADCAP_WORDS("Every leaf against the ideal copy")},
    ActionEntry{ActionId::toSurvey, Place::job, HEADCAP_WORDS("Survey"), "Alt+3",
                HEADCAP_WORDS("Its condition as it came")},
    ActionEntry{ActionId::toProposal, Place::job, HEADCAP_WORDS("Proposal"), "Alt+4",
                HEADCAP_WORDS("What is proposed, and what the owner decided")},
    ActionEntry{ActionId::toBench, Place::job, HEADCAP_WORDS("Bench"), "Alt+5",
                HEADCAP_WORDS("What was done, by whom, with what")},
    ActionEntry{ActionId::toMaterials, Place::job, HEADCAP_WORDS("Materials of the job"), "Alt+6",
                HEADCAP_WORDS("What went into the book, lot by lot")},
    ActionEntry{ActionId::toPhotographs, Place::job, HEADCAP_WORDS("Photographs"), "Alt+7",
                HEADCAP_WORDS("Before, during and after")},
    ActionEntry{ActionId::toReport, Place::job, HEADCAP_WORDS("Report"), "Alt+8",
                HEADCAP_WORDS("The treatment report and what it discloses")},
    ActionEntry{ActionId::nextPage, Place::job, HEADCAP_WORDS("Next page"), "Ctrl+PgDown",
                HEADCAP_WORDS("The next page of the job")},
    ActionEntry{ActionId::previousPage, Place::job, HEADCAP_WORDS("Page before"), "Ctrl+PgUp",
                HEADCAP_WORDS("The page before")},
    ActionEntry{ActionId::toBenchLine, Place::job, HEADCAP_WORDS("To the bench line"), "Ctrl+L",
                HEADCAP_WORDS("To the line at the foot: type or scan what was done")},
    ActionEntry{ActionId::toMargin, Place::job, HEADCAP_WORDS("To the margin"), "Ctrl+M",
                HEADCAP_WORDS("To the margin: what is still open")},
    ActionEntry{ActionId::foldMargin, Place::job, HEADCAP_WORDS("Fold the margin"), "Ctrl+Shift+M",
                HEADCAP_WORDS("Folds the margin away, and back")},
    ActionEntry{ActionId::changeState, Place::job, HEADCAP_WORDS("State of the job"), "Ctrl+J",
                HEADCAP_WORDS("Changes the state of the job, with a reason")},
    ActionEntry{ActionId::logStep, Place::job, HEADCAP_WORDS("Log the step"), "Ctrl+Return",
                HEADCAP_WORDS("Logs the step that is being written")},
    ActionEntry{ActionId::dayBefore, Place::day, HEADCAP_WORDS("The day before"), "Alt+Left",
                HEADCAP_WORDS("The day before")},
    ActionEntry{ActionId::dayAfter, Place::day, HEADCAP_WORDS("The day after"), "Alt+Right",
                HEADCAP_WORDS("The day after")},
    ActionEntry{ActionId::today, Place::day, HEADCAP_WORDS("Today"), "Alt+Home",
                HEADCAP_WORDS("Back to today")},
    ActionEntry{ActionId::copyAsText, Place::day, HEADCAP_WORDS("Copy as text"), "Ctrl+Shift+C",
                HEADCAP_WORDS("Copies what is shown, to paste into a letter or a time sheet")},
    ActionEntry{ActionId::addRecord, Place::list, HEADCAP_WORDS("Add to a list"), "Ins",
                HEADCAP_WORDS("Adds one to the list")},
    ActionEntry{ActionId::removeRecord, Place::list, HEADCAP_WORDS("Remove from a list"), "Del",
                HEADCAP_WORDS("Removes it; undo brings it back")},
    ActionEntry{ActionId::moveEarlier, Place::list, HEADCAP_WORDS("Put earlier"), "Ctrl+Left",
                HEADCAP_WORDS("Puts the photograph before the one before it")},
    ActionEntry{ActionId::moveLater, Place::list, HEADCAP_WORDS("Put later"), "Ctrl+Right",
                HEADCAP_WORDS("Puts the photograph behind the one behind it")},
    ActionEntry{ActionId::pastePhotographs, Place::list, HEADCAP_WORDS("Paste photographs"),
                "Ctrl+V", HEADCAP_WORDS("Takes in what was copied: files or a picture")},
    ActionEntry{ActionId::largerText, Place::everywhere, HEADCAP_WORDS("Larger text"),
                "Ctrl++; Ctrl+=", HEADCAP_WORDS("Makes all text larger")},
    ActionEntry{ActionId::smallerText, Place::everywhere, HEADCAP_WORDS("Smaller text"), "Ctrl+-",
                HEADCAP_WORDS("Makes all text smaller")},
    ActionEntry{ActionId::turnTone, Place::everywhere, HEADCAP_WORDS("Light or dark"),
                "Ctrl+Shift+L", HEADCAP_WORDS("Turns light to dark, and dark to light")},
    ActionEntry{ActionId::choosePerson, Place::everywhere, HEADCAP_WORDS("Who is working"),
                "Ctrl+U", HEADCAP_WORDS("Chooses who is at the bench")},
};

#undef HEADCAP_WORDS

QString translated(const char* text) {
    return QCoreApplication::translate("actions", text);
}

} // namespace

std::span<const ActionEntry> actionTable() {
    return kTable;
}

const ActionEntry& entryOf(ActionId id) {
    for (const ActionEntry& entry : kTable) {
        if (entry.id == id) {
            return entry;
        }
    }
    HEADCAP_CONTRACT(false);
    return kTable.front();
}

QString wordsOf(ActionId id) {
    return translated(entryOf(id).words);
}

QList<QKeySequence> keysOf(ActionId id) {
    return QKeySequence::listFromString(QLatin1String(entryOf(id).keys));
}

QString keyText(ActionId id) {
    QString text = keysOf(id).front().toString(QKeySequence::NativeText);
    return text.replace(QStringLiteral("Return"), QStringLiteral("Enter")); // by one name
}

QString tipOf(ActionId id) {
    return QStringLiteral("%1 (%2)").arg(translated(entryOf(id).tip), keyText(id));
}

QAction* addAction(QWidget* widget, ActionId id) {
    auto* action = new QAction(wordsOf(id), widget);
    action->setShortcuts(keysOf(id));
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    action->setToolTip(tipOf(id));
    widget->addAction(action);
    return action;
}

} // namespace headcap::app
