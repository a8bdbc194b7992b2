#include "core/materials/cutting_booking.h"

#include <algorithm>
#include <map>
#include <tuple>

#include <fmt/format.h>

#include "core/custody/job_states.h"
#include "core/cutting/plan_check.h"
#include "core/cutting/plan_json.h"
#include "core/materials/sheet_stock.h"

namespace headcap::core {
namespace {

class Booking {
public:
    Booking(const CuttingToBook& cutting, const Shelf& shelf, const Hand& hand, IdSource& ids)
        : m_cutting(cutting), m_shelf(shelf), m_hand(hand), m_ids(ids) {}

    [[nodiscard]] std::optional<CuttingFault> fault() const {
        if (m_cutting.plan.placed.empty()) {
            return CuttingFault::nothingCut;
        }
        if (m_cutting.lots.size() != m_cutting.problem.sheets.size()) {
            return CuttingFault::lotUnknown;
        }
        for (const auto& [sheet, numbers] : used()) {
            if (const auto found = faultOfSheet(sheet, numbers)) {
                return found;
            }
        }
        if (!checkPlan(m_cutting.problem, m_cutting.plan).empty()) {
            return CuttingFault::planUnsound;
        }
        return std::nullopt;
    }

    tl::expected<Change, CuttingFault> change(std::optional<std::string> number, Day today) {
        const Cutting record{.id = m_ids.next<Cutting>(),
                             .job = m_cutting.job,
                             .at = m_hand.at,
                             .who = m_hand.who,
                             .plan = cutPlanJson(m_cutting.problem, m_cutting.plan),
                             .note = m_cutting.note,
                             .takenBackBy = std::nullopt};
        m_change.who = m_hand.who;
        m_change.add(record);
        takeSheets();
        for (const PlacedPiece& placed : m_cutting.plan.placed) {
            add(record, placed.on, CutPartKind::piece, m_cutting.problem.pieces[placed.piece].id,
                placed.at, std::nullopt);
        }
        if (!addOffcuts(record, std::move(number), today)) {
            return tl::unexpected(CuttingFault::numbersUsedUp);
        }
        addWaste(record);
        m_change.sentence = sentence();
        return std::move(m_change);
    }

private:
    using Numbers = std::vector<int>;

    // Which of each sheet's count were cut.
    [[nodiscard]] std::map<std::size_t, Numbers> used() const {
        std::map<std::size_t, Numbers> used;
        for (const PlacedPiece& placed : m_cutting.plan.placed) {
            Numbers& numbers = used[placed.on.sheet];
            if (std::ranges::find(numbers, placed.on.number) == numbers.end()) {
                numbers.push_back(placed.on.number);
            }
        }
        return used;
    }

    [[nodiscard]] std::optional<CuttingFault> faultOfSheet(std::size_t sheet,
                                                           const Numbers& numbers) const {
        if (sheet >= m_cutting.lots.size()) {
            return CuttingFault::planUnsound;
        }
        const StockSheet& stock = m_cutting.problem.sheets[sheet];
        const Lot* lot = m_shelf.lot(m_cutting.lots[sheet]);
        const Material* kind = lot == nullptr ? nullptr : m_shelf.material(lot->material);
        if (kind == nullptr || kind->unit != Unit::sheet) {
            return CuttingFault::lotUnknown;
        }
        if (lot->sheetWidth != stock.width || lot->sheetHeight != stock.height ||
            grainWayOf(lot->grain) != stock.grain) {
            return CuttingFault::sheetDiffers;
        }
        const auto balance = m_shelf.balanceOf(lot->id);
        const auto wanted = Amount::sheets(static_cast<std::int64_t>(numbers.size()));
        return balance && balance->count >= wanted.count
                   ? std::nullopt
                   : std::optional{CuttingFault::tooFewSheets};
    }

    const Lot& lotOf(std::size_t sheet) const { return *m_shelf.lot(m_cutting.lots[sheet]); }

    void enter(const Id<Lot>& lot, Amount amount, const std::string& note) {
        m_change.add(LedgerEntry{.id = m_ids.next<LedgerEntry>(),
                                 .lot = lot,
                                 .at = m_hand.at,
                                 .who = m_hand.who,
                                 .kind = LedgerKind::cut,
                                 .amount = amount,
                                 .use = std::nullopt,
                                 .contraryOf = std::nullopt,
                                 .note = note});
    }

