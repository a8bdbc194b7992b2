#include "core/report/compose_report.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "core/collation/walk_entries.h"
#include "core/report/disclosure_check.h"
#include "tests/support/random_job.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::FinishedJob;
using tests::JobBuilder;
using tests::RandomJob;

Document documentOf(const JobBuilder& job) {
    return composeReport(job.file, {.date = day(2031, 4, 2)}, job.clock);
}

TEST(ComposeReport, hasItsSectionsInOrderWhateverTheRecordHolds) {
    const std::vector<std::string> keys{"job",
                                        "book",
                                        "condition",
                                        "collation",
                                        "treatment",
                                        "treatment_proposed",
                                        "treatment_approved",
                                        "treatment_done",
                                        "log",
                                        "disclosures",
                                        "disclosures_a",
                                        "disclosures_b",
                                        "disclosures_c",
                                        "disclosures_d",
                                        "disclosures_e",
                                        "disclosures_f",
                                        "figures",
                                        "advice",
                                        "people"};
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
        const RandomJob job{seed};
        std::vector<std::string> found;
        for (const Section& section : documentOf(job).sections) {
            found.push_back(section.key);
        }
        EXPECT_EQ(found, keys);
    }
}

TEST(ComposeReport, aSectionWithNothingToSaySaysSo) {
    const JobBuilder empty;
    for (const Section& section : documentOf(empty).sections) {
        const bool heading = section.key == "treatment" || section.key == "disclosures";
        EXPECT_EQ(section.blocks.empty(), heading) << section.key;
    }
    const std::string text = plainText(documentOf(empty));
    for (const char* line :
         {"The book was not collated: whether it is complete is not known.",
          "Whether the book is complete: it was not collated.",
          "No leaf was supplied, in facsimile or original.",
          "No repair was made and no part replaced.", "No material was introduced.",
          "Nothing original was removed, moved or kept aside.",
          "Nothing was done that can't be undone.", "No step of work is logged."}) {
        EXPECT_NE(text.find(line), std::string::npos) << line;
    }
    // Of a book that nobody went through nothing is said to be in order.
    for (const char* line : {"Nothing out of order", "No leaf was found bound out of its place",
                             "The collation showed nothing", "Nothing is unresolved"}) {
        EXPECT_EQ(text.find(line), std::string::npos) << line;
    }
}

TEST(ComposeReport, aCollationThatFoundNothingSaysSo) {
    JobBuilder job;
    job.file.collations.push_back(Collation{.id = job.ids.next<Collation>(),
                                            .job = job.file.job.id,
                                            .part = std::nullopt,
                                            .who = std::nullopt});
    const std::string text = plainText(documentOf(job));
    for (const char* line : {"The record does not say that they were gone through one by one.",
                             "No leaf was found bound out of its place.",
                             "The record names no single plate that is called for.",
                             "The collation showed nothing that the owner had to be told.",
                             "Nothing out of order was found in collating.",
                             "Nothing is unresolved, and nothing is sought."}) {
        EXPECT_NE(text.find(line), std::string::npos) << line;
    }
}

// Sentences are joined as sentences: no stop meets a semicolon, and none begins small.
TEST(ComposeReport, noStopMeetsAnotherSign) {
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const std::string text = plainText(documentOf(RandomJob{seed}));
        for (const char* collision : {".;", ".,", ";.", ",.", ";;"}) {
            const auto at = text.find(collision);
            EXPECT_EQ(at, std::string::npos)
                << text.substr(at > 40 ? at - 40 : 0, 80) << " in " << seed;
        }
    }
}

// Whoever looks for a lot finds all of it in one place, with what it comes to.
TEST(ComposeReport, whatWentInStandsUnderItsLotWithItsSum) {
    JobBuilder job;
    job.material("wheat starch paste", MaterialClass::adhesivePrepared, Unit::gram);
    job.lot("26-014", "wheat starch paste", Amount::of(Mass::grams(100)));
    for (const char* place : {"B2", "B7", "C1"}) {
        const Step& step = job.step("tear_mending", place, day(2031, 3, 18));
        job.use(step, "26-014", Amount::of(Mass::grams(2)));
    }
    const auto groups = [&] {
        std::vector<std::string> said;
        for (const Section& section : documentOf(job).sections) {
            for (const Block& block : section.blocks) {
                const auto* table = std::get_if<Table>(&block);
                for (const TableRow& row :
                     table != nullptr ? table->rows : std::vector<TableRow>{}) {
                    if (row.kind == TableRow::Kind::group) {
                        said.push_back(plainText(row.cells.at(1)));
                    }
                }
            }
        }
        return said;
    };
    EXPECT_EQ(groups(), std::vector<std::string>{"6 g in all"});
    job.file.uses.back().amount.reset();
    EXPECT_EQ(groups(), std::vector<std::string>{"4 g, and what was not measured"});
    EXPECT_TRUE(undisclosed(job.file, documentOf(job)).empty());
    job.file.steps.back().struckAt = tests::at(day(2031, 3, 19));
    EXPECT_EQ(groups(), std::vector<std::string>{"4 g in all"});
}

