#include "app/pages/bench/step_fields.h"

#include "app/form/moment.h"
#include "app/form/record_choices.h"
#include "app/pages/bench/step_words.h"
#include "app/pages/place_in_book.h"
#include "core/treatment/approval.h"
#include "core/values/decimal.h"

namespace headcap::app {
namespace {

constexpr std::chrono::hours kForgotten{12}; // a clock that ran longer says nothing

core::Instant endOf(const core::Step& step) {
    return step.at + step.minutes;
}

QString adviceOf(const core::Technique* technique) {
    if (technique == nullptr) {
        return {};
    }
    QStringList parts;
    const auto add = [&](const QString& lead, const std::vector<std::string>& texts) {
        QStringList said;
        for (const std::string& text : texts) {
            said << fromCore(text);
        }
        if (!said.isEmpty()) {
            parts << lead.arg(said.join(QStringLiteral("; ")));
        }
    };
    add(StepFields::tr("First: %1."), technique->before);
    add(StepFields::tr("Mind: %1."), technique->cautions);
    return parts.join(QLatin1Char('\n'));
}

Choices techniqueChoices() {
    return [] {
        std::vector<Choice> choices;
        for (const core::Technique& technique : core::techniques()) {
            choices.push_back({technique.key, fromCore(technique.name)});
        }
        return choices;
    };
}

} // namespace

StepFields::StepFields(Session& session, QObject* parent)
    : QObject(parent), m_session(session), m_form(new RecordForm<core::Step>(session, tr("Step"))) {
    buildWhat();
    buildWhen();
    buildUndoing();
    buildConditions();
    connect(m_technique, &FieldRow::edited, this, &StepFields::followTechnique);
    connect(m_kind, &FieldRow::edited, this, &StepFields::followKind);
    connect(m_removed, &FieldRow::edited, this, &StepFields::followKind);
    for (FieldRow* row : {m_kind, m_reversibility, m_undoing}) {
        connect(row, &FieldRow::edited, this, [this, row] { m_touched.insert(row); });
    }
}

void StepFields::buildWhat() {
    using R = core::Step;
    m_technique = &m_form->term(tr("Technique"), &R::technique, techniqueChoices());
    m_technique->placeholder(tr("guarding, resewing …"));
    m_kind = &m_form->choice(tr("Kind"), &R::kind);
    m_part = &m_form->pick(tr("Volume"), &R::part, [this] {
        std::vector<Choice> choices;
        for (const core::Item& part : m_file ? m_file->parts : std::vector<core::Item>{}) {
            choices.push_back(
                {part.id.text(),
                 fromCore(part.volumeLabel.empty() ? core::headingOf(part) : part.volumeLabel)});
        }
        return choices;
    });
    m_form->usedText(tr("Where"), &R::place)
        .placeholder(tr("K7, C1–C4, spine"))
        .understood(placeInBook(m_file));
    m_what = &m_form->lines(tr("What"), &R::description);
    m_removed = &m_form->text(tr("Taken out"), &R::removed).placeholder(tr("old linings, glue"));
    m_fate = &m_form->usedText(tr("Became of it"), &R::removedFate)
                  .placeholder(tr("kept where, given back, discarded and why"));
    m_line =
        &m_form->pick(tr("Carries out"), &R::line, approved()).placeholder(tr("the approved line"));
}

void StepFields::buildWhen() {
    addBegun();
    addMinutes();
    m_form->pick(tr("By"), &core::Step::who, peopleOf(m_session));
    addSets();
}

void StepFields::addBegun() {
    m_begun = &m_form->bind(
        tr("Begun"), new QLineEdit, false,
        [this](const core::Step& step) { return momentText(step.at, m_session.clock()); },
        [this](core::Step& step, const QString& text) {
            const auto at = readMoment(text, m_session.clock());
            if (!at) {
                return tr("Write a time, 14:10, or a day and a time, 5 March 14:10.");
            }
            step.at = *at;
            return QString{};
        });
    m_begun->understood([this](const QString& text) {
        const auto at = readMoment(text, m_session.clock());
        return at ? timeAndDay(*at, m_session.clock()) : QString{};
    });
}

void StepFields::addMinutes() {
    m_minutes = &m_form->bind(
        tr("Took"), new QLineEdit, false,
        [](const core::Step& step) {
            return step.minutes > core::Minutes{0} ? printed(step.minutes) : QString{};
        },
        [](core::Step& step, const QString& text) {
            step.minutes = core::Minutes{0};
            if (text.trimmed().isEmpty()) {
                return QString{};
            }
            const auto minutes = core::parseMinutes(toCore(text.trimmed()));
            if (!minutes) {
                return sentence(minutes.error(), Reading::minutes);
            }
            step.minutes = *minutes;
            return QString{};
        });
}

// Said as a span, from when the work was done.
void StepFields::addSets() {
    m_sets = &m_form->bind(
        tr("Sets for"), new QLineEdit, false,
        [](const core::Step& step) {
            return step.setsUntil
                       ? printed(std::chrono::round<core::Minutes>(*step.setsUntil - endOf(step)))
                       : QString{};
        },
        [](core::Step& step, const QString& text) {
            step.setsUntil.reset();
            if (text.trimmed().isEmpty()) {
                return QString{};
            }
            const auto minutes = core::parseMinutes(toCore(text.trimmed()));
            if (!minutes) {
                return sentence(minutes.error(), Reading::minutes);
            }
            step.setsUntil = endOf(step) + *minutes;
            return QString{};
        });
    m_sets->placeholder(tr("setting, drying or pressing: 2 h"));
}

void StepFields::buildUndoing() {
    using R = core::Step;
    m_reversibility = &m_form->choice(tr("Undone"), &R::reversibility);
    m_undoing = &m_form->lines(tr("How"), &R::undoing).placeholder(tr("how it is undone"));
}

// A number with its unit, kept in a whole number of its parts.
void StepFields::buildConditions() {
    using R = core::Step;
    const auto number = [this](const QString& label, std::optional<std::int64_t> R::*member,
                               int places, const QString& unit, const QString& example) {
        FieldRow& row = m_form->bind(
            label, new QLineEdit, false,
            [member, places, unit](const R& step) {
                return step.*member ? fromCore(core::decimalText(*(step.*member), places)) + unit
                                    : QString{};
            },
            [member, places, unit, example](R& step, const QString& text) {
                step.*member = std::nullopt;
                QString typed = text.trimmed();
                for (const QChar& sign : unit) {
                    typed.remove(sign);
                }
                if (typed.isEmpty()) {
                    return QString{};
                }
                const auto read = core::parseDecimal(toCore(typed), places);
                if (!read) {
                    return tr("Write it as %1.").arg(example);
                }
                step.*member = *read;
                return QString{};
            });
        row.placeholder(example);
        m_conditions.push_back(&row);
    };
    number(tr("Temperature"), &R::temperatureTenthsC, 1, QStringLiteral(" °C"),
           QStringLiteral("21 °C"));
    number(tr("Humidity"), &R::humidityPercent, 0, QStringLiteral(" % RH"),
           QStringLiteral("55 % RH"));
    m_conditions.push_back(
        &m_form->usedText(tr("Strength"), &R::concentration).placeholder(tr("2 % w/v")));
    m_conditions.push_back(
        &m_form->usedText(tr("Pressure"), &R::pressure).placeholder(tr("under 6 kg")));
}

// They matter where moisture or a setting time comes in; what was written stays.
void StepFields::followConditions(const core::Technique* technique) {
    const bool matter =
        technique != nullptr && (technique->wets || technique->sets > core::Minutes{0});
    for (FieldRow* row : m_conditions) {
        row->setVisible(matter || !row->text().isEmpty());
    }
}

Choices StepFields::approved() const {
    return [this] {
        std::vector<Choice> choices;
        if (m_file) {
            for (const core::ProposalLine* line : core::approvedLines(*m_file)) {
                choices.push_back({line->id.text(), fromCore(core::lineTitle(*line))});
            }
        }
        return choices;
    };
}

void StepFields::show(const core::Step& step, const core::JobFile& file) {
    m_file = file;
    m_touched.clear();
    m_followed = step.technique;
    m_form->showDraft(step);
    m_part->setVisible(!file.parts.empty());
    m_line->setVisible(!core::approvedLines(file).empty());
    followKind();
    tick();
    const core::Technique* technique = core::techniqueNamed(step.technique);
    followConditions(technique);
    Q_EMIT adviceChanged(adviceOf(technique));
}

void StepFields::fill(FieldRow* row, const QString& text) {
    if (!m_touched.contains(row)) {
        row->rewrite(text);
    }
}

void StepFields::followTechnique() {
    const auto choices = techniqueChoices()();
    const QString typed = m_technique->text().trimmed();
    const core::Technique* technique = nullptr;
    for (const Choice& one : choices) {
        if (one.words.compare(typed, Qt::CaseInsensitive) == 0) {
            technique = core::techniqueNamed(one.key);
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
    m_reversibility->setVisible(isWork);
    m_undoing->setVisible(isWork);
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
    if (!at || *at > m_session.clock().now() || m_session.clock().now() - *at > kForgotten) {
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

FieldRow* StepFields::asked(const core::Step& step) {
    if (FieldRow* wrong = m_form->troubled()) {
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
