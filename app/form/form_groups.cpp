#include "app/form/form_groups.h"

#include <algorithm>

#include <QEvent>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/form/column_layout.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/quiet_button.h"

namespace headcap::app {

FormGroups::FormGroups(FormBase& form)
    : QObject(&form), m_form(form),
      m_more(quietButton({}, tr("What is seldom noted of such a one"))) {
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &FormGroups::look);
    connect(m_more, &QPushButton::clicked, this, &FormGroups::toggle);
}

void FormGroups::begin(const QString& heading) {
    auto* holder = new QWidget(&m_form);
    auto* down = new QVBoxLayout(holder);
    down->setContentsMargins(0, kGap, 0, 0);
    down->addWidget(new Label(Face::smallStrong, Ink::quiet, heading));
    static_cast<ColumnLayout*>(m_form.layout())->addRow(holder, true);
    m_groups.push_back({holder, m_form.rows().size()});
}

void FormGroups::finish() {
    m_form.addBelow(m_more);
    for (FieldRow* row : m_form.rows()) {
        row->installEventFilter(this);
    }
    look();
}

bool FormGroups::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShowToParent || event->type() == QEvent::HideToParent) {
        m_soon.start();
    }
    return QObject::eventFilter(watched, event);
}

void FormGroups::toggle() {
    m_isMore = !m_isMore;
    Q_EMIT m_form.edited();
    look();
}

void FormGroups::look() {
    const auto& rows = m_form.rows();
    for (std::size_t i = 0; i < m_groups.size(); ++i) {
        const std::size_t end = i + 1 < m_groups.size() ? m_groups[i + 1].first : rows.size();
        bool isAny = false;
        for (std::size_t k = m_groups[i].first; k < end; ++k) {
            isAny = isAny || !rows[k]->isHidden();
        }
        m_groups[i].heading->setVisible(isAny);
    }
    m_more->setText(m_isMore ? tr("Less") : tr("More …"));
    m_more->parentWidget()->setVisible(m_isMore ||
                                       std::ranges::any_of(m_isBehind, [](const auto& one) {
                                           return one.second && one.first->isHidden();
                                       }));
}

} // namespace headcap::app
