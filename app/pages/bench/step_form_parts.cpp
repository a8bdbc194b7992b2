// The form of a step laid out, and its parts wired to one another.
#include <algorithm>

#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

#include "app/look/fonts.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/tab_order.h"
#include "app/pages/bench/check_rows.h"
#include "app/pages/bench/step_fields.h"
#include "app/pages/bench/step_form.h"
#include "app/pages/bench/uses_editor.h"
#include "app/session/actions.h"

namespace headcap::app {
namespace {

constexpr int kTickMs = 5'000;

} // namespace

void StepForm::connectParts() {
    connect(m_dropClock, &QPushButton::clicked, this, [this] {
        if (m_clock) {
            Q_EMIT dropClockAsked(*m_clock);
        }
    });
    connect(m_log, &QPushButton::clicked, this, &StepForm::logAsked);
    connect(m_drop, &QPushButton::clicked, this, &StepForm::dropAsked);
    connect(m_fields, &StepFields::adviceChanged, this, [this](const QString& words) {
        m_advice->setText(words);
        m_advice->setVisible(!words.isEmpty());
    });
    connect(m_fields, &StepFields::techniqueChanged, this, [this](const std::string& technique) {
        showChecks(technique);
        m_uses->follow(technique);
    });
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, m_fields, &StepFields::tick);
    timer->start(kTickMs);
    m_setAnew->setSingleShot(true);
    connect(m_setAnew, &QTimer::timeout, this, [this] { tabAsSet(*this); });
    connect(m_uses, &UsesEditor::rowsChanged, m_setAnew, qOverload<>(&QTimer::start));
}

void StepForm::layOut() {
    m_heading->setWordWrap(true);
    m_advice->setWordWrap(true);
    m_advice->hide();
    m_log->setDefault(true);
    m_log->setToolTip(tipOf(ActionId::logStep));
    for (QPushButton* button : {m_log, m_drop, m_dropClock}) {
        button->setMinimumHeight(kBenchControl);
    }
    for (FieldRow* row : m_fields->form().rows()) {
        row->setLeastHeight(kBenchControl);
    }
    m_reason->setLeastHeight(kBenchControl);
    m_reason->placeholder(tr("what was wrong in it"));
    // Of the step and of its materials on one column.
    const QFontMetrics small{faceFont(Face::small)};
    const int label = std::max(m_fields->form().widestLabel(),
                               small.horizontalAdvance(tr("Used because")) + kGrid);
    m_fields->alignLabels(label);
    m_uses->alignLabels(label);
    m_reason->setLabelWidth(label);
    m_fields->materials().addWidget(m_advice);
    m_fields->materials().addWidget(m_uses);

    auto* sheet = new QWidget;
    auto* rows = new QVBoxLayout(sheet);
    rows->setContentsMargins(0, 0, kSpace, 0);
    rows->setSpacing(kGap);
    rows->addWidget(m_reason);
    rows->addWidget(&m_fields->form());
    rows->addWidget(m_checks);
    rows->addStretch();
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(sheet);

    auto* ways = new QHBoxLayout;
    ways->setSpacing(kGap);
    ways->addWidget(m_log, 2);
    ways->addWidget(m_drop, 1);
    ways->addWidget(m_dropClock, 1);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 3 * kGrid, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_heading);
    down->addWidget(m_scroll, 1);
    down->addLayout(ways);
}

} // namespace headcap::app
