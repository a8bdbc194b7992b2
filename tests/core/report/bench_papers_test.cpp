// The papers of the bench: its log, and the receipt at the return.
#include <gtest/gtest.h>

#include "core/report/log_sheet.h"
#include "core/report/materials_sheet.h"
#include "core/report/receipt.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::FinishedJob;
using tests::JobBuilder;

bool says(const Document& document, std::string_view words) {
    return plainText(document).find(words) != std::string::npos;
}

TEST(LogSheet, saysTheConditionsTheSettingAndTheChecksOfAStep) {
    JobBuilder b;
    Step& step = b.step("pasting_down", "front pastedown", day(2031, 4, 2));
    step.minutes = Minutes{25};
    step.temperatureTenthsC = 205;
    step.humidityPercent = 55;
    step.concentration = "2 % w/v";
    step.pressure = "6 kg";
    step.setsUntil = step.at + step.minutes + std::chrono::hours{2};
    b.file.stepChecks.push_back({.id = b.ids.next<StepCheck>(),
                                 .job = b.file.job.id,
                                 .step = step.id,
                                 .what = "Register after closing",
                                 .done = true});
    b.file.stepChecks.push_back({.id = b.ids.next<StepCheck>(),
                                 .job = b.file.job.id,
                                 .step = step.id,
                                 .what = "Blotters in",
                                 .done = false,
                                 .whyNot = "felts were used"});
    const Document sheet = logSheet(b.file, b.clock);
    for (const char* words :
         {"20.5 °C", "55 % RH", "2 % w/v", "6 kg", "set for 2 h", "Register after closing",
          "Blotters in", "felts were used", "front pastedown", "25 min"}) {
        EXPECT_TRUE(says(sheet, words)) << words;
    }
}

TEST(LogSheet, keepsWhatWasStruckWithItsReason) {
    JobBuilder b;
    Step& step = b.step("guarding", "K8", day(2031, 4, 2));
    step.struckAt = at(day(2031, 4, 2), 12);
    step.struckBy = b.anyone();
    step.struckWhy = "it was K7";
    const Document sheet = logSheet(b.file, b.clock);
    EXPECT_TRUE(says(sheet, "K8"));
    EXPECT_TRUE(says(sheet, "it was K7"));
}

TEST(LogSheet, saysTheHoursOfEachPerson) {
    JobBuilder b;
    const Id<Person> other = b.person("Jan Roe", "JR").id;
    b.step("guarding", "K7", day(2031, 4, 2)).minutes = Minutes{40};
    Step& second = b.step("guarding", "K8", day(2031, 4, 2));
    second.who = other;
    second.minutes = Minutes{95};
    const Document sheet = logSheet(b.file, b.clock);
    EXPECT_TRUE(says(sheet, "Jan Roe"));
    EXPECT_TRUE(says(sheet, "1 h 35 min"));
    EXPECT_TRUE(says(sheet, "40 min"));
}

// Struck work is not among the hours; no more is it among what was done in them.
TEST(LogSheet, countsWhatIsStruckApart) {
    JobBuilder b;
    b.step("guarding", "K7", day(2031, 4, 2)).minutes = Minutes{40};
    Step& step = b.step("guarding", "K8", day(2031, 4, 2));
    step.minutes = Minutes{15};
    step.struckAt = at(day(2031, 4, 2), 12);
    step.struckBy = b.anyone();
    step.struckWhy = "it was K7";
    const Document sheet = logSheet(b.file, b.clock);
    EXPECT_TRUE(says(sheet, "1 entry of the log; 40 min; 1 entry that is struck"))
        << plainText(sheet);
}

// Who signs for it has read what not to touch with bare hands.
TEST(Receipt, ofAReturnSaysTheHazardAboveTheSignatureAndOnce) {
    FinishedJob b;
    b.file.hazards.push_back({.id = b.ids.next<Hazard>(),
                              .item = b.file.item.id,
                              .term = "arsenical_green",
                              .state = HazardState::suspected});
    const HandBack back{
        .id = b.ids.next<HandBack>(), .job = b.file.job.id, .onDay = day(2031, 5, 6)};
    const std::string text = plainText(receiptOf(b.file, back, b.clock));
    const std::size_t hazard = text.find("Arsenical green");
    ASSERT_NE(hazard, std::string::npos);
    EXPECT_LT(hazard, text.find("signature"));
    EXPECT_EQ(text.find("Arsenical green", hazard + 1), std::string::npos);
}

