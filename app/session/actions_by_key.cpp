#include "app/session/actions_by_key.h"

#include <algorithm>
#include <tuple>

namespace headcap::app {

std::vector<const ActionEntry*> actionsByKey(Place place) {
    std::vector<const ActionEntry*> entries;
    for (const ActionEntry& entry : actionTable()) {
        if (entry.place == place) {
            entries.push_back(&entry);
        }
    }
    const auto rank = [](const ActionEntry* entry) {
        const QString key = keyText(entry->id);
        // The name of the key stands behind the last "+", which may itself be the key.
        const qsizetype plus = key.lastIndexOf(QLatin1Char('+'), key.size() - 2);
        const QString pressedWith = key.left(plus + 1);
        const QString name = key.mid(plus + 1);
        const int group = pressedWith.isEmpty()                   ? 0
                          : pressedWith == QLatin1String("Ctrl+") ? 1
                          : pressedWith == QLatin1String("Alt+")  ? 2
                                                                  : 3;
        const int kind = name.size() > 1 ? 2 : name.front().isLetterOrNumber() ? 0 : 1;
        return std::tuple{group, pressedWith, kind, name};
    };
    std::ranges::stable_sort(entries, {}, rank);
    return entries;
}

} // namespace headcap::app
