#include "core/audit/audit.h"

#include <algorithm>
#include <functional>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/audit/rules.h"
#include "core/survey/finding_state.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::at;
using tests::day;
using tests::FinishedJob;
using tests::JobBuilder;

struct Fault {
    const char* rule;
    std::function<void(FinishedJob&)> make;
};

Facsimile& leafOf(FinishedJob& j) {
    return j.file.facsimiles.front();
}
Step& stepOf(FinishedJob& j, std::string_view technique) {
    return *std::ranges::find(j.file.steps, technique, &Step::technique);
}
Lot& pasteOf(FinishedJob& j) {
    return *std::ranges::find(j.file.lots, "31-002", &Lot::number);
}
Material& kindOfPaste(FinishedJob& j) {
    return *std::ranges::find(j.file.materials, pasteOf(j).material, &Material::id);
}
Hazard& hazardOf(FinishedJob& j, HazardState state) {
    return j.file.hazards.emplace_back(Hazard{.id = j.ids.next<Hazard>(),
                                              .item = j.file.item.id,
                                              .term = "mould",
                                              .state = state,
                                              .who = std::nullopt});
}
Test& testOf(FinishedJob& j, Day on) {
    return j.file.tests.emplace_back(Test{.id = j.ids.next<Test>(),
                                          .job = j.file.job.id,
                                          .part = std::nullopt,
                                          .onDay = on,
                                          .who = j.anyone(),
                                          .purpose = "ink in water",
                                          .result = "does not move"});
}
void countedOut(FinishedJob& j, const std::string& words) {
    ReleaseCheck check{.id = j.ids.next<ReleaseCheck>(), .job = j.file.job.id};
    check.key = "leaf_tally";
    check.answer = ReleaseAnswer::done;
    check.why = words;
    j.file.releaseChecks.push_back(check);
}
Piece& pieceOf(FinishedJob& j) {
    return j.file.pieces.emplace_back(
        Piece{.id = j.ids.next<Piece>(), .job = j.file.job.id, .what = "a paper wrapper"});
}
IssuedReport& reportOf(FinishedJob& j, Day on) {
    return j.file.reports.emplace_back(IssuedReport{.id = j.ids.next<IssuedReport>(),
                                                    .job = j.file.job.id,
                                                    .issuedAt = at(on),
                                                    .who = std::nullopt});
}

