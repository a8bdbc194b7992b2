#include "app/pages/job_materials_page.h"

#include <QHBoxLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/ruled_table.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/pages/material_words.h"
#include "app/print/print_report.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "core/materials/job_cost.h"
#include "core/report/materials_sheet.h"

namespace headcap::app {

JobMaterialsPage::JobMaterialsPage(Session& session, QWidget* parent)
    : JobPage(core::Page::materials, Body::fixed, session, parent),
      m_cost(new Label(Face::body, Ink::quiet)),
      m_print(quietButton(tr("Print the list …"), tipOf(ActionId::print))),
      m_table(new RuledTable(tr("Materials of the job"),
                             {.mark = 88, .right = 88, .title = 6, .middle = {3, 6}})),
      m_empty(new QWidget) {
    auto* words = new Label(
        Face::body, Ink::quiet,
        tr("Nothing has been put into the book yet. Name the lot when a step is logged, or scan "
           "its label into the line at the foot: every material then stands here with its lot, "
           "its origin and the way it comes off."));
    words->setRunning();
    auto* toBench = new QPushButton(tr("To the bench"));
    connect(toBench, &QPushButton::clicked, this, [this] {
        if (m_file) {
            Q_EMIT pageAsked(core::Page::bench);
        }
    });
    auto* down = new QVBoxLayout(m_empty);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kSpace);
    down->addWidget(words);
    down->addWidget(toBench, 0, Qt::AlignLeft);
    down->addStretch();
    connect(m_table, &RuledTable::opened, this, &JobMaterialsPage::open);
    connect(m_table, &QListView::clicked, this, &JobMaterialsPage::open);
    m_cost->setRunning();
    m_cost->setAccessibleName(tr("What the materials cost"));
    connect(m_print, &QPushButton::clicked, this, &JobMaterialsPage::print);
    auto* head = new QHBoxLayout;
    head->addWidget(m_cost, 1);
    head->addWidget(m_print, 0, Qt::AlignTop | Qt::AlignRight);
    body().addLayout(head);
    body().addWidget(m_table, 1);
    body().addWidget(m_empty);
}

void JobMaterialsPage::load(const core::JobFile& file) {
    m_file = file;
    auto rows = materialRows(file, session().clock());
    for (TableRow& row : pieceRows(file, piecesCut(), session().clock())) {
        rows.push_back(std::move(row));
    }
    m_cost->setText(fromCore(core::sentenceOf(core::jobCost(file))));
    m_cost->setVisible(!rows.empty());
    m_print->setVisible(!rows.empty());
    m_table->setVisible(!rows.empty());
    m_empty->setVisible(rows.empty());
    m_table->show(std::move(rows));
}

std::vector<core::CutPart> JobMaterialsPage::piecesCut() {
    std::vector<core::CutPart> pieces;
    session().guarded([&] {
        for (const core::Cutting& cutting : m_file->cuttings) {
            if (cutting.takenBackAt) {
                continue;
            }
            for (auto& part :
                 core::allWith(session().records(), &core::CutPart::cutting, cutting.id)) {
                if (part.record.kind == core::CutPartKind::piece) {
                    pieces.push_back(std::move(part.record));
                }
            }
        }
    });
    return pieces;
}

bool JobMaterialsPage::print() {
    if (!m_file) {
        return false;
    }
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(tr("%1 materials").arg(fromCore(m_file->job.number)));
    QPrintDialog dialog{&printer, this};
    if (dialog.exec() == QDialog::Accepted) {
        session().guarded([&] {
            (void)print::printReport(core::materialsSheet(*m_file, piecesCut(), session().clock()),
                                     {}, printer);
            session().say({Notice::Kind::done, tr("The list of materials is sent to be printed")});
        });
    }
    return true;
}

// A use goes to its step, a facsimile to where its leaf stands in the collation.
void JobMaterialsPage::open() {
    const auto id = m_table->current();
    if (!id || !m_file) {
        return;
    }
    for (const core::MaterialUse& use : m_file->uses) {
        if (use.id.uuid() == *id) {
            Q_EMIT recordAsked(core::refOf(use.step), core::Page::bench);
            return;
        }
    }
    for (const core::Facsimile& leaf : m_file->facsimiles) {
        if (leaf.id.uuid() == *id) {
            Q_EMIT recordAsked(core::refOf(leaf.id), core::Page::collation);
        }
    }
}

bool JobMaterialsPage::goTo(const core::RecordRef& ref) {
    if (!m_file) {
        return false;
    }
    const auto row = materialRow(*m_file, session().clock(), ref);
    if (!row || m_table->rows().rowOf(*row) < 0) {
        return false;
    }
    m_table->select(*row);
    m_table->setFocus(Qt::OtherFocusReason);
    return true;
}

void JobMaterialsPage::enter() {
    if (m_table->isVisible()) {
        m_table->setFocus(Qt::OtherFocusReason);
    } else {
        JobPage::enter();
    }
}

} // namespace headcap::app
