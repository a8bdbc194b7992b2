// What a place that somebody typed comes to in this book: the same place in its other forms, or why
// there is no such place. A text that is no leaf reference ("upper board") is left alone.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/collation/leaf_places.h"

namespace headcap::core {

struct PlaceReading {
    std::string text;      // "K5 · pp. 149–150", or the reason
    bool isThere = true;   // in this book, without a doubt
    bool isAbsent = false; // without a doubt not in it
};

// Of a text that says more ("K5, upper joint") only what names leaves is read. Nothing where it
// names none, or what would tell is not known: the book's leaves, its numbers, its plates.
[[nodiscard]] std::optional<PlaceReading> readPlace(const LaidBook& book, std::string_view text);

// "no gathering of this book is signed so".
[[nodiscard]] std::string sentenceOf(const LaidBook& book, const PlaceError& error);

} // namespace headcap::core
