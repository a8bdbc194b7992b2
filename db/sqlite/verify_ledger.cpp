#include "core/materials/ledger_laws.h"
#include "db/sqlite/record_sql.h"
#include "db/sqlite/verify_run.h"

namespace headcap::db {
namespace {

using core::RecordKind;
using core::RecordRef;

template <class Record>
std::vector<Record> all(Connection& connection) {
    constexpr RecordKind kKind = core::kindOf<Record>();
    std::vector<Record> records;
    Query query(connection, "SELECT " + columnList(kKind, "t") + " FROM " +
                                sqlName(core::nameOf(kKind)) + " t");
    while (query.step()) {
        records.push_back(std::get<Record>(recordAt(query, kKind)));
    }
    return records;
}

// What is derived from the ledger, against the ledger.
void verifyLotSums(Connection& connection, VerifyRun& run) {
    static const std::string kSummed =
        "SELECT lot, kind, amount_unit, amount_count > 0, count(*), max(id), max(at), "
        "sum(amount_count / 1000000), sum(amount_count % 1000000) FROM ledger_entry GROUP BY "
        "1, 2, 3, 4";
    static const std::string kKept = "SELECT lot, kind, unit, is_in, lines, last_entry, "
                                     "last_at, millions, rest FROM lot_sum";
    Query wrong(connection, "SELECT DISTINCT lot FROM (SELECT * FROM (" + kSummed + " EXCEPT " +
                                kKept + ") UNION ALL SELECT * FROM (" + kKept + " EXCEPT " +
                                kSummed + "))");
    while (wrong.step()) {
        const auto id = core::Uuid::fromText(wrong.text(0));
        run.find("ledger", id ? std::optional{RecordRef{RecordKind::lot, *id}} : std::nullopt,
                 "The sums kept of a lot are not those of its lines in the ledger.");
    }
}

} // namespace

void verifyLedger(Connection& connection, VerifyRun& run) {
    const core::LedgerBook book{.shelf = {.materials = all<core::Material>(connection),
                                          .lots = all<core::Lot>(connection),
                                          .parts = all<core::LotPart>(connection),
                                          .ledger = all<core::LedgerEntry>(connection)},
                                .uses = all<core::MaterialUse>(connection),
                                .steps = all<core::Step>(connection),
                                .cuttings = all<core::Cutting>(connection),
                                .cutParts = all<core::CutPart>(connection),
                                .techniques =
                                    core::TechniquesInForce{all<core::HouseTechnique>(connection)}};
    run.countAs(static_cast<std::int64_t>(book.shelf.ledger.size()));
    for (core::LedgerBreach& breach : core::ledgerBreaches(book)) {
        run.find("ledger", breach.record, std::move(breach.sentence));
    }
    verifyLotSums(connection, run);
}

} // namespace headcap::db
