#include "core/vocabulary/vocabulary_file.h"

#include <algorithm>
#include <exception>

#include <nlohmann/json.hpp>

#include "core/values/contract.h"
#include "core/values/embedded_file.h"

namespace headcap {
std::vector<EmbeddedFile> vocabularyFiles(); // built from resources/
} // namespace headcap

namespace headcap::core::vocabulary {

nlohmann::json file(std::string_view name) {
    const auto files = vocabularyFiles();
    const auto found =
        std::ranges::find_if(files, [&](const EmbeddedFile& f) { return f.name == name; });
    HEADCAP_CONTRACT(found != files.end());
    auto json = nlohmann::json::parse(found->text, nullptr, false);
    HEADCAP_CONTRACT(!json.is_discarded());
    return json;
}

const nlohmann::json& member(const nlohmann::json& object, std::string_view name) {
    const auto found = object.find(name);
    HEADCAP_CONTRACT(found != object.end());
    return *found;
}

std::string text(const nlohmann::json& object, std::string_view name) {
    const auto& value = member(object, name);
    HEADCAP_CONTRACT(value.is_string() && !value.get_ref<const std::string&>().empty());
    return value.get<std::string>();
}

std::string textOr(const nlohmann::json& object, std::string_view name) {
    return object.contains(name) ? text(object, name) : std::string{};
}

std::int64_t numberOr(const nlohmann::json& object, std::string_view name) {
    const auto found = object.find(name);
    if (found == object.end()) {
        return 0;
    }
    HEADCAP_CONTRACT(found->is_number_integer());
    return found->get<std::int64_t>();
}

bool flag(const nlohmann::json& object, std::string_view name) {
    const auto found = object.find(name);
    if (found == object.end()) {
        return false;
    }
    HEADCAP_CONTRACT(found->is_boolean());
    return found->get<bool>();
}

std::vector<std::string> texts(const nlohmann::json& object, std::string_view name) {
    std::vector<std::string> all;
    const auto found = object.find(name);
    if (found == object.end()) {
        return all;
    }
    HEADCAP_CONTRACT(found->is_array());
    for (const auto& one : *found) {
        HEADCAP_CONTRACT(one.is_string());
        all.push_back(one.get<std::string>());
    }
    return all;
}

void unknownName([[maybe_unused]] std::string_view name) {
    HEADCAP_CONTRACT(false && "a name of the vocabulary is unknown");
    std::terminate();
}

} // namespace headcap::core::vocabulary
