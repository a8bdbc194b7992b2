// The workshop's own techniques beside those that ship, as their view shows and changes them.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "app/form/ruled_table.h"
#include "app/session/session.h"
#include "core/treatment/house_technique.h"
#include "core/treatment/techniques_in_force.h"

namespace headcap::app {

class HouseTechniques {
public:
    using Own = core::HouseTechnique;
    explicit HouseTechniques(Session& session) : m_session(session) {}

    void read();
    [[nodiscard]] const core::TechniquesInForce& inForce() const { return m_inForce; }
    [[nodiscard]] const std::vector<core::Stored<Own>>& own() const { return m_own; }
    [[nodiscard]] const core::Stored<Own>* ownOf(const std::string& key) const;
    [[nodiscard]] const core::Stored<Own>* ownWith(const core::Uuid& id) const;
    [[nodiscard]] static const core::Technique* shippedOf(const std::string& key);
    // The key of its row: of its record, where it has one, or of that it would get.
    [[nodiscard]] core::Id<Own> idOf(const std::string& key);

    // Those that hold these words; the ones no longer offered last.
    [[nodiscard]] std::vector<TableRow> rows(const QString& filter);

    // What ships comes back; one of our own that stands in the log is no longer offered, and else
    // it goes.
    void takeBack(const std::string& key);

private:
    [[nodiscard]] TableRow rowOf(const core::Technique& technique);
    [[nodiscard]] bool isInTheLog(const std::string& key) const;

    Session& m_session;
    core::TechniquesInForce m_inForce;
    std::vector<core::Stored<Own>> m_own;
    std::map<std::string, core::Id<Own>> m_ids;
};

} // namespace headcap::app
