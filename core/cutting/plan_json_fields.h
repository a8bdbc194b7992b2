// Fields of a JSON object, each read once by name; what is left unread is an error.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/cutting/plan_json.h"

namespace headcap::core {

// The first error met is kept; later reads give defaults, so a reader need not look after each.
class PlanJsonFields {
public:
    PlanJsonFields(const nlohmann::json& object, std::string place,
                   std::optional<PlanFileError>& error)
        : m_object(object), m_place(std::move(place)), m_error(error) {
        if (!object.is_object()) {
            fail(PlanFileFault::wrongType, "");
        }
    }

    [[nodiscard]] const nlohmann::json* find(const char* name) {
        m_known.emplace_back(name);
        if (!m_object.is_object()) {
            return nullptr;
        }
        const auto found = m_object.find(name);
        return found == m_object.end() || found->is_null() ? nullptr : &*found;
    }

    [[nodiscard]] const nlohmann::json* require(const char* name) {
        const nlohmann::json* found = find(name);
        if (found == nullptr) {
            fail(PlanFileFault::missing, name);
        }
        return found;
    }

    // A number times `scale`, to the nearest whole.
    [[nodiscard]] std::optional<std::int64_t> number(const char* name, double scale) {
        const nlohmann::json* found = find(name);
        return found == nullptr ? std::nullopt : scaled(*found, name, scale);
    }
    [[nodiscard]] Length length(const char* name) {
        return Length::nanometres(number(name, 1e6).value_or(0));
    }
    [[nodiscard]] Length requiredLength(const char* name) {
        const nlohmann::json* found = require(name);
        return Length::nanometres(found == nullptr ? 0 : scaled(*found, name, 1e6).value_or(0));
    }

    [[nodiscard]] int count(const char* name) {
        const nlohmann::json* found = find(name);
        if (found == nullptr) {
            return 1;
        }
        if (found->is_number() && found->get<double>() != std::floor(found->get<double>())) {
            fail(PlanFileFault::notWhole, name);
            return 1;
        }
        const std::int64_t count = scaled(*found, name, 1).value_or(1);
        return static_cast<int>(
            std::clamp<std::int64_t>(count, -1, std::numeric_limits<int>::max()));
    }

    [[nodiscard]] bool flag(const char* name, bool otherwise) {
        const nlohmann::json* found = find(name);
        if (found != nullptr && !found->is_boolean()) {
            fail(PlanFileFault::wrongType, name);
        }
        return found != nullptr && found->is_boolean() ? found->get<bool>() : otherwise;
    }

    [[nodiscard]] std::string word(const char* name) {
        const nlohmann::json* found = find(name);
        if (found != nullptr && !found->is_string()) {
            fail(PlanFileFault::wrongType, name);
        }
        return found != nullptr && found->is_string() ? found->get<std::string>() : "";
    }

    [[nodiscard]] std::string id() {
        const nlohmann::json* found = require("id");
        if (found != nullptr && found->is_number_integer()) {
            return found->dump();
        }
        if (found != nullptr && !found->is_string()) {
            fail(PlanFileFault::wrongType, "id");
            return {};
        }
        return found == nullptr ? std::string() : found->get<std::string>();
    }

    void refuseOthers() {
        if (!m_object.is_object()) {
            return;
        }
        for (const auto& [name, value] : m_object.items()) {
            if (std::ranges::find(m_known, name) == m_known.end()) {
                fail(PlanFileFault::unknownField, name);
            }
        }
    }

    void fail(PlanFileFault fault, const std::string& name,
              std::optional<CutProblemFault> problem = std::nullopt) {
        if (!m_error) {
            m_error =
                PlanFileError{fault, name.empty() ? m_place : m_place + "/" + name, 0, problem};
        }
    }
    [[nodiscard]] std::string placeOf(const std::string& name) const {
        return m_place + "/" + name;
    }

private:
    std::optional<std::int64_t> scaled(const nlohmann::json& value, const char* name,
                                       double scale) {
        constexpr double kMost = 9e15; // beyond it a double holds no more whole numbers
        if (!value.is_number()) {
            fail(PlanFileFault::wrongType, name);
            return std::nullopt;
        }
        const double number = value.get<double>() * scale;
        if (!(std::abs(number) < kMost)) {
            fail(PlanFileFault::problem, name,
                 number < 0 ? CutProblemFault::negative : CutProblemFault::tooLarge);
            return std::nullopt;
        }
        return std::llround(number);
    }

    const nlohmann::json& m_object;
    std::string m_place;
    std::optional<PlanFileError>& m_error;
    std::vector<std::string> m_known;
};

} // namespace headcap::core
