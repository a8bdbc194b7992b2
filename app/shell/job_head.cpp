#include "app/shell/job_head.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/session/actions.h"
#include "app/session/words.h"
#include "app/shell/worklist.h"
#include "core/custody/hazard_evidence.h"
#include "core/custody/hazards.h"
#include "core/custody/job_states.h"

namespace headcap::app {
namespace {

constexpr int kIndent = 24 * kGrid; // where the words of the head begin

} // namespace

QString hazardWords(const core::JobFile& file) {
    QStringList said;
    for (const core::Hazard& hazard : file.hazards) {
        if (!core::stillWarns(hazard)) {
            continue;
        }
        QString one = fromCore(core::hazardName(hazard.term));
        if (!hazard.place.empty()) {
            one = JobHead::tr("%1, %2").arg(one, fromCore(hazard.place));
        }
        one = JobHead::tr("%1: %2").arg(one, fromCore(core::standingOf(hazard)));
        // What to do at once; the whole caution stands in the margin.
        if (const core::HazardKind* kind = core::hazardNamed(hazard.term)) {
            const QString caution = fromCore(kind->caution);
            one = JobHead::tr("%1. %2").arg(one, caution.section(QStringLiteral(". "), 0, 0));
        }
        said << one;
    }
    return said.join(QStringLiteral(" · "));
}

HazardStrip::HazardStrip(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setFocusPolicy(Qt::NoFocus);
}

// As high as its words need in this width: a caution is never cut.
void HazardStrip::fit() {
    setFixedHeight(wordsRect(width()).height() + kGap);
}

void HazardStrip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void HazardStrip::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        fit();
    }
}

void HazardStrip::setWords(const QString& words) {
    m_words = words;
    setAccessibleName(words);
    setToolTip(words);
    setVisible(!words.isEmpty());
    fit();
    update();
}

QRect HazardStrip::wordsRect(int width) const {
    const QFontMetrics metrics{faceFont(Face::smallStrong)};
    const QRect room{kIndent, kGrid, std::max(1, width - kIndent - 6 * kGrid), 10'000};
    return metrics.boundingRect(room, Qt::TextWordWrap, m_words);
}

void HazardStrip::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = coloursFor(palette());
    painter.fillRect(rect(), c.hatch);
    painter.setPen(QPen(c.edge, 1));
    for (int x = -height(); x < width(); x += 8) {
        painter.drawLine(QPointF(x, height()), QPointF(x + height(), 0));
    }
    painter.setFont(faceFont(Face::smallStrong));
    const QRect words = wordsRect(width());
    painter.fillRect(QRect(words.left() - kGap, 0, words.width() + kGap + 4 * kGrid, height()),
                     c.paper);
    painter.setPen(c.open);
    painter.drawText(words, Qt::TextWordWrap, m_words);
}

JobHead::JobHead(QWidget* parent)
    : QWidget(parent), m_number(new Label(Face::smallStrong, Ink::quiet)),
      m_title(new Label(Face::book, Ink::ink)), m_owner(new Label(Face::body, Ink::quiet)),
      m_state(quietButton({}, tipOf(ActionId::changeState))),
      m_due(new Label(Face::body, Ink::quiet)), m_hazards(new HazardStrip) {
    auto* back = quietButton(QStringLiteral("←"), tipOf(ActionId::back));
    back->setAccessibleName(tr("Back"));
    connect(back, &QPushButton::clicked, this, &JobHead::backAsked);
    connect(m_state, &QPushButton::clicked, this, &JobHead::stateAsked);
    m_title->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    m_owner->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);

    auto* across = new QHBoxLayout;
    across->setContentsMargins(kGap, kGap, kPageMargin, kGap);
    across->setSpacing(kPageMargin);
    auto* left = new QHBoxLayout;
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(back);
    left->addStretch();
    auto* leftBox = new QWidget;
    leftBox->setLayout(left);
    leftBox->setFixedWidth(kIndent - kGap - kPageMargin);
    across->addWidget(leftBox);
    across->addWidget(m_number);
    across->addWidget(m_title);
    across->addWidget(m_owner, 1);
    across->addWidget(m_state);
    across->addWidget(m_due);

    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(0);
    down->addLayout(across);
    down->addWidget(m_hazards);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void JobHead::show(const core::JobFile& file, core::Day today) {
    m_number->setText(fromCore(file.job.number));
    m_title->setText(fromCore(core::headingOf(file.item)));
    m_owner->setText(
        file.item.format.empty()
            ? fromCore(file.owner.name)
            : QStringLiteral("%1 · %2").arg(fromCore(file.item.format), fromCore(file.owner.name)));
    m_state->setText(words(file.job.state));
    m_state->setAccessibleName(tr("State: %1").arg(words(file.job.state)));
    const Due due = core::isInTheHouse(file.job.state) ? dueOf(file.job.dueOn, today) : Due{};
    m_due->setText(due.words);
    m_due->setInk(due.isLate ? Ink::must : Ink::quiet);
    m_due->setVisible(!m_due->text().isEmpty());
    m_hazards->setWords(hazardWords(file));
}

} // namespace headcap::app
