#include "core/custody/person_called.h"

#include "core/values/fold.h"

namespace headcap::core {

std::optional<Id<Person>> personCalled(std::span<const Person> people, std::string_view words) {
    const std::string asked = foldForSearch(words);
    std::optional<Id<Person>> only;
    for (const Person& person : people) {
        const bool isCalledSo =
            foldForSearch(person.initials) == asked || foldForSearch(person.name) == asked;
        if (asked.empty() || !person.active || !isCalledSo) {
            continue;
        }
        if (only) {
            return std::nullopt;
        }
        only = person.id;
    }
    return only;
}

} // namespace headcap::core
