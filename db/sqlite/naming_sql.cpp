// What names a record, over all tables.
#include <algorithm>

#include "core/record/kind_words.h"
#include "db/sqlite/record_sql.h"

namespace headcap::db {
namespace {

using core::RecordKind;

// A column that holds the key of some record: of one kind, or of any where the kind stands beside.
struct NamingColumn {
    RecordKind kind;
    std::string name;
    std::optional<RecordKind> target;
};

const std::vector<NamingColumn>& namingColumns() {
    static const auto kColumns = [] {
        std::vector<NamingColumn> all;
        for (std::size_t i = 0; i < core::kRecordKindCount; ++i) {
            const auto kind = static_cast<RecordKind>(i);
            for (const core::Column& column : core::columnsOf(kind)) {
                if (column.references) {
                    all.push_back({kind, column.name, column.references});
                }
            }
        }
        all.push_back({RecordKind::attachment, "subject_id", std::nullopt});
        return all;
    }();
    return kColumns;
}

} // namespace

std::vector<Namers> namersOf(Connection& connection, const core::RecordRef& ref) {
    std::vector<Namers> namers;
    for (const NamingColumn& column : namingColumns()) {
        if (column.target && *column.target != ref.kind) {
            continue;
        }
        Query query(connection, "SELECT count(*), min(\"id\") FROM " +
                                    sqlName(core::nameOf(column.kind)) + " WHERE " +
                                    sqlName(column.name) + " = ? AND \"id\" <> ?");
        query.with(ref.id.text()).with(ref.id.text());
        if (!query.step() || query.number(0) == 0) {
            continue;
        }
        const auto key = core::Uuid::fromText(query.text(1));
        if (!key) {
            throw core::StoreError(core::StoreError::Code::truncated,
                                   core::oneOf(column.kind) +
                                       " has a key that is none: " + query.text(1));
        }
        const auto known = std::find_if(namers.begin(), namers.end(),
                                        [&](const Namers& n) { return n.kind == column.kind; });
        if (known != namers.end()) {
            known->count += query.number(0);
        } else {
            namers.push_back({column.kind, query.number(0), {column.kind, *key}});
        }
    }
    return namers;
}

} // namespace headcap::db
