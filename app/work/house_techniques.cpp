#include "app/work/house_techniques.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/values/fold.h"
#include "core/values/spoken_time.h"

namespace headcap::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("technique", text);
}

QString timesOf(const core::Technique& technique) {
    QString takes;
    if (technique.minutes > core::Minutes{0}) {
        takes = fromCore(core::toText(technique.minutes));
        if (!technique.minutesBasis.empty()) {
            takes += QLatin1Char(' ') + fromCore(technique.minutesBasis);
        }
    }
    const QString sets = technique.sets > core::Minutes{0}
                             ? tr("sets %1").arg(fromCore(core::toText(technique.sets)))
                             : QString{};
    return dotted({takes, sets});
}

} // namespace

void HouseTechniques::read() {
    m_session.guarded([this] {
        m_own = core::all<Own>(m_session.records());
        m_inForce = core::loadTechniques(m_session.records());
    });
}

const core::Stored<core::HouseTechnique>* HouseTechniques::ownOf(const std::string& key) const {
    const auto found =
        std::ranges::find_if(m_own, [&](const auto& one) { return one.record.key == key; });
    return found == m_own.end() ? nullptr : &*found;
}

const core::Stored<core::HouseTechnique>* HouseTechniques::ownWith(const core::Uuid& id) const {
    const auto found =
        std::ranges::find_if(m_own, [&](const auto& one) { return one.record.id.uuid() == id; });
    return found == m_own.end() ? nullptr : &*found;
}

const core::Technique* HouseTechniques::shippedOf(const std::string& key) {
    const auto& all = core::techniques();
    const auto found = std::ranges::find(all, key, &core::Technique::key);
    return found == all.end() ? nullptr : &*found;
}

core::Id<core::HouseTechnique> HouseTechniques::idOf(const std::string& key) {
    if (const auto* own = ownOf(key)) {
        return own->record.id;
    }
    const auto known = m_ids.find(key);
    return known != m_ids.end() ? known->second
                                : m_ids.emplace(key, m_session.ids().next<Own>()).first->second;
}

TableRow HouseTechniques::rowOf(const core::Technique& technique) {
    const auto* own = ownOf(technique.key);
    const bool isRetired = own != nullptr && own->record.retired;
    QString standing;
    if (own != nullptr) {
        standing = isRetired                             ? tr("not offered")
                   : shippedOf(technique.key) == nullptr ? tr("our own")
                                                         : tr("our way");
    }
    return {.id = idOf(technique.key).uuid(),
            .title = {fromCore(technique.name), Face::body, isRetired ? Ink::quiet : Ink::ink},
            .right = {standing, Face::smallStrong, Ink::accent},
            .below = {dotted({fromCore(technique.doneTo), timesOf(technique)})}};
}

std::vector<TableRow> HouseTechniques::rows(const QString& filter) {
    const std::string wanted = core::foldForSearch(toCore(filter.trimmed()));
    std::vector<TableRow> rows;
    const auto offer = [&](const core::Technique& one) {
        const std::string words = one.name + ' ' + one.doneTo + ' ' + core::asLines(one.said);
        if (wanted.empty() || core::foldForSearch(words).find(wanted) != std::string::npos) {
            rows.push_back(rowOf(one));
        }
    };
    std::ranges::for_each(m_inForce.offered(), offer);
    for (const auto& one : m_own) {
        if (one.record.retired) {
            offer(*m_inForce.named(one.record.key));
        }
    }
    return rows;
}

bool HouseTechniques::isInTheLog(const std::string& key) const {
    return !m_session.records()
                .newestWith(core::RecordKind::step, core::fieldName(&core::Step::technique), key, 1)
                .empty();
}

void HouseTechniques::takeBack(const std::string& key) {
    const auto* found = ownOf(key);
    if (found == nullptr) {
        return;
    }
    const core::Stored<Own> own = *found;
    const QString name = fromCore(own.record.name);
    const bool isShipped = shippedOf(key) != nullptr;
    m_session.guarded([&] {
        core::Change change;
        QString said;
        if (!isShipped && isInTheLog(key)) {
            Own retired = own.record;
            retired.retired = true;
            said = tr("No longer offered: %1; in the log it keeps its name").arg(name);
            change.update(retired, own.revision);
        } else {
            said = isShipped ? tr("As it ships again: %1").arg(name)
                             : tr("Technique removed: %1").arg(name);
            m_ids.insert_or_assign(key, own.record.id); // its row stays
            change.remove(own.record, own.revision);
        }
        change.sentence = toCore(said);
        if (m_session.apply(std::move(change))) {
            m_session.say({Notice::Kind::done, said + QLatin1Char('.'), true});
        }
    });
}

} // namespace headcap::app
