#include "core/treatment/line_doubts.h"

#include <fmt/format.h>

#include "core/collation/job_places.h"
#include "core/treatment/line_moments.h"
#include "core/values/spoken_time.h"

namespace headcap::core {

std::vector<LineDoubt> doubtsOf(std::string_view text, const StepLine& line, Instant end,
                                Instant now, const JobFile* file) {
    using Kind = LineDoubt::Kind;
    std::vector<LineDoubt> doubts;
    const auto add = [&](bool isSo, Kind kind, std::string what = {}, std::string why = {}) {
        if (isSo) {
            doubts.push_back({kind, std::move(what), std::move(why)});
        }
    };
    const std::vector<std::string> unknown = unknownLots(text, line);
    add(!unknown.empty(), Kind::unknownLot, fmt::format("{}", fmt::join(unknown, ", ")));
    for (std::string& material : materialsWithoutLot(line)) {
        add(true, Kind::noLot, std::move(material));
    }
    add(line.isDenied, Kind::denied);
    add(line.isPause, Kind::pause);
    add(line.isMixing, Kind::mixing);
    add(line.isStriking, Kind::striking);
    const Minutes minutes = line.minutes.value_or(Minutes{0});
    add(!line.otherMinutes.empty(), Kind::severalTimes, toText(minutes));
    add(line.minutesAreOfEach, Kind::timeOfEach, toText(minutes));
    if (line.begins && line.ends && saysMinutes(line)) {
        const Minutes had = *line.ends - *line.begins;
        add(minutes > had, Kind::moreThanItHad, toText(minutes), toText(had));
    }
    add(line.namesSeveral, Kind::severalPeople);
    std::string absent = absentPlace(line, file);
    const bool isAbsent = !absent.empty();
    add(isAbsent, Kind::absentPlace, line.place, std::move(absent));
    add(end > now, Kind::stillToCome);
    add(line.technique.empty(), Kind::noTechnique);
    return doubts;
}

std::vector<std::string> unknownLots(std::string_view text, const StepLine& line) {
    std::vector<std::string> unknown;
    for (const LineSpan& span : line.spans) {
        if (span.part == LinePart::unknownLot) {
            unknown.emplace_back(text.substr(span.begin, span.end - span.begin));
        }
    }
    return unknown;
}

std::string absentPlace(const StepLine& line, const JobFile* file) {
    if (file == nullptr || line.place.empty()) {
        return {};
    }
    auto reading = readPlace(booksOf(*file), line.part, line.place);
    return reading && reading->isAbsent ? std::move(reading->text) : std::string{};
}

} // namespace headcap::core
