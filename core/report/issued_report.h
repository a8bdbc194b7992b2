// A report as issued: numbered, kept as a file by its SHA-256, never changed. A later one says
// what changed.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/digest.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct Job;
struct Person;

struct IssuedReport {
    Id<IssuedReport> id;
    Id<Job> job;
    std::int64_t version = 1;
    Instant issuedAt;
    std::optional<Id<Person>> who;
    Digest digest{}; // of the PDF
    std::string fileName{};
    std::int64_t bytes = 0;
    std::string journalHead{}; // the journal's hash when it was made, 64 digits
    std::string changes{};     // what changed since the version before

    friend bool operator==(const IssuedReport&, const IssuedReport&) = default;
};

template <>
struct Description<IssuedReport> {
    static constexpr std::string_view kKind = "issued_report";
    static constexpr Permanence kPermanence = Permanence::permanent;
    template <class R = IssuedReport>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("version", &R::version),
                          field("issued_at", &R::issuedAt),
                          field("who", &R::who),
                          field("digest", &R::digest),
                          field("file_name", &R::fileName),
                          field("bytes", &R::bytes),
                          field("journal_head", &R::journalHead),
                          field("changes", &R::changes)};
    }
};

} // namespace headcap::core