// What was made good is no warning any more; what nobody worked on is.
TEST(ComposeReport, advisesOnWhatWasFoundAndNotWorkedOn) {
    JobBuilder job;
    job.finding("sewing", "broken", "gatherings C-H").handling = Handling::no;
    const auto advice = [&] { return plainText(documentOf(job)); };
    EXPECT_NE(advice().find("Not fit to be handled; ask before use."), std::string::npos);
    job.step("resewing", "the text block", day(2031, 3, 18));
    EXPECT_EQ(advice().find("Not fit to be handled; ask before use."), std::string::npos);
    job.file.steps.back().struckAt = tests::at(day(2031, 3, 19));
    EXPECT_NE(advice().find("Not fit to be handled; ask before use."), std::string::npos);
}

std::size_t timesIn(const std::string& text, const std::string& words) {
    std::size_t times = 0;
    for (std::size_t at = text.find(words); at != std::string::npos;
         at = text.find(words, at + 1)) {
        ++times;
    }
    return times;
}

// How a leaf comes out is said once of all that come out so, and still of each of them.
TEST(ComposeReport, advisesOnceOnLeavesThatComeOutAlike) {
    FinishedJob job;
    const std::string removal = "The guard is moistened for a minute and drawn out.";
    job.file.facsimiles.front().removal = removal;
    for (const char* place : {"C1", "C2"}) {
        job.facsimile(place).removal = place == std::string{"C1"} ? removal : "It lies loose.";
    }
    const auto document = documentOf(job);
    const auto advice = std::ranges::find(document.sections, "advice", &Section::key);
    Document alone;
    alone.sections = {*advice};
    const std::string text = plainText(alone);
    EXPECT_EQ(timesIn(text, removal), 1U);
    EXPECT_EQ(timesIn(text, "It lies loose."), 1U);
    EXPECT_NE(text.find("The facsimiles at " + job.file.facsimiles.front().place + " and C1 are"),
              std::string::npos)
        << text;
    EXPECT_NE(text.find("The facsimile at C2 is"), std::string::npos);
    for (const RecordRef& missing : undisclosed(job.file, document)) {
        EXPECT_NE(missing.kind, RecordKind::facsimile);
    }
}

// Nothing is added to a book that its record does not disclose: what was cut for it and never seen
// again is told.
TEST(ComposeReport, tellsOfPiecesCutForTheBookAndNotUsed) {
    FinishedJob job;
    const std::string lot = job.file.lots.front().number;
    job.file.uses.clear();
    job.file.cuttings.push_back({.id = job.ids.next<Cutting>(),
                                 .job = job.file.job.id,
                                 .at = tests::at(day(2031, 3, 16)),
                                 .who = std::nullopt,
                                 .plan = R"({"placed": [{"piece": "endpaper fold", "sheet": ")" +
                                         lot + R"("}, {"piece": "guard", "sheet": ")" + lot +
                                         R"("}]})"});
    const auto document = documentOf(job);
    const std::string text = plainText(document);
    EXPECT_NE(text.find("2 pieces of lot " + lot), std::string::npos) << text;
    EXPECT_NE(text.find("(endpaper fold and guard), cut on 16 March 2031. No step of the log uses "
                        "them; what became of them is NOT RECORDED."),
              std::string::npos);
    const auto missing = [&](const Document& paper) {
        return std::ranges::any_of(undisclosed(job.file, paper), [](const RecordRef& ref) {
            return ref.kind == RecordKind::cutting;
        });
    };
    EXPECT_FALSE(missing(document));
    Document silent = document;
    for (Section& section : silent.sections) {
        std::erase_if(section.blocks,
                      [](const Block& block) { return std::holds_alternative<List>(block); });
    }
    EXPECT_TRUE(missing(silent)); // such a report is not issued
    job.file.cuttings.back().takenBackAt = tests::at(day(2031, 3, 17));
    EXPECT_EQ(plainText(documentOf(job)).find("not seen again"), std::string::npos);
}

TEST(ComposeReport, everyRowFitsItsTable) {
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const RandomJob job{seed};
        for (const Section& section : documentOf(job).sections) {
            for (const Block& block : section.blocks) {
                if (const auto* table = std::get_if<Table>(&block)) {
                    for (const TableRow& row : table->rows) {
                        const bool isGroup = row.kind == TableRow::Kind::group;
                        EXPECT_EQ(row.cells.size(), isGroup ? 2 : table->columns.size())
                            << section.key;
                    }
                }
            }
        }
    }
}

