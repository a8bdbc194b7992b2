// The rows of a step that is being written.
#include "app/pages/bench/step_fields.h"

#include <QLineEdit>
#include <QVBoxLayout>

#include "app/form/column_layout.h"
#include "app/form/moment.h"
#include "app/form/record_choices.h"
#include "app/look/fold_heading.h"
#include "app/look/grid.h"
#include "app/pages/bench/step_words.h"
#include "app/pages/place_in_book.h"
#include "core/treatment/approval.h"
#include "core/treatment/techniques_in_force.h"
#include "core/values/decimal.h"
#include "core/values/spoken_time.h"

namespace headcap::app {

void StepFields::buildWhat() {
    using R = core::Step;
    m_technique = &m_form->term(tr("Technique"), &R::technique, techniqueTerms(m_session));
    m_technique->placeholder(tr("guarding, resewing …"));
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
    addMinutes();
    addMaterials();
    m_what = &m_form->lines(tr("What"), &R::description);
    m_removed = &m_form->text(tr("Taken out"), &R::removed).placeholder(tr("old linings, glue"));
    m_fate = &m_form->usedText(tr("Became of it"), &R::removedFate)
                  .placeholder(tr("kept where, given back, discarded and why"));
}

void StepFields::addMaterials() {
    auto* holder = new QWidget(m_form);
    m_materials = new QVBoxLayout(holder);
    m_materials->setContentsMargins(0, 0, 0, kGap);
    static_cast<ColumnLayout*>(m_form->layout())->addRow(holder, true);
}

void StepFields::beginFold(Fold fold, const QString& name) {
    auto* heading = new FoldHeading(name, m_form);
    m_folds[static_cast<std::size_t>(fold)].heading = heading;
    static_cast<ColumnLayout*>(m_form->layout())->addRow(heading, true);
    connect(heading, &QPushButton::toggled, this, &StepFields::look);
}

FieldRow& StepFields::folded(Fold fold, FieldRow& row) {
    m_folds[static_cast<std::size_t>(fold)].rows.push_back(&row);
    connect(&row, &FieldRow::edited, this, &StepFields::look);
    return row;
}

void StepFields::buildWhen() {
    beginFold(Fold::when, tr("When, by whom"));
    addBegun();
    folded(Fold::when, *m_begun);
    folded(Fold::when, m_form->pick(tr("By"), &core::Step::who, peopleOf(m_session)));
    addSets();
    folded(Fold::when, *m_sets);
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

void StepFields::buildKind() {
    using R = core::Step;
    beginFold(Fold::kind, tr("Kind, how undone"));
    m_kind = &folded(Fold::kind, m_form->choice(tr("Kind"), &R::kind));
    m_line = &folded(
        Fold::kind,
        m_form->pick(tr("Carries out"), &R::line, approved()).placeholder(tr("the approved line")));
    m_reversibility = &folded(Fold::kind, m_form->choice(tr("Undone"), &R::reversibility));
    m_undoing = &folded(Fold::kind,
                        m_form->lines(tr("How"), &R::undoing).placeholder(tr("how it is undone")));
}

// A number with its unit, kept in a whole number of its parts.
void StepFields::buildConditions() {
    using R = core::Step;
    beginFold(Fold::conditions, tr("Conditions"));
    const auto number = [this](const QString& label, std::optional<std::int64_t> R::*member,
                               int places, const QString& unit,
                               const QString& example) -> FieldRow& {
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
        return row;
    };
    addCondition(number(tr("Temperature"), &R::temperatureTenthsC, 1, QStringLiteral(" °C"),
                        QStringLiteral("21 °C")),
                 core::asksForTemperature);
    addCondition(number(tr("Humidity"), &R::humidityPercent, 0, QStringLiteral(" % RH"),
                        QStringLiteral("55 % RH")),
                 core::asksForHumidity);
    addCondition(m_form->usedText(tr("Strength"), &R::concentration).placeholder(tr("2 % w/v")),
                 core::asksForStrength);
    addCondition(m_form->usedText(tr("Pressure"), &R::pressure).placeholder(tr("under 6 kg")),
                 core::asksForPressure);
}

void StepFields::addCondition(FieldRow& row, core::AsksFor asks) {
    m_conditions.push_back({&folded(Fold::conditions, row), asks});
}

Choices StepFields::approved() const {
    return [this] {
        std::vector<Choice> choices;
        if (m_file) {
            for (const core::ProposalLine* line : core::approvedLines(*m_file)) {
                choices.push_back(
                    {line->id.text(), fromCore(core::lineTitle(*line, m_file->techniques))});
            }
        }
        return choices;
    };
}

} // namespace headcap::app
