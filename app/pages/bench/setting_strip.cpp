#include "app/pages/bench/setting_strip.h"

#include <algorithm>

#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/session/words.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/work_days.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr int kTickMs = 5'000;
constexpr std::size_t kShown = 3;

double shareOf(const core::SettingTime& time, core::Instant now) {
    const auto whole = time.until - time.step->at;
    if (whole <= core::Instant::duration::zero()) {
        return 0;
    }
    return std::clamp(static_cast<double>((time.until - now).count()) /
                          static_cast<double>(whole.count()),
                      0.0, 1.0);
}

} // namespace

SettingStrip::SettingStrip(const core::Clock& clock, QWidget* parent)
    : QWidget(parent), m_clock(clock), m_down(new QVBoxLayout(this)) {
    m_down->setContentsMargins(0, 0, 0, kSpace);
    m_down->setSpacing(kGap);
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &SettingStrip::tick);
    timer->start(kTickMs);
    hide();
}

void SettingStrip::show(const core::JobFile& file) {
    m_file = file;
    tick();
}

void SettingStrip::tick() {
    if (!m_file) {
        return;
    }
    auto times = core::settingTimes(*m_file, m_clock.now());
    times.resize(std::min(times.size(), kShown));
    while (m_down->count() > static_cast<int>(times.size())) {
        QLayoutItem* last = m_down->takeAt(m_down->count() - 1);
        delete last->widget();
        delete last;
    }
    while (m_down->count() < static_cast<int>(times.size())) {
        m_down->addWidget(new SettingRow);
    }
    for (std::size_t i = 0; i < times.size(); ++i) {
        const core::SettingTime& time = times[i];
        const QString clock = clockTime(time.until);
        auto* row = qobject_cast<SettingRow*>(m_down->itemAt(static_cast<int>(i))->widget());
        row->show(
            {.what = fromCore(core::stepTitle(*time.step)),
             .until = time.isOver() ? tr("over since %1").arg(clock) : tr("until %1").arg(clock),
             .left = time.isOver() ? tr("it has set")
                                   : tr("%1 left").arg(fromCore(core::toText(time.left))),
             .share = shareOf(time, m_clock.now()),
             .isOver = time.isOver()});
    }
    setVisible(!times.empty());
}

SettingRow::SettingRow(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void SettingRow::show(const Words& words) {
    m_words = words;
    setAccessibleName(QStringLiteral("%1, %2, %3").arg(words.what, words.until, words.left));
    update();
}

QSize SettingRow::sizeHint() const {
    return {480, std::max(QFontMetrics{faceFont(Face::clock)}.height(), kBenchControl)};
}

void SettingRow::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    const QFontMetrics clock{faceFont(Face::clock)};
    const QFontMetrics strong{faceFont(Face::strong)};
    const QFontMetrics small{faceFont(Face::small)};
    const int clockWidth = clock.horizontalAdvance(m_words.until);
    painter.setFont(faceFont(Face::clock));
    painter.setPen(m_words.isOver ? c.settled : c.ink);
    painter.drawText(0, (height() + clock.ascent() - clock.descent()) / 2, m_words.until);

    const int left = clockWidth + 2 * kSpace;
    const int wide = width() - left;
    int y = (height() - strong.height() - 3 * kGrid) / 2;
    painter.setFont(faceFont(Face::small));
    painter.setPen(c.quiet);
    const int leftWidth = small.horizontalAdvance(m_words.left);
    painter.drawText(left + wide - leftWidth, y + strong.ascent(), m_words.left);
    painter.setFont(faceFont(Face::strong));
    painter.setPen(c.ink);
    painter.drawText(
        left, y + strong.ascent(),
        strong.elidedText(m_words.what, Qt::ElideRight, std::max(0, wide - leftWidth - kSpace)));
    y += strong.height() + kGrid;
    painter.fillRect(QRect(left, y, wide, 2 * kGrid), c.rule);
    painter.fillRect(QRect(left, y, qRound(wide * m_words.share), 2 * kGrid), c.accent);
}

} // namespace headcap::app
