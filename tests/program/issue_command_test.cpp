// Issuing from the shell: somebody answers for what is issued.
#include <gtest/gtest.h>

#include "tests/program/program_run.h"

namespace headcap::core {
namespace {

namespace fs = std::filesystem;

constexpr int kInputUnusable = 2;
constexpr int kAnswerIsNo = 1;

class IssueCommandTest : public test::ProgramTest {
protected:
    IssueCommandTest() {
        test::mustApply(records(),
                        Change{.sentence = "Person"}.add(Person{
                            .id = ids.next<Person>(), .name = "Ines Marrow", .initials = "IMW"}));
    }
    test::Said issue(std::vector<std::string> more) {
        std::vector<std::string> words{"issue", job.number, "-o", out().string()};
        words.insert(words.end(), more.begin(), more.end());
        return run(std::move(words));
    }
    [[nodiscard]] fs::path out() const { return temp.path() / "report.pdf"; }
};

TEST_F(IssueCommandTest, asksWhoIssuesIt) {
    const auto said = issue({});
    EXPECT_EQ(said.status, kInputUnusable);
    EXPECT_NE(said.err.find("--by"), std::string::npos) << said.err;
    const auto unknown = issue({"--by", "nobody here"});
    EXPECT_EQ(unknown.status, kInputUnusable);
    EXPECT_NE(unknown.err.find("nobody here"), std::string::npos) << unknown.err;
    EXPECT_FALSE(fs::exists(out()));
}

TEST_F(IssueCommandTest, saysWhatMustBeSettledFirst) {
    const auto said = issue({"--by", "imw"});
    EXPECT_EQ(said.status, kAnswerIsNo);
    EXPECT_NE(said.out.find("must settle"), std::string::npos) << said.out;
    EXPECT_FALSE(fs::exists(out()));
}

} // namespace
} // namespace headcap::core
