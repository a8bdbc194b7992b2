#include "app/pages/bench/step_details.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/pages/bench/check_rows.h"
#include "app/pages/bench/step_words.h"
#include "app/session/words.h"
#include "core/treatment/approval.h"
#include "core/treatment/step_checks.h"
#include "core/treatment/work_days.h"
#include "core/values/decimal.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

constexpr int kLabelWidth = 104;

QString nameOf(const core::JobFile& file, const std::optional<core::Id<core::Person>>& id) {
    const core::Person* person = file.person(id);
    return person == nullptr ? QString{} : fromCore(person->name);
}

} // namespace

StepDetails::StepDetails(QWidget* parent)
    : QWidget(parent), m_title(new Label(Face::slip)),
      m_struck(new Label(Face::smallStrong, Ink::open)), m_scroll(new QScrollArea),
      m_correct(new QPushButton(tr("Correct …"))), m_strike(new QPushButton(tr("Strike …"))),
      m_reasonRow(new QWidget), m_reason(new QLineEdit) {
    m_title->setWordWrap(true);
    m_struck->setWordWrap(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_correct->setToolTip(tr("Logs it anew, rightly; this entry stays, struck through"));
    m_strike->setToolTip(tr("It stays in the log, struck through, with your reason (Del)"));
    for (QPushButton* button : {m_correct, m_strike}) {
        button->setMinimumHeight(kBenchControl);
    }
    m_reason->setMinimumHeight(kBenchControl);
    m_reason->setAccessibleName(tr("Reason for striking"));
    m_reason->setPlaceholderText(tr("struck because … (Enter)"));
    auto* reasonBox = new QHBoxLayout(m_reasonRow);
    reasonBox->setContentsMargins(0, 0, 0, 0);
    reasonBox->addWidget(m_reason);

    auto* ways = new QHBoxLayout;
    ways->setSpacing(kGap);
    ways->addWidget(m_correct, 1);
    ways->addWidget(m_strike, 1);
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 3 * kGrid, 0, 0);
    down->setSpacing(kGap);
    down->addWidget(m_title);
    down->addWidget(m_struck);
    down->addWidget(m_scroll, 1);
    down->addWidget(m_reasonRow);
    down->addLayout(ways);
    m_reasonRow->hide();

    connect(m_correct, &QPushButton::clicked, this, &StepDetails::correctAsked);
    connect(m_strike, &QPushButton::clicked, this, &StepDetails::askReason);
    connect(m_reason, &QLineEdit::returnPressed, this,
            [this] { Q_EMIT strikeAsked(m_reason->text().trimmed()); });
}

void StepDetails::show(const core::JobFile& file, const core::Step& step,
                       const core::Clock& clock) {
    if (m_step != step.id) {
        m_reason->clear();
        m_reasonRow->hide();
    }
    m_step = step.id;
    m_title->setText(titleOf(file, step));
    const bool isStruck = step.struckAt.has_value();
    if (isStruck) {
        m_struck->setText(tr("Struck %1 by %2: %3")
                              .arg(timeAndDay(*step.struckAt, clock), nameOf(file, step.struckBy),
                                   fromCore(step.struckWhy)));
        m_reasonRow->hide();
    }
    m_struck->setVisible(isStruck);
    m_correct->setVisible(!isStruck);
    m_strike->setVisible(!isStruck);
    auto* sheet = new QWidget;
    auto* sheetDown = new QVBoxLayout(sheet);
    sheetDown->setContentsMargins(0, 0, kGap, 0);
    m_facts = new QGridLayout;
    sheetDown->addLayout(m_facts);
    m_facts->setHorizontalSpacing(kSpace);
    m_facts->setVerticalSpacing(kGap);
    m_facts->setColumnMinimumWidth(0, kLabelWidth);
    m_facts->setColumnStretch(1, 1);
    addFacts(file, step, clock);
    addUses(file, step);
    addChecks(file, step);
    sheetDown->addWidget(m_checks);
    sheetDown->addStretch(1);
    if (QWidget* old = m_scroll->takeWidget()) {
        old->hide();
        old->deleteLater(); // a check of it may be the one that was answered
    }
    m_scroll->setWidget(sheet);
}

// Those answered are facts; those open can be answered here.
void StepDetails::addChecks(const core::JobFile& file, const core::Step& step) {
    for (const core::StepCheck& check : file.stepChecks) {
        if (check.step == step.id) {
            addFact(check.done ? tr("Checked") : tr("Not checked"),
                    check.done
                        ? fromCore(check.what)
                        : tr("%1, because %2").arg(fromCore(check.what), fromCore(check.whyNot)));
        }
    }
    std::vector<QString> open;
    for (const std::string& what : core::openChecks(file, step)) {
        open.push_back(fromCore(what));
    }
    m_checks = new CheckRows;
    m_checks->show(open);
    connect(m_checks, &CheckRows::made, this, &StepDetails::checkMade);
    connect(m_checks, &CheckRows::refused, this, &StepDetails::checkRefused);
}

