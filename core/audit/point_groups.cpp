#include "core/audit/point_groups.h"

#include <algorithm>

namespace headcap::core {
namespace {

// What it says after its subject, without the stop.
std::string openOf(const AuditPoint& point) {
    std::string_view open = std::string_view{point.sentence}.substr(point.subject.size() + 1);
    open.remove_suffix(open.ends_with('.') ? 1 : 0);
    return std::string{open};
}

// "The facsimile of K5 is not marked as a facsimile; names no permission."
void join(PointGroup& group, const AuditPoint& first, const AuditPoint& point) {
    if (group.open.empty()) {
        group.name = first.subject;
        group.open.push_back(openOf(first));
    }
    group.open.push_back(openOf(point));
    group.sentence.replace(group.sentence.size() - 1, 1, "; " + group.open.back() + '.');
    if (group.source.find(point.source) == std::string::npos) {
        group.source += "; " + point.source;
    }
}

} // namespace

std::vector<PointGroup> grouped(std::span<const AuditPoint> points) {
    std::vector<PointGroup> groups;
    std::vector<const AuditPoint*> firsts; // of each
    for (const AuditPoint& point : points) {
        const auto known = std::ranges::find_if(firsts, [&](const AuditPoint* first) {
            return first->record == point.record && first->page == point.page &&
                   first->severity == point.severity && first->subject == point.subject;
        });
        const bool isOfLeaf = point.record.kind == RecordKind::facsimile && !point.subject.empty();
        if (isOfLeaf && known != firsts.end()) {
            join(groups[static_cast<std::size_t>(known - firsts.begin())], **known, point);
        } else {
            groups.push_back(
                {point.severity, point.record, point.page, point.sentence, point.source});
            firsts.push_back(&point);
        }
    }
    return groups;
}

} // namespace headcap::core
