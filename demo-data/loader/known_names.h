// The names that the demo's data give to records: "@orrin". A name is its file's own or, where the
// file has none such, one of the shared files; "@atlas/job" is the name "@job" of another file.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/record/any_record.h"

namespace headcap::demo {

class KnownNames {
public:
    void learn(std::string_view scope, std::string_view name, const core::RecordRef& ref);
    [[nodiscard]] std::optional<core::RecordRef> find(std::string_view scope,
                                                      std::string_view name) const;

    // What people call a job or a lot by.
    void learnNumber(const core::RecordRef& ref, std::string number);
    [[nodiscard]] std::optional<std::string> numberOf(const core::RecordRef& ref) const;

private:
    std::map<std::string, core::RecordRef, std::less<>> m_refs; // "atlas/job"; "/orrin" is shared
    std::map<core::RecordRef, std::string> m_numbers;
};

} // namespace headcap::demo
