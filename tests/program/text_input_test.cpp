// Files that are not what they should be: a sentence and a status, never an end by a signal.
#include "tests/program/program_run.h"

#include <algorithm>

namespace headcap::core {
namespace {

namespace fs = std::filesystem;

class TextInputTest : public ::testing::Test {
protected:
    test::Said say(const std::vector<std::string>& words, const std::string& bytes) {
        const fs::path file = temp.path() / "table.tsv";
        test::writeBytes(file, bytes);
        std::vector<std::string> all = words;
        std::replace(all.begin(), all.end(), std::string{"FILE"}, file.string());
        return test::runProgram(temp.path(), all);
    }
    test::TempFolder temp;
};

void expectRefused(const test::Said& said, const std::string& line) {
    EXPECT_EQ(said.status, 2) << said.err;
    EXPECT_EQ(said.out, "");
    EXPECT_NE(said.err.find("not UTF-8 text from line " + line), std::string::npos) << said.err;
    EXPECT_EQ(std::count(said.err.begin(), said.err.end(), '\n'), 1) << "one sentence";
}

TEST_F(TextInputTest, aTableOfAnotherEncodingIsRefusedWithItsLine) {
    expectRefused(say({"collate", "--file", "FILE"}, "formula\nA4\nA4 \xE9\n"), "3");
    expectRefused(say({"leaves", "FILE", "--json"}, "book\tpage\nCaf\xE9\t1\n"), "2");
    expectRefused(say({"catchwords", "FILE", "--json"}, "catchword\tnext\n\xFC"
                                                        "ber\t\xFC\n"),
                  "2");
    expectRefused(say({"cut", "FILE"}, "{\"id\": \"\xE9\"}"), "1");
    expectRefused(say({"collate", "--file", "FILE"}, std::string{"\xFF\xFE\x66\x00", 4}), "1");
}

TEST_F(TextInputTest, aTableOfUtf8IsRead) {
    const auto said = say({"collate", "--file", "FILE"}, "\xEF\xBB\xBF"
                                                         "formula\nA⁴\n");
    EXPECT_EQ(said.status, 0) << said.err;
    EXPECT_NE(said.out.find("A⁴"), std::string::npos) << said.out;
}

} // namespace
} // namespace headcap::core
