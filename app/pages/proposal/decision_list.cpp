#include "app/pages/proposal/decision_list.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/style.h"
#include "core/treatment/proposal_versions.h"
#include "core/treatment/totals.h"

namespace headcap::app {

DecisionList::DecisionList(Session& session, PageEdits& edits, QWidget* parent)
    : RecordList(session, edits,
                 {tr("What the owner decided"), tr("Add a decision"),
                  tr("No answer to this version yet. An answer by telephone counts when it is "
                     "noted with who gave it and by what right.")},
                 tr("Decision"), parent),
      m_work(session), m_answers(new QWidget) {
    buildForm();
    describe = [this](const core::Decision& decision) { return wordsOf(decision); };
    make = [this]() -> std::optional<core::Decision> {
        if (!m_file || !m_proposal) {
            return std::nullopt;
        }
        return core::Decision{.id = m_work.ids().next<core::Decision>(),
                              .job = m_file->job.id,
                              .proposal = *m_proposal,
                              .option = m_option,
                              .kind = m_kind,
                              .onDay = m_work.clock().today(),
                              .means = m_means};
    };
    form().setAlso(
        [this](const core::Decision&, const core::Decision& after, core::Change& change) {
            const auto move =
                core::moveOnDecision(*m_file, after, m_work.person(), m_work.clock().now());
            if (move) {
                core::addMove(change, *m_file, *move, m_work.ids());
            }
        });
    list().setMarkWidth(96);
    setAddable(false);
    buildAnswers();
}

// The answer first, then how it came: neither is taken for granted.
void DecisionList::buildAnswers() {
    auto* down = new QVBoxLayout(m_answers);
    down->setContentsMargins(0, kGap, 0, 0);
    down->setSpacing(kGap);
    const auto rowOf = [&](const QString& lead) {
        auto* row = new QWidget;
        auto* across = new QHBoxLayout(row);
        across->setContentsMargins(0, 0, 0, 0);
        across->setSpacing(kGap);
        auto* words = new Label(Face::small, Ink::quiet, lead);
        across->addWidget(words);
        down->addWidget(row);
        return std::tuple{row, across, words};
    };
    auto* kinds = std::get<1>(rowOf(tr("The owner")));
    for (std::size_t i = 0; i < core::EnumNames<core::DecisionKind>::kNames.size(); ++i) {
        const auto kind = static_cast<core::DecisionKind>(i);
        auto* button = new QPushButton(words(kind));
        button->setAccessibleName(tr("The owner %1").arg(words(kind)));
        QObject::connect(button, &QPushButton::clicked, this, [this, kind] { ask(kind); });
        kinds->addWidget(button);
    }
    kinds->addStretch();
    QHBoxLayout* means = nullptr;
    std::tie(m_how, means, m_howWords) = rowOf({});
    for (std::size_t i = 0; i < core::EnumNames<core::DecisionMeans>::kNames.size(); ++i) {
        const auto way = static_cast<core::DecisionMeans>(i);
        auto* button = new QPushButton(words(way));
        button->setAccessibleName(tr("It came %1").arg(words(way)));
        QObject::connect(button, &QPushButton::clicked, this, [this, way] { start(m_kind, way); });
        means->addWidget(button);
    }
    means->addStretch();
    m_how->hide();
}

void DecisionList::buildForm() {
    using R = core::Decision;
    form().choice(tr("Answer"), &R::kind);
    form().pick(tr("Option"), &R::option, options());
    form()
        .usedText(tr("By"), &R::byName)
        .completed([this] {
            QStringList names;
            if (m_file) {
                names << fromCore(m_file->owner.contact) << fromCore(m_file->owner.name);
            }
            names.removeAll({});
            return names;
        })
        .placeholder(tr("who gave it"));
    form()
        .usedText(tr("By what right"), &R::authority)
        .completed([this] {
            return m_file && !m_file->owner.authority.empty()
                       ? QStringList{fromCore(m_file->owner.authority)}
                       : QStringList{};
        })
        .placeholder(tr("owner, keeper, trustees"));
    form().value(tr("On"), &R::onDay);
    form().choice(tr("How"), &R::means);
    form().value(tr("Not above"), &R::limit).placeholder(tr("400, without asking first"));
    form().lines(tr("Limits"), &R::limits).placeholder(tr("what else the owner wants to be asked"));
    form().lines(tr("Note"), &R::note);
}

Choices DecisionList::options() const {
    return [this] {
        std::vector<Choice> choices;
        if (m_file && m_proposal) {
            for (const core::ProposalOption* option : core::optionsOf(*m_file, *m_proposal)) {
                choices.push_back({option->id.text(), fromCore(option->name)});
            }
        }
        return choices;
    };
}

RowWords DecisionList::wordsOf(const core::Decision& decision) const {
    QString option;
    for (const core::ProposalOption& one : m_file->options) {
        option = decision.option == one.id ? fromCore(one.name) : option;
    }
    const bool isApproval = decision.kind == core::DecisionKind::approved ||
                            decision.kind == core::DecisionKind::approvedWithLimits;
    QStringList by{fromCore(decision.byName), fromCore(decision.authority), words(decision.means),
                   decision.limit ? tr("not above %1").arg(printed(*decision.limit)) : QString{},
                   fromCore(decision.limits)};
    return {.mark = shortDay(decision.onDay, m_work.clock().today()),
            .title = option.isEmpty() ? words(decision.kind)
                                      : tr("%1: %2").arg(words(decision.kind), option),
            .detail = dotted(by),
            .right = decision.byName.empty() ? tr("by whom?") : QString{},
            .rightInk = isApproval ? Ink::open : Ink::quiet};
}

void DecisionList::showProposal(const core::JobFile& file, const core::Id<core::Proposal>& proposal,
                                const std::optional<core::Id<core::ProposalOption>>& option) {
    m_file = file;
    m_proposal = proposal;
    // Which of several was meant is asked, and not taken from what happens to be shown.
    const auto withWork = std::ranges::count_if(
        core::optionsOf(file, proposal),
        [&](const core::ProposalOption* one) { return !core::linesOf(file, one->id).empty(); });
    m_option =
        withWork == 1 && option && !core::linesOf(file, *option).empty() ? option : std::nullopt;
    std::vector<core::Decision> decisions;
    for (const core::Decision& decision : file.decisions) {
        if (decision.proposal == proposal) {
            decisions.push_back(decision);
        }
    }
    std::ranges::stable_sort(decisions, {}, &core::Decision::onDay);
    show(decisions, file);
}

void DecisionList::ask(core::DecisionKind kind) {
    m_kind = kind;
    m_howWords->setText(tr("“%1” came").arg(words(kind)));
    m_how->show();
    if (auto* first = m_how->findChild<QPushButton*>()) {
        first->setFocus(Qt::OtherFocusReason);
    }
}

void DecisionList::start(core::DecisionKind kind, core::DecisionMeans means) {
    m_kind = kind;
    m_means = means;
    m_how->hide();
    startNew();
    const bool asksOption = !m_option && (kind == core::DecisionKind::approved ||
                                          kind == core::DecisionKind::approvedWithLimits);
    if (FieldRow* first = form().rowLabelled(asksOption ? tr("Option") : tr("By"))) {
        first->control()->setFocus(Qt::OtherFocusReason);
    }
}

} // namespace headcap::app
