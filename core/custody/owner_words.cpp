#include "core/custody/owner_words.h"

#include <algorithm>

#include <fmt/format.h>

namespace headcap::core {
namespace {

std::string kindWords(OwnerKind kind) {
    switch (kind) {
    case OwnerKind::privateOwner:
        return "private";
    case OwnerKind::institution:
        return "an institution";
    case OwnerKind::dealer:
        return "a dealer";
    }
    return {};
}

std::string firstLine(const std::string& text) {
    return text.substr(0, text.find('\n'));
}

} // namespace

std::string ownerWords(const Owner& owner, std::span<const Owner> others) {
    const bool isAlone = std::ranges::none_of(others, [&](const Owner& other) {
        return other.id != owner.id && other.name == owner.name;
    });
    if (isAlone) {
        return owner.name;
    }
    for (const std::string& known :
         {firstLine(owner.address), owner.contact, owner.email, owner.telephone}) {
        if (!known.empty()) {
            return fmt::format("{}, {}", owner.name, known);
        }
    }
    return fmt::format("{}, {}", owner.name, kindWords(owner.kind));
}

} // namespace headcap::core
