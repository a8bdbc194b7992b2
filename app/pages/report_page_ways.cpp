// The ways out of the report: paper, a draft, the issue, and what was issued before.
#include <algorithm>

#include <QLineEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QUrl>

#include "app/form/ruled_list.h"
#include "app/pages/report_page.h"
#include "app/print/print_report.h"
#include "app/report/issuing.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

QString suggestedName(const core::JobFile& file) {
    return fromCore(file.job.number) + QStringLiteral(" draft.pdf");
}

} // namespace

bool ReportPage::print() {
    QPrinter printer{QPrinter::HighResolution};
    printer.setDocName(fromCore(m_file->job.number));
    QPrintDialog dialog{&printer, this};
    if (dialog.exec() != QDialog::Accepted) {
        return true;
    }
    session().guarded([&] {
        const auto outcome =
            print::printReport(draftOf(session().stores(), session().clock(), *m_file),
                               photoLookup(session().stores()), printer);
        session().say({outcome.isComplete ? Notice::Kind::done : Notice::Kind::failed,
                       outcome.isComplete
                           ? counted(outcome.pages, tr("Printed: %1 page"), tr("Printed: %1 pages"))
                           : counted(outcome.pages, tr("The printer stopped after %1 page."),
                                     tr("The printer stopped after %1 pages."))});
    });
    return true;
}

void ReportPage::saveDraft() {
    if (!edits().save()) {
        return;
    }
    const auto path = session().prompts().fileToSave(tr("Save a draft of the report"),
                                                     suggestedName(*m_file), tr("PDF (*.pdf)"));
    if (!path) {
        return;
    }
    session().guarded([&] {
        const auto written =
            writeDraft(session().stores(), session().clock(), *m_file, path->toStdString());
        session().say(written ? Notice{Notice::Kind::done, tr("The draft lies at %1").arg(*path)}
                              : Notice{Notice::Kind::failed, written.error()});
    });
}

void ReportPage::issue() {
    if (!edits().save()) {
        return;
    }
    session().guarded([this] {
        const auto issued = issueReport(
            session().stores(), session().clock(), session().ids(), m_file->job.id,
            {.who = session().person(), .changes = toCore(m_changes->text().trimmed())});
        if (!issued) {
            session().say({Notice::Kind::refused, issued.error().sentence});
            return;
        }
        m_changes->clear();
        session().say({Notice::Kind::done,
                       tr("Report %1 is issued and kept as issued.").arg(issued->version)});
        session().poll();
    });
}

void ReportPage::openIssued() {
    const auto chosen = m_issued->current();
    const auto report = std::find_if(m_file->reports.begin(), m_file->reports.end(),
                                     [&](const auto& r) { return r.id.uuid() == chosen; });
    if (report == m_file->reports.end()) {
        return;
    }
    session().guarded([&] {
        const auto path =
            session().stores().files.pathOf(core::FileStore::Shelf::report, report->digest);
        session().prompts().open(QUrl::fromLocalFile(QString::fromStdString(path.string())));
    });
}

} // namespace headcap::app