TEST(MaterialsSheet, saysWhereItIsNotRecordedHowSomethingComesOff) {
    JobBuilder b;
    b.material("paste", MaterialClass::adhesivePrepared, Unit::gram);
    b.lot("31-006", "paste", Amount::of(Mass::grams(50)));
    Step& step = b.step("guarding", "K7", day(2031, 4, 2));
    step.undoing.clear();
    b.use(step, "31-006", Amount::of(Mass::grams(1))).removal.clear();
    const std::string text = plainText(materialsSheet(b.file, {}, b.clock));
    EXPECT_NE(text.find("Guarding, K7 · NOT RECORDED"), std::string::npos) << text;
}

TEST(Receipt, ofWhatCameSaysItsValueItsPiecesAndItsHazard) {
    FinishedJob b;
    b.file.job.value = Money{420'000, "EUR"};
    b.file.job.receivedAs = "in a phase box";
    b.file.pieces.push_back(
        {.id = b.ids.next<Piece>(), .job = b.file.job.id, .count = 3, .what = "loose charts"});
    b.file.hazards.push_back({.id = b.ids.next<Hazard>(),
                              .item = b.file.item.id,
                              .term = "arsenical_green",
                              .state = HazardState::suspected});
    const Document receipt = arrivalReceiptOf(b.file, b.clock);
    for (const char* words : {"4,200.00 EUR", "In a phase box", "3 × loose charts",
                              "Arsenical green, suspected", "For the workshop"}) {
        EXPECT_TRUE(says(receipt, words)) << words;
    }
}

TEST(Receipt, saysWhatGoesHowItIsAndUntilWhenToObject) {
    FinishedJob b;
    b.file.pieces.push_back({.id = b.ids.next<Piece>(),
                             .job = b.file.job.id,
                             .count = 3,
                             .what = "slips of paper",
                             .returned = "in an envelope with it"});
    const HandBack back{.id = b.ids.next<HandBack>(),
                        .job = b.file.job.id,
                        .onDay = day(2031, 5, 6),
                        .who = b.anyone(),
                        .givenTo = "R. Hale, keeper",
                        .means = "by hand",
                        .condition = "as in the report",
                        .wentWith = "report, box",
                        .objectBy = day(2031, 6, 3),
                        .nextLookOn = day(2032, 5, 6)};
    const Document receipt = receiptOf(b.file, back, b.clock);
    for (const char* words :
         {"R. Hale, keeper", "by hand", "As in the report", "Report, box", "3 June 2031",
          "6 May 2032", "3 × slips of paper", "in an envelope with it", "signature",
          "Keep the treatment report with the book"}) {
        EXPECT_TRUE(says(receipt, words)) << words;
    }
    EXPECT_EQ(receipt.date, back.onDay);
    EXPECT_FALSE(receipt.isDraft);
}

TEST(Receipt, isSignedWhereWhatGoesBackStandsAndNotBelowTheAdvice) {
    FinishedJob b;
    const HandBack back{
        .id = b.ids.next<HandBack>(), .job = b.file.job.id, .onDay = day(2031, 5, 6)};
    std::vector<std::string> keys;
    for (const Section& section : receiptOf(b.file, back, b.clock).sections) {
        keys.push_back(section.key);
    }
    EXPECT_EQ(keys, (std::vector<std::string>{"receipt_book", "receipt_signed", "advice"}));
}

TEST(Receipt, ofWhatCameSaysNothingOfWhatBecameOfItLater) {
    FinishedJob b;
    b.file.pieces.push_back({.id = b.ids.next<Piece>(),
                             .job = b.file.job.id,
                             .count = 3,
                             .what = "loose charts",
                             .returned = "back in their places"});
    const Document receipt = arrivalReceiptOf(b.file, b.clock);
    EXPECT_TRUE(says(receipt, "3 × loose charts"));
    EXPECT_FALSE(says(receipt, "back in their places"));
}

TEST(Receipt, ofAReturnThatSaysLittleHasNoEmptyRows) {
    FinishedJob b;
    const HandBack back{
        .id = b.ids.next<HandBack>(), .job = b.file.job.id, .onDay = day(2031, 5, 6)};
    const Document receipt = receiptOf(b.file, back, b.clock);
    EXPECT_FALSE(says(receipt, "To object by"));
    EXPECT_FALSE(says(receipt, "Next look"));
    for (const Section& section : receipt.sections) {
        for (const Block& block : section.blocks) {
            if (const auto* facts = std::get_if<Facts>(&block)) {
                for (const Fact& fact : facts->facts) {
                    EXPECT_FALSE(plainText(fact.value).empty()) << fact.label;
                }
            }
        }
    }
}

} // namespace
} // namespace headcap::core
