#pragma once

#include "core/record/stores.h"
#include "db/sqlite/threads.h"

namespace headcap::db {

class SqliteJobIndex final : public core::JobIndex {
public:
    explicit SqliteJobIndex(Readers& readers) : m_readers(readers) {}

    [[nodiscard]] std::vector<core::JobLine> inTheHouse() const override;
    [[nodiscard]] std::vector<core::JobLine> page(std::size_t offset,
                                                  std::size_t limit) const override;
    [[nodiscard]] std::size_t count() const override;
    [[nodiscard]] std::optional<core::JobLine> numbered(std::string_view number) const override;
    [[nodiscard]] std::vector<std::pair<core::JobLine, core::FollowUp>>
    dueFollowUps(core::Day by) const override;

private:
    Readers& m_readers;
};

} // namespace headcap::db
