#include "app/pages/collation_page.h"

#include <algorithm>

#include <QComboBox>
#include <QVBoxLayout>

#include "app/drawing/gathering_view.h"
#include "app/look/label.h"
#include "app/pages/collation/copy_words.h"
#include "app/pages/collation/leaf_sheet_section.h"
#include "app/pages/collation/leaf_sheet_view.h"
#include "app/pages/collation/walk_section.h"
#include "app/pages/collation_words.h"
#include "app/session/words.h"
#include "core/collation/collate.h"
#include "core/collation/copy_records.h"
#include "core/collation/format_name.h"

namespace headcap::app {

CollationPage::CollationPage(Session& session, QWidget* parent)
    : JobPage(core::Page::collation, Body::scrolled, session, parent) {
    buildVolumeChoice();
    buildMakeUp();
    buildWalk();
    buildCollation();
    buildFindings();
    buildCopyWords();
    buildFacsimiles();
    buildVolumeLists();
    buildLeafSheet();
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
    case core::RecordKind::calledPlate:
        goToVolumeOf(m_file->plates);
        reveal(m_plates);
        return m_plates->goTo(ref.id);
    case core::RecordKind::leafTask:
        goToVolumeOf(m_file->leafTasks);
        reveal(m_tasks);
        return m_tasks->goTo(ref.id);
    default:
        return false;
    }
}

std::optional<core::Id<core::Item>> CollationPage::volume() const {
    const auto id = core::Uuid::fromText(toCore(m_volumes->currentData().toString()));
    return id ? std::optional{core::Id<core::Item>{*id}} : std::nullopt;
}

void CollationPage::enter() {
    // A book begins with its formula; one that gives no leaf is to be written rightly.
    const auto& collation = m_collation->record();
    if (collation && (collation->formula.empty() || m_book.leaves.empty())) {
        m_collation->focusFirst();
    } else {
        JobPage::enter();
    }
}

BookOfVolume CollationPage::bookShown() const {
    return [this]() -> const core::LaidBook& { return m_book; };
}

bool CollationPage::print() {
    return edits().save() && m_sheet->print();
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
    m_book = core::walkedBook(collation.formula, collation.extent).book;
    m_findings->show(ofVolume(m_file->collationFindings, volume()), *m_file);
    m_facsimiles->show(ofVolume(m_file->facsimiles, volume()), *m_file);
    m_plates->show(ofVolume(m_file->plates, volume()), *m_file);
    m_tasks->show(ofVolume(m_file->leafTasks, volume()), *m_file);
    m_sheet->show(*m_file, m_book, ofVolume(m_file->leafTasks, volume()));
    showReading(collation);
    m_walk->show(*m_file, volume(), collation);
    m_copyWords->show(*m_file, core::copyOf(*m_file, volume(), collation), collation);
    showGatherings();
}

// The gathering is drawn in the walk while there is one.
void CollationPage::showGatherings() {
    m_gatherings->setVisible(!m_walk->isWalking() && !m_gatherings->isEmpty());
}

void CollationPage::showReading(const core::Collation& collation) {
    if (collation.formula.empty()) {
        m_formula->setText(tr("No formula yet"));
        m_tally->setText(
            tr("Type the formula as published, or as you find it, in the field below."));
        m_remarks->hide();
        m_gatherings->setPictures({}, false);
        return;
    }
    const std::string format = core::formatName(m_file->item.format).value_or(std::string{});
    const auto answer =
        core::collate({.formula = collation.formula, .extent = collation.extent, .format = format});
    m_formula->setText(fromCore(answer.formula));
    m_tally->setText(tallyWords(answer, collation));
    const QString remarks = remarksOf(answer);
    m_remarks->setText(remarks);
    m_remarks->setVisible(!remarks.isEmpty());
    m_gatherings->setPictures(core::picturesOf(answer.makeUp,
                                               ofVolume(m_file->collationFindings, volume()),
                                               ofVolume(m_file->facsimiles, volume())),
                              collation.finishedOn.has_value());
}

} // namespace headcap::app
