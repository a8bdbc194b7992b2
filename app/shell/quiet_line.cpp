#include "app/shell/quiet_line.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"

namespace headcap::app {

QuietLine::QuietLine(QWidget* parent)
    : QWidget(parent), m_words(new Label(Face::body)), m_ways(new QHBoxLayout) {
    m_words->setWordWrap(true);
    auto* close = quietButton(QStringLiteral("×"), tr("Closes the line; nothing is lost"));
    close->setAccessibleName(tr("Close the line"));
    close->setFocusPolicy(Qt::NoFocus);
    connect(close, &QPushButton::clicked, this, [this] {
        hide();
        Q_EMIT closed();
    });
    m_ways->setSpacing(kGap);
    auto* across = new QHBoxLayout(this);
    across->setContentsMargins(kPageMargin, kGrid, kGap, kGrid);
    across->setSpacing(kSpace);
    across->addWidget(m_words, 1);
    across->addLayout(m_ways);
    across->addWidget(close);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    hide();
}

QPushButton* QuietLine::addWay(ActionId id, const QString& words) {
    auto* button = new QPushButton(words);
    button->setToolTip(tipOf(id));
    button->setFocusPolicy(Qt::NoFocus);
    m_ways->addWidget(button);
    return button;
}

void QuietLine::say(const QString& sentence) {
    const bool isNews = sentence != m_words->text();
    m_words->setText(sentence);
    setAccessibleName(sentence);
    if (sentence.isEmpty()) {
        hide();
    } else if (isNews) {
        show();
        QAccessibleEvent event(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&event);
    }
}

QString QuietLine::sentence() const {
    return isHidden() ? QString{} : m_words->text();
}

void QuietLine::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Colours& c = coloursFor(palette());
    painter.fillRect(rect(), c.raised);
    painter.fillRect(QRect(0, 0, 4, height()), c.accent);
    painter.fillRect(QRect(0, height() - 1, width(), 1), c.rule);
}

} // namespace headcap::app
