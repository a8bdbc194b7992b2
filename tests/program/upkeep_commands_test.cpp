// verify, backup, restore, salvage and mend-files from the shell: what they answer, and the exit
// status that says so (DESIGN, "The command line").
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/db/database_look.h"
#include "tests/program/program_run.h"

namespace headcap::core {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

class UpkeepCommandsTest : public test::ProgramTest {
protected:
    UpkeepCommandsTest() {
        const std::string bytes = "a photograph";
        photograph.digest = stores().files.put(FileStore::Shelf::photograph,
                                               std::as_bytes(std::span{bytes}), ".jpg");
        test::mustApply(records(), Change{.sentence = "Photograph"}.add(photograph));
        picture = stores().files.pathOf(FileStore::Shelf::photograph, photograph.digest);
    }
    json answer(std::vector<std::string> words, int status) {
        words.emplace_back("--json");
        const auto said = run(words);
        EXPECT_EQ(said.status, status) << said.out << said.err;
        EXPECT_EQ(std::count(said.out.begin(), said.out.end(), '\n'), 1) << "one object";
        return json::parse(said.out, nullptr, false);
    }
    [[nodiscard]] std::string at(const char* name) const { return (temp.path() / name).string(); }

    Photograph photograph{.id = ids.next<Photograph>(),
                          .job = job.id,
                          .fileName = "IMG_1.jpg",
                          .addedAt = clock.now()};
    fs::path picture;
};

TEST_F(UpkeepCommandsTest, aSoundWorkshopIsCleanWithStatusNought) {
    EXPECT_EQ(answer({"verify"}, 0)["clean"], true);
    EXPECT_EQ(run({"verify"}).status, 0);
}

TEST_F(UpkeepCommandsTest, damageIsTheAnswerNoWithWhatToDo) {
    fs::remove(picture);
    const json missing = answer({"verify"}, 1);
    EXPECT_EQ(missing["findings"][0]["sentence"],
              "The photograph \"IMG_1.jpg\" of job 2031-001 is missing.");
    EXPECT_NE(missing["help"].dump().find("mend-files"), std::string::npos);
    open.reset();
    test::writeBytes(folder() / "workshop.sqlite",
                     test::bytesOf(folder() / "workshop.sqlite").substr(0, 9'000));
    const json cut = answer({"verify"}, 1);
    EXPECT_EQ(cut["clean"], false);
    EXPECT_NE(cut["help"].dump().find("salvage"), std::string::npos);
    const auto said = run({"verify"});
    EXPECT_NE(said.out.find("cut short"), std::string::npos) << said.out;
}

TEST_F(UpkeepCommandsTest, backsUpAndRestores) {
    EXPECT_EQ(answer({"backup", at("backup")}, 0)["files_copied"], 1);
    EXPECT_EQ(answer({"restore", at("backup"), at("restored")}, 0)["folder"], at("restored"));
    EXPECT_EQ(test::recordTables(at("restored")), test::recordTables(folder()));
    const auto again = run({"restore", at("backup"), at("restored")});
    EXPECT_EQ(again.status, 3);
    EXPECT_NE(again.err.find("is not empty"), std::string::npos) << again.err;
    EXPECT_EQ(std::count(again.err.begin(), again.err.end(), '\n'), 1) << "one sentence";
}

// A link to itself is a path the file system can't follow, for root too.
TEST_F(UpkeepCommandsTest, aFolderThatCanNotBeReadIsASentence) {
    fs::create_symlink(at("loop"), at("loop"));
    for (const std::vector<std::string>& words : {std::vector<std::string>{"backup", at("loop")},
                                                  {"backup", at("loop") + "/within"},
                                                  {"restore", at("loop"), at("restored")},
                                                  {"salvage", at("loop"), at("saved")}}) {
        const auto said = run(words);
        EXPECT_EQ(said.status, 3) << words.front() << ": " << said.err;
        EXPECT_TRUE(said.err.starts_with("headcap: ")) << said.err;
        EXPECT_EQ(std::count(said.err.begin(), said.err.end(), '\n'), 1) << said.err;
    }
}

TEST_F(UpkeepCommandsTest, aBackupOfAlteredFilesSaysSo) {
    test::writeBytes(picture, "a photograpH");
    const auto said = run({"backup", at("backup")});
    EXPECT_EQ(said.status, 1) << said.err;
    EXPECT_NE(said.err.find("all was backed up but for 1"), std::string::npos) << said.err;
}

TEST_F(UpkeepCommandsTest, mendsFilesFromAnyFolder) {
    fs::create_directory(at("card"));
    test::writeBytes(temp.path() / "card" / "DSC1.JPG", "a photograph");
    fs::remove(picture);
    EXPECT_EQ(answer({"mend-files", at("card")}, 0)["mended"].size(), 1U);
    EXPECT_EQ(test::bytesOf(picture), "a photograph");
    fs::remove(picture);
    fs::remove(temp.path() / "card" / "DSC1.JPG");
    EXPECT_EQ(answer({"mend-files", at("card")}, 1)["left"].size(), 1U);
    EXPECT_EQ(run({"mend-files", at("nowhere")}).status, 2);
    EXPECT_EQ(run({"mend-files"}).status, 2);
}

TEST_F(UpkeepCommandsTest, salvagesADamagedWorkshop) {
    (void)stores().upkeep.backup(at("backup"), [](auto, auto) { return true; });
    open.reset();
    const auto tables = test::recordTables(folder());
    test::writeBytes(folder() / "workshop.sqlite", std::string(4'096, '\0'));
    const json nothing = answer({"salvage", folder().string(), at("saved"), at("backup")}, 0);
    EXPECT_EQ(nothing["whole"], true) << nothing.dump(2);
    EXPECT_EQ(test::recordTables(at("saved")), tables);
    fs::remove_all(at("saved"));
    EXPECT_EQ(run({"salvage", folder().string(), at("saved")}).status, 3) << "without a backup";
}

TEST_F(UpkeepCommandsTest, whatIsNoWorkshopIsStatusThree) {
    const auto said = test::runProgram(temp.path(), {"--workshop", at("nowhere"), "verify"});
    EXPECT_EQ(said.status, 3);
    EXPECT_TRUE(said.err.starts_with("headcap: There is no workshop there.")) << said.err;
}

} // namespace
} // namespace headcap::core
