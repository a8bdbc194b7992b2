// The ways out of the report: paper, a draft, the issue, and what was issued before.
#include <algorithm>
#include <memory>

#include <QLineEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QUrl>

#include "app/form/ruled_list.h"
#include "app/look/label.h"
#include "app/pages/report_page.h"
#include "app/print/print_report.h"
#include "app/print/report_preview.h"
#include "app/report/paper_desk.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

QString suggestedName(const core::JobFile& file) {
    return fromCore(file.job.number) + QStringLiteral(" draft.pdf");
}

Notice noticeOf(const print::PrintOutcome& outcome) {
    if (outcome.isComplete) {
        return {Notice::Kind::done, counted(outcome.pages, ReportPage::tr("Printed: %1 page"),
                                            ReportPage::tr("Printed: %1 pages"))};
    }
    if (outcome.wasStopped) {
        return {Notice::Kind::done,
                counted(outcome.pages, ReportPage::tr("Printing was stopped after %1 page."),
                        ReportPage::tr("Printing was stopped after %1 pages."))};
    }
    return {Notice::Kind::failed,
            counted(outcome.pages, ReportPage::tr("The printer stopped after %1 page."),
                    ReportPage::tr("The printer stopped after %1 pages."))};
}

} // namespace

bool ReportPage::print() {
    if (m_desk->isBusy()) {
        return true;
    }
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setDocName(fromCore(m_file->job.number));
    if (QPrintDialog dialog{printer.get(), this}; dialog.exec() != QDialog::Accepted) {
        return true;
    }
    session().guarded([&] {
        m_desk->draw(
            [document = draftOf(session().stores(), session().clock(), *m_file),
             photos = photoLookup(session().stores()), printer](const print::PdfOptions& options) {
                return print::printReport(document, photos, *printer, options.progress);
            },
            [this](const print::PrintOutcome& outcome) { session().say(noticeOf(outcome)); });
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
        m_desk->save(draftOf(session().stores(), session().clock(), *m_file),
                     photoLookup(session().stores()), *path, tr("The draft lies at %1"));
    });
}

void ReportPage::issue() {
    if (!edits().save()) {
        return;
    }
    const auto who = session().worker(); // who answers for it
    if (!who) {
        return;
    }
    session().guarded([this, who] {
        auto issue = prepareIssue(session().stores(), session().clock(), m_file->job.id,
                                  {.who = who, .changes = toCore(m_changes->text().trimmed())});
        if (!issue) {
            session().say({Notice::Kind::refused, issue.error().sentence});
            return;
        }
        m_desk->draw(
            [stores = session().stores(), &clock = session().clock(),
             issue = *issue](const print::PdfOptions& options) {
                return drawIssue(stores, clock, issue, options);
            },
            [this, issue = *issue](const auto& drawn) { enterDrawn(issue, drawn); });
    });
}

// The page may have gone on to another job meanwhile.
void ReportPage::enterDrawn(const PreparedIssue& issue,
                            const tl::expected<DrawnIssue, IssueRefusal>& drawn) {
    session().guarded([&] {
        const auto issued =
            drawn
                ? enterIssue(session().stores(), session().clock(), session().ids(), issue, *drawn)
                : tl::expected<core::IssuedReport, IssueRefusal>{tl::unexpect, drawn.error()};
        if (!issued) {
            session().say({Notice::Kind::refused, issued.error().sentence});
            return;
        }
        if (m_file->job.id == issue.job) {
            m_changes->clear();
        }
        session().say({Notice::Kind::done, tr("Report %1 of %2 is issued and kept as issued.")
                                               .arg(issued->version)
                                               .arg(fromCore(issue.number))});
        session().poll();
    });
}

void ReportPage::showDrawing(bool isDrawing) {
    const bool isHere = m_stop->hasFocus() || m_issue->hasFocus() || m_draft->hasFocus();
    m_draft->setEnabled(!isDrawing);
    m_print->setEnabled(!isDrawing);
    m_stop->setVisible(isDrawing);
    if (isHere) {
        (isDrawing ? static_cast<QWidget*>(m_stop) : m_preview)->setFocus(Qt::OtherFocusReason);
    }
    m_issue->setVisible(!isDrawing);
    if (isDrawing) {
        m_standing->setInk(Ink::accent);
        m_standing->setText(tr("The report is drawn …"));
    } else if (m_file) {
        showStanding();
    }
}

bool ReportPage::back() {
    if (!m_desk->isBusy()) {
        return false;
    }
    m_desk->stop();
    return true;
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
