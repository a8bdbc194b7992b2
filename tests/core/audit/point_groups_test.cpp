#include "core/audit/point_groups.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/audit/audit.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

using tests::FinishedJob;

// Two leaves of which nothing is said but where they are.
class TwoBareLeaves : public testing::Test {
protected:
    TwoBareLeaves() {
        job.file.facsimiles.clear();
        for (const char* place : {"B2", "C1"}) {
            Facsimile& leaf = job.facsimile(place);
            leaf = bare(leaf);
        }
        points = audit(job.file, job.clock);
    }
    static Facsimile bare(const Facsimile& leaf) {
        return {.id = leaf.id, .job = leaf.job, .part = leaf.part, .place = leaf.place};
    }

    FinishedJob job;
    std::vector<AuditPoint> points;
};

TEST_F(TwoBareLeaves, areTwoNotesOfEachWeightAndPage) {
    std::size_t ofLeaves = 0;
    std::size_t told = 0;
    for (const PointGroup& group : grouped(points)) {
        told += group.points();
        if (group.record.kind == RecordKind::facsimile) {
            ++ofLeaves;
            const std::string& words = group.sentence;
            const std::string name = group.record.id == job.file.facsimiles.front().id.uuid()
                                         ? "The facsimile of B2"
                                         : "The facsimile of C1";
            EXPECT_TRUE(words.starts_with(name)) << words;
            EXPECT_EQ(words.find("The facsimile", 1), std::string::npos) << words;
            EXPECT_TRUE(words.ends_with('.')) << words;
            std::string joined;
            for (const std::string& open : group.open) {
                joined += (joined.empty() ? name + ' ' : "; ") + open;
            }
            EXPECT_TRUE(group.open.empty() || joined + '.' == words) << joined;
        }
    }
    EXPECT_EQ(told, points.size()); // nothing is lost
    EXPECT_GE(points.size(), ofLeaves + 8);
}

// What each point says after the leaf's name stands in the note as it was.
TEST_F(TwoBareLeaves, loseNoWordOfWhatIsOpen) {
    const auto groups = grouped(points);
    for (const AuditPoint& point : points) {
        if (point.record.kind != RecordKind::facsimile) {
            continue;
        }
        const std::size_t name = std::string_view{"The facsimile of B2 "}.size();
        const std::string open = point.sentence.substr(name, point.sentence.size() - name - 1);
        EXPECT_TRUE(std::ranges::any_of(groups, [&](const PointGroup& group) {
            return group.record == point.record && group.severity == point.severity &&
                   group.page == point.page && group.sentence.find(open) != std::string::npos;
        })) << point.sentence;
    }
}

TEST(PointGroups, whatIsOfOtherRecordsStandsAlone) {
    FinishedJob job;
    const AuditPoint one{"a",        AuditSeverity::mustSettle, refOf(job.file.job.id),
                         Page::book, "The job has no owner.",   "x"};
    AuditPoint other = one;
    other.sentence = "The job has no title.";
    const std::vector<AuditPoint> points{one, other};
    EXPECT_EQ(grouped(points).size(), 2U);
}

} // namespace
} // namespace headcap::core
