#include "app/pages/collation/volume_lists.h"

#include <array>

#include <QCoreApplication>

#include "app/form/record_choices.h"
#include "app/pages/place_in_book.h"
#include "app/session/words.h"
#include "core/collation/called_plates.h"
#include "core/collation/leaf_sheet.h"
#include "core/collation/place_words.h"

namespace headcap::core {

QString words(PlatePresence presence) {
    static constexpr std::array kWords{
        QT_TRANSLATE_NOOP("words", "not looked for"), QT_TRANSLATE_NOOP("words", "present"),
        QT_TRANSLATE_NOOP("words", "lacking"), QT_TRANSLATE_NOOP("words", "present, misplaced"),
        QT_TRANSLATE_NOOP("words", "supplied")};
    return QCoreApplication::translate("words", kWords[static_cast<std::size_t>(presence)]);
}

} // namespace headcap::core

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("CollationPage", text);
}

Ink inkOf(core::PlatePresence presence) {
    return presence == core::PlatePresence::lacking        ? Ink::must
           : presence == core::PlatePresence::notLookedFor ? Ink::open
                                                           : Ink::quiet;
}

RowWords describePlate(const core::CalledPlate& plate, const core::LaidBook& book) {
    const QString remark = fromCore(remarkOn(checkPlates(book, {plate}), {plate}, 0));
    return {.mark = QString::number(plate.position),
            .title = fromCore(plate.name),
            .detail = dotted({fromCore(plate.belongsAt), remark, fromCore(plate.note)}),
            .right = words(plate.presence),
            .rightInk = inkOf(plate.presence)};
}

// Where a plate belongs: the leaf it faces.
QString plateUnderstood(const core::LaidBook& book, const QString& text) {
    if (text.trimmed().isEmpty()) {
        return {};
    }
    const auto place = core::parsePlatePlace(toCore(text.trimmed()));
    if (!place) {
        return tr("not understood: “to face p. 34”, “after C4”, “before B1”, “frontispiece”, "
                  "“at end”");
    }
    if (!place->where) {
        return fromCore(toText(*place));
    }
    return placeWords(readPlace(book, toText(*place->where)));
}

} // namespace

std::function<QString(const QString&)> placeUnderstood(const BookOfVolume& book) {
    return [book](const QString& text) {
        return placeWords(core::readPlace(book(), toCore(text.trimmed())));
    };
}

RowWords describeTask(const core::LeafTask& task, const core::LaidBook& book,
                      const std::vector<Choice>& techniques) {
    const core::TaskCount count = sheetOf(book, {task}).counts.front();
    QString done = tr("not in this book");
    if (count.isPlaced) {
        done = count.done == count.leaves ? tr("done")
                                          : tr("%1 of %2 done").arg(count.done).arg(count.leaves);
    }
    return {.mark = QString::number(task.position),
            .title = app::wordsOf(techniques, task.technique),
            .detail = dotted({fromCore(task.leaves), fromCore(task.note)}),
            .right = done,
            .rightInk = !count.isPlaced             ? Ink::must
                        : count.done < count.leaves ? Ink::open
                                                    : Ink::settled};
}

PlateList* makePlateList(Session& session, PageEdits& edits, const BookOfVolume& book) {
    using R = core::CalledPlate;
    auto* list = new PlateList(
        session, edits,
        {tr("Plates called for"), tr("Add a plate"),
         tr("Plates, maps and folding tables the book calls for, each with where it belongs: a "
            "list in the book, a binder's direction, a bibliography.")},
        tr("Plate"));
    auto& form = list->form();
    form.text(tr("Plate"), &R::name).placeholder(tr("3, frontispiece, map of the coast"));
    form.text(tr("Belongs"), &R::belongsAt)
        .placeholder(tr("to face p. 34"))
        .understood([book](const QString& text) { return plateUnderstood(book(), text); });
    form.usedText(tr("Who says so"), &R::source).placeholder(tr("the list on A4v"));
    form.choice(tr("It is"), &R::presence);
    form.text(tr("Found"), &R::foundAt)
        .placeholder(tr("where it is bound, if elsewhere"))
        .understood(placeUnderstood(book));
    form.lines(tr("Note"), &R::note);
    list->describe = [book](const R& plate) { return describePlate(plate, book()); };
    return list;
}

TaskList* makeTaskList(Session& session, PageEdits& edits, const BookOfVolume& book) {
    using R = core::LeafTask;
    auto* list = new TaskList(
        session, edits,
        {tr("Work on the leaves"), tr("Add work"),
         tr("Which leaves are to be mended, washed, guarded; and, as it is done, which of them "
            "are done.")},
        tr("Work"));
    auto& form = list->form();
    form.term(tr("Work"), &R::technique, techniqueTerms(session));
    form.text(tr("Leaves"), &R::leaves)
        .placeholder(tr("B2, C1–C4, gathering K"))
        .understood(placeUnderstood(book));
    form.text(tr("Done"), &R::done)
        .placeholder(tr("those of them that are done"))
        .understood(placeUnderstood(book));
    form.lines(tr("Note"), &R::note);
    list->describe = [book, &session](const R& task) {
        return describeTask(task, book(), techniqueTerms(session)());
    };
    return list;
}

} // namespace headcap::app
