#include "app/stock/house_value_list.h"

#include "app/session/words.h"
#include "app/stock/plain_form.h"
#include "core/materials/sheet_stock.h"

namespace headcap::app {

HouseValueList::HouseValueList(Session& session, QWidget* parent)
    : HouseValueList(session, new PlainForm, parent) {}

HouseValueList::HouseValueList(Session& session, PlainForm* form, QWidget* parent)
    : ListSection({tr("House values"), tr("Add a value"), tr("The figures the house goes by.")},
                  form, parent),
      m_session(session), m_form(form), m_value(&form->line(tr("Value"))),
      m_source(
          &form->line(tr("Because"), tr("why this figure: a trial, a habit of the house"), true)) {
    setAddable(false);
    list().setMarkWidth(104);
    for (const core::HouseFigure& figure : core::houseFigures()) {
        m_figures.emplace(session.ids().nextUuid(), &figure);
    }
    connect(this, &ListSection::currentMoved, this, &HouseValueList::showCurrent);
    connect(form, &FormBase::left, this, &HouseValueList::keep);
}

void HouseValueList::refresh() {
    m_own.clear();
    std::vector<core::HouseValue> values;
    for (auto& one : core::all<core::HouseValue>(m_session.records())) {
        values.push_back(one.record);
        m_own.insert_or_assign(one.record.key, std::move(one));
    }
    m_house = core::cuttingHouse(values);
    std::vector<RuledModel::Row> rows;
    for (const auto& [key, figure] : m_figures) {
        const auto own = m_own.find(figure->key);
        const bool isOwn = own != m_own.end();
        const QString source = isOwn && !own->second.record.source.empty()
                                   ? fromCore(own->second.record.source)
                                   : fromCore(figure->source);
        rows.push_back({key, RowWords{.mark = fromCore(core::textOf(*figure, m_house)),
                                      .title = fromCore(figure->words),
                                      .detail = source,
                                      .right = isOwn ? tr("our own") : fromCore(figure->group)}});
    }
    showRows(std::move(rows));
    showCurrent();
}

const core::HouseFigure* HouseValueList::current() const {
    const auto id = list().current();
    const auto at = id ? m_figures.find(*id) : m_figures.end();
    return at == m_figures.end() ? nullptr : at->second;
}

void HouseValueList::showCurrent() {
    const core::HouseFigure* figure = current();
    if (figure == nullptr) {
        closeForm();
        return;
    }
    const auto own = m_own.find(figure->key);
    m_value->accept(fromCore(core::textOf(*figure, m_house)));
    m_source->accept(own == m_own.end() ? QString{} : fromCore(own->second.record.source));
    openForm(false);
}

void HouseValueList::keep() {
    const core::HouseFigure* figure = current();
    if (figure == nullptr || (!m_value->isEdited() && !m_source->isEdited())) {
        return;
    }
    core::CuttingHouse house = m_house;
    if (!core::put(*figure, toCore(m_value->text().trimmed()), house)) {
        m_value->setError(figure->length != nullptr ? tr("Write it as a length: 3 mm.")
                                                    : tr("Write it as a share: 30 %."));
        return;
    }
    const auto own = m_own.find(figure->key);
    core::HouseValue value = own == m_own.end()
                                 ? core::HouseValue{.id = m_session.ids().next<core::HouseValue>(),
                                                    .key = std::string{figure->key}}
                                 : own->second.record;
    value.value = core::textOf(*figure, house);
    value.source = toCore(m_source->text().trimmed());
    core::Change change{
        .sentence = toCore(tr("House value: %1, %2")
                               .arg(fromCore(figure->words).toLower(), fromCore(value.value))),
        .who = m_session.person()};
    if (own == m_own.end()) {
        change.add(value);
    } else {
        change.update(value, own->second.revision);
    }
    m_value->accept(fromCore(value.value));
    m_source->accept(fromCore(value.source));
    const QString done = fromCore(change.sentence);
    if (m_session.apply(std::move(change))) {
        m_session.say({Notice::Kind::done, done, true});
    }
}

} // namespace headcap::app
