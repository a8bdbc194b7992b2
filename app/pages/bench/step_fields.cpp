#include "app/pages/bench/step_fields.h"

#include <QComboBox>

#include "app/form/moment.h"
#include "app/form/record_choices.h"
#include "app/look/fold_heading.h"
#include "app/look/grid.h"
#include "app/pages/bench/step_words.h"
#include "core/treatment/approval.h"
#include "core/treatment/clocks.h"

namespace headcap::app {
StepFields::StepFields(Session& session, QObject* parent)
    : QObject(parent), m_session(session), m_form(new RecordForm<core::Step>(session, tr("Step"))) {
    buildWhat();
    buildWhen();
    buildKind();
    buildConditions();
    connect(m_technique, &FieldRow::edited, this, &StepFields::followTechnique);
    connect(m_kind, &FieldRow::edited, this, &StepFields::followKind);
    connect(m_removed, &FieldRow::edited, this, &StepFields::followKind);
    for (FieldRow* row : {m_kind, m_reversibility, m_undoing}) {
        connect(row, &FieldRow::edited, this, [this, row] { m_touched.insert(row); });
    }
}

FoldHeading& StepFields::heading(Fold fold) {
    return *m_folds[static_cast<std::size_t>(fold)].heading;
}

void StepFields::alignLabels(int width) {
    m_form->alignLabels(width);
    for (const Folding& folding : m_folds) {
        folding.heading->setNameWidth(width + kSpace);
    }
}

void StepFields::stand(FieldRow* row, bool isWanted, bool isFirst) {
    const auto put = [row](std::set<FieldRow*>& set, bool isIn) {
        isIn ? static_cast<void>(set.insert(row)) : static_cast<void>(set.erase(row));
    };
    put(m_unwanted, !isWanted);
    put(m_first, isFirst);
}

// Folded rows say what they hold beside their heading.
void StepFields::look() {
    for (const Folding& folding : m_folds) {
        QStringList said;
        for (FieldRow* row : folding.rows) {
            const bool isWanted = !m_unwanted.contains(row);
            const bool isOpen = folding.heading->isChecked() || m_first.contains(row) ||
                                row->hasError() || row->control()->hasFocus();
            row->setVisible(isWanted && isOpen);
            if (isWanted && !isOpen) {
                const auto* box = qobject_cast<const QComboBox*>(row->control());
                said << (box != nullptr ? box->currentText() : row->text().simplified());
            }
        }
        folding.heading->setSummary(dotted(said));
    }
}

// Where the technique wets, what it asks for stands there at once; the rest is folded.
void StepFields::followConditions(const core::Technique* technique) {
    for (const Condition& one : m_conditions) {
        stand(one.row, true, technique != nullptr && technique->wets && one.asks(*technique));
    }
    stand(m_sets, true, technique != nullptr && technique->sets > core::Minutes{0});
    look();
}

void StepFields::show(const core::Step& step, const core::JobFile& file) {
    m_file = file;
    m_touched.clear();
    for (const Folding& folding : m_folds) {
        folding.heading->setChecked(false);
    }
    m_followed = step.technique;
    m_form->showDraft(step);
    m_part->setVisible(!file.parts.empty());
    stand(m_line, !core::approvedLines(file).empty());
    followKind();
    tick();
    const core::Technique* technique = file.techniques.named(step.technique);
    followConditions(technique);
    Q_EMIT adviceChanged(adviceOf(technique));
}

void StepFields::fill(FieldRow* row, const QString& text) {
    if (!m_touched.contains(row)) {
        row->rewrite(text);
    }
}

void StepFields::followTechnique() {
    const QString typed = m_technique->text().trimmed();
    const core::TechniquesInForce inForce = m_file ? m_file->techniques : core::TechniquesInForce{};
    const core::Technique* technique = nullptr;
    for (const core::Technique& one : inForce.offered()) {
        if (fromCore(one.name).compare(typed, Qt::CaseInsensitive) == 0) {
            technique = &one;
        }
    }
    Q_EMIT adviceChanged(adviceOf(technique));
    m_sets->placeholder(technique != nullptr && technique->sets > core::Minutes{0}
                            ? tr("usually %1").arg(printed(technique->sets))
                            : tr("setting, drying or pressing: 2 h"));
    followConditions(technique);
    Q_EMIT techniqueChanged(technique == nullptr ? std::string{} : technique->key);
    if (technique == nullptr || technique->key == m_followed) {
        return;
    }
    m_followed = technique->key;
    fill(m_kind, QString::number(static_cast<int>(technique->kind)));
    fill(m_reversibility, QString::number(static_cast<int>(technique->reversibility)));
    fill(m_undoing, fromCore(technique->undoing));
    followKind();
}

void StepFields::followKind() {
    const auto kind = static_cast<core::StepKind>(m_kind->text().toInt());
    const bool takesOut = kind != core::StepKind::treatment && kind != core::StepKind::examination;
    const bool isSaid = !m_removed->text().isEmpty() || !m_fate->text().isEmpty();
    m_removed->setVisible(takesOut || isSaid);
    m_fate->setVisible(takesOut || isSaid);
    const bool isWork = kind == core::StepKind::treatment || kind == core::StepKind::removal;
    stand(m_reversibility, isWork);
    stand(m_undoing, isWork);
    look();
    switch (kind) {
    case core::StepKind::uncovering:
        m_what->placeholder(tr("what was laid open; photograph it before it is covered again"));
        break;
    case core::StepKind::incident:
        m_what->placeholder(tr("what happened, and what was done about it; tell the owner"));
        break;
    default:
        m_what->placeholder(tr("in your own words"));
    }
}

std::optional<core::Minutes> StepFields::sinceBegun() const {
    const auto at = readMoment(m_begun->text(), m_session.clock());
    if (!at || *at > m_session.clock().now() ||
        m_session.clock().now() - *at > core::kLongestStretch) {
        return std::nullopt;
    }
    return std::chrono::floor<core::Minutes>(m_session.clock().now() - *at);
}

void StepFields::tick() {
    if (!m_form->record()) {
        return;
    }
    const auto since = m_form->record()->corrects ? std::nullopt : sinceBegun();
    m_minutes->placeholder(since && *since > core::Minutes{0}
                               ? tr("%1 since it was begun").arg(printed(*since))
                               : tr("55 min"));
}

core::Step StepFields::taken() {
    QStringList labels;
    core::Step step = m_form->taken(labels);
    if (step.corrects) {
        return step;
    }
    const core::Instant end = endOf(step);
    if (m_minutes->text().trimmed().isEmpty()) {
        step.minutes = sinceBegun().value_or(core::Minutes{0});
    } else if (!m_begun->isEdited()) {
        step.at = std::min(step.at, m_session.clock().now() - step.minutes);
    }
    if (step.setsUntil && m_sets->isEdited()) {
        *step.setsUntil += endOf(step) - end;
    }
    return step;
}

FieldRow* StepFields::askUndoing(const std::string& doubt) {
    if (doubt.empty()) {
        return nullptr;
    }
    m_undoing->setError(tr("The usual sentence %1. How can this be undone?").arg(fromCore(doubt)));
    look();
    return m_undoing;
}

FieldRow* StepFields::asked(const core::Step& step) {
    if (FieldRow* wrong = m_form->troubled()) {
        look();
        return wrong;
    }
    const auto ask = [](FieldRow* row, const QString& question) {
        row->setVisible(true);
        row->setError(question);
        return row;
    };
    if (step.kind == core::StepKind::removal && step.removed.empty()) {
        return ask(m_removed, tr("What was taken out?"));
    }
    if (!step.removed.empty() && step.removedFate.empty()) {
        return ask(m_fate, tr("What became of it: kept where, given back, or discarded and why?"));
    }
    if (step.kind == core::StepKind::incident && step.description.empty()) {
        return ask(m_what, tr("What happened, and what was done about it?"));
    }
    if (step.kind == core::StepKind::uncovering && step.description.empty()) {
        return ask(m_what, tr("What was laid open?"));
    }
    return nullptr;
}

} // namespace headcap::app