    void takeSheets() {
        for (const auto& [sheet, numbers] : used()) {
            const auto taken = Amount::sheets(static_cast<std::int64_t>(numbers.size()));
            enter(m_cutting.lots[sheet], taken.negated(), m_cutting.note);
            m_from += fmt::format("{}{} of {}", m_from.empty() ? "" : ", ", toText(taken),
                                  lotOf(sheet).number);
        }
    }

    void add(const Cutting& record, const SheetPlace& on, CutPartKind kind, const std::string& name,
             const CutRect& at, std::optional<Id<Lot>> offcut) {
        const Area area = areaOf(at.width, at.height);
        m_given[on] += area;
        m_change.add(CutPart{.id = m_ids.next<CutPart>(),
                             .cutting = record.id,
                             .sheet = m_cutting.lots[on.sheet],
                             .sheetNumber = on.number,
                             .kind = kind,
                             .name = name,
                             .width = at.width,
                             .height = at.height,
                             .area = area,
                             .offcut = offcut});
    }

    bool addOffcuts(const Cutting& record, std::optional<std::string> number, Day today) {
        using Alike = std::tuple<std::size_t, Length, Length, GrainWay>;
        std::map<Alike, std::vector<const PlannedOffcut*>> alike;
        for (const PlannedOffcut& offcut : m_cutting.plan.offcuts) {
            alike[{offcut.on.sheet, offcut.at.width, offcut.at.height, offcut.grain}].push_back(
                &offcut);
        }
        for (const auto& [size, offcuts] : alike) {
            number = nextLotNumber(number, today.year());
            if (!number) {
                return false;
            }
            const Lot lot = offcutLot(*offcuts.front(), *number, today);
            m_change.add(lot);
            enter(lot.id, Amount::sheets(static_cast<std::int64_t>(offcuts.size())),
                  "off lot " + lotOf(offcuts.front()->on.sheet).number);
            for (const PlannedOffcut* offcut : offcuts) {
                add(record, offcut->on, CutPartKind::offcut, lot.number, offcut->at, lot.id);
            }
            m_offcuts += offcuts.size();
        }
        return true;
    }

    // What its sheet was, it is, but for its size.
    [[nodiscard]] Lot offcutLot(const PlannedOffcut& offcut, const std::string& number, Day today) {
        Lot lot = lotOf(offcut.on.sheet);
        lot.parent = lot.id;
        lot.id = m_ids.next<Lot>();
        lot.number = number;
        lot.origin = LotOrigin::offcut;
        lot.receivedOn = today;
        lot.cost.reset();
        lot.sheetWidth = offcut.at.width;
        lot.sheetHeight = offcut.at.height;
        lot.grain = grainOf(offcut.grain);
        lot.note.clear();
        return lot;
    }

    void addWaste(const Cutting& record) {
        for (const auto& [sheet, numbers] : used()) {
            const StockSheet& stock = m_cutting.problem.sheets[sheet];
            for (const int number : numbers) {
                const Area rest =
                    areaOf(stock.width, stock.height) - m_given[SheetPlace{sheet, number}];
                if (!rest.isZero()) {
                    m_change.add(CutPart{.id = m_ids.next<CutPart>(),
                                         .cutting = record.id,
                                         .sheet = m_cutting.lots[sheet],
                                         .sheetNumber = number,
                                         .kind = CutPartKind::waste,
                                         .area = rest,
                                         .offcut = std::nullopt});
                }
            }
        }
    }

    [[nodiscard]] std::string sentence() const {
        const std::size_t pieces = m_cutting.plan.placed.size();
        std::string said =
            fmt::format("Cut: {} {} from {}", pieces, pieces == 1 ? "piece" : "pieces", m_from);
        if (m_offcuts > 0) {
            said += fmt::format("; {} {} back to stock", m_offcuts,
                                m_offcuts == 1 ? "offcut" : "offcuts");
        }
        return said;
    }

    const CuttingToBook& m_cutting;
    const Shelf& m_shelf;
    const Hand& m_hand;
    IdSource& m_ids;
    Change m_change;
    std::map<SheetPlace, Area> m_given; // by pieces and offcuts
    std::string m_from;
    std::size_t m_offcuts = 0;
};

} // namespace

tl::expected<Change, CuttingFault> bookCutting(const CuttingToBook& cutting, const Shelf& shelf,
                                               const std::optional<std::string>& lastNumber,
                                               Day today, const Hand& hand, IdSource& ids) {
    Booking booking{cutting, shelf, hand, ids};
    if (const auto fault = booking.fault()) {
        return tl::unexpected(*fault);
    }
    return booking.change(lastNumber, today);
}

} // namespace headcap::core
