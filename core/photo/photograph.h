// A photograph of a job: the original is kept unaltered by its SHA-256; what it shows and when
// in the work it was taken is said here.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/record/describe.h"
#include "core/values/digest.h"
#include "core/values/id.h"
#include "core/values/time.h"

namespace headcap::core {

struct Facsimile;
struct Finding;
struct Item;
struct Job;
struct Step;

enum class PhotoRole { before, during, after, detail };

// How wide it stands in the report: half a page (85 mm) or the whole.
enum class FigureWidth { column, full };

struct Photograph {
    Id<Photograph> id;
    Id<Job> job;
    std::optional<Id<Item>> part;
    PhotoRole role = PhotoRole::before;
    std::int64_t position = 0;
    std::string caption{};
    std::string place{}; // leaf, board
    std::optional<Id<Finding>> finding;
    std::optional<Id<Step>> step;
    std::optional<Id<Facsimile>> facsimile;
    Digest digest{};
    std::string mediaType{}; // "image/jpeg"
    std::string fileName{};  // as it came
    std::int64_t bytes = 0;
    std::int64_t widthPx = 0; // upright, after EXIF orientation
    std::int64_t heightPx = 0;
    std::optional<Instant> takenAt{}; // EXIF
    Instant addedAt;
    bool inReport = true;
    FigureWidth figureWidth = FigureWidth::column;

    friend bool operator==(const Photograph&, const Photograph&) = default;
};

template <>
struct EnumNames<PhotoRole> {
    static constexpr std::array<std::string_view, 4> kNames{"before", "during", "after", "detail"};
};

template <>
struct EnumNames<FigureWidth> {
    static constexpr std::array<std::string_view, 2> kNames{"column", "full"};
};

template <>
struct Description<Photograph> {
    static constexpr std::string_view kKind = "photograph";
    static constexpr Permanence kPermanence = Permanence::editable;
    template <class R = Photograph>
    static constexpr auto fields() {
        return std::tuple{field("id", &R::id),
                          field("job", &R::job),
                          field("part", &R::part),
                          field("role", &R::role),
                          field("position", &R::position),
                          searched("caption", &R::caption),
                          field("place", &R::place),
                          field("finding", &R::finding),
                          field("step", &R::step),
                          field("facsimile", &R::facsimile),
                          field("digest", &R::digest),
                          field("media_type", &R::mediaType),
                          field("file_name", &R::fileName),
                          field("bytes", &R::bytes),
                          field("width_px", &R::widthPx),
                          field("height_px", &R::heightPx),
                          field("taken_at", &R::takenAt),
                          field("added_at", &R::addedAt),
                          field("in_report", &R::inReport),
                          field("figure_width", &R::figureWidth)};
    }
};

} // namespace headcap::core
