// What the report says in words of its own: amounts, what was cleared by a look, what nobody
// approved, a limit that was kept; and how photographs stand.
#include <algorithm>

#include <gtest/gtest.h>

#include "core/report/compose_report.h"
#include "core/report/disclosure_check.h"
#include "core/survey/finding_state.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::FinishedJob;
using tests::JobBuilder;

Document documentOf(const JobBuilder& job) {
    return composeReport(job.file, {.date = day(2031, 4, 2)}, job.clock);
}

std::string textOf(const JobBuilder& job, std::string_view section) {
    Document document = documentOf(job);
    std::erase_if(document.sections, [&](const Section& one) { return one.key != section; });
    return plainText(document);
}

bool says(const std::string& text, std::string_view words) {
    return text.find(words) != std::string::npos;
}

TEST(ReportWords, amountsAreSaidAsABinderSaysThem) {
    JobBuilder job;
    job.material("deionised water", MaterialClass::solvent, Unit::millilitre);
    job.lot("26-026", "deionised water", Amount::of(Volume::millilitres(20'000)));
    job.material("calf", MaterialClass::leather, Unit::piece);
    job.lot("26-015", "calf", Amount::pieces(1));
    const Step& washed = job.step("washing", "B2", day(2031, 3, 18));
    job.use(washed, "26-026", Amount::of(Volume::millilitres(9'000))).stays = false;
    const Step& repaired = job.step("rebacking", "spine", day(2031, 3, 19));
    job.use(repaired, "26-015", Amount{20, Unit::piece});
    const std::string introduced = textOf(job, "disclosures_c");
    EXPECT_TRUE(says(introduced, "9 l")) << introduced;
    EXPECT_TRUE(says(introduced, "0.02 of a skin")) << introduced;
    EXPECT_TRUE(says(introduced, "Not meant to stay in the book")) << introduced;
    EXPECT_TRUE(undisclosed(job.file, documentOf(job)).empty());
}

// A look finds what is there to be seen and clears nothing (conservation hazards guidance: a
// negative look is no clearance); an analysis does.
TEST(ReportWords, whatWasClearedByALookIsSaidAsSeen) {
    JobBuilder job;
    job.file.hazards.push_back(Hazard{.id = job.ids.next<Hazard>(),
                                      .item = job.file.item.id,
                                      .term = "mould",
                                      .state = HazardState::cleared,
                                      .method = "under ×40, no spores lifted on tape",
                                      .onDay = day(2031, 3, 1),
                                      .who = std::nullopt});
    Hazard& hazard = job.file.hazards.back();
    EXPECT_TRUE(says(textOf(job, "condition"), "Mould: not seen active on 1 March 2031"));
    hazard.method = "swab, culture grown by a laboratory: nothing";
    EXPECT_TRUE(says(textOf(job, "condition"), "Mould: cleared"));
    hazard.term = "arsenical_green";
    hazard.method = "looked at by daylight";
    EXPECT_TRUE(says(textOf(job, "condition"), "Arsenical green: nothing seen on 1 March 2031"));
    hazard.method = "XRF: no arsenic, no copper";
    EXPECT_TRUE(says(textOf(job, "condition"), "Arsenical green: cleared"));
    hazard.term = "red_rot_dust";
    hazard.method = "looked at and touched";
    EXPECT_TRUE(says(textOf(job, "condition"), ": cleared"));
}

// 8 1/4 in are 209.55 mm (25.4 mm to the inch), which nobody measured.
TEST(ReportWords, aBookIsAsLargeAsItCanBeMeasured) {
    JobBuilder job;
    job.file.item.height = Length::micrometres(209'550);
    job.file.item.width = Length::millimetres(118);
    job.file.item.thickness = Length::micrometres(27'250);
    const std::string book = textOf(job, "book");
    EXPECT_TRUE(says(book, "209.5 mm × 118 mm × 27.5 mm")) << book;
}

TEST(ReportWords, whatNobodyJudgedIsNotCalledSlight) {
    JobBuilder job;
    Finding& finding = job.finding("spine", "cracked", "Spine");
    finding.severity = kSeverityNotSaid;
    const std::string unsaid = textOf(job, "condition");
    EXPECT_TRUE(says(unsaid, "how severe, and whether it may be handled, is not said")) << unsaid;
    EXPECT_FALSE(says(unsaid, "Spine, Spine")) << unsaid;
    finding.activity = Activity::active; // said, though nobody judged it
    const std::string going = textOf(job, "condition");
    EXPECT_TRUE(says(going, "active; how severe")) << going;
    finding.activity = Activity::unknown;
    finding.severity = 2;
    EXPECT_TRUE(says(textOf(job, "condition"), "moderate, activity not known, may be handled"));
}

TEST(ReportWords, workThatNobodyApprovedSaysWhyOrThatItIsNotRecorded) {
    FinishedJob job;
    const Step step = job.step("surface_cleaning", "boards", day(2031, 3, 21));
    EXPECT_TRUE(says(textOf(job, "treatment_done"), "Why is NOT RECORDED"));
    job.file.explanations.push_back(Explanation{.id = job.ids.next<Explanation>(),
                                                .job = job.file.job.id,
                                                .subject = refOf(step.id),
                                                .text = "the dust would have gone into the paste",
                                                .at = job.clock.now()});
    const std::string explained = textOf(job, "treatment_done");
    EXPECT_TRUE(says(explained, "The dust would have gone into the paste")) << explained;
    EXPECT_FALSE(says(explained, "NOT RECORDED")) << explained;
}

TEST(ReportWords, aLimitIsSaidWithWhetherItWasKept) {
    FinishedJob job;
    for (ProposalLine& line : job.file.lines) {
        line.price = Money{5'000, "EUR"};
    }
    job.file.decisions.front().limit = Money{900'000, "EUR"};
    EXPECT_TRUE(
        says(textOf(job, "treatment_approved"), "The work as it was done stayed within it."));
    job.file.decisions.front().limit = Money{100, "EUR"};
    EXPECT_TRUE(says(textOf(job, "treatment_approved"), "The work as it was done goes above it."));
    // The owner's own words name the sum: it is not said before them once more.
    job.file.decisions.front().limit = Money{320'000, "EUR"};
    job.file.decisions.front().limits = "Not above 3,200 EUR without asking again";
    const std::string named = textOf(job, "treatment_approved");
    EXPECT_TRUE(says(named, "again. The work as it was done stayed within 3,200.00 EUR.")) << named;
    EXPECT_FALSE(says(named, "without being asked")) << named;
    job.file.decisions.front().limits = "In one year, by 13,200 hours at the most";
    EXPECT_TRUE(says(textOf(job, "treatment_approved"), "without being asked"));
}

// The printing of a facsimile is no repair; put in, it is told with its leaf.
TEST(ReportWords, thePrintingOfAFacsimileIsToldWithItsLeaf) {
    FinishedJob job;
    ASSERT_FALSE(job.file.facsimiles.empty());
    Step& printed =
        job.step("printing_facsimile", job.file.facsimiles.front().place, day(2031, 3, 17));
    printed.undoing = "leaves apart; not yet in the book";
    job.use(printed, "31-003", Amount::sheets(1));
    EXPECT_FALSE(says(textOf(job, "disclosures_b"), "not yet in the book"));
    EXPECT_TRUE(undisclosed(job.file, documentOf(job)).empty());
    job.file.facsimiles.clear();
    for (Photograph& photograph : job.file.photographs) {
        photograph.facsimile.reset();
    }
    EXPECT_TRUE(says(textOf(job, "disclosures_b"), "not yet in the book"))
        << "where no leaf is on record, nothing else would tell it";
}

// Its words and the name of its technique, which they may say already; no column with nothing in
// it; and where nothing is lasting, no word that sounds as if something were.
TEST(ReportWords, aProposalSaysNothingTwiceAndNothingEmpty) {
    JobBuilder job;
    const ProposalOption option = job.option(job.proposal(), "A");
    job.file.options.back().irreversible = "Nothing";
    job.line(option, "guarding");
    job.file.lines.back().description = "Guarding of two folds";
    job.file.lines.back().materials.clear();
    job.file.lines.back().place = "K5, K6";
    std::string text = textOf(job, "treatment_proposed");
    EXPECT_TRUE(says(text, "Guarding of two folds")) << text;
    EXPECT_FALSE(says(text, "Guarding. Guarding")) << text;
    EXPECT_TRUE(says(text, "Place")) << text;
    EXPECT_FALSE(says(text, "Materials")) << text;
    EXPECT_TRUE(says(text, "All of it can be undone.")) << text;
    EXPECT_FALSE(says(text, "Nothing")) << text;
    EXPECT_TRUE(undisclosed(job.file, documentOf(job)).empty());
    job.file.lines.back().technique = "washing";
    text = textOf(job, "treatment_proposed");
    EXPECT_TRUE(says(text, "Can't be undone: By the nature of the work: washing (K5, K6)")) << text;
}

TEST(ReportWords, aFormulaIsSetWithDashesAndNothingElseOfItIsChanged) {
    JobBuilder job;
    job.file.collations.push_back(Collation{.id = job.ids.next<Collation>(),
                                            .job = job.file.job.id,
                                            .part = std::nullopt,
                                            .formula = "2°: π² A-N²",
                                            .who = std::nullopt});
    EXPECT_TRUE(says(textOf(job, "collation"), "Formula: 2°: π² A–N²"));
    job.file.collations.back().formula = "as the printer's - wrong - list";
    EXPECT_TRUE(says(textOf(job, "collation"), "as the printer's - wrong - list"));
    EXPECT_TRUE(undisclosed(job.file, documentOf(job)).empty());
}

struct Shot {
    PhotoRole role;
    const char* place;
    FigureWidth width = FigureWidth::column;
};

// Each block: the places of its figures, a capital where it stands the whole width.
std::vector<std::string> blocksOf(std::initializer_list<Shot> shots) {
    JobBuilder job;
    for (const Shot& shot : shots) {
        Photograph& photograph = job.photograph(shot.role);
        photograph.place = shot.place;
        photograph.caption = "the stain";
        photograph.figureWidth = shot.width;
    }
    std::vector<std::string> blocks;
    int number = 0;
    for (const Section& section : documentOf(job).sections) {
        for (const Block& block : section.blocks) {
            const auto* figures = std::get_if<Figures>(&block);
            if (figures == nullptr) {
                continue;
            }
            std::string said;
            for (const Figure& figure : figures->figures) {
                EXPECT_EQ(figure.number, ++number);
                const std::string caption = figure.caption.substr(0, figure.caption.find('.'));
                said += (said.empty() ? "" : " | ") + caption +
                        (figure.width == FigureWidth::full ? " (full)" : "");
            }
            blocks.push_back(said);
        }
    }
    EXPECT_TRUE(undisclosed(job.file, documentOf(job)).empty());
    return blocks;
}

TEST(ReportFigures, beforeAndAfterOfOneViewStandSideBySide) {
    EXPECT_EQ(blocksOf({{PhotoRole::before, "title", FigureWidth::full},
                        {PhotoRole::before, "opening"},
                        {PhotoRole::detail, "Title"},
                        {PhotoRole::after, "title", FigureWidth::full},
                        {PhotoRole::after, "spine"}}),
              (std::vector<std::string>{
                  "Title, before treatment | Title, after treatment | Title, detail",
                  "Opening, before treatment | Spine, after treatment"}));
}

TEST(ReportFigures, aFacsimileKeepsItsStatementWithIt) {
    EXPECT_EQ(
        blocksOf({{PhotoRole::after, "plate IX", FigureWidth::full},
                  {PhotoRole::before, "spine"},
                  {PhotoRole::detail, "plate IX", FigureWidth::full}}),
        (std::vector<std::string>{"Plate IX, after treatment (full) | Plate IX, detail (full)",
                                  "Spine, before treatment"}));
}

TEST(ReportFigures, aCaptionThatBeginsWithItsPlaceSaysItOnce) {
    JobBuilder job;
    Photograph& photograph = job.photograph(PhotoRole::before);
    photograph.place = "K5";
    photograph.caption = "K5 as received, torn";
    EXPECT_TRUE(says(textOf(job, "figures"), "Before treatment. K5 as received, torn."));
    EXPECT_TRUE(undisclosed(job.file, documentOf(job)).empty());
    photograph.caption = "K55 is another leaf";
    EXPECT_TRUE(says(textOf(job, "figures"), "K5, before treatment. K55 is another leaf."));
}

TEST(ReportFigures, whatNamesNoPlaceStandsInItsOrder) {
    EXPECT_EQ(blocksOf({{PhotoRole::after, ""}, {PhotoRole::before, ""}}),
              (std::vector<std::string>{"After treatment | Before treatment"}));
}

} // namespace
} // namespace headcap::core
