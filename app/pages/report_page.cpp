#include "app/pages/report_page.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QStackedWidget>
#include <QUrl>
#include <QVBoxLayout>

#include "app/form/ruled_list.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/report/release_panel.h"
#include "app/print/print_report.h"
#include "app/print/report_preview.h"
#include "app/report/issuing.h"
#include "app/session/words.h"
#include "core/audit/audit.h"
#include "core/report/issuing.h"

namespace headcap::app {
namespace {

QString cacheOf(const core::Stores& stores) {
    return QString::fromStdString(stores.files.cacheFolder().string());
}

QString suggestedName(const core::JobFile& file) {
    return fromCore(file.job.number) + QStringLiteral(" draft.pdf");
}

} // namespace

ReportPage::ReportPage(Session& session, QWidget* parent)
    : JobPage(core::Page::report, Body::fixed, session, parent),
      m_photos(photoLookup(session.stores()), cacheOf(session.stores())) {
    buildHead();
    buildAdvice();
    buildIssued();
    m_preview = new print::ReportPreview(m_photos);
    m_preview->setAccessibleName(tr("The report as it will be printed"));
    m_release = new ReleasePanel(session);
    connect(m_release, &ReleasePanel::pageAsked, this, &JobPage::pageAsked);
    m_below = new QStackedWidget;
    m_below->addWidget(m_preview);
    m_below->addWidget(m_release);
    body().addSpacing(kGap);
    body().addWidget(m_below, 1);
    edits().alignLabels();
}

void ReportPage::buildHead() {
    m_standing = new Label(Face::strong);
    m_standing->setWordWrap(true);
    m_print = new QPushButton(tr("Print …"));
    m_draft = new QPushButton(tr("Save a draft …"));
    m_issue = new QPushButton;
    m_print->setToolTip(tr("Prints the report as it stands, marked as a draft (Ctrl+P)"));
    m_draft->setToolTip(tr("Writes the report as it stands to a PDF, marked as a draft"));
    m_changes = new QLineEdit;
    m_changes->setAccessibleName(tr("What has changed since the last report"));
    m_changes->setPlaceholderText(tr("what has changed since the last report"));
    auto* row = new QHBoxLayout;
    row->setSpacing(kGap);
    row->addWidget(m_standing, 1);
    row->addWidget(m_print);
    row->addWidget(m_draft);
    row->addWidget(m_issue);
    m_letGo = new QPushButton(tr("Letting it go"));
    m_letGo->setCheckable(true);
    m_letGo->setToolTip(tr("The release list, the sign-off and the return"));
    row->addWidget(m_letGo);
    body().addLayout(row);
    body().addSpacing(kGap);
    body().addWidget(m_changes);
    connect(m_print, &QPushButton::clicked, this, [this] { print(); });
    connect(m_draft, &QPushButton::clicked, this, [this] { saveDraft(); });
    connect(m_issue, &QPushButton::clicked, this, [this] { issue(); });
    connect(m_letGo, &QPushButton::toggled, this, &ReportPage::showRelease);
}

void ReportPage::buildAdvice() {
    m_advice = new RecordForm<core::Job>(session(), tr("Advice"));
    m_advice->lines(tr("Advice for its care"), &core::Job::advice)
        .placeholder(tr("added to what the report draws from the record itself"));
    edits().watch(m_advice);
    body().addWidget(m_advice);
}

void ReportPage::buildIssued() {
    m_issued = new RuledList(tr("Reports issued"));
    m_issued->setMarkWidth(40);
    connect(m_issued, &RuledList::opened, this, [this] { openIssued(); });
    body().addWidget(m_issued);
}

void ReportPage::load(const core::JobFile& file) {
    m_file = file;
    m_advice->show(file.job, file.revisionOf(core::refOf(file.job.id)));
    showStanding();
    showIssued();
    m_release->show(file);
    session().guarded([this] {
        m_preview->setDocument(draftOf(session().stores(), session().clock(), *m_file));
    });
}

void ReportPage::showRelease(bool isShown) {
    m_below->setCurrentIndex(isShown ? 1 : 0);
    m_advice->setVisible(!isShown);
    m_issued->setVisible(!isShown && m_file && !m_file->reports.empty());
    if (isShown) {
        m_release->focusFirst();
    }
}

void ReportPage::showStanding() {
    const auto points = core::audit(*m_file, session().clock());
    const int must = static_cast<int>(core::countOf(points, core::AuditSeverity::mustSettle));
    if (must == 0) {
        m_standing->setInk(Ink::settled);
        m_standing->setText(tr("Nothing stands in the way of issuing it."));
    } else {
        m_standing->setInk(Ink::must);
        m_standing->setText(counted(
            must, tr("%1 point must be settled before it can be issued; the margin names it."),
            tr("%1 points must be settled before it can be issued; the margin names them.")));
    }
    m_issue->setText(tr("Issue report %1").arg(core::nextReportVersion(*m_file)));
    m_issue->setToolTip(must == 0 ? tr("Keeps the report as issued; it is never changed after")
                                  : tr("Can be done once every point that must be settled is"));
    m_issue->setEnabled(must == 0);
    m_changes->setVisible(!m_file->reports.empty());
}

void ReportPage::showIssued() {
    std::vector<RuledModel::Row> rows;
    for (const core::IssuedReport& report : m_file->reports) {
        const core::Person* who = m_file->person(report.who);
        const core::Clock& clock = session().clock();
        rows.push_back(
            {report.id.uuid(),
             RowWords{.mark = QString::number(report.version),
                      .title = tr("issued %1").arg(fullDay(clock.dayOf(report.issuedAt))),
                      .detail = fromCore(report.changes),
                      .right = who != nullptr ? fromCore(who->name) : QString{}}});
    }
    m_issued->setVisible(!rows.empty() && !m_letGo->isChecked());
    m_issued->show(std::move(rows));
}

bool ReportPage::goTo(const core::RecordRef& ref) {
    if (ref.kind == core::RecordKind::issuedReport) {
        m_issued->select(ref.id);
        m_letGo->setChecked(false);
        m_issued->setFocus();
        return true;
    }
    if (ref.kind == core::RecordKind::releaseCheck || ref.kind == core::RecordKind::handBack) {
        m_letGo->setChecked(true);
        m_release->focusFirst();
        return true;
    }
    return false;
}

void ReportPage::enter() {
    m_preview->setFocus();
}

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
