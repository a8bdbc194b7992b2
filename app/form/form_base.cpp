#include "app/form/form_base.h"

#include <algorithm>

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>

#include "app/form/column_layout.h"
#include "app/look/grid.h"

namespace headcap::app {
namespace {

constexpr int kWidestLabel = 168;

} // namespace

FormBase::FormBase(const QString& subject, QWidget* parent)
    : QWidget(parent), m_subject(subject), m_columns(new ColumnLayout(this)) {
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

FieldRow& FormBase::addRow(const QString& label, QWidget* control, bool isWide) {
    auto* row = new FieldRow(label, control, this);
    m_columns->addRow(row, isWide);
    m_rows.push_back(row);
    connect(row, &FieldRow::left, this, &FormBase::left);
    connect(row, &FieldRow::edited, this, &FormBase::edited);
    alignLabels(widestLabel());
    return *row;
}

bool FormBase::holdsWords(const FieldRow& row) {
    if (qobject_cast<const QCheckBox*>(row.control()) != nullptr) {
        return row.text() == QLatin1String("1");
    }
    return qobject_cast<const QComboBox*>(row.control()) == nullptr &&
           !row.text().trimmed().isEmpty();
}

int FormBase::widestLabel() const {
    int widest = 0;
    for (const FieldRow* row : m_rows) {
        widest = std::max(widest, row->labelWidth());
    }
    return std::min(widest, kWidestLabel);
}

void FormBase::alignLabels(int width) {
    for (FieldRow* row : m_rows) {
        row->setLabelWidth(width);
    }
    for (QWidget* below : m_below) {
        below->setContentsMargins(width + kSpace, 0, 0, 0);
    }
}

void FormBase::addBelow(QWidget* control) {
    auto* holder = new QWidget(this);
    auto* across = new QHBoxLayout(holder);
    across->setContentsMargins(0, 0, 0, 0);
    across->addWidget(control, 0, Qt::AlignLeft);
    m_columns->addRow(holder, true);
    m_below.push_back(holder);
    alignLabels(widestLabel());
}

bool FormBase::isEdited() const {
    return std::any_of(m_rows.begin(), m_rows.end(),
                       [](const FieldRow* row) { return row->isEdited(); });
}

FieldRow* FormBase::troubled() const {
    const auto at = std::find_if(m_rows.begin(), m_rows.end(), [](const FieldRow* row) {
        return row->hasError() || row->isConflicted();
    });
    return at == m_rows.end() ? nullptr : *at;
}

FieldRow* FormBase::rowLabelled(const QString& label) const {
    const auto at = std::find_if(m_rows.begin(), m_rows.end(),
                                 [&](const FieldRow* row) { return row->label() == label; });
    return at == m_rows.end() ? nullptr : *at;
}

void FormBase::focusFirst() {
    for (FieldRow* row : m_rows) {
        if (row->control()->isEnabled()) {
            row->control()->setFocus(Qt::TabFocusReason);
            return;
        }
    }
}

} // namespace headcap::app
