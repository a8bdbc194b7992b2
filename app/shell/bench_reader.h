// What core reads in a line of the bench log, as the bench line shows it, and the line logged.
#pragma once

#include "app/session/session.h"
#include "app/shell/bench_line.h"
#include "core/materials/shelf.h"

namespace headcap::app {

class BenchReader {
public:
    explicit BenchReader(Session& session) : m_session(session) {}
    // Lots and people as they are now.
    void refresh();
    [[nodiscard]] std::vector<LineChip> read(const QString& line) const;
    // False where it was not logged; a notice has said why.
    bool log(const QString& line, const core::Id<core::Job>& job);

private:
    Session& m_session;
    core::Shelf m_shelf;
    std::vector<core::Person> m_people;
};

} // namespace headcap::app
