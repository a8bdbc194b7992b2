// The lists of lots and of kinds of material with their forms.
#include "app/session/sentences.h"
#include "app/shell/materials_view.h"
#include "app/stock/kind_form.h"
#include "app/stock/ledger_words.h"
#include "app/stock/lot_form.h"

namespace headcap::app {

void MaterialsView::buildLots() {
    using R = core::Lot;
    buildLotForm(
        m_lots->form(),
        {.session = m_session,
         .kinds =
             [this] {
                 std::vector<Choice> kinds;
                 for (const core::Material& kind : m_shelf.materials) {
                     kinds.push_back({kind.id.text(), fromCore(kind.name)});
                 }
                 return kinds;
             },
         .kind = [this](const core::Id<core::Material>& id) { return m_shelf.material(id); },
         .isEmpty =
             [this](const R& lot) {
                 const auto balance = m_index ? m_index->balanceOf(lot) : std::nullopt;
                 return !balance || balance->count == 0;
             },
         .takeIn = [this](const R& lot, const QString& text) { return takeIn(lot, text); }});
    m_lots->describe = [this](const R& lot) { return lotWords(lot); };
    m_lots->make = [this] { return newLot(); };
    connect(m_lots, &ListSection::currentMoved, this, &MaterialsView::showMovements);
}

QString MaterialsView::takeIn(const core::Lot& lot, const QString& text) {
    const core::Material* kind = m_shelf.material(lot.material);
    const auto amount = amountTyped(text, kind);
    if (!amount) {
        return sentence(amount.error(), Reading::amount);
    }
    auto change = core::takeIn(lot, *amount, m_shelf, {m_session.person(), m_session.clock().now()},
                               m_session.ids());
    if (!change) {
        return ledgerSentence(change.error(), kind);
    }
    const QString done = fromCore(change->sentence);
    if (m_session.apply(std::move(*change))) {
        m_session.say({Notice::Kind::done, done, true});
    }
    return {};
}

void MaterialsView::buildMaterials() {
    using R = core::Material;
    buildKindForm(m_materials->form());
    m_materials->describe = [](const R& material) {
        return RowWords{.title = fromCore(material.name),
                        .detail = material.removal.empty()
                                      ? QString{}
                                      : tr("comes off by: %1").arg(fromCore(material.removal)),
                        .right = words(material.kind)};
    };
    m_materials->make = [this]() -> std::optional<R> { return R{.id = m_session.ids().next<R>()}; };
    m_materials->list().setMarkWidth(0);
    connect(m_materials, &ListSection::currentMoved, this, &MaterialsView::showSheets);
}

} // namespace headcap::app
