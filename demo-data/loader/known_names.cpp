#include "demo-data/loader/known_names.h"

#include "demo-data/loader/data_error.h"

namespace headcap::demo {
namespace {

std::string fullName(std::string_view scope, std::string_view name) {
    return std::string{scope} + "/" + std::string{name.substr(1)};
}

} // namespace

void KnownNames::learn(std::string_view scope, std::string_view name, const core::RecordRef& ref) {
    if (name.size() < 2 || name.front() != '@') {
        throw DataError{"a name begins with @, not \"" + std::string{name} + "\""};
    }
    if (!m_refs.emplace(fullName(scope, name), ref).second) {
        throw DataError{"the name " + std::string{name} + " is given twice"};
    }
}

std::optional<core::RecordRef> KnownNames::find(std::string_view scope,
                                                std::string_view name) const {
    if (name.size() < 2 || name.front() != '@') {
        return std::nullopt;
    }
    if (name.find('/') != std::string_view::npos) {
        const auto at = m_refs.find(name.substr(1));
        return at == m_refs.end() ? std::nullopt : std::optional{at->second};
    }
    auto at = m_refs.find(fullName(scope, name));
    if (at == m_refs.end()) {
        at = m_refs.find(fullName("", name));
    }
    return at == m_refs.end() ? std::nullopt : std::optional{at->second};
}

void KnownNames::learnNumber(const core::RecordRef& ref, std::string number) {
    m_numbers.insert_or_assign(ref, std::move(number));
}

std::optional<std::string> KnownNames::numberOf(const core::RecordRef& ref) const {
    const auto at = m_numbers.find(ref);
    return at == m_numbers.end() ? std::nullopt : std::optional{at->second};
}

} // namespace headcap::demo
