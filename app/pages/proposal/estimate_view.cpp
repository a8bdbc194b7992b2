#include "app/pages/proposal/estimate_view.h"

#include <algorithm>

#include <QPainter>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"
#include "core/treatment/totals.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr int kBar = 3 * kGrid;
constexpr int kMark = 2 * kGrid;

QString minutesWords(core::Minutes minutes) {
    return fromCore(core::toText(minutes));
}

// As exactly as such a thing can be known: to a half hour of days, to five minutes of an hour.
QString aboutMinutes(core::Minutes minutes) {
    const auto count = minutes.count();
    const auto step = count >= 4 * 60 ? 30 : count >= 60 ? 15 : 5;
    const auto about = std::max<core::Minutes::rep>(step, (count + step / 2) / step * step);
    return minutesWords(count == 0 ? core::Minutes{0} : core::Minutes{about});
}

QString restsOn(const core::LineEstimate& line) {
    const QString jobs = counted(static_cast<int>(line.jobs), EstimateView::tr("%1 job"),
                                 EstimateView::tr("%1 jobs"));
    switch (line.basis) {
    case core::EstimateBasis::alike:
        return EstimateView::tr("%1 alike").arg(jobs);
    case core::EstimateBasis::past:
        return jobs;
    case core::EstimateBasis::few:
        return EstimateView::tr("%1 and the usual").arg(jobs);
    case core::EstimateBasis::vocabulary:
        return EstimateView::tr("usual minutes");
    case core::EstimateBasis::said:
        return EstimateView::tr("as proposed");
    case core::EstimateBasis::nothing:
        break;
    }
    return EstimateView::tr("nothing known");
}

} // namespace

EstimateRows::EstimateRows(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

int EstimateRows::rowHeight() const {
    return QFontMetrics{faceFont(Face::body)}.height() + 3 * kGrid;
}

QSize EstimateRows::sizeHint() const {
    return {480, static_cast<int>(m_rows.size()) * rowHeight()};
}

void EstimateRows::show(std::vector<Row> rows) {
    m_rows = std::move(rows);
    QStringList said;
    for (const Row& row : m_rows) {
        said << tr("%1: half of such work takes %2 to %3, %4 proposed, %5")
                    .arg(row.title, minutesWords(row.estimate.quarter),
                         minutesWords(row.estimate.threeQuarters), minutesWords(row.said),
                         row.isDone ? tr("%1 done").arg(minutesWords(row.actual)) : tr("not done"));
    }
    setAccessibleName(said.join(QStringLiteral("; ")));
    updateGeometry();
    update();
}

void EstimateRows::paintRow(QPainter& painter, const Row& row, int top, int left,
                            double scale) const {
    const Colours& c = coloursFor(palette());
    const int middle = top + rowHeight() / 2;
    const auto at = [&](core::Minutes minutes) {
        return left + qRound(static_cast<double>(minutes.count()) * scale);
    };
    painter.setPen(QPen(c.rule, 1));
    painter.drawLine(left, middle, at(std::max({row.estimate.threeQuarters, row.said, row.actual})),
                     middle);
    if (row.estimate.basis != core::EstimateBasis::nothing) {
        const QRect box{at(row.estimate.quarter), middle - kBar / 2,
                        std::max(2, at(row.estimate.threeQuarters) - at(row.estimate.quarter)),
                        kBar};
        painter.setBrush(c.picked);
        painter.setPen(QPen(c.edge, 1));
        painter.drawRect(box);
        painter.setPen(QPen(c.ink, 2));
        painter.drawLine(at(row.estimate.median), box.top(), at(row.estimate.median),
                         box.bottom() + 1);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    if (row.said > core::Minutes{0}) {
        const QPoint p{at(row.said), middle};
        painter.setPen(QPen(c.accent, 2));
        painter.setBrush(c.paper);
        painter.drawPolygon(QPolygon{{p + QPoint{0, -kMark}, p + QPoint{kMark, 0},
                                      p + QPoint{0, kMark}, p + QPoint{-kMark, 0}}});
    }
    if (row.isDone) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.settled);
        painter.drawEllipse(QPoint{at(row.actual), middle}, kMark - 2, kMark - 2);
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
}

void EstimateRows::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    const QFontMetrics body{faceFont(Face::body)};
    const QFontMetrics small{faceFont(Face::small)};
    core::Minutes longest{1};
    for (const Row& row : m_rows) {
        longest = std::max({longest, row.estimate.threeQuarters, row.said, row.actual});
    }
    const int titleWidth = width() * 3 / 10;
    const int restWidth = width() * 3 / 10;
    const int left = titleWidth + kSpace;
    const double scale =
        (width() - left - restWidth - 2 * kSpace) / static_cast<double>(longest.count());
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const Row& row = m_rows[i];
        const int top = static_cast<int>(i) * rowHeight();
        const int baseline = top + (rowHeight() + body.ascent() - body.descent()) / 2;
        painter.setFont(faceFont(Face::body));
        painter.setPen(c.ink);
        painter.drawText(0, baseline, body.elidedText(row.title, Qt::ElideRight, titleWidth));
        paintRow(painter, row, top, left, scale);
        painter.setFont(faceFont(Face::small));
        painter.setPen(c.quiet);
        const bool isKnown = row.estimate.basis != core::EstimateBasis::nothing;
        const QString range =
            isKnown ? tr("%1–%2, %3")
                          .arg(aboutMinutes(row.estimate.quarter),
                               aboutMinutes(row.estimate.threeQuarters), restsOn(row.estimate))
                    : restsOn(row.estimate);
        painter.drawText(QRect{width() - restWidth, top, restWidth, rowHeight()},
                         Qt::AlignLeft | Qt::AlignVCenter,
                         small.elidedText(range, Qt::ElideRight, restWidth));
    }
}

