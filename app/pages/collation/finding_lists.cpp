#include "app/pages/collation/finding_lists.h"

#include <QCoreApplication>

#include "app/form/record_choices.h"
#include "app/pages/collation_words.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("CollationPage", text);
}

} // namespace

FindingList* makeFindingList(Session& session, PageEdits& edits, const BookOfVolume& book) {
    using R = core::CollationFinding;
    auto* list = new FindingList(
        session, edits,
        {tr("Findings"), tr("Add a finding"),
         tr("What is not as it should be: lacking, loose, misbound, misnumbered, torn. Nothing "
            "here says that nothing was found.")},
        tr("Finding"));
    auto& form = list->form();
    form.text(tr("Leaves"), &R::place)
        .placeholder(tr("K2, or B2, C1–C4"))
        .understood(placeUnderstood(book));
    form.choice(tr("It is"), &R::kind);
    form.text(tr("As it is"), &R::found).placeholder(tr("as printed, or where it is bound"));
    form.text(tr("Should be"), &R::expected);
    form.lines(tr("Note"), &R::note).placeholder(tr("what is seen, and how it is known"));
    form.check(tr("When"), tr("so on arrival"), &R::onArrival);
    form.choice(tr("What is done"), &R::decision);
    form.text(tr("Why"), &R::decisionNote);
    form.pick(tr("Found by"), &R::who, peopleOf(session));
    list->describe = describeFinding;
    return list;
}

FacsimileList* makeFacsimileList(Session& session, PageEdits& edits, const BookOfVolume& book,
                                 const std::optional<core::JobFile>& file) {
    using R = core::Facsimile;
    auto* list = new FacsimileList(
        session, edits,
        {tr("Leaves supplied"), tr("Add a leaf"),
         tr("Each facsimile, or leaf from another copy: where it came from, how it was shown to "
            "agree, what it is printed on and held with, how it is marked, how it comes out.")},
        tr("Supplied leaf"));
    auto& form = list->form();
    form.text(tr("Leaves"), &R::place).placeholder(tr("K5")).understood(placeUnderstood(book));
    form.choice(tr("It is"), &R::kind);
    form.usedText(tr("From"), &R::institution).placeholder(tr("who keeps the source copy"));
    form.text(tr("Shelfmark"), &R::shelfmark);
    form.text(tr("Edition"), &R::edition).placeholder(tr("of the source copy"));
    form.value(tr("Its date"), &R::sourceDate);
    form.text(tr("Address"), &R::address).placeholder(tr("where its images are"));
    form.value(tr("Consulted"), &R::consultedOn);
    form.text(tr("Permission"), &R::permission);
    form.text(tr("Provenance"), &R::provenance).placeholder(tr("of an original leaf"));
    form.lines(tr("Shown to agree"), &R::verification)
        .placeholder(tr("catchwords, line endings, where the signature stands under the text"));
    form.choice(tr("Verdict"), &R::verdict);
    form.text(tr("Printing"), &R::printing).placeholder(tr("method, printer, ink"));
    form.pick(tr("Printed on"), &R::printedOn, lotsOf(session));
    form.pick(tr("Held with"), &R::attachedWith, lotsOf(session));
    form.text(tr("How held"), &R::attachment).placeholder(tr("tipped to a guard, 3 mm strip"));
    form.text(tr("Marked"), &R::marking).placeholder(tr("outside the image, indelibly"));
    form.text(tr("Comes out"), &R::removal);
    form.pick(tr("Put in by"), &R::step, stepsOf(session, file));
    list->describe = describeFacsimile;
    return list;
}

} // namespace headcap::app
