#include "app/pages/collation/leaf_sheet_section.h"

#include <QHBoxLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/collation/leaf_sheet_view.h"
#include "app/print/print_report.h"
#include "app/report/paper_desk.h"
#include "app/session/words.h"
#include "core/report/leaf_sheet_paper.h"
#include "core/treatment/techniques.h"

namespace headcap::app {

LeafSheetSection::LeafSheetSection(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_desk(new PaperDesk(session, this)),
      m_said(new Label(Face::body, Ink::quiet)), m_view(new LeafSheetView),
      m_print(new QPushButton(tr("Print the sheet"))),
      m_save(new QPushButton(tr("Save as PDF …"))) {
    m_said->setRunning();
    m_view->setToolTip(tr("Space: done, and on to the next; E: to the end of the gathering (%1 "
                          "comes here)")
                           .arg(QLatin1String(kSheetKey)));
    m_print->setToolTip(tr("The sheet on paper, to be ticked in the wet room (Ctrl+P)"));
    m_save->setToolTip(tr("Writes the sheet to a PDF"));
    auto* ways = new QHBoxLayout;
    ways->setSpacing(kSpace);
    ways->addWidget(m_print);
    ways->addWidget(m_save);
    ways->addStretch(1);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kSpace);
    down->addWidget(m_said);
    down->addWidget(m_view);
    down->addLayout(ways);
    connect(m_view, &LeafSheetView::ticked, this, &LeafSheetSection::tick);
    connect(m_print, &QPushButton::clicked, this, [this] { print(); });
    connect(m_save, &QPushButton::clicked, this, &LeafSheetSection::save);
}

void LeafSheetSection::show(const core::JobFile& file, const core::LaidBook& book,
                            const std::vector<core::LeafTask>& tasks) {
    m_file = file;
    m_view->show(book, tasks, file.techniques);
    QStringList lines;
    for (const core::LeafTask& task : tasks) {
        const std::string progress = progressText(book, task);
        if (!progress.empty()) {
            lines << tr("%1: %2.").arg(fromCore(m_file->techniques.nameOf(task.technique)),
                                       fromCore(progress));
        }
    }
    const bool isEmpty = m_view->isEmpty();
    m_said->setText(isEmpty ? tr("Work above that names leaves of this book makes a sheet here: a "
                                 "row a leaf, to be ticked as it is done, or printed and ticked "
                                 "in the wet room.")
                            : lines.join(QLatin1Char('\n')));
    for (QWidget* part : {static_cast<QWidget*>(m_view), static_cast<QWidget*>(m_print),
                          static_cast<QWidget*>(m_save)}) {
        part->setVisible(!isEmpty);
    }
}

bool LeafSheetSection::enter() {
    if (m_view->isEmpty()) {
        return false;
    }
    m_view->enter();
    return true;
}

void LeafSheetSection::tick(const core::LeafTask& task, const std::vector<std::size_t>& leaves,
                            bool isDone) {
    const core::LaidBook& book = m_view->sheet().book();
    core::LeafTask changed = task;
    changed.done = doneWith(book, task, leaves, isDone);
    const QString sentence = isDone ? tr("%1: %2 done") : tr("%1: %2 not done");
    core::Change change{
        .sentence = toCore(sentence.arg(fromCore(toText(toLeafSet(book, leaves))),
                                        fromCore(m_file->techniques.nameOf(task.technique))))};
    change.update(changed, m_file->revisionOf(core::refOf(task.id)));
    m_session.apply(std::move(change));
}

bool LeafSheetSection::print() {
    if (!m_file || m_view->isEmpty()) {
        return false;
    }
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(tr("%1 leaves").arg(fromCore(m_file->job.number)));
    QPrintDialog dialog{&printer, this};
    if (dialog.exec() == QDialog::Accepted) {
        m_session.guarded([&] {
            (void)print::printReport(core::leafSheetPaper(*m_file, m_session.clock()), {}, printer);
        });
    }
    return true;
}

void LeafSheetSection::save() {
    const auto path = m_session.prompts().fileToSave(
        tr("Save the sheet of leaves"), tr("%1 leaves.pdf").arg(fromCore(m_file->job.number)),
        tr("PDF (*.pdf)"));
    if (!path) {
        return;
    }
    m_desk->save(core::leafSheetPaper(*m_file, m_session.clock()), {}, *path,
                 tr("The sheet lies at %1"));
}

} // namespace headcap::app
