// The program speaks to no network: it runs where there is none, and neither it nor what it is
// linked to by name can open a connection for it.
#include <array>
#include <cstdio>

#include <sched.h>

#include <gtest/gtest.h>

#include "tests/program/program_run.h"

namespace headcap::core {
namespace {

class NoNetworkTest : public test::ProgramTest {};

std::string outputOf(const std::string& command) {
    std::string all;
    std::array<char, 4096> piece{};
    FILE* pipe = ::popen(command.c_str(), "r");
    while (pipe != nullptr && std::fgets(piece.data(), piece.size(), pipe) != nullptr) {
        all += piece.data();
    }
    return pipe != nullptr && ::pclose(pipe) == 0 ? all : std::string{};
}

TEST_F(NoNetworkTest, runsWhereThereIsNone) {
    const auto withoutNetwork = [] {
        // Root may leave the network at once; others in a user namespace of their own.
        return ::unshare(CLONE_NEWNET) == 0 || ::unshare(CLONE_NEWUSER | CLONE_NEWNET) == 0;
    };
    const std::string workshop = folder().string();
    const std::vector<std::vector<std::string>> calls{
        {"collate", "A-C8 D4"},
        {"--workshop", workshop, "verify"},
        {"--workshop", workshop, "find", "hymnal"},
        {"--workshop", workshop, "report", "2031-001", "-o", (temp.path() / "draft.pdf").string()}};
    for (const auto& call : calls) {
        const auto said = test::runProgram(temp.path(), call, withoutNetwork);
        if (said.status == 99) {
            GTEST_SKIP() << "this machine does not let a process leave its network";
        }
        EXPECT_EQ(said.status, 0) << said.err;
    }
    EXPECT_TRUE(std::filesystem::exists(temp.path() / "draft.pdf"));
}

TEST_F(NoNetworkTest, callsNothingThatOpensAConnection) {
    const std::string program = HEADCAP_PROGRAM;
    const std::string symbols = outputOf("nm -D --undefined-only '" + program + "'");
    ASSERT_NE(symbols.find("sqlite3_open"), std::string::npos) << "nm sees what it calls";
    for (const char* call :
         {" socket", " connect@", " getaddrinfo", " gethostbyname", " bind@", " listen@", " sendto",
          "QTcpSocket", "QUdpSocket", "QNetwork", "QLocalSocket", "curl_"}) {
        EXPECT_EQ(symbols.find(call), std::string::npos) << call;
    }
    const std::string needed = outputOf("readelf -d '" + program + "'");
    ASSERT_NE(needed.find("libsqlite3"), std::string::npos);
    for (const char* library : {"Network", "curl", "WebEngine", "libssl"}) {
        EXPECT_EQ(needed.find(library), std::string::npos) << library;
    }
}

} // namespace
} // namespace headcap::core
