// Materials and lots put on the shelf of a sample workshop, for the windows of the stock.
#pragma once

#include "core/materials/ledger.h"
#include "tests/support/sample_workshop.h"

namespace headcap::tests {

struct StockOnShelf {
    StockOnShelf(SampleWorkshop& sample, app::Session& session)
        : m_sample(sample), m_session(session) {}

    core::Material material(const char* name, core::MaterialClass kind, core::Unit unit,
                            const char* kindKey = "") {
        const core::Material made{.id = m_sample.ids.next<core::Material>(),
                                  .name = name,
                                  .kind = kind,
                                  .unit = unit,
                                  .kindKey = kindKey};
        core::Change change{.sentence = "Kind added"};
        change.add(made);
        EXPECT_TRUE(m_session.apply(std::move(change)));
        return made;
    }
    core::Lot lot(const char* number, const core::Material& kind, core::Amount amount,
                  const std::function<void(core::Lot&)>& also = {}) {
        core::Lot made{.id = m_sample.ids.next<core::Lot>(),
                       .number = number,
                       .material = kind.id,
                       .supplier = "Marrow & Daughters"};
        if (also) {
            also(made);
        }
        auto change = core::receiveLot(made, amount, core::loadShelf(m_sample.store),
                                       {m_sample.orrin, m_sample.clock.now()}, m_sample.ids);
        EXPECT_TRUE(change);
        EXPECT_TRUE(m_session.apply(std::move(*change)));
        return made;
    }
    core::Shelf shelf() const { return core::loadShelf(m_sample.store); }

private:
    SampleWorkshop& m_sample;
    app::Session& m_session;
};

} // namespace headcap::tests
