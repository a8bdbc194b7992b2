#include "app/pages/proposal/departure_list.h"

#include <QLineEdit>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"

namespace headcap::app {

DepartureList::DepartureList(QWidget* parent) : QWidget(parent) {
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(new Label(Face::heading, Ink::ink, tr("Approved, and done")));
    down->addWidget(new HairRule);
}

void DepartureList::show(const core::JobFile& file, const core::Clock& clock) {
    m_file = file;
    m_departures = core::departures(*m_file, clock);
    if (m_sheet != nullptr) {
        m_sheet->hide();
        m_sheet->deleteLater(); // a field of it may be the one that spoke
    }
    m_sheet = new QWidget;
    m_rows = new QVBoxLayout(m_sheet);
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(kGrid);
    for (const core::Departure& one : m_departures) {
        addRow(one);
    }
    if (m_departures.empty()) {
        m_rows->addWidget(
            new Label(Face::body, Ink::quiet, tr("What was done is what was approved, so far.")));
    }
    layout()->addWidget(m_sheet);
    setVisible(core::approval(*m_file) != nullptr);
}

void DepartureList::addRow(const core::Departure& one) {
    auto* said = new Label(Face::body, one.isOpen() ? Ink::open : Ink::ink, fromCore(one.sentence));
    said->setRunning();
    m_rows->addWidget(said);
    if (one.explanation != nullptr) {
        auto* why = new Label(Face::small, Ink::quiet,
                              tr("Explained: %1").arg(fromCore(one.explanation->text)));
        why->setRunning();
        m_rows->addWidget(why);
    } else if (one.notice != nullptr) {
        auto* why = new Label(Face::small, Ink::quiet,
                              tr("The owner was told: %1").arg(fromCore(one.notice->text)));
        why->setRunning();
        m_rows->addWidget(why);
    } else {
        auto* field = new QLineEdit;
        field->setPlaceholderText(tr("explained by … (Enter)"));
        field->setAccessibleName(tr("Explain: %1").arg(fromCore(one.sentence)));
        connect(field, &QLineEdit::returnPressed, this, [this, field, one] {
            const QString text = field->text().trimmed();
            if (!text.isEmpty()) {
                Q_EMIT explained(one.subject, fromCore(core::ruleOf(one.kind)), text);
            }
        });
        m_rows->addWidget(field);
    }
    m_rows->addSpacing(kGap);
}

} // namespace headcap::app
