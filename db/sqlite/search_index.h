#pragma once

#include "core/record/stores.h"
#include "db/sqlite/threads.h"

namespace headcap::db {

class SqliteSearchIndex final : public core::SearchIndex {
public:
    explicit SqliteSearchIndex(Readers& readers) : m_readers(readers) {}

    [[nodiscard]] core::SearchAnswer find(std::string_view words, std::size_t limit) const override;
    [[nodiscard]] std::vector<core::RecordRef> findOf(core::RecordKind kind, std::string_view words,
                                                      std::size_t limit) const override;

private:
    Readers& m_readers;
};

} // namespace headcap::db
