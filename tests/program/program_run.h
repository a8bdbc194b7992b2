// The program itself, run as a person would run it from a shell.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <gtest/gtest.h>

#include "tests/db/folder_look.h"
#include "tests/db/workshop_fixture.h"

namespace headcap::test {

struct Said {
    int status = -1;
    std::string out{};
    std::string err{};
};

// `before` is done in the process that becomes the program; false ends it with status 99.
inline Said runProgram(
    const std::filesystem::path& scratch, const std::vector<std::string>& words,
    const std::function<bool()>& before = [] { return true; }) {
    const auto out = scratch / "stdout";
    const auto err = scratch / "stderr";
    const ::pid_t child = ::fork();
    if (child == 0) {
        std::vector<std::string> all{HEADCAP_PROGRAM};
        all.insert(all.end(), words.begin(), words.end());
        std::vector<char*> arguments;
        for (std::string& word : all) {
            arguments.push_back(word.data());
        }
        arguments.push_back(nullptr);
        ::dup2(::open(out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600), STDOUT_FILENO);
        ::dup2(::open(err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600), STDERR_FILENO);
        if (before()) {
            ::execv(HEADCAP_PROGRAM, arguments.data());
        }
        ::_exit(99);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, bytesOf(out), bytesOf(err)};
}

class ProgramTest : public WorkshopFixture {
protected:
    Said run(std::vector<std::string> words) {
        words.insert(words.begin(), {"--workshop", folder().string()});
        return runProgram(temp.path(), words);
    }
};

} // namespace headcap::test
