#include "app/stock/mixing_view.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/form/ruled_list.h"
#include "app/look/grid.h"
#include "app/look/label.h"
#include "app/look/scrolled_page.h"
#include "app/session/session.h"
#include "app/session/words.h"
#include "app/stock/mix_editor.h"
#include "app/stock/plain_form.h"
#include "app/stock/strength_calculator.h"
#include "app/stock/titration_form.h"
#include "core/materials/ledger_in_brief.h"

namespace headcap::app {
namespace {

constexpr int kListWidth = 320;

} // namespace

MixingView::MixingView(Session& session, QWidget* parent)
    : View(parent), m_session(session), m_list(new RuledList(tr("Recipes"))),
      m_editor(new MixEditor(session)) {
    auto* down = scrolledPage(
        this, title(),
        tr("A recipe, scaled to what is wanted, becomes a lot; its parts leave theirs."));
    down->addSpacing(kSection);
    m_list->setMarkWidth(0);
    m_list->setFixedWidth(kListWidth);
    auto* across = new QHBoxLayout;
    across->setSpacing(kSection);
    across->addWidget(m_list, 0, Qt::AlignTop);
    across->addWidget(m_editor, 1);
    down->addLayout(across);
    addHeading(*down, tr("How much of what"));
    down->addWidget(new StrengthCalculator(session));
    addHeading(*down, tr("Alkali reserve by back titration"));
    down->addWidget(new TitrationForm(session));
    down->addStretch(1);
    connect(m_list, &RuledList::currentMoved, this, &MixingView::showChosen);
    // The next mix has the next number.
    connect(m_editor, &MixEditor::booked, this, [this](const QString& number) {
        m_shown.reset();
        showChosen();
        m_editor->offerLabel(number);
    });
    connect(m_editor, &MixEditor::labelAsked, this, &MixingView::goToLabel);
    connect(m_list, &RuledList::opened, this, [this] { m_editor->form()->focusFirst(); });
}

bool MixingView::enter(const Destination& destination) {
    if (m_editor->form() == nullptr || !m_editor->form()->isEdited()) {
        m_shown.reset(); // numbers and lots as they are now
    }
    refresh();
    if (destination.record) {
        m_list->select(destination.record->id);
    }
    m_list->setFocus();
    return true;
}

void MixingView::refresh() {
    m_session.guarded([this] {
        m_shelf = *core::shelfInBrief(m_session.records());
        std::vector<core::Recipe> own;
        std::vector<core::RecipePart> parts;
        for (auto& one : core::all<core::Recipe>(m_session.records())) {
            own.push_back(std::move(one.record));
        }
        for (auto& one : core::all<core::RecipePart>(m_session.records())) {
            parts.push_back(std::move(one.record));
        }
        m_recipes.clear();
        std::vector<RuledModel::Row> rows;
        for (core::RecipeCard& card : core::allRecipes(own, parts)) {
            auto id = core::Uuid::fromText(card.key);
            if (!id) {
                id = m_keys.try_emplace(card.key, m_session.ids().nextUuid()).first->second;
            }
            rows.push_back({*id, RowWords{.title = fromCore(card.name),
                                          .detail = card.isOwn ? tr("our own") : QString{}}});
            m_recipes.insert_or_assign(*id, std::move(card));
        }
        const auto first = rows.front().id;
        m_list->show(std::move(rows));
        if (!m_list->current()) {
            m_list->select(first);
        }
        m_editor->setShelf(m_shelf);
        showChosen();
    });
}

void MixingView::showChosen() {
    const auto id = m_list->current();
    if (const auto at = id ? m_recipes.find(*id) : m_recipes.end();
        at != m_recipes.end() && m_shown != id) {
        m_shown = id;
        m_editor->show(at->second, m_shelf);
        m_editor->standAfter(m_list);
    }
}

void MixingView::goToLabel(const QString& number) {
    m_session.guarded([&] {
        const auto lots = core::typed<core::Lot>(m_session.records().allWith(
            core::RecordKind::lot, core::fieldName(&core::Lot::number), toCore(number)));
        if (!lots.empty()) {
            Q_EMIT goAsked({.view = ViewId::stock, .record = core::refOf(lots.back().record.id)});
        }
    });
}

} // namespace headcap::app
