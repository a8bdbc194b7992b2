#include "app/stock/lot_story.h"

#include <algorithm>

namespace headcap::app {
namespace {

constexpr std::size_t kNewest = 200;

} // namespace

std::shared_ptr<const LotStory> readLotStory(const core::RecordStore& store,
                                             const core::Id<core::Lot>& lot) {
    auto story = std::make_shared<LotStory>();
    story->whereabouts = core::loadWhereabouts(store, lot, kNewest);
    story->trace = core::traceLot(story->whereabouts, lot);
    for (auto& found :
         store.newestWith(core::RecordKind::ledgerEntry, "lot", lot.text(), kNewest)) {
        story->newest.push_back(std::get<core::LedgerEntry>(std::move(found.record)));
    }
    std::ranges::reverse(story->newest);
    story->hasEarlier = story->newest.size() == kNewest;
    return story;
}

} // namespace headcap::app
