#include "app/pages/bench/check_rows.h"

#include <algorithm>

#include <QCheckBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"

namespace headcap::app {

CheckRow::CheckRow(const QString& what, QWidget* parent)
    : QWidget(parent), m_what(what), m_tick(new QCheckBox),
      m_notMade(quietButton({}, tr("Notes that it was not made, and why"))),
      m_reason(new QLineEdit) {
    m_tick->setFixedSize(kBenchControl, kBenchControl);
    m_tick->setAccessibleName(what);
    m_tick->setToolTip(tr("Made (Space)"));
    m_notMade->setText(tr("Not made …"));
    m_notMade->setCheckable(true);
    m_notMade->setMinimumHeight(kBenchControl);
    m_notMade->setAccessibleName(tr("Not made: %1").arg(what));
    m_reason->setMinimumHeight(kBenchControl);
    m_reason->setAccessibleName(tr("Why not: %1").arg(what));
    m_reason->setPlaceholderText(tr("not made because …"));
    m_reason->hide();
    auto* words = new Label(Face::body, Ink::ink, what);
    words->setWordWrap(true);
    words->installEventFilter(this);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(0);
    grid->setVerticalSpacing(kGrid);
    grid->addWidget(m_tick, 0, 0, Qt::AlignTop);
    grid->addWidget(words, 0, 1);
    grid->addWidget(m_notMade, 0, 2, Qt::AlignTop);
    grid->addWidget(m_reason, 1, 1, 1, 2);
    grid->setColumnStretch(1, 1);
    connect(m_tick, &QCheckBox::clicked, this, [this](bool isOn) {
        if (isOn) {
            m_notMade->setChecked(false);
            m_reason->hide();
            Q_EMIT made();
        }
        Q_EMIT edited();
    });
    connect(m_notMade, &QPushButton::clicked, this, [this](bool isOn) {
        m_reason->setVisible(isOn);
        if (isOn) {
            m_tick->setChecked(false);
            m_reason->setFocus(Qt::OtherFocusReason);
        }
        Q_EMIT edited();
    });
    connect(m_reason, &QLineEdit::textEdited, this, &CheckRow::edited);
    connect(m_reason, &QLineEdit::returnPressed, this, [this] {
        if (!whyNot().isEmpty()) {
            Q_EMIT refused(whyNot());
        }
    });
}

void CheckRow::show(bool isMade, const QString& whyNot) {
    m_tick->setChecked(isMade);
    m_notMade->setChecked(!isMade && !whyNot.isEmpty());
    m_reason->setText(whyNot);
    m_reason->setVisible(isRefused());
}

bool CheckRow::isMade() const {
    return m_tick->isChecked();
}

bool CheckRow::isRefused() const {
    return m_notMade->isChecked();
}

QString CheckRow::whyNot() const {
    return m_reason->text().trimmed();
}

// The words are part of the tick: a knuckle hits them as well.
bool CheckRow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::MouseButtonRelease) {
        m_tick->click();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

CheckRows::CheckRows(QWidget* parent)
    : QWidget(parent), m_heading(new Label(Face::heading, Ink::ink, tr("Checks"))) {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, kGap, 0, 0);
    down->setSpacing(kGrid);
    down->addWidget(m_heading);
    hide();
}

void CheckRows::show(const std::vector<QString>& checks) {
    std::erase_if(m_rows, [&](CheckRow* row) {
        const bool isGone = std::ranges::find(checks, row->what()) == checks.end();
        if (isGone) {
            row->hide();
            row->deleteLater();
        }
        return isGone;
    });
    for (const QString& what : checks) {
        if (std::ranges::find(m_rows, what, &CheckRow::what) != m_rows.end()) {
            continue;
        }
        auto* row = new CheckRow(what);
        m_rows.push_back(row);
        layout()->addWidget(row);
        connect(row, &CheckRow::made, this, [this, what] { Q_EMIT made(what); });
        connect(row, &CheckRow::refused, this,
                [this, what](const QString& whyNot) { Q_EMIT refused(what, whyNot); });
    }
    setVisible(!m_rows.empty());
}

CheckRow* CheckRows::troubled() const {
    const auto found = std::ranges::find_if(
        m_rows, [](const CheckRow* row) { return row->isRefused() && row->whyNot().isEmpty(); });
    return found == m_rows.end() ? nullptr : *found;
}

} // namespace headcap::app
