// One line of the bench log, read: "tipped in facsimile K5 with paste 26-014 0.4 g 20 min". What
// is not understood stays as description; every word of the line is in some span. The same line
// over the same vocabulary, lots and people always reads the same.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/materials/cut_for_job.h"
#include "core/materials/shelf.h"
#include "core/treatment/bench_log.h"
#include "core/treatment/known_places.h"
#include "core/treatment/taken_out.h"
#include "core/treatment/techniques.h"

namespace headcap::core {

enum class LinePart {
    description,
    technique,
    place,
    material, // a lot with its amount, or a material in words
    minutes,
    setting,
    person,
    unknownLot, // looks like the number of a lot, and is none; stays in the description too
    when,       // the day, and from when till when
    condition,  // temperature, humidity, concentration, pressure, grain
};

// Bytes of the line, from the first word's begin to the last word's end.
struct LineSpan {
    LinePart part = LinePart::description;
    std::size_t begin = 0;
    std::size_t end = 0;
    std::size_t use = 0; // of a material: which of the uses
};

struct LineUse {
    std::optional<Id<Lot>> lot;
    std::string material{}; // in words, where no lot was named; pieces cut for the job
    std::optional<Amount> amount{};
    bool isWasted = false;
};

// "dries till 4 pm", "press until tomorrow 9am".
struct SetsTill {
    std::optional<Day> day{}; // of the step, where none is said
    Minutes at{0};            // from midnight
};

struct StepLine {
    std::string technique{}; // key, empty where none was recognised
    StepKind kind = StepKind::treatment;
    std::string place{};
    std::optional<Id<Item>> part;         // the one volume that the place names
    std::optional<Id<ProposalLine>> line; // the approved line with this technique and place
    std::vector<LineUse> uses{};
    std::optional<Minutes> minutes{};
    std::vector<Minutes> otherMinutes{}; // said as well, and nothing tells which is the whole
    bool minutesAreOfEach = false;       // "20 min each", of how many is not said
    std::optional<Minutes> sets{};       // setting, drying or pressing time
    std::optional<SetsTill> setsTill{};
    std::optional<Day> day{};        // where the line says one
    std::optional<Minutes> begins{}; // from that day's midnight
    std::optional<Minutes> ends{};
    bool isDenied = false;   // "not washed": it says what was not done
    bool isPause = false;    // "lunch, 1 h": no work at all
    bool isMixing = false;   // "mixed paste": a lot is made, nothing is done to the book
    bool isStriking = false; // "struck": of a step that is logged
    std::optional<Id<Person>> person;
    bool namesSeveral = false; // people, of whom the first is the person
    std::optional<std::int64_t> temperatureTenthsC{};
    std::optional<std::int64_t> humidityPercent{};
    std::string concentration{};
    std::string pressure{};
    GrainAtSpine grainAtSpine = GrainAtSpine::notSaid; // of the sheets it names
    std::string description{};
    std::vector<LineSpan> spans{}; // in order, none overlapping
};

// What the line is read over.
struct LineContext {
    const Shelf& shelf;
    std::span<const Person> people;
    std::span<const Technique> techniques = core::techniques();
    std::vector<KnownPlace> places{}; // the job's own
    std::optional<Day> today{};       // without it no day is read
    std::vector<CutForJob> cut{};     // of which pieces are used
};

[[nodiscard]] StepLine readStepLine(std::string_view line, const LineContext& context);

// Materials it names without a lot, each as it was typed; and whether it names none at all though
// its technique puts something into the book.
[[nodiscard]] std::vector<std::string> materialsWithoutLot(const StepLine& line);
[[nodiscard]] bool namesNoMaterial(const StepLine& line, std::span<const Technique> techniques);

// What it takes out of the book, and what became of that.
[[nodiscard]] TakenOut takenOutIn(const StepLine& line);

// What a material of a kind is for in a step, whether it stays in the book and how it comes off.
void fillFrom(MaterialUse& use, const Material& kind);

// The step it says, ready to be logged at its end: begun its minutes before now, by the person
// named or else by `who`; whether and how it is undone from the technique, how a material comes
// off from its kind.
[[nodiscard]] LoggedStep stepFrom(const StepLine& line, const Id<Job>& job, const Id<Person>& who,
                                  Instant now, const LineContext& context, IdSource& ids);

} // namespace headcap::core
