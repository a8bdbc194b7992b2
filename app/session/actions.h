// The one catalogue of actions: what each is called, its key, its tip. Menus, tooltips and the
// sheet of keys are made from it; a test holds that no key is given twice.
#pragma once

#include <span>

#include <QKeySequence>
#include <QString>

class QAction;
class QWidget;

namespace headcap::app {

enum class ActionId {
    newJob,
    find,
    print,
    undo,
    redo,
    keys,
    back,
    quit,
    worklist,
    materials,
    mixing,
    cutting,
    stockList,
    techniques,
    dayOfWork,
    toSetting,
    seeToSetting,
    takeFromCamera,
    dayBefore,
    dayAfter,
    today,
    copyAsText,
    workshop,
    backups,
    backUp,
    backUpElsewhere,
    restoreBackup,
    otherWorkshop,
    allJobs,
    toBook,
    toCollation,
    toSurvey,
    toProposal,
    toBench,
    toMaterials,
    toPhotographs,
    toReport,
    nextPage,
    previousPage,
    toBenchLine,
    toMargin,
    foldMargin,
    changeState,
    addRecord,
    removeRecord,
    moveEarlier,
    moveLater,
    pastePhotographs,
    largerText,
    smallerText,
    turnTone,
    choosePerson,
    logStep,
};

// Where an action works. Keys of the same place, or of everywhere, may not be the same.
enum class Place { everywhere, worklist, job, list, day, backups };

struct ActionEntry {
    ActionId id;
    Place place;
    const char* words; // of the menu and the sheet of keys
    const char* keys;  // portable text, the first is shown; several with "; "
    const char* tip;
};

[[nodiscard]] std::span<const ActionEntry> actionTable();
[[nodiscard]] const ActionEntry& entryOf(ActionId id);
[[nodiscard]] QString wordsOf(ActionId id);
[[nodiscard]] QList<QKeySequence> keysOf(ActionId id);
// As shown: "Ctrl+Z".
[[nodiscard]] QString keyText(ActionId id);
// "Takes back the last change (Ctrl+Z)".
[[nodiscard]] QString tipOf(ActionId id);

// An action of the catalogue, added to the widget; its keys work in the widget and below it.
QAction* addAction(QWidget* widget, ActionId id);

} // namespace headcap::app
