#include "app/pages/collation_page.h"

#include <algorithm>

#include <QComboBox>
#include <QVBoxLayout>

#include "app/drawing/gathering_view.h"
#include "app/form/record_choices.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/collation_words.h"
#include "app/session/words.h"
#include "core/collation/collate.h"

namespace headcap::app {
namespace {

template <class Record>
std::vector<Record> ofVolume(const std::vector<Record>& records,
                             const std::optional<core::Id<core::Item>>& volume) {
    std::vector<Record> found;
    std::copy_if(records.begin(), records.end(), std::back_inserter(found),
                 [&](const Record& r) { return r.part == volume; });
    return found;
}

} // namespace

CollationPage::CollationPage(Session& session, QWidget* parent)
    : JobPage(core::Page::collation, Body::scrolled, session, parent) {
    buildVolumeChoice();
    buildMakeUp();
    buildCollation();
    buildFindings();
    buildFacsimiles();
    edits().alignLabels();
}

void CollationPage::load(const core::JobFile& file) {
    m_file = file;
    showVolumes();
    showVolume();
}

bool CollationPage::goTo(const core::RecordRef& ref) {
    const auto goToVolumeOf = [&](const auto& records) {
        for (const auto& record : records) {
            if (record.id.uuid() != ref.id) {
                continue;
            }
            for (int i = 0; i < m_volumes->count(); ++i) {
                if (m_volumes->itemData(i).toString() ==
                    (record.part ? fromCore(record.part->text()) : QString{})) {
                    m_volumes->setCurrentIndex(i);
                }
            }
        }
    };
    switch (ref.kind) {
    case core::RecordKind::collation:
        goToVolumeOf(m_file->collations);
        m_collation->focusFirst();
        reveal(m_collation);
        return true;
    case core::RecordKind::collationFinding:
        goToVolumeOf(m_file->collationFindings);
        reveal(m_findings);
        return m_findings->goTo(ref.id);
    case core::RecordKind::facsimile:
        goToVolumeOf(m_file->facsimiles);
        reveal(m_facsimiles);
        return m_facsimiles->goTo(ref.id);
    default:
        return false;
    }
}

std::optional<core::Id<core::Item>> CollationPage::volume() const {
    const auto id = core::Uuid::fromText(toCore(m_volumes->currentData().toString()));
    return id ? std::optional{core::Id<core::Item>{*id}} : std::nullopt;
}

void CollationPage::buildVolumeChoice() {
    m_volumes = new QComboBox;
    m_volumes->setAccessibleName(tr("Volume"));
    m_volumes->setToolTip(tr("Which volume of the set is collated"));
    body().addWidget(m_volumes, 0, Qt::AlignLeft);
    connect(m_volumes, &QComboBox::currentIndexChanged, this, [this] {
        edits().save();
        showVolume();
    });
}

void CollationPage::buildMakeUp() {
    m_formula = new Label(Face::book);
    m_formula->setWordWrap(true);
    m_formula->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_formula->setAccessibleName(tr("Formula as understood"));
    m_tally = new Label(Face::body, Ink::quiet);
    m_tally->setWordWrap(true);
    m_remarks = new Label(Face::small, Ink::open);
    m_remarks->setRunning();
    m_gatherings = new GatheringView;
    for (QWidget* part : {static_cast<QWidget*>(m_formula), static_cast<QWidget*>(m_tally),
                          static_cast<QWidget*>(m_remarks)}) {
        body().addWidget(part);
    }
    body().addSpacing(kSpace);
    body().addWidget(m_gatherings);
}

void CollationPage::buildCollation() {
    using R = core::Collation;
    m_collation = new RecordForm<R>(session(), tr("Collation"));
    m_collation->lines(tr("Formula"), &R::formula)
        .placeholder(tr("8°: π² A–K⁸ χ1 — typed A-K8 or A-K^8, as bibliographers write it"));
    m_collation->text(tr("Extent"), &R::extent).placeholder(tr("[4], 160, [2] p., 3 plates"));
    m_collation->usedText(tr("Against"), &R::authority)
        .placeholder(tr("the bibliography or copy it is collated against"));
    m_collation->lines(tr("This copy"), &R::statement)
        .placeholder(tr("lacks K2; K5 in facsimile; the rest present"));
    m_collation->text(tr("Established"), &R::method).placeholder(tr("leaf by leaf, by catchwords"));
    m_collation->text(tr("Not looked at"), &R::notExamined);
    m_collation->value(tr("Leaves called for"), &R::leavesCalledFor);
    m_collation->value(tr("Leaves present"), &R::leavesPresent);
    m_collation->value(tr("Plates called for"), &R::platesCalledFor);
    m_collation->value(tr("Plates present"), &R::platesPresent);
    m_collation->value(tr("Finished on"), &R::finishedOn);
    m_collation->pick(tr("By"), &R::who, peopleOf(session()));
    edits().watch(m_collation);
    addSection(tr("Make-up and statement"), m_collation);
}

void CollationPage::buildFindings() {
    using R = core::CollationFinding;
    m_findings = new RecordList<R>(
        session(), edits(),
        {tr("Leaf by leaf"), tr("Add a finding"),
         tr("What is not as it should be: lacking, loose, misbound, misnumbered, torn. Nothing "
            "here says that nothing was found.")},
        tr("Finding"));
    auto& form = m_findings->form();
    form.text(tr("Leaves"), &R::place).placeholder(tr("K2, or B2, C1–C4"));
    form.choice(tr("It is"), &R::kind);
    form.lines(tr("Note"), &R::note).placeholder(tr("what is seen, and how it is known"));
    form.check(tr("When"), tr("so on arrival"), &R::onArrival);
    form.choice(tr("What is done"), &R::decision);
    form.text(tr("Why"), &R::decisionNote);
    form.pick(tr("Found by"), &R::who, peopleOf(session()));
    m_findings->describe = describeFinding;
    m_findings->make = [this]() -> std::optional<R> {
        return R{.id = session().ids().next<R>(),
                 .job = m_file->job.id,
                 .part = volume(),
                 .who = session().person()};
    };
    addSection(m_findings);
}

void CollationPage::buildFacsimiles() {
    using R = core::Facsimile;
    m_facsimiles = new RecordList<R>(
        session(), edits(),
        {tr("Leaves supplied"), tr("Add a leaf"),
         tr("Each facsimile, or leaf from another copy: where it came from, how it was shown to "
            "agree, what it is printed on and held with, how it is marked, how it comes out.")},
        tr("Supplied leaf"));
    auto& form = m_facsimiles->form();
    form.text(tr("Leaves"), &R::place).placeholder(tr("K5"));
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
    form.pick(tr("Printed on"), &R::printedOn, lotsOf(session()));
    form.pick(tr("Held with"), &R::attachedWith, lotsOf(session()));
    form.text(tr("How held"), &R::attachment).placeholder(tr("tipped to a guard, 3 mm strip"));
    form.text(tr("Marked"), &R::marking).placeholder(tr("outside the image, indelibly"));
    form.text(tr("Comes out"), &R::removal);
    form.pick(tr("Put in by"), &R::step, stepsOf(m_file));
    m_facsimiles->describe = describeFacsimile;
    m_facsimiles->make = [this]() -> std::optional<R> {
        return R{.id = session().ids().next<R>(), .job = m_file->job.id, .part = volume()};
    };
    addSection(m_facsimiles);
}

void CollationPage::showVolumes() {
    const QVariant chosen = m_volumes->currentData();
    const QSignalBlocker quiet{m_volumes};
    m_volumes->clear();
    m_volumes->addItem(m_file->parts.empty() ? tr("The book") : tr("The whole set"), QString{});
    for (const core::Item& part : m_file->parts) {
        const std::string& label = part.volumeLabel.empty() ? part.title : part.volumeLabel;
        m_volumes->addItem(fromCore(label), fromCore(part.id.text()));
    }
    const int at = m_volumes->findData(chosen);
    m_volumes->setCurrentIndex(at >= 0 ? at : m_file->parts.empty() ? 0 : 1);
    m_volumes->setVisible(!m_file->parts.empty());
}

void CollationPage::showVolume() {
    const auto collations = ofVolume(m_file->collations, volume());
    const core::Collation collation =
        collations.empty() ? core::Collation{.id = session().ids().next<core::Collation>(),
                                             .job = m_file->job.id,
                                             .part = volume()}
                           : collations.front();
    if (!collations.empty()) {
        m_collation->show(collation, m_file->revisionOf(core::refOf(collation.id)));
    } else if (!m_collation->isDraft() || m_collation->record()->part != volume()) {
        m_collation->showDraft(collation);
    }
    m_findings->show(ofVolume(m_file->collationFindings, volume()), *m_file);
    m_facsimiles->show(ofVolume(m_file->facsimiles, volume()), *m_file);
    showReading(collation);
}

void CollationPage::showReading(const core::Collation& collation) {
    if (collation.formula.empty()) {
        m_formula->setText(tr("No formula yet"));
        m_tally->setText(
            tr("Type the formula as published, or as you find it, in the field below."));
        m_remarks->hide();
        m_gatherings->setPictures({});
        return;
    }
    const auto answer = core::collate({.formula = collation.formula, .extent = collation.extent});
    m_formula->setText(fromCore(answer.formula));
    m_tally->setText(tallyWords(answer, collation));
    const QString remarks = remarksOf(answer);
    m_remarks->setText(remarks);
    m_remarks->setVisible(!remarks.isEmpty());
    m_gatherings->setPictures(core::picturesOf(answer.makeUp,
                                               ofVolume(m_file->collationFindings, volume()),
                                               ofVolume(m_file->facsimiles, volume())));
}

} // namespace headcap::app