void StepDetails::addFact(const QString& label, const QString& words) {
    if (words.isEmpty()) {
        return;
    }
    const int row = m_facts->rowCount();
    m_facts->addWidget(new Label(Face::small, Ink::quiet, label), row, 0, Qt::AlignTop);
    auto* said = new Label(Face::body, Ink::ink, words);
    said->setWordWrap(true);
    said->setAccessibleName(QStringLiteral("%1: %2").arg(label, words));
    m_facts->addWidget(said, row, 1, Qt::AlignTop);
}

void StepDetails::addFacts(const core::JobFile& file, const core::Step& step,
                           const core::Clock& clock) {
    const auto text = [](const std::string& words) { return fromCore(words); };
    addFact(tr("Begun"), timeAndDay(step.at, clock));
    addFact(tr("Took"),
            step.minutes > core::Minutes{0} ? text(core::toText(step.minutes)) : tr("not noted"));
    addFact(tr("By"), nameOf(file, step.who));
    addFact(tr("Kind"), words(step.kind));
    addFact(tr("Technique"), text(file.techniques.nameOf(step.technique)));
    const core::Item* part = file.part(step.part);
    addFact(tr("Volume"), part == nullptr ? QString{} : text(part->volumeLabel));
    addFact(tr("Where"), text(step.place));
    addFact(tr("Taken out"), text(step.removed));
    addFact(tr("Became of it"), text(step.removedFate));
    if (step.kind != core::StepKind::examination) {
        addFact(tr("Undone"), words(step.reversibility));
        addFact(tr("How"), text(step.undoing));
    }
    if (step.setsUntil) {
        addFact(tr("Sets until"), timeAndDay(*step.setsUntil, clock));
    }
    if (step.temperatureTenthsC) {
        addFact(tr("Temperature"),
                text(core::decimalText(*step.temperatureTenthsC, 1)) + QStringLiteral(" °C"));
    }
    if (step.humidityPercent) {
        addFact(tr("Humidity"), tr("%1 % RH").arg(*step.humidityPercent));
    }
    addFact(tr("Strength"), text(step.concentration));
    addFact(tr("Pressure"), text(step.pressure));
    for (const core::ProposalLine& line : file.lines) {
        if (step.line == line.id) {
            addFact(tr("Carries out"), text(core::lineTitle(line, file.techniques)));
        }
    }
    if (const core::Step* old = file.step(step.corrects)) {
        addFact(tr("Corrects"), tr("%1 (%2)").arg(titleOf(file, *old), timeAndDay(old->at, clock)));
    }
    if (const core::Step* rightly = core::correctionOf(file, step)) {
        addFact(tr("Rightly"),
                tr("%1 (%2)").arg(titleOf(file, *rightly), timeAndDay(rightly->at, clock)));
    }
}

void StepDetails::addUses(const core::JobFile& file, const core::Step& step) {
    for (const core::MaterialUse* use : file.usesOf(step)) {
        QStringList said{usedWords(file, *use)};
        const QString role = fromCore(use->role);
        said << (use->stays       ? role
                 : role.isEmpty() ? tr("nothing of it stays")
                                  : tr("%1, nothing of it stays").arg(role));
        said << (use->place == step.place ? QString{} : fromCore(use->place));
        said << (use->removal.empty() ? QString{}
                                      : tr("comes off: %1").arg(fromCore(use->removal)));
        said << (use->overrideReason.empty()
                     ? QString{}
                     : tr("used all the same: %1").arg(fromCore(use->overrideReason)));
        said.removeAll({});
        addFact(tr("With"), said.join(QLatin1Char('\n')));
    }
}

void StepDetails::askReason() {
    m_reasonRow->show();
    m_reason->setFocus(Qt::OtherFocusReason);
}

void StepDetails::focusFirst() {
    if (m_correct->isVisible()) {
        m_correct->setFocus(Qt::OtherFocusReason);
    }
}

bool StepDetails::event(QEvent* event) {
    const bool isKey =
        event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (isKey && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        if (event->type() == QEvent::KeyPress) {
            if (m_reasonRow->isVisible()) {
                m_strike->setFocus(Qt::OtherFocusReason); // first: what is hidden loses it
                m_reasonRow->hide();
            } else {
                Q_EMIT leftBack();
            }
        }
        return true;
    }
    return QWidget::event(event);
}

} // namespace headcap::app
