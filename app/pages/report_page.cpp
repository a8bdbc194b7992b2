#include "app/pages/report_page.h"

#include <algorithm>

#include <QElapsedTimer>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "app/form/ruled_list.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/report/release_panel.h"
#include "app/print/layout/layout.h"
#include "app/print/report_preview.h"
#include "app/report/paper_desk.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "core/audit/audit.h"
#include "core/report/issuing.h"

namespace headcap::app {
namespace {

QString cacheOf(const core::Stores& stores) {
    return QString::fromStdString(stores.files.cacheFolder().string());
}

constexpr int kLayingMs = 8;
constexpr int kBetweenMs = 5;    // for keys and paint
constexpr int kLeastBelow = 340; // in a lower window the page scrolls

} // namespace

ReportPage::ReportPage(Session& session, QWidget* parent)
    : JobPage(core::Page::report, Body::fixed, session, parent), m_layOn(new QTimer(this)),
      m_photos(photoLookup(session.stores()), cacheOf(session.stores())) {
    buildHead();
    buildAdvice();
    buildIssued();
    m_preview = new print::ReportPreview(m_photos);
    m_preview->setAccessibleName(tr("The report as it will be printed"));
    m_release = new ReleasePanel(session);
    connect(m_release, &ReleasePanel::pageAsked, this, &JobPage::pageAsked);
    m_layOn->setInterval(kBetweenMs);
    connect(m_layOn, &QTimer::timeout, this, &ReportPage::layOn);
    m_below = new QStackedWidget;
    m_below->setMinimumHeight(kLeastBelow);
    m_below->addWidget(m_preview);
    m_below->addWidget(m_release);
    body().addSpacing(kGap);
    body().addWidget(m_below, 1);
}

void ReportPage::buildHead() {
    m_standing = new Label(Face::strong);
    m_standing->setWordWrap(true);
    m_print = new QPushButton(tr("Print …"));
    m_draft = new QPushButton(tr("Save a draft …"));
    m_issue = new QPushButton;
    m_stop = new QPushButton(tr("Stop"));
    m_stop->setToolTip(tr("Stops the drawing; nothing is written or issued (Esc)"));
    m_stop->hide();
    m_desk = new PaperDesk(session(), this);
    m_print->setToolTip(tr("Prints the report as it stands, marked as a draft (Ctrl+P)"));
    m_draft->setToolTip(tr("Writes the report as it stands to a PDF, marked as a draft"));
    m_changes = new QLineEdit;
    m_changesRow = new FieldRow(tr("Changed since"), m_changes, nullptr);
    m_changesRow->placeholder(tr("what has changed since the last report was issued"));
    auto* row = new QHBoxLayout;
    row->setSpacing(kGap);
    row->addWidget(m_standing, 1);
    row->addWidget(m_print);
    row->addWidget(m_draft);
    row->addWidget(m_issue);
    row->addWidget(m_stop);
    m_letGo = new QPushButton(tr("Letting it go"));
    m_letGo->setCheckable(true);
    m_letGo->setToolTip(tr("The release list, the sign-off and the return"));
    row->addWidget(m_letGo);
    body().addLayout(row);
    body().addSpacing(kGap);
    body().addWidget(m_changesRow);
    connect(m_print, &QPushButton::clicked, this, [this] { print(); });
    connect(m_draft, &QPushButton::clicked, this, [this] { saveDraft(); });
    connect(m_issue, &QPushButton::clicked, this, [this] { issue(); });
    connect(m_stop, &QPushButton::clicked, m_desk, &PaperDesk::stop);
    connect(m_desk, &PaperDesk::busyChanged, this, &ReportPage::showDrawing);
    connect(m_desk, &PaperDesk::progressed, this, [this](int page, int pages) {
        if (m_desk->isBusy()) {
            m_standing->setText(tr("Page %1 of %2 is drawn …").arg(page).arg(pages));
        }
    });
    connect(m_letGo, &QPushButton::toggled, this, &ReportPage::showRelease);
}

void ReportPage::buildAdvice() {
    m_advice = new RecordForm<core::Job>(session(), tr("Advice"));
    m_advice->lines(tr("Advice for its care"), &core::Job::advice)
        .placeholder(tr("added to what the report draws from the record itself"));
    edits().watch(m_advice);
    body().addSpacing(kGrid);
    body().addWidget(m_advice);
    const int label = std::max(m_advice->widestLabel(), m_changesRow->labelWidth());
    m_advice->alignLabels(label);
    m_changesRow->setLabelWidth(label);
}

void ReportPage::buildIssued() {
    m_issued = new RuledList(tr("Reports issued"));
    m_issued->setMarkWidth(40);
    connect(m_issued, &RuledList::opened, this, [this] { openIssued(); });
    body().addWidget(m_issued);
}

void ReportPage::load(const core::JobFile& file) {
    if (m_file && m_file->job.id != file.job.id) {
        m_preview->setPages({}); // never one book's report under another's name
    }
    m_file = file;
    m_advice->show(file.job, file.revisionOf(core::refOf(file.job.id)));
    showStanding();
    showIssued();
    if (m_letGo->isChecked()) {
        m_release->show(file);
    }
    showPages();
}

// Twenty pages take a tenth of a second to lay out, and are drawn by this thread's faces: a few
// sections at a time, between what else comes.
void ReportPage::showPages() {
    session().guarded([this] {
        m_laying = std::make_unique<print::LayingOut>(
            draftOf(session().stores(), session().clock(), *m_file),
            print::pageSetup(print::Sheet::a4));
        m_layOn->start();
    });
}

void ReportPage::layOn() {
    QElapsedTimer spent;
    spent.start();
    while (m_laying->step()) {
        if (spent.elapsed() > kLayingMs) {
            return;
        }
    }
    m_layOn->stop();
    m_preview->setPages(m_laying->pages());
    m_laying.reset();
}

void ReportPage::showRelease(bool isShown) {
    m_below->setCurrentIndex(isShown ? 1 : 0);
    m_advice->setVisible(!isShown);
    m_issued->setVisible(!isShown && m_file && !m_file->reports.empty());
    if (isShown && m_file) {
        m_release->show(*m_file); // many rows, and seldom looked at
        m_release->focusFirst();
    }
}

void ReportPage::showStanding() {
    const auto points = core::audit(*m_file, session().clock());
    const int must = static_cast<int>(core::countOf(points, core::AuditSeverity::mustSettle));
    if (m_desk->isBusy()) {
        // Which page is drawn is said there meanwhile.
    } else if (must == 0) {
        m_standing->setInk(Ink::settled);
        m_standing->setText(tr("Nothing stands in the way of issuing it."));
    } else {
        m_standing->setInk(Ink::must);
        // With the count that the margin shows when it is folded.
        m_standing->setText(
            counted(must,
                    tr("%1 of %2 open points must be settled first; the margin names it (%3)."),
                    tr("%1 of %2 open points must be settled first; the margin names them (%3)."))
                .arg(points.size())
                .arg(keyText(ActionId::toMargin)));
    }
    m_issue->setText(tr("Issue report %1").arg(core::nextReportVersion(*m_file)));
    m_issue->setToolTip(must == 0 ? tr("Keeps the report as issued; it is never changed after")
                                  : tr("Can be done once every point that must be settled is"));
    m_issue->setEnabled(must == 0);
    m_changesRow->setVisible(!m_file->reports.empty());
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

} // namespace headcap::app
