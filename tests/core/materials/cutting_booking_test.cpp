#include "core/materials/cutting_booking.h"

#include <map>
#include <random>

#include <gtest/gtest.h>

#include "core/cutting/plan_cuts.h"
#include "core/materials/ledger_laws.h"
#include "core/materials/sheet_stock.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::day;

Length mm(std::int64_t n) {
    return Length::millimetres(n);
}

SearchLimits little() {
    SearchLimits limits;
    limits.work = 20'000'000;
    return limits;
}

class CuttingOfStock : public testing::Test {
protected:
    CuttingOfStock() {
        b.material("text paper", MaterialClass::paper, Unit::sheet);
        sheets("31-001", 640, 900, Grain::alongHeight, 5);
        sheets("31-002", 300, 400, Grain::alongWidth, 1);
    }
    Lot& sheets(const char* number, int width, int height, Grain grain, int count) {
        Lot& lot = b.lot(number, "text paper", Amount::sheets(count));
        lot.sheetWidth = mm(width);
        lot.sheetHeight = mm(height);
        lot.grain = grain;
        return lot;
    }
    CuttingToBook planned(std::vector<WantedPiece> pieces) {
        CuttingToBook cutting{.job = b.file.job.id};
        for (SheetOfLot& one : sheetsOnShelf(shelf(), {})) {
            cutting.lots.push_back(one.lot);
            cutting.problem.sheets.push_back(std::move(one.sheet));
        }
        cutting.problem.pieces = std::move(pieces);
        cutting.problem.rules = CuttingHouse{}.rules;
        cutting.plan = *planCuts(cutting.problem, little());
        return cutting;
    }
    tl::expected<Change, CuttingFault> booked(const CuttingToBook& cutting) {
        return bookCutting(cutting, shelf(), "31-002", day(2031, 4, 2), {b.anyone(), b.clock.now()},
                           b.ids);
    }
    Shelf shelf() { return shelfOf(b.file); }

    void keep(const Change& change) {
        for (const Write& write : change.writes) {
            if (const auto* lot = std::get_if<Lot>(&write.record)) {
                b.file.lots.push_back(*lot);
            } else if (const auto* entry = std::get_if<LedgerEntry>(&write.record)) {
                b.file.ledger.push_back(*entry);
            } else if (const auto* part = std::get_if<CutPart>(&write.record)) {
                parts.push_back(*part);
            } else if (const auto* cutting = std::get_if<Cutting>(&write.record)) {
                cuttings.push_back(*cutting);
            }
        }
    }
    std::vector<LedgerBreach> breaches() {
        return ledgerBreaches({.shelf = shelf(), .cuttings = cuttings, .cutParts = parts});
    }

    tests::JobBuilder b;
    std::vector<Cutting> cuttings;
    std::vector<CutPart> parts;
};

const WantedPiece kFold{.id = "endpaper fold",
                        .width = mm(242),
                        .height = mm(196),
                        .grain = GrainWay::alongHeight,
                        .count = 4};