TEST(ComposeReport, tellsTheWholeOfAFinishedJob) {
    const FinishedJob job;
    const Document document = documentOf(job);
    EXPECT_EQ(document.subtitle, "Ambrose Quill, The Shepherd of Wenlow, 1702");
    const std::string text = plainText(document);
    for (const char* words :
         {"Municipal Library of Wenlow, Old.III.12", "First edition, 1702",
          "Of the same setting as this copy", "FACSIMILE 2031 in the lower margin, pigment ink",
          "0.4 g of lot 31-002, wheat starch paste", "7.5 m of lot 31-004, linen thread",
          "kept in envelope 1 with the book", "108 leaves called for, 107 present",
          "186 mm × 118 mm × 27 mm", "approved on 12 March 2031 by Mrs Pell", "Ana Keller",
          "Figure 3."}) {
        EXPECT_NE(text.find(words), std::string::npos) << words;
    }
}

// How far a collation can be trusted is told with it: who looked at what, and at what nobody did.
TEST(ComposeReport, tellsHowTheLeavesWereGoneThrough) {
    FinishedJob job;
    Collation& collation = job.file.collations.front();
    const LaidBook book = walkedBook(collation.formula, collation.extent).book;
    const WalkPen pen{.ids = job.ids, .now = job.clock.now(), .who = collation.who};
    Walk walk = beginWalk(job.file.job.id, {}, collation, WalkKind::againstMakeUp, pen);
    walk.note = "by the north window";
    job.file.walks = {walk};
    for (const std::size_t leaf : {0U, 1U, 2U, 3U}) {
        job.file.walkEntries.push_back(leafAsExpected(walk, book, leaf, pen));
    }
    job.file.walkEntries.push_back(restAsExpected(walk, book, 4, pen));
    CollationFinding& misbound = job.lacking("E3");
    misbound.kind = CollationKind::misbound;
    misbound.found = "after E5";
    CalledPlate plate{.id = job.ids.next<CalledPlate>(), .job = job.file.job.id, .part = {}};
    plate.name = "the weir at Wenlow";
    plate.belongsAt = "to face p. 34";
    plate.source = "the list on A4v";
    plate.presence = PlatePresence::lacking;
    job.file.plates = {plate};
    const Document document = documentOf(job);
    const std::string text = plainText(document);
    for (const char* words :
         {"By the north window", "gathering A", "gathering B", "gatherings C–O",
          "One move puts the leaves in order: E3 goes after E2.", "the weir at Wenlow",
          "to face p. 34", "the list on A4v", "Misbound, after E5",
          "this copy shows: lacks K5; E3 misbound (after E5); the plate the weir at Wenlow is "
          "lacking.",
          "Told 8 March 2031"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words;
    }
    EXPECT_TRUE(undisclosed(job.file, document).empty());
}

// Owners are told to pay the last bill once the report has come: it stands apart from the invoice.
TEST(ComposeReport, namesNoPrice) {
    const FinishedJob job;
    const std::string text = plainText(documentOf(job));
    EXPECT_EQ(text.find("EUR"), std::string::npos);
    EXPECT_EQ(text.find("50.00"), std::string::npos);
}

TEST(ComposeReport, aStruckStepStaysInTheLogAndNowhereElse) {
    FinishedJob job;
    Step& tipped = job.file.steps.back();
    tipped.struckAt = tests::at(day(2031, 3, 21));
    tipped.struckBy = job.anyone();
    tipped.struckWhy = "logged twice";
    const RecordRef ref = refOf(tipped.id);
    std::set<std::string> where;
    std::vector<bool> struck;
    for (const Section& section : documentOf(job).sections) {
        for (const Block& block : section.blocks) {
            if (const auto* table = std::get_if<Table>(&block)) {
                for (const TableRow& row : table->rows) {
                    if (row.source == ref) {
                        where.insert(section.key);
                        struck.push_back(row.struck);
                    }
                }
            }
        }
    }
    EXPECT_EQ(where, std::set<std::string>{"log"});
    EXPECT_EQ(struck, (std::vector{true, false})) << "the entry is struck, its reason stands";
}

TEST(ComposeReport, aDayIsTheWorkshops) {
    FinishedJob job;
    // Late in the evening in UTC is the next day in Kathmandu.
    job.file.steps.front().at = tests::at(day(2031, 3, 15), 20);
    const tests::FixedClock kathmandu{tests::at(day(2031, 4, 2)), Minutes{345}};
    const Document document = composeReport(job.file, {.date = day(2031, 4, 2)}, kathmandu);
    const auto log = std::ranges::find(document.sections, "log", &Section::key);
    const auto& table = std::get<Table>(log->blocks.front());
    EXPECT_EQ(plainText(table.rows.front().cells.front()), "16 March 2031");
}

} // namespace
} // namespace headcap::core
