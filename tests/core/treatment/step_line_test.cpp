#include "core/treatment/step_line.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

#include "core/values/decimal.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::JobBuilder;

// The workshop every line is read over.
class Bench {
public:
    Bench() {
        b.person("Jan Roe", "JR");
        b.person("Mara Roe", "MR");
        b.material("kozo tissue", MaterialClass::tissue, Unit::sheet);
        b.material("linen thread", MaterialClass::thread, Unit::metre);
        b.material("ethanol", MaterialClass::solvent, Unit::millilitre);
        b.lot("26-014", "wheat starch paste", Amount::of(Mass::grams(100)));
        b.lot("26-020", "kozo tissue", Amount::sheets(10));
        b.lot("26-031", "linen thread", Amount::of(Length::millimetres(90'000)));
        b.lot("26-040", "ethanol", Amount::of(Volume::millilitres(500)));
        shelf = shelfOf(b.file);
    }
    StepLine read(std::string_view line) const {
        return readStepLine(line, {.shelf = shelf, .people = b.file.people});
    }
    std::string initials(const std::optional<Id<Person>>& id) const {
        const Person* person = b.file.person(id);
        return person ? person->initials : "";
    }
    // "26-014 0.4 g; 26-020 1 sheet"
    std::string uses(const StepLine& line) const {
        std::string all;
        for (const LineUse& use : line.uses) {
            const Lot* lot = b.file.lot(use.lot);
            all += (all.empty() ? "" : "; ") + (lot ? lot->number : "~" + use.material) +
                   (use.amount ? " " + toText(*use.amount) : "");
        }
        return all;
    }

    Uuid anyKey() const { return b.file.job.id.uuid(); }

    JobBuilder b;
    Shelf shelf;
};

const Bench& bench() {
    static const Bench kBench;
    return kBench;
}

struct Row {
    const char* line;
    const char* technique;
    const char* place;
    const char* uses;
    int minutes; // -1: none
    const char* person;
    const char* rest;
    int sets = -1;
    const char* conditions = "";
};

std::string conditionsOf(const StepLine& line) {
    std::vector<std::string> said;
    if (line.temperatureTenthsC) {
        said.push_back(decimalText(*line.temperatureTenthsC, 1) + " °C");
    }
    if (line.humidityPercent) {
        said.push_back(std::to_string(*line.humidityPercent) + " % RH");
    }
    for (const std::string& one : {line.concentration, line.pressure}) {
        if (!one.empty()) {
            said.push_back(one);
        }
    }
    if (line.grainAtSpine != GrainAtSpine::notSaid) {
        said.push_back(line.grainAtSpine == GrainAtSpine::along ? "grain along" : "grain across");
    }
    std::string all;
    for (const std::string& one : said) {
        all += (all.empty() ? "" : ", ") + one;
    }
    return all;
}

#include "tests/core/treatment/step_lines.inc"

TEST(StepLine, readsEachLineAsSaid) {
    for (const Row& row : kRows) {
        SCOPED_TRACE(row.line);
        const StepLine line = bench().read(row.line);
        EXPECT_EQ(line.technique, row.technique);
        EXPECT_EQ(line.place, row.place);
        EXPECT_EQ(bench().uses(line), row.uses);
        EXPECT_EQ(line.minutes ? static_cast<int>(line.minutes->count()) : -1, row.minutes);
        EXPECT_EQ(line.sets ? static_cast<int>(line.sets->count()) : -1, row.sets);
        EXPECT_EQ(bench().initials(line.person), row.person);
        EXPECT_EQ(conditionsOf(line), row.conditions);
        EXPECT_EQ(line.description, row.rest);
        EXPECT_EQ(bench().read(row.line).spans.size(), line.spans.size()); // the same each time
    }
    static_assert(std::size(kRows) >= 200);
}

std::string letters(std::string_view text) {
    std::string kept;
    for (const char c : text) {
        if (std::string_view{" \t\n\r"}.find(c) == std::string_view::npos) {
            kept += c;
        }
    }
    return kept;
}

// The spans of a line, put together, are the line: nothing is dropped, nothing said twice.
void expectWhole(const std::vector<LineSpan>& spans, std::string_view text) {
    std::string joined;
    std::size_t last = 0;
    for (const LineSpan& span : spans) {
        ASSERT_LE(last, span.begin) << text;
        ASSERT_LT(span.begin, span.end) << text;
        joined += letters(text.substr(span.begin, span.end - span.begin));
        last = span.end;
    }
    EXPECT_EQ(joined, letters(text));
}

void expectWhole(std::string_view text) {
    expectWhole(bench().read(text).spans, text);
}

TEST(StepLine, dropsNothing) {
    for (const Row& row : kRows) {
        expectWhole(row.line);
    }
}

TEST(StepLine, dropsNothingOfAnyMixtureOfWords) {
    const std::vector<std::string> words{"tipped", "in",     "26-014",
                                         "26-020", "0.4",    "g",
                                         "20",     "min",    "K5",
                                         "with",   "by",     "AK",
                                         "paste",  "of",     "and",
                                         "1",      "sheet",  "2A3v",
                                         "f.",     "112v",   "sets",
                                         "2",      "h",      "26-999",
                                         "lined",  "spine",  ",",
                                         "-",      "½",      "Jan",
                                         "pl.",    "boards", "for",
                                         "",       "ſ",      "π2",
                                         "(note)", "to",     "99999999999999",
                                         "-5",     "m",      "half",
                                         "an",     "hour",   "#26-014"};
    std::mt19937 chance{7};
    for (int i = 0; i < 500; ++i) {
        std::string line;
        for (auto n = chance() % 9; n > 0; --n) {
            line += words[chance() % words.size()] + (chance() % 9 == 0 ? "  " : " ");
        }
        expectWhole(line);
    }
}

// A batch of five, and what its owner approved.
class BatchBench : public Bench {
public:
    BatchBench() {
        for (const char* label : {"SR 11", "SR 12", "SR 15", "SR 19", "SR 20"}) {
            Item part = b.file.item;
            part.id = b.ids.next<Item>();
            part.partOf = b.file.item.id;
            part.volumeLabel = label;
            b.file.parts.push_back(part);
        }
        const Proposal& proposal = b.proposal();
        const ProposalOption& option = b.option(proposal, "A");
        b.decision(proposal, DecisionKind::approved).option = option.id;
        line(option, "surface_cleaning", "all five");
        line(option, "tear_mending", "SR 11, 12, 19");
        line(option, "encapsulating", "wrapper of SR 19");
        line(option, "spine_lining", "spine and joints");
        line(option, "tear_mending", "B2, C5, title leaf");
        places = knownPlaces(b.file);
    }
    StepLine read(std::string_view text) const {
        return readStepLine(text, {.shelf = shelf, .people = b.file.people, .places = places});
    }
    std::string part(const StepLine& line) const {
        const Item* part = b.file.part(line.part);
        return part == nullptr ? "" : part->volumeLabel;
    }
    // The approved line it carries out, counted from one; 0: none.
    std::size_t lineOf(const StepLine& line) const {
        for (std::size_t i = 0; i < b.file.lines.size(); ++i) {
            if (line.line == b.file.lines[i].id) {
                return i + 1;
            }
        }
        return 0;
    }

    std::vector<KnownPlace> places;

private:
    void line(const ProposalOption& option, const char* technique, const char* place) {
        ProposalLine& added = b.line(option, technique);
        added.place = place;
        added.position = static_cast<std::int64_t>(b.file.lines.size());
    }
};

struct PlaceRow {
    const char* line;
    const char* technique;
    const char* place;
    const char* part;
    std::size_t approved;
    int minutes; // -1: none
    const char* rest;
};

#include "tests/core/treatment/place_lines.inc"

TEST(StepLine, knowsThePlacesOfTheApprovedLines) {
    const BatchBench batch;
    for (const PlaceRow& row : kPlaceRows) {
        SCOPED_TRACE(row.line);
        const StepLine line = batch.read(row.line);
        EXPECT_EQ(line.technique, row.technique);
        EXPECT_EQ(line.place, row.place);
        EXPECT_EQ(batch.part(line), row.part);
        EXPECT_EQ(batch.lineOf(line), row.approved);
        EXPECT_EQ(line.minutes ? static_cast<int>(line.minutes->count()) : -1, row.minutes);
        EXPECT_EQ(line.description, row.rest);
        expectWhole(line.spans, row.line);
    }
}

// The job's own places add to what is read of any other line, and change nothing in it.
TEST(StepLine, readsLinesWithoutTheJobsPlacesAsBefore) {
    const Bench bare;
    const BatchBench batch;
    for (const Row& row : kRows) {
        SCOPED_TRACE(row.line);
        const StepLine before = bare.read(row.line);
        const StepLine after = batch.read(row.line);
        EXPECT_EQ(after.technique, before.technique);
        EXPECT_EQ(after.place, before.place);
        EXPECT_EQ(after.description, before.description);
    }
}

TEST(StepLine, aStepOfAKnownPlaceNamesItsVolumeAndItsApprovedLine) {
    BatchBench batch;
    const LineContext context{
        .shelf = batch.shelf, .people = batch.b.file.people, .places = batch.places};
    const LoggedStep logged =
        stepFrom(readStepLine("mended SR 12 20 min", context), batch.b.file.job.id,
                 batch.b.anyone(), at(day(2031, 4, 2)), context, batch.b.ids);
    EXPECT_EQ(logged.step.place, "SR 12");
    EXPECT_EQ(logged.step.part, batch.b.file.parts[1].id);
    EXPECT_EQ(logged.step.line, batch.b.file.lines[1].id);
}

TEST(KnownPlaces, areTheApprovedLinesAndWhatTheyList) {
    const BatchBench batch;
    std::vector<std::string> texts;
    for (const KnownPlace& place : batch.places) {
        texts.push_back(place.text);
    }
    EXPECT_EQ(texts, (std::vector<std::string>{
                         "all five", "SR 11, 12, 19", "SR 11", "SR 12", "SR 19", "wrapper of SR 19",
                         "spine and joints", "spine", "joints", "B2, C5, title leaf", "B2", "C5",
                         "title leaf", "SR 11", "SR 12", "SR 15", "SR 19", "SR 20"}));
}

TEST(KnownPlaces, listsEachByItself) {
    using Places = std::vector<std::string>;
    EXPECT_EQ(placesListed("SR 11–13, 20 and wrapper of SR 19"),
              (Places{"SR 11", "SR 12", "SR 13", "SR 20", "wrapper of SR 19"}));
    EXPECT_EQ(placesListed("ff. 12, 14v"), (Places{"ff. 12", "ff. 14v"}));
    EXPECT_EQ(placesListed("spine"), Places{});
    EXPECT_EQ(placesListed("between C4 and C5"), Places{});
    EXPECT_EQ(placesListed("3, 4"), Places{});
    EXPECT_EQ(placesListed("SR 1-900"), Places{}); // no list that anybody meant
    EXPECT_EQ(placesListed(", ;"), Places{});
    EXPECT_EQ(placesListed(""), Places{});
}

TEST(StepLine, becomesAStepBegunBeforeNow) {
    JobBuilder b;
    b.material("kozo tissue", MaterialClass::tissue, Unit::sheet).removal = "lifts when moist";
    b.lot("26-020", "kozo tissue", Amount::sheets(10));
    const Shelf shelf = shelfOf(b.file);
    const LineContext context{.shelf = shelf, .people = b.file.people};
    const Instant now = at(day(2031, 4, 2), 11, 30);
    const LoggedStep logged =
        stepFrom(readStepLine("mended tear B2 with 26-020 1 sheet 25 min sets 1 h", context),
                 b.file.job.id, b.anyone(), now, context, b.ids);
    EXPECT_EQ(logged.step.at, at(day(2031, 4, 2), 11, 5));
    EXPECT_EQ(logged.step.setsUntil, at(day(2031, 4, 2), 12, 30));
    EXPECT_EQ(logged.step.reversibility, Reversibility::yes);
    EXPECT_FALSE(logged.step.undoing.empty());
    ASSERT_EQ(logged.uses.size(), 1U);
    EXPECT_EQ(logged.uses[0].removal, "lifts when moist");
    EXPECT_EQ(logged.uses[0].place, "B2");
    EXPECT_TRUE(logStep(logged, shelf, b.file.techniques, b.ids));
}

TEST(StepLine, aRemovalSaysWhatBecameOfIt) {
    struct Said {
        const char* line;
        const char* removed;
        const char* fate;
    };
    for (const Said& said : std::initializer_list<Said>{
             {"removed old spine lining, printed waste, kept in envelope 20 min",
              "old lining, printed waste", "kept in envelope"},
             {"removed 2 linings spine, returned to owner", "2 linings", "returned to owner"},
             {"removed tape C5 discarded, brittle", "", "discarded, brittle"},
             {"removed spine label, kept", "spine label", ""},
             {"removed old glue spine, residue in envelope", "residue", "in envelope"},
             {"took off spine label, returned to owner", "spine label", "returned to owner"},
             {"removed 2 linings spine, kept with book", "2 linings", "kept with book"},
             {"removed tape C5 tape thrown away", "tape", "thrown away"},
             {"removed old linings spine 20 min", "old linings", ""}}) {
        SCOPED_TRACE(said.line);
        JobBuilder b;
        const Shelf shelf = shelfOf(b.file);
        const LineContext context{.shelf = shelf, .people = b.file.people};
        const Step step = stepFrom(readStepLine(said.line, context), b.file.job.id, b.anyone(),
                                   at(day(2031, 4, 2)), context, b.ids)
                              .step;
        EXPECT_EQ(step.kind, StepKind::removal);
        EXPECT_EQ(step.removed, said.removed);
        EXPECT_EQ(step.removedFate, said.fate);
    }
}

TEST(StepLine, otherWorkSaysWhatLeftTheBookToo) {
    const TakenOut out = takenOutIn("old guards kept with the book", StepKind::treatment);
    EXPECT_EQ(out.what, "old guards");
    EXPECT_EQ(out.fate, "kept with the book");
    EXPECT_EQ(takenOutIn("gathering returned to its place", StepKind::treatment).what, "");
    EXPECT_EQ(takenOutIn("kept in the envelope", StepKind::treatment).what, "");
}

// Where nothing tells which of two times is the whole, both are shown; where something does, one.
TEST(StepLine, saysWhichOtherTimesMayBeTheWhole) {
    using Times = std::vector<Minutes>;
    EXPECT_EQ(bench().read("washed A1-A4 25 min, 1 h 15 min").otherMinutes, Times{Minutes{75}});
    EXPECT_EQ(bench().read("mended B2 20 min, C5 30 min, C6 5 min").otherMinutes,
              (Times{Minutes{30}, Minutes{5}}));
    for (const char* clear : {"washed A1-A4 20 min on, 4 h 15 all told", "mended B2 20 min",
                              "washed A1-A4 three baths, 25 min each, 1 hr 15",
                              "20 min mended B2 20 min", "pasted down 15 min, drying 24 h"}) {
        EXPECT_EQ(bench().read(clear).otherMinutes, Times{}) << clear;
    }
}

// "20 min each" says the whole only with how many; "3 x 25 min" and another time are two answers.
TEST(StepLine, aTimeOfEachIsNoWhole) {
    EXPECT_TRUE(bench().read("guarded K7 K8 20 min each").minutesAreOfEach);
    EXPECT_FALSE(bench().read("guarded K7 K8 20 min each, 40 min").minutesAreOfEach);
    EXPECT_FALSE(bench().read("washed A1 3 baths, 25 min each").minutesAreOfEach);
    EXPECT_EQ(bench().read("washed A1 3 x 25 min, 2 h").minutes, Minutes{120});
    EXPECT_EQ(bench().read("washed A1 3 x 25 min, 2 h").otherMinutes,
              std::vector<Minutes>{Minutes{75}});
    EXPECT_TRUE(bench().read("washed A1 3 x 25 min, 2 h all told").otherMinutes.empty());
}

TEST(StepLine, aPauseIsNoStep) {
    EXPECT_TRUE(bench().read("1h lunch no work").isPause);
    EXPECT_TRUE(bench().read("tea 15 min").isPause);
    EXPECT_FALSE(bench().read("mended B2 after lunch").isPause);
    EXPECT_FALSE(bench().read("tea stain on B2").isPause);
    EXPECT_FALSE(bench().read("telephoned the owner").isPause);
}

// The log is of what was done (AIC Commentary 27), not of what is to be.
TEST(StepLine, whatIsToBeDoneIsNotDone) {
    for (const char* line :
         {"to do: guard K7", "guard K7 tomorrow", "needs guarding K7", "washing needed for A-D",
          "planned washing", "owner wants new endpapers"}) {
        EXPECT_TRUE(bench().read(line).isDenied) << line;
    }
    for (const char* line : {"guarded K7", "mended B2 where needed", "guarded K7 as needed",
                             "pasted down 15 min, press until tomorrow 9am"}) {
        EXPECT_FALSE(bench().read(line).isDenied) << line;
    }
}

TEST(StepLine, aMixAndAStrikingAreDoneElsewhere) {
    EXPECT_TRUE(bench().read("paste 20 g WP mixed").isMixing);
    EXPECT_TRUE(bench().read("cooked paste 30 min").isMixing);
    EXPECT_FALSE(bench().read("mended B2 with mixed paste").isMixing);
    EXPECT_TRUE(bench().read("struck").isStriking);
    EXPECT_TRUE(bench().read("undo last").isStriking);
    EXPECT_FALSE(bench().read("mended B2, struck by light").isStriking);
}

// AIC Commentary 27: what was added. What was thrown away left the shelf, and is not in the book.
TEST(StepLine, whatWasWastedIsNotInTheBook) {
    JobBuilder b;
    b.lot("26-014", "wheat starch paste", Amount::of(Mass::grams(100)));
    const Shelf shelf = shelfOf(b.file);
    const LineContext context{.shelf = shelf, .people = b.file.people};
    const StepLine line = readStepLine("mended B2 26-014 1 g, 2 g wasted", context);
    const LoggedStep logged =
        stepFrom(line, b.file.job.id, b.anyone(), at(day(2031, 4, 2)), context, b.ids);
    ASSERT_EQ(logged.uses.size(), 2U);
    EXPECT_TRUE(logged.uses[0].stays);
    EXPECT_FALSE(logged.uses[1].stays);
    EXPECT_EQ(logged.uses[1].amount, Amount::of(Mass::grams(2)));
    EXPECT_EQ(logged.uses[1].role, "wasted");
    const StepLine all = readStepLine("mended B2 26-014 2 g wasted", context);
    EXPECT_TRUE(namesNoMaterial(all, techniques()));
    const StepLine off = readStepLine("removed lining spine 26-014 2 g, thrown away", context);
    EXPECT_FALSE(off.uses.front().isWasted); // the lining was
}

TEST(StepLine, tellsOfMaterialsWithoutALotAndOfNone) {
    EXPECT_EQ(materialsWithoutLot(bench().read("mended B2 26-020 1 sheet EVA 2 g")),
              std::vector<std::string>{"EVA"});
    EXPECT_TRUE(namesNoMaterial(bench().read("mended B2 20 min"), techniques()));
    EXPECT_FALSE(namesNoMaterial(bench().read("mended B2 26-014 1 g"), techniques()));
    EXPECT_FALSE(namesNoMaterial(bench().read("examined B2"), techniques()));
}

TEST(StepLine, aSubstanceWithoutALotIsOfItsKindInTheStep) {
    JobBuilder b;
    const Shelf shelf = shelfOf(b.file);
    const LineContext context{.shelf = shelf, .people = b.file.people};
    const LoggedStep logged =
        stepFrom(readStepLine("repaired upper joint EVA 2 g", context), b.file.job.id, b.anyone(),
                 at(day(2031, 4, 2)), context, b.ids);
    ASSERT_EQ(logged.uses.size(), 1U);
    EXPECT_EQ(logged.uses[0].role, "adhesive");
    EXPECT_EQ(logged.uses[0].material, "EVA");
    EXPECT_TRUE(logged.uses[0].stays);
    EXPECT_FALSE(logged.uses[0].lot);
}

// Both ways of saying when it is over, over a Tuesday.
TEST(StepLine, readsTillWhenItSets) {
    const auto till = [](std::string_view line) {
        return readStepLine(line, {.shelf = bench().shelf, .today = day(2031, 4, 1)}).setsTill;
    };
    const auto today = till("pasted down front pastedown 15 min, dries till 4 pm");
    ASSERT_TRUE(today);
    EXPECT_FALSE(today->day);
    EXPECT_EQ(today->at, Minutes{16 * 60});
    const auto ahead = till("put in press until tomorrow 9am");
    ASSERT_TRUE(ahead);
    EXPECT_EQ(ahead->day, day(2031, 4, 2));
    EXPECT_EQ(ahead->at, Minutes{9 * 60});
    EXPECT_EQ(till("pressed until Thursday 9:30")->day, day(2031, 4, 3));
    EXPECT_FALSE(till("mended B2 until 4 pm")); // work, not setting
    EXPECT_FALSE(till("dries till it is dry"));
}

TEST(StepLine, takesPiecesCutForTheJobByTheirNumber) {
    const LineContext context{
        .shelf = bench().shelf,
        .cut = {{.lot = "26-020", .pieces = 2, .cutting = Id<Cutting>{bench().anyKey()}}}};
    const StepLine line = readStepLine("new endpapers 26-020 2 pieces", context);
    ASSERT_EQ(line.uses.size(), 1U);
    EXPECT_FALSE(line.uses[0].amount);
    EXPECT_EQ(line.uses[0].material, "2 pieces cut for this job");
    const StepLine bare = bench().read("new endpapers 26-020 2 pieces");
    ASSERT_EQ(bare.uses.size(), 1U);
    EXPECT_EQ(bare.uses[0].amount, Amount::pieces(2)); // refused: it is counted in sheets
}

TEST(StepLine, pointsOutANumberThatIsNoLot) {
    const StepLine line = bench().read("tipped in K5 with 26-999 0.4 g");
    const auto unknown = std::ranges::find(line.spans, LinePart::unknownLot, &LineSpan::part);
    ASSERT_NE(unknown, line.spans.end());
    EXPECT_TRUE(line.uses.empty());
}

} // namespace
} // namespace headcap::core