TEST_F(CuttingOfStock, sheetsLeaveAndOffcutsComeBack) {
    const CuttingToBook cutting = planned({kFold});
    const auto change = booked(cutting);
    ASSERT_TRUE(change);
    keep(*change);
    std::int64_t out = 0;
    for (const LedgerEntry& entry : b.file.ledger) {
        out += entry.kind == LedgerKind::cut && entry.amount.count < 0 ? entry.amount.count : 0;
    }
    EXPECT_LT(out, 0);
    std::size_t offcuts = 0;
    for (const Lot& lot : b.file.lots) {
        if (lot.origin == LotOrigin::offcut) {
            ++offcuts;
            EXPECT_TRUE(lot.parent);
            EXPECT_GE(shelf().balanceOf(lot.id)->count, 1'000);
            EXPECT_EQ(lot.material, b.file.materials.front().id);
        }
    }
    EXPECT_EQ(offcuts > 0, !cutting.plan.offcuts.empty());
    EXPECT_TRUE(breaches().empty());
    EXPECT_EQ(cuttings.front().job, b.file.job.id);
}

// A grain that runs along an offcut's height stays along its height.
TEST_F(CuttingOfStock, anOffcutKeepsTheGrainOfItsSheet) {
    keep(*booked(planned({kFold})));
    for (const CutPart& part : parts) {
        if (part.kind == CutPartKind::offcut) {
            const auto lots = shelf();
            EXPECT_EQ(lots.lot(*part.offcut)->grain, lots.lot(part.sheet)->grain);
            EXPECT_EQ(lots.lot(*part.offcut)->sheetWidth, part.width);
        }
    }
}

TEST_F(CuttingOfStock, whatIsNoLongerThereCannotBeBooked) {
    CuttingToBook cutting = planned({kFold});
    const std::size_t used = cutting.plan.placed.front().on.sheet;
    for (Lot& lot : b.file.lots) {
        if (lot.id == cutting.lots[used]) {
            lot.sheetWidth = *lot.sheetWidth - mm(1);
        }
    }
    EXPECT_EQ(booked(cutting).error(), CuttingFault::sheetDiffers);
    for (Lot& lot : b.file.lots) {
        if (lot.id == cutting.lots[used]) {
            lot.sheetWidth = *lot.sheetWidth + mm(1);
        }
    }
    ASSERT_TRUE(booked(cutting));
    for (LedgerEntry& entry : b.file.ledger) {
        entry.amount = Amount::sheets(0);
    }
    EXPECT_EQ(booked(cutting).error(), CuttingFault::tooFewSheets);
    cutting.plan.placed.clear();
    EXPECT_EQ(booked(cutting).error(), CuttingFault::nothingCut);
}

TEST_F(CuttingOfStock, aPlanThatWasTamperedWithIsNotBooked) {
    CuttingToBook cutting = planned({kFold});
    cutting.plan.placed.front().at.width = mm(100);
    EXPECT_EQ(booked(cutting).error(), CuttingFault::planUnsound);
}

// Whatever is cut: pieces, offcuts and waste make up each sheet, and the laws hold; any part lost
// or altered is told.
TEST_F(CuttingOfStock, everySheetAddsUp) {
    std::mt19937 chance{12};
    const auto side = [&] { return mm(std::uniform_int_distribution{30, 290}(chance)); };
    for (int i = 0; i < 12; ++i) {
        sheets(("31-5" + std::to_string(10 + i)).c_str(), 640, 900, Grain::alongHeight, 2);
        std::vector<WantedPiece> pieces;
        for (int p = 0; p < 3; ++p) {
            pieces.push_back({.id = std::to_string(p),
                              .width = side(),
                              .height = side(),
                              .grain = static_cast<GrainWay>(chance() % 3),
                              .count = 1 + static_cast<int>(chance() % 3)});
        }
        const auto change = booked(planned(pieces));
        ASSERT_TRUE(change);
        keep(*change);
        ASSERT_TRUE(breaches().empty()) << breaches().front().sentence;
        std::map<std::pair<Id<Lot>, std::int64_t>, Area> sums;
        for (const Write& write : change->writes) {
            if (const auto* part = std::get_if<CutPart>(&write.record)) {
                sums[{part->sheet, part->sheetNumber}] += part->area;
            }
        }
        for (const auto& [sheet, sum] : sums) {
            const Shelf now = shelf();
            const Lot* lot = now.lot(sheet.first);
            EXPECT_EQ(sum, areaOf(*lot->sheetWidth, *lot->sheetHeight));
        }
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const CutPart lost = parts[i];
        parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_FALSE(breaches().empty());
        parts.insert(parts.begin() + static_cast<std::ptrdiff_t>(i), lost);
    }
}

TEST(SheetStock, offcutsCountForLessAndWhatIsKeptBackGoesLast) {
    tests::JobBuilder b;
    b.material("text paper", MaterialClass::paper, Unit::sheet).stretchAcrossPpm = 20'000;
    for (const char* number : {"31-001", "31-002"}) {
        Lot& lot = b.lot(number, "text paper", Amount{2'500, Unit::sheet});
        lot.sheetWidth = mm(100);
        lot.sheetHeight = mm(200);
        lot.grain = Grain::alongHeight;
    }
    b.file.lots[1].origin = LotOrigin::offcut;
    b.file.lots[1].keptBack = true;
    const auto sheets = sheetsOnShelf(shelfOf(b.file), {});
    ASSERT_EQ(sheets.size(), 2U);
    EXPECT_EQ(sheets[0].sheet.count, 2); // half a sheet is no sheet
    EXPECT_EQ(sheets[1].sheet.cost, *sheets[0].sheet.cost / 2);
    EXPECT_TRUE(sheets[1].sheet.isKeptBack);
    EXPECT_EQ(sheets[0].sheet.stretch.acrossPpm, 20'000);
    EXPECT_EQ(sheets[0].sheet.stretch.alongPpm, CuttingHouse{}.stretch.alongPpm);
}

} // namespace
} // namespace headcap::core
