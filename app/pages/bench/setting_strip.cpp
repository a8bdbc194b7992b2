#include "app/pages/bench/setting_strip.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/palette.h"
#include "app/session/dates.h"
#include "app/session/words.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr int kTickMs = 5'000;
constexpr std::size_t kShown = 3;

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
    m_times = core::settingTimes(*m_file, m_clock.now());
    // What is over comes first: somebody is to see to it. Of each the earliest.
    std::ranges::stable_sort(m_times, {}, [](const core::SettingTime& time) {
        return std::pair{!time.isOver(), time.until};
    });
    m_times.resize(std::min(m_times.size(), kShown));
    const auto& times = m_times;
    while (m_down->count() > static_cast<int>(times.size())) {
        QLayoutItem* last = m_down->takeAt(m_down->count() - 1);
        last->widget()->hide();
        last->widget()->deleteLater(); // it may be the one that was touched
        delete last;
    }
    while (m_down->count() < static_cast<int>(times.size())) {
        auto* row = new SettingRow;
        const auto at = static_cast<std::size_t>(m_down->count());
        m_down->addWidget(row);
        connect(&row->see(), &QPushButton::clicked, this, [this, at] {
            if (at < m_times.size()) {
                const core::SettingTime time = m_times[at];
                Q_EMIT seen(time);
            }
        });
    }
    for (std::size_t i = 0; i < times.size(); ++i) {
        const core::SettingTime& time = times[i];
        const core::Day day = m_clock.dayOf(time.until);
        const QString clock =
            day == m_clock.today()
                ? clockTime(time.until)
                : QStringLiteral("%1 %2").arg(weekday(day), clockTime(time.until));
        auto* row = qobject_cast<SettingRow*>(m_down->itemAt(static_cast<int>(i))->widget());
        row->show({.what = fromCore(time.what),
                   .left = time.isOver() ? tr("it has set") : fromCore(core::toText(time.left)),
                   .until = time.isOver() ? tr("since %1").arg(clock) : tr("until %1").arg(clock),
                   .share = core::shareLeft(time, m_clock.now()),
                   .isOver = time.isOver()});
    }
    setVisible(!times.empty());
}

bool SettingStrip::focusFirst() {
    auto* first =
        m_down->count() == 0 ? nullptr : qobject_cast<SettingRow*>(m_down->itemAt(0)->widget());
    if (first != nullptr) {
        first->see().setFocus(Qt::OtherFocusReason);
    }
    return first != nullptr;
}

SettingRow::SettingRow(QWidget* parent) : QWidget(parent), m_see(new QPushButton) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_see->setMinimumHeight(kBenchControl);
    m_see->setMinimumWidth(32 * kGrid);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, 0);
    across->addStretch();
    across->addWidget(m_see);
}

void SettingRow::show(const Words& words) {
    m_words = words;
    m_see->setText(words.isOver ? tr("I have seen to it") : tr("Take it out now"));
    m_see->setToolTip(words.isOver ? tr("It has set, and somebody has seen to it")
                                   : tr("Taken out before its time is over"));
    m_see->setAccessibleName(QStringLiteral("%1: %2").arg(m_see->text(), words.what));
    const QString left = words.isOver ? words.left : tr("%1 left").arg(words.left);
    setAccessibleName(QStringLiteral("%1, %2, %3").arg(words.what, left, words.until));
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
    const int clockWidth = clock.horizontalAdvance(m_words.left);
    painter.setFont(faceFont(Face::clock));
    painter.setPen(m_words.isOver ? c.settled : c.ink);
    painter.drawText(0, (height() + clock.ascent() - clock.descent()) / 2, m_words.left);

    const int left = clockWidth + 2 * kSpace;
    const int wide = m_see->x() - kSpace - left;
    int y = (height() - strong.height() - 3 * kGrid) / 2;
    painter.setFont(faceFont(Face::small));
    painter.setPen(c.quiet);
    const int untilWidth = small.horizontalAdvance(m_words.until);
    painter.drawText(left + wide - untilWidth, y + strong.ascent(), m_words.until);
    painter.setFont(faceFont(Face::strong));
    painter.setPen(c.ink);
    painter.drawText(
        left, y + strong.ascent(),
        strong.elidedText(m_words.what, Qt::ElideRight, std::max(0, wide - untilWidth - kSpace)));
    y += strong.height() + kGrid;
    painter.fillRect(QRect(left, y, wide, 2 * kGrid), c.rule);
    painter.fillRect(QRect(left, y, qRound(wide * m_words.share), 2 * kGrid), c.accent);
}

} // namespace headcap::app