EstimateView::EstimateView(QWidget* parent)
    : QWidget(parent), m_words(new Label(Face::body)), m_rows(new EstimateRows),
      m_legend(new Label(Face::small, Ink::quiet,
                         tr("Box: the middle half of such work, its line the middle. "
                            "Diamond: as proposed. Dot: what it took."))) {
    m_words->setRunning();
    m_legend->setRunning();
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_words);
    down->addWidget(m_rows);
    down->addWidget(m_legend);
}

QString EstimateView::sentence() const {
    if (m_estimate.lines.size() == m_estimate.unknown) {
        return tr("Nothing is known of such work yet: no finished job, and no usual minutes.");
    }
    QString words =
        tr("Likely %1 to %2; four times in five %3 to %4.")
            .arg(aboutMinutes(m_estimate.quarter), aboutMinutes(m_estimate.threeQuarters),
                 aboutMinutes(m_estimate.low), aboutMinutes(m_estimate.high));
    if (m_said > core::Minutes{0}) {
        words += QLatin1Char(' ') + tr("Proposed: %1.").arg(minutesWords(m_said));
    }
    if (!m_tooShort.isEmpty()) {
        words += QLatin1Char(' ') +
                 tr("Less than is usual: %1.").arg(m_tooShort.join(QStringLiteral("; ")));
    }
    words += QLatin1Char(' ');
    words += m_estimate.steps == 0
                 ? tr("It rests on usual minutes alone: none of it was done here before.")
                 : counted(static_cast<int>(m_estimate.steps),
                           tr("It rests on %1 finished step of our own."),
                           tr("It rests on %1 finished steps of our own."));
    if (m_estimate.unknown > 0) {
        words +=
            QLatin1Char(' ') + counted(static_cast<int>(m_estimate.unknown),
                                       tr("%1 line is not in it."), tr("%1 lines are not in it."));
    }
    return words;
}

void EstimateView::wait() {
    m_isWaiting = true;
    m_words->setText(tr("Looking through what such work took here before …"));
    m_rows->hide();
    m_legend->hide();
}

void EstimateView::show(const core::JobFile& file, const core::Id<core::ProposalOption>& option,
                        const std::vector<core::PastWork>& past) {
    const auto lines = core::linesOf(file, option);
    setVisible(!lines.empty());
    std::vector<core::WorkAsked> asked;
    for (const core::ProposalLine* line : lines) {
        asked.push_back(core::askedOf(*line, file.item));
    }
    m_estimate = core::estimateOf(asked, past, file.techniques.offered());
    m_said = core::Minutes{0};
    for (const core::ProposalLine* line : lines) {
        m_said += line->minutes;
    }
    std::vector<EstimateRows::Row> rows;
    m_tooShort.clear();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (core::isLessThanUsual(*lines[i], m_estimate.lines[i])) {
            m_tooShort << tr("%1 (%2)").arg(fromCore(core::lineTitle(*lines[i], file.techniques)),
                                            minutesWords(lines[i]->minutes));
        }
        const core::LineWork work = core::workedOn(file, *lines[i]);
        rows.push_back({.title = fromCore(core::lineTitle(*lines[i], file.techniques)),
                        .estimate = m_estimate.lines[i],
                        .said = lines[i]->minutes,
                        .actual = work.minutes,
                        .isDone = work.steps > 0});
    }
    m_words->setText(sentence());
    m_rows->show(std::move(rows));
    m_isWaiting = false;
    m_rows->setVisible(true);
    m_legend->setVisible(true);
}

} // namespace headcap::app
