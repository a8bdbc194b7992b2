#include "app/shell/work_strip.h"

#include <algorithm>

#include <QBoxLayout>
#include <QLocale>
#include <QPainter>
#include <QPushButton>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/palette.h"
#include "app/session/long_work.h"

namespace headcap::app {
namespace {

constexpr int kBar = 2 * kGrid;

} // namespace

WorkStrip::WorkStrip(LongWork& work, QWidget* parent)
    : QWidget(parent), m_words(new Label(Face::body, Ink::ink)),
      m_stop(new QPushButton(tr("Stop"))) {
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(0, 0, 0, kBar + kGrid);
    across->addWidget(m_words, 1);
    across->addWidget(m_stop);
    connect(m_stop, &QPushButton::clicked, &work, &LongWork::stop);
    connect(m_stop, &QPushButton::clicked, this, [this] {
        m_stop->setEnabled(false);
        m_words->setText(tr("%1: stopping …").arg(m_what));
    });
    connect(&work, &LongWork::started, this, &WorkStrip::begin);
    connect(&work, &LongWork::progressed, this, &WorkStrip::progress);
    connect(&work, &LongWork::finished, this, &QWidget::hide);
    hide();
}

void WorkStrip::begin(const QString& what) {
    m_what = what;
    m_share = 0;
    m_words->setText(tr("%1 …").arg(what));
    m_stop->setEnabled(true);
    show();
    m_stop->setFocus();
}

void WorkStrip::progress(qint64 done, qint64 total) {
    if (!m_stop->isEnabled()) {
        return;
    }
    m_share = total > 0 ? std::clamp(double(done) / double(total), 0.0, 1.0) : 0;
    const QLocale locale;
    m_words->setText(tr("%1: %2 of %3").arg(m_what, locale.toString(done), locale.toString(total)));
    update();
}

void WorkStrip::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    const QRect bar(0, height() - kBar, width(), kBar);
    painter.fillRect(bar, c.rule);
    painter.fillRect(QRect(bar.topLeft(), QSize(qRound(width() * m_share), kBar)), c.accent);
}

} // namespace headcap::app
