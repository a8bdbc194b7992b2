#include "app/pages/bench/uses_editor.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"
#include "app/pages/bench/use_row.h"
#include "core/materials/ledger_in_brief.h"

namespace headcap::app {

UsesEditor::UsesEditor(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_down(new QVBoxLayout),
      m_add(quietButton(tr("Add a material"))) {
    m_add->setMinimumHeight(kBenchControl);
    connect(m_add, &QPushButton::clicked, this, &UsesEditor::addBlank);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, kGap, 0, 0);
    all->setSpacing(kGrid);
    all->addWidget(new Label(Face::heading, Ink::ink, tr("With")));
    all->addLayout(m_down);
    all->addWidget(m_add, 0, Qt::AlignLeft);
}

void UsesEditor::show(const core::Step& step, const std::vector<core::MaterialUse>& uses,
                      const core::JobFile& file) {
    clear();
    m_step = step;
    m_file = file;
    refresh();
    for (const core::MaterialUse& use : uses) {
        add(use);
    }
}

void UsesEditor::follow(const std::string& technique) {
    if (m_step) {
        m_step->technique = technique;
    }
    for (UseRow* row : m_rows) {
        row->follow();
    }
}

core::FitnessPurpose UsesEditor::purposeOf(const core::MaterialUse& use) const {
    const core::Day today = m_session.clock().today();
    return m_step && m_file ? core::purposeOf(use, m_step->technique, &*m_file,
                                              m_session.clock().dayOf(m_step->at))
                            : core::FitnessPurpose{.on = today};
}

void UsesEditor::clear() {
    m_step.reset();
    for (UseRow* row : m_rows) {
        row->hide();
        row->deleteLater();
    }
    m_rows.clear();
}

void UsesEditor::refresh() {
    m_session.guarded([this] { m_shelf = *core::shelfInBrief(m_session.records()); });
}

void UsesEditor::add(const core::MaterialUse& use) {
    auto* row = new UseRow(
        m_session, m_shelf, use, [this](const core::MaterialUse& one) { return purposeOf(one); },
        this);
    m_rows.push_back(row);
    m_down->addWidget(row);
    connect(row, &UseRow::removeAsked, this, [this, row] {
        std::erase(m_rows, row);
        row->hide();
        row->deleteLater();
        m_add->setFocus(Qt::OtherFocusReason);
        Q_EMIT rowsChanged();
    });
    row->form().alignLabels(std::max(m_labels, row->form().widestLabel()));
    Q_EMIT rowsChanged();
}

void UsesEditor::addBlank() {
    offerBlank();
    if (m_step) {
        m_rows.back()->form().focusFirst();
    }
}

void UsesEditor::offerBlank() {
    if (m_step && (m_rows.empty() || !m_rows.back()->isEmpty())) {
        add(core::MaterialUse{.id = m_session.ids().next<core::MaterialUse>(),
                              .job = m_step->job,
                              .step = m_step->id});
    }
}

std::vector<core::MaterialUse> UsesEditor::taken() {
    std::vector<core::MaterialUse> uses;
    for (UseRow* row : m_rows) {
        if (!row->isEmpty()) {
            uses.push_back(row->taken());
        }
    }
    return uses;
}

FieldRow* UsesEditor::troubled() const {
    for (UseRow* row : m_rows) {
        if (FieldRow* wrong = row->form().troubled()) {
            return wrong;
        }
        if (FieldRow* owed = row->isEmpty() ? nullptr : row->owedReason()) {
            return owed;
        }
    }
    return nullptr;
}

} // namespace headcap::app
