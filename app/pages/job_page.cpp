#include "app/pages/job_page.h"

#include <algorithm>

#include <QCoreApplication>
#include <QEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"

namespace headcap::app {
namespace {

// A page is not set wider than this, so that the eye finds the next line.
constexpr int kWidestPage = 1120;

struct PageWords {
    const char* title;
    const char* purpose;
};

constexpr std::array<PageWords, 8> kWords{{
    {QT_TRANSLATE_NOOP("page", "Book"),
     QT_TRANSLATE_NOOP("page", "What it is, whose it is, how it came and where it is kept.")},
    {QT_TRANSLATE_NOOP("page", "Collation"),
     QT_TRANSLATE_NOOP("page", "Every leaf against the ideal copy.")},
    {QT_TRANSLATE_NOOP("page", "Survey"),
     QT_TRANSLATE_NOOP("page", "Its condition as it came: what was seen, apart from what is "
                               "inferred.")},
    {QT_TRANSLATE_NOOP("page", "Proposal"),
     QT_TRANSLATE_NOOP("page", "What could be done, at what price, and what the owner decided.")},
    {QT_TRANSLATE_NOOP("page", "Bench"),
     QT_TRANSLATE_NOOP("page", "What was done, by whom, with what. Nothing here is ever deleted.")},
    {QT_TRANSLATE_NOOP("page", "Materials"),
     QT_TRANSLATE_NOOP("page", "What went into the book, lot by lot, and how it comes off again.")},
    {QT_TRANSLATE_NOOP("page", "Photographs"),
     QT_TRANSLATE_NOOP("page", "Before, during and after. Originals are kept unaltered.")},
    {QT_TRANSLATE_NOOP("page", "Report"),
     QT_TRANSLATE_NOOP("page", "The treatment report, and everything it must disclose.")},
}};

// As high as what it stands in, and no less than its parts need: what they would like to have
// makes no page scroll.
class FixedSheet : public QWidget {
public:
    explicit FixedSheet(QWidget* sheet) : m_sheet(sheet) { m_sheet->setParent(this); }
    [[nodiscard]] QSize minimumSizeHint() const override { return m_sheet->minimumSizeHint(); }

protected:
    void resizeEvent(QResizeEvent*) override {
        m_sheet->setGeometry(0, 0, std::min(width(), m_sheet->maximumWidth()), height());
    }
    bool event(QEvent* event) override {
        if (event->type() == QEvent::LayoutRequest) {
            updateGeometry(); // its parts need more or less
        }
        return QWidget::event(event);
    }

private:
    QWidget* m_sheet;
};

} // namespace

QString titleOf(core::Page page) {
    return QCoreApplication::translate("page", kWords[static_cast<std::size_t>(page)].title);
}

QString purposeOf(core::Page page) {
    return QCoreApplication::translate("page", kWords[static_cast<std::size_t>(page)].purpose);
}

JobPage::JobPage(core::Page page, Body body, Session& session, QWidget* parent)
    : QWidget(parent), m_page(page), m_session(session), m_edits(session),
      m_scroll(new QScrollArea), m_body(new QVBoxLayout) {
    auto* sheet = new QWidget;
    sheet->setMaximumWidth(kWidestPage);
    auto* set = new QVBoxLayout(sheet);
    set->setContentsMargins(kPageMargin, kGap, kPageMargin, body == Body::fixed ? kGap : kSection);
    set->setSpacing(0);
    set->addWidget(new Label(Face::title, Ink::ink, titleOf(page)));
    auto* purpose = new Label(Face::small, Ink::quiet, purposeOf(page));
    purpose->setRunning();
    set->addWidget(purpose);
    set->addSpacing(kSpace);
    m_body->setSpacing(0);
    set->addLayout(m_body, body == Body::fixed ? 1 : 0);

    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    if (body == Body::scrolled) {
        set->addStretch(1);
    }
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(body == Body::fixed ? new FixedSheet(sheet) : sheet);
    whole->addWidget(m_scroll);
}

void JobPage::addSection(const QString& heading, QWidget* content) {
    if (m_body->count() > 0) {
        m_body->addSpacing(kSection);
    }
    m_body->addWidget(new Label(Face::heading, Ink::ink, heading));
    m_body->addWidget(new HairRule);
    m_body->addSpacing(kGap + kGrid);
    m_body->addWidget(content);
}

void JobPage::addSection(QWidget* list) {
    // The space above goes with a list that is hidden.
    if (m_body->count() > 0) {
        list->setContentsMargins(0, kSection, 0, 0);
    }
    m_body->addWidget(list);
}

void JobPage::reveal(QWidget* widget) {
    QTimer::singleShot(0, widget, [scroll = m_scroll, widget] {
        scroll->ensureWidgetVisible(widget, 0, kSection);
    });
}

bool JobPage::goTo(const core::RecordRef&) {
    return false;
}

void JobPage::enter() {
    setFocus(Qt::OtherFocusReason);
    focusNextChild();
    // Where the page was left scrolled, the cursor would stand out of sight.
    m_scroll->verticalScrollBar()->setValue(0);
    if (QWidget* at = focusWidget(); at != nullptr && isAncestorOf(at)) {
        reveal(at);
    }
}

} // namespace headcap::app
