// What is put on a book under a name of its own, lot or no lot: formulae, trade words, kinds of the
// vocabulary. Whoever types one has named a material, and it is not to be lost among other words.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/materials/material.h"

namespace headcap::core {

// How many of the words from `at`, in small letters, name one; 0: none. `asTyped` is the first of
// them as it was typed, for what capitals tell: "CaCO3".
[[nodiscard]] std::size_t substanceAt(const std::vector<std::string>& lower, std::size_t at,
                                      std::string_view asTyped);

// A chemical's formula of two elements or more, with a figure: "H2O2", "Ca(OH)2"; no leaf of a
// book is signed so.
[[nodiscard]] bool isFormula(std::string_view word);

// A material of the vocabulary's kind that the words name: "EVA 20 %"; nothing where none is known.
[[nodiscard]] std::optional<Material> substanceAsMaterial(std::string_view words);

} // namespace headcap::core