// For each rule, a fault in a job that has none, which that rule must find.
const std::vector<Fault>& faults() {
    static const std::vector<Fault> kFaults{
        {"book_identified", [](auto& j) { j.file.item.title.clear(); }},
        {"book_measurements", [](auto& j) { j.file.item.width.reset(); }},
        {"owner_authority", [](auto& j) { j.file.owner.authority.clear(); }},
        {"earlier_records", [](auto& j) { j.file.job.earlierRecords = EarlierRecords::notAsked; }},
        {"value_in_the_house", [](auto& j) { j.file.job.value.reset(); }},
        {"piece_unaccounted",
         [](auto& j) {
             pieceOf(j);
             j.file.job.state = JobState::returned;
         }},
        {"piece_to_return", [](auto& j) { pieceOf(j); }},
        {"lacking_leaf_named", [](auto& j) { j.file.collationFindings.front().place.clear(); }},
        {"lacking_leaf_decided",
         [](auto& j) { j.file.collationFindings.front().decision = CollationDecision::undecided; }},
        {"lacking_leaf_made_good", [](auto& j) { leafOf(j).place = "M2"; }},
        {"lacking_leaf_promised",
         [](auto& j) {
             j.file.collationFindings.front().decision = CollationDecision::toBeSupplied;
         }},
        {"lacking_leaf_told", [](auto& j) { j.file.notices.clear(); }},
        {"leaf_tally_short", [](auto& j) { j.file.collationFindings.clear(); }},
        {"plates_counted", [](auto& j) { j.file.collations.front().extent += ", 3 plates"; }},
        {"leaf_tally_over", [](auto& j) { j.file.collations.front().leavesPresent = 110; }},
        {"leaf_tally_out", [](auto& j) { countedOut(j, "109 leaves"); }},
        {"leaf_tally_out_said", [](auto& j) { countedOut(j, ""); }},
        {"finding_place_in_book", [](auto& j) { j.finding("leaves", "torn", "B2, Q3"); }},
        {"collation_place_in_book", [](auto& j) { leafOf(j).place = "P5"; }},
        {"step_place_in_book",
         [](auto& j) { j.step("surface_cleaning", "K9, upper board", day(2031, 3, 18)); }},
        {"photograph_place_in_book", [](auto& j) { j.file.photographs.front().place = "P1r"; }},
        {"collation_finished", [](auto& j) { j.file.collations.front().finishedOn.reset(); }},
        {"collation_method", [](auto& j) { j.file.collations.front().method.clear(); }},
        {"supplied_leaf_place", [](auto& j) { leafOf(j).place.clear(); }},
        {"facsimile_source", [](auto& j) { leafOf(j).shelfmark.clear(); }},
        {"facsimile_source_edition", [](auto& j) { leafOf(j).edition.clear(); }},
        {"supplied_leaf_verification", [](auto& j) { leafOf(j).verification.clear(); }},
        {"supplied_leaf_not_established",
         [](auto& j) { leafOf(j).verdict = Verdict::notEstablished; }},
        {"supplied_leaf_contradicted", [](auto& j) { leafOf(j).verdict = Verdict::contradicted; }},
        {"supplied_leaf_setting_unknown", [](auto& j) { leafOf(j).verdict = Verdict::pagesAgree; }},
        {"facsimile_material", [](auto& j) { leafOf(j).printedOn.reset(); }},
        {"supplied_leaf_attachment", [](auto& j) { leafOf(j).attachedWith.reset(); }},
        {"supplied_leaf_lot",
         [](auto& j) {
             std::erase_if(j.file.uses, [&](const MaterialUse& use) {
                 return use.step == stepOf(j, "printing_facsimile").id;
             });
         }},
        {"facsimile_marking", [](auto& j) { leafOf(j).marking.clear(); }},
        {"facsimile_on_old_paper",
         [](auto& j) {
             Lot& paper = *std::ranges::find(j.file.lots, "31-003", &Lot::number);
             paper.origin = LotOrigin::saved;
         }},
        {"supplied_leaf_removal", [](auto& j) { leafOf(j).removal.clear(); }},
        {"original_leaf_provenance", [](auto& j) { leafOf(j).kind = SuppliedKind::originalLeaf; }},
        {"facsimile_permission", [](auto& j) { leafOf(j).permission.clear(); }},
        {"supplied_leaf_image", [](auto& j) { j.file.photographs.back().facsimile.reset(); }},
        {"supplied_leaf_step", [](auto& j) { leafOf(j).step.reset(); }},
        {"facsimile_follow_up", [](auto& j) { j.file.followUps.clear(); }},
        {"condition_described", [](auto& j) { j.file.findings.clear(); }},
        {"finding_judged", [](auto& j) { j.file.findings.front().severity = kSeverityNotSaid; }},
        {"examination_method", [](auto& j) { j.file.examinations.front().method.clear(); }},
        {"not_examined", [](auto& j) { j.file.examinations.front().notExamined.clear(); }},
        {"sample_consent", [](auto& j) { testOf(j, day(2031, 3, 6)).sampleTaken = true; }},
        {"test_result", [](auto& j) { testOf(j, day(2031, 3, 6)).result.clear(); }},
        {"hazard_likely", [](auto& j) { j.finding("leather", "red_rot", "spine"); }},
        {"hazard_not_settled", [](auto& j) { hazardOf(j, HazardState::notTested); }},
        {"hazard_evidence", [](auto& j) { hazardOf(j, HazardState::cleared); }},
        {"hazard_cleared_by_look",
         [](auto& j) { hazardOf(j, HazardState::cleared).method = "looked at under ×40"; }},
        {"hazard_told", [](auto& j) { hazardOf(j, HazardState::suspected); }},
        {"approval", [](auto& j) { j.file.decisions.clear(); }},
        {"approval_by_whom", [](auto& j) { j.file.decisions.front().byName.clear(); }},
        {"approval_spoken",
         [](auto& j) { j.file.decisions.front().means = DecisionMeans::spoken; }},
        {"approval_before_work",
         [](auto& j) { j.file.decisions.front().onDay = day(2031, 3, 16); }},
        {"done_not_approved",
         [](auto& j) { j.step("surface_cleaning", "boards", day(2031, 3, 21)); }},
        {"approved_not_done",
         [](auto& j) {
             const ProposalOption option = j.file.options.front();
             j.line(option, "boxing");
         }},
        {"over_limit",
         [](auto& j) {
             for (ProposalLine& line : j.file.lines) {
                 line.price = Money{20'000, "EUR"};
             }
             j.file.decisions.front().limit = Money{10'000, "EUR"};
         }},
        {"decided_not_sent", [](auto& j) { j.file.proposals.front().sentOn.reset(); }},
        {"limit_below_price",
         [](auto& j) {
             j.file.lines.front().price = Money{20'000, "EUR"};
             j.file.decisions.front().option = j.file.lines.front().option;
             j.file.decisions.front().limit = Money{19'900, "EUR"};
         }},
        {"do_nothing_offered", [](auto& j) { j.file.options.pop_back(); }},
        {"irreversible_agreed", [](auto&) {}},
        {"repair_material",
         [](auto& j) {
             std::erase_if(j.file.uses, [&](const MaterialUse& use) {
                 return use.step == stepOf(j, "tear_mending").id;
             });
         }},
        {"step_technique",
         [](auto& j) {
             Step& step = j.step("", "upper joint", day(2031, 3, 18));
             step.reversibility = Reversibility::no;
         }},
        {"step_reversibility",
         [](auto& j) { stepOf(j, "resewing").reversibility = Reversibility::unknown; }},
        {"step_undoing", [](auto& j) { stepOf(j, "resewing").undoing.clear(); }},
        {"step_undoing_true",
         [](auto& j) {
             Step& mended = stepOf(j, "tear_mending");
             mended.technique = "board_reattaching"; // with paste alone
             mended.undoing = TechniquesInForce{}.named("board_reattaching")->undoing;
         }},
        {"removed_what", [](auto& j) { stepOf(j, "disbinding").removed.clear(); }},
        {"removed_fate", [](auto& j) { stepOf(j, "disbinding").removedFate.clear(); }},
        {"uncovered_image", [](auto& j) { j.step("uncovering", "spine", day(2031, 3, 16)); }},
        {"incident_told", [](auto& j) { j.step("incident", "B2", day(2031, 3, 16)); }},
        {"disbound_collated",
         [](auto& j) { j.file.collations.front().finishedOn = day(2031, 3, 16); }},
        {"disbound_told", [](auto& j) { j.file.notices.front().onDay = day(2031, 3, 16); }},
        {"media_tested", [](auto& j) { j.step("washing", "B2", day(2031, 3, 16)); }},
        {"media_tested_before",
         [](auto& j) {
             j.step("washing", "B2", day(2031, 3, 16));
             testOf(j, day(2031, 3, 17));
         }},
        {"media_tested_liquid",
         [](auto& j) {
             j.step("deacidifying", "B2", day(2031, 3, 16));
             Test& test = testOf(j, day(2031, 3, 6));
             test.place = "B2";
             test.method = "a drop of water, blotted";
         }},
        {"media_tested_leaves",
         [](auto& j) {
             j.step("washing", "B2–B4", day(2031, 3, 16));
             testOf(j, day(2031, 3, 6)).place = "C1r";
         }},
        {"step_place", [](auto& j) { stepOf(j, "tear_mending").place.clear(); }},
        {"setting_over",
         [](auto& j) { stepOf(j, "tipping_in").setsUntil = at(day(2031, 4, 2), 12); }},
        {"step_checks", [](auto& j) { j.file.stepChecks.clear(); }},
        {"clock_not_logged",
         [](auto& j) {
             j.file.clocks.push_back({.id = j.ids.template next<BenchClock>(),
                                      .job = j.file.job.id,
                                      .technique = "guarding",
                                      .startedAt = at(day(2031, 3, 16), 9),
                                      .stoppedAt = at(day(2031, 3, 16), 10)});
         }},
        {"step_in_future", [](auto& j) { stepOf(j, "tipping_in").at = at(day(2031, 4, 3)); }},
        {"material_lot", [](auto& j) { j.file.uses.front().lot.reset(); }},
        {"material_amount", [](auto& j) { j.file.uses.front().amount.reset(); }},
        {"material_removal",
         [](auto& j) {
             j.file.uses.front().removal.clear();
             stepOf(j, "tear_mending").undoing.clear();
         }},
        {"material_undoing",
         [](auto& j) {
             for (Material& kind : j.file.materials) {
                 kind.reversibility = Reversibility::no;
             }
         }},
        {"cut_not_used",
         [](auto& j) {
             j.file.cuttings.push_back(
                 {.id = j.ids.template next<Cutting>(),
                  .job = j.file.job.id,
                  .at = at(day(2031, 3, 16)),
                  .plan = R"({"placed": [{"piece": "fold", "sheet": "26-003"}]})"});
         }},
        {"lot_overdue", [](auto& j) { pasteOf(j).goodUntil = day(2031, 3, 16); }},
        {"lot_overdrawn",
         [](auto& j) { j.file.ledger.front().amount = Amount::of(Mass::grams(1)); }},
        {"lot_booked", [](auto& j) { j.file.ledger.pop_back(); }},
        {"lot_origin", [](auto& j) { pasteOf(j).supplier.clear(); }},
        {"paper_permanence", [](auto&) {}},
        {"material_permanence",
         [](auto& j) {
             Material& kind = kindOfPaste(j);
             kind.kind = MaterialClass::paper;
             kind.phHundredths = 620;
         }},
        {"material_cyanotype",
         [](auto& j) {
             Material& kind = kindOfPaste(j);
             kind.kind = MaterialClass::paper;
             kind.alkaliReserveMmolKg = 450;
             j.file.item.note = "Six cyanotypes are bound in";
         }},
        {"material_weight",
         [](auto& j) {
             Material& kind = kindOfPaste(j);
             kind.kind = MaterialClass::paper;
             kind.grammageMgM2 = 160'000;
             j.file.item.leafMgM2 = 100'000;
         }},
        {"material_grain",
         [](auto& j) {
             kindOfPaste(j).kind = MaterialClass::paper;
             for (MaterialUse& use : j.file.uses) {
                 use.grainAtSpine = GrainAtSpine::across;
             }
         }},
        {"material_claim",
         [](auto& j) {
             Material& kind = kindOfPaste(j);
             kind.kind = MaterialClass::paper;
             kind.standard = "ISO 9706";
         }},
        {"print_stability",
         [](auto& j) {
             kindOfPaste(j).kind = MaterialClass::ink;
             stepOf(j, "tear_mending").technique = "printing_facsimile";
         }},
        {"photograph_after", [](auto& j) { j.file.photographs.pop_back(); }},
        {"photograph_before",
         [](auto& j) { j.file.photographs.erase(j.file.photographs.begin()); }},
        {"photograph_caption", [](auto& j) { j.file.photographs.front().caption.clear(); }},
        {"follow_up_overdue", [](auto& j) { j.file.followUps.front().dueOn = day(2031, 4, 1); }},
        {"work_after_report", [](auto& j) { reportOf(j, day(2031, 3, 18)); }},
        {"report_of_nothing", [](auto& j) { j.file.steps.clear(); }},
        {"report_issued", [](auto& j) { j.file.job.state = JobState::reported; }},
        {"notice_answered", [](auto& j) { j.notice(NoticeSubject::change, day(2031, 3, 16)); }},
    };
    return kFaults;
}

bool finds(const std::vector<AuditPoint>& points, std::string_view rule) {
    return std::ranges::find(points, rule, &AuditPoint::rule) != points.end();
}

TEST(Audit, findsNothingToSettleInAFinishedJob) {
    const FinishedJob job;
    const auto points = audit(job.file, job.clock);
    for (const AuditPoint& point : points) {
        EXPECT_EQ(point.severity, AuditSeverity::worthKnowing) << point.sentence;
    }
    EXPECT_TRUE(mayIssue(points));
}

TEST(Audit, eachRuleFindsItsFault) {
    for (const Fault& fault : faults()) {
        FinishedJob job;
        fault.make(job);
        EXPECT_TRUE(finds(audit(job.file, job.clock), fault.rule)) << fault.rule;
    }
}

// Of the rules that must settle, those that the faultless job does not already keep silent about.
TEST(Audit, noRuleFindsAFaultWhereThereIsNone) {
    const FinishedJob job;
    const auto points = audit(job.file, job.clock);
    const std::set<std::string> known{"irreversible_agreed", "paper_permanence"};
    for (const AuditPoint& point : points) {
        EXPECT_TRUE(known.contains(point.rule)) << point.rule << ": " << point.sentence;
    }
}

TEST(Audit, everyRuleHasAFaultThatProvesIt) {
    std::set<std::string_view> proven;
    for (const Fault& fault : faults()) {
        proven.insert(fault.rule);
    }
    std::set<std::string_view> ids;
    for (const AuditRule& rule : auditRules()) {
        EXPECT_TRUE(ids.insert(rule.id).second) << rule.id << " twice";
        EXPECT_TRUE(proven.contains(rule.id)) << rule.id;
        EXPECT_FALSE(rule.source.empty()) << rule.id;
    }
    EXPECT_EQ(ids.size(), proven.size());
}

// AIC Commentary 16: a test is of one liquid, on one place.
TEST(Audit, aTestSpeaksForItsLiquidAndItsLeavesOnly) {
    FinishedJob job;
    job.step("deacidifying", "B1–B4", day(2031, 3, 16));
    const auto says = [&](std::string_view rule) {
        return finds(audit(job.file, job.clock), rule);
    };
    testOf(job, day(2031, 3, 6)).place = "C1r";
    job.file.tests.back().purpose = "solubility of the ink in water";
    EXPECT_TRUE(says("media_tested_liquid"));
    EXPECT_TRUE(says("media_tested_leaves"));
    testOf(job, day(2031, 3, 7)).place = "B2r";
    job.file.tests.back().method = "a drop of calcium hydroxide solution";
    EXPECT_FALSE(says("media_tested_liquid"));
    EXPECT_FALSE(says("media_tested_leaves"));
}

TEST(Audit, theSolutionsTestSpeaksForWaterToo) {
    FinishedJob job;
    job.step("washing", "B1–B4", day(2031, 3, 16));
    testOf(job, day(2031, 3, 6)).method = "limewater, one minute";
    EXPECT_FALSE(finds(audit(job.file, job.clock), "media_tested_liquid"));
    job.file.tests.back().purpose = "solubility of the ink";
    job.file.tests.back().method = "ethanol, one minute";
    EXPECT_TRUE(finds(audit(job.file, job.clock), "media_tested_liquid"));
}

// AIC Commentary 16: the test is of what is to be used.
TEST(Audit, aBleachIsTestedAsItself) {
    FinishedJob job;
    job.step("bleaching", "B2", day(2031, 3, 16));
    auto& test = testOf(job, day(2031, 3, 6));
    test.place = "B2r";
    const auto says = [&] { return finds(audit(job.file, job.clock), "media_tested_liquid"); };
    EXPECT_TRUE(says()); // tested in water
    test.method = "a drop of bleach";
    EXPECT_FALSE(says());
    job.file.steps.back().description = "hydrogen peroxide 2 %, rinsed in water";
    EXPECT_TRUE(says()); // in which bleach?
    test.method = "a drop of peroxide";
    EXPECT_FALSE(says());
    job.file.steps.back().description = "rinsed in water";
    EXPECT_FALSE(says());
}

// A test that comes after the bath warned nobody; only the owner can be told.
TEST(Audit, aTestSpeaksForNoBathBeforeIt) {
    FinishedJob job;
    job.step("washing", "B1–B4", day(2031, 3, 16)).description = "in ethanol";
    const auto sentence = [&]() -> std::string {
        const auto points = audit(job.file, job.clock);
        const auto point = std::ranges::find(points, "media_tested_liquid", &AuditPoint::rule);
        return point == points.end() ? "" : point->sentence;
    };
    testOf(job, day(2031, 3, 10)).purpose = "solubility of the ink in water";
    EXPECT_NE(sentence().find("no test of the inks in it is noted"), std::string::npos);
    testOf(job, day(2031, 3, 20)).purpose = "solubility of the ink in ethanol";
    EXPECT_NE(sentence().find("tested in it only after; tell the owner"), std::string::npos);
    Notice& told = job.notice(NoticeSubject::incident, day(2031, 3, 15));
    EXPECT_NE(sentence(), "");
    told.onDay = day(2031, 3, 21);
    EXPECT_EQ(sentence(), "");
    told.onDay = day(2031, 3, 15);
    job.file.tests.back().onDay = day(2031, 3, 16);
    EXPECT_EQ(sentence(), "");
}

TEST(Audit, whatWasLaidOpenSaysWhereAndIsApproved) {
    FinishedJob job;
    job.step("lifting_pastedown", "", day(2031, 3, 16));
    const auto points = audit(job.file, job.clock);
    EXPECT_TRUE(finds(points, "step_place"));
    EXPECT_TRUE(finds(points, "done_not_approved"));
}

// What evaporates or is wasted discloses nothing of what stays.
TEST(Audit, aMaterialThatDoesNotStayIsNoneOfTheRepairs) {
    for (const auto change : {+[](MaterialUse& use) { use.stays = false; },
                              +[](MaterialUse& use) { use.role = "wasted"; }}) {
        FinishedJob job;
        const Id<Step> mended = stepOf(job, "tear_mending").id;
        change(*std::ranges::find(job.file.uses, mended, &MaterialUse::step));
        EXPECT_TRUE(finds(audit(job.file, job.clock), "repair_material"));
    }
}

TEST(Audit, aStepWithoutATechniqueSaysByItsMaterialWhatItAdded) {
    FinishedJob job;
    const Step step = job.step("", "upper joint", day(2031, 3, 18));
    EXPECT_TRUE(finds(audit(job.file, job.clock), "step_technique"));
    job.use(step, "31-002", Amount::of(Mass::grams(1)));
    EXPECT_FALSE(finds(audit(job.file, job.clock), "step_technique"));
    job.file.steps.back().technique = "a technique of another workshop";
    EXPECT_FALSE(finds(audit(job.file, job.clock), "step_technique"));
    job.file.uses.back().stays = false;
    EXPECT_TRUE(finds(audit(job.file, job.clock), "step_technique"));
    job.file.steps.back().kind = StepKind::examination;
    EXPECT_FALSE(finds(audit(job.file, job.clock), "step_technique"));
}

TEST(Audit, aStruckStepIsNoFault) {
    FinishedJob job;
    Step& washed = job.step("washing", "B2", day(2031, 3, 16));
    washed.struckAt = at(day(2031, 3, 17));
    EXPECT_FALSE(finds(audit(job.file, job.clock), "media_tested"));
}

// What can't be mended any more is settled by telling the owner, or a report could never be
// issued.
TEST(Audit, aBookTakenDownTooSoonIsSettledByTellingTheOwner) {
    FinishedJob job;
    job.file.collations.front().finishedOn = day(2031, 3, 16);
    job.notice(NoticeSubject::incident, day(2031, 3, 17)).answer = "noted";
    EXPECT_TRUE(mayIssue(audit(job.file, job.clock)));
}

// 107 leaves came in, K5 is supplied in facsimile: 108 go out.
TEST(Audit, leavesCountedOutAreHeldAgainstThoseThatCameIn) {
    FinishedJob job;
    countedOut(job, "108 leaves, 2 plates");
    EXPECT_FALSE(finds(audit(job.file, job.clock), "leaf_tally_out"));
    job.step("leaf_removing", "B8", day(2031, 3, 18)).removed = "B8";
    const auto points = audit(job.file, job.clock);
    const auto point = std::ranges::find(points, "leaf_tally_out", &AuditPoint::rule);
    ASSERT_NE(point, points.end());
    EXPECT_EQ(point->sentence, "108 leaves were counted before it leaves; 107 came in, 1 put in "
                               "and 1 taken out: that makes 107.");
}

// Parts of a binding are no leaves, and what the make-up doesn't settle is no fault.
TEST(Audit, aPlaceThatNamesNoLeafIsNotHeldAgainstTheBook) {
    FinishedJob job;
    for (const char* place :
         {"upper joint", "spine and joints", "p. 223", "pl. 7", "C4r, line 3"}) {
        job.finding("leaves", "torn", place);
    }
    EXPECT_FALSE(finds(audit(job.file, job.clock), "finding_place_in_book"));
}

TEST(Audit, aDayIsTheWorkshops) {
    FinishedJob job;
    pasteOf(job).goodUntil = day(2031, 3, 20);
    Step& tipped = stepOf(job, "tipping_in");
    tipped.at = at(day(2031, 3, 20), 20); // past midnight in Kathmandu
    EXPECT_FALSE(finds(audit(job.file, job.clock), "lot_overdue"));
    const tests::FixedClock kathmandu{job.clock.now(), Minutes{345}};
    EXPECT_TRUE(finds(audit(job.file, kathmandu), "lot_overdue"));
}

TEST(Audit, saysItselfAsJson) {
    FinishedJob job;
    leafOf(job).marking.clear();
    const auto json = toJson(job.file.job.number, audit(job.file, job.clock));
    EXPECT_EQ(json.at("job"), "2031-004");
    const auto& open = json.at("open");
    const auto point = std::ranges::find_if(
        open, [](const auto& one) { return one.at("rule") == "facsimile_marking"; });
    ASSERT_NE(point, open.end());
    EXPECT_EQ(point->at("severity"), "must_settle");
    EXPECT_EQ(point->at("record"), "facsimile:" + leafOf(job).id.text());
    EXPECT_EQ(point->at("sentence"), "The facsimile of K5 is not marked as a facsimile.");
    EXPECT_FALSE(point->at("source").get<std::string>().empty());
}

} // namespace
} // namespace headcap::core
