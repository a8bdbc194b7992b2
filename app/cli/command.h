// One subcommand of the program: its words, and what it does. Answers go to standard output, for
// people or as one JSON object; errors are one sentence on standard error.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include <QCommandLineParser>
#include <QString>
#include <QStringList>

#include "core/record/workshops.h"
#include "core/values/id.h"

namespace headcap::app::cli {

enum class Exit : int {
    done = 0,
    answerIsNo = 1,    // open points, damage, no match, disagreement
    inputUnusable = 2, // what, where and why in one sentence
    workshopUnusable = 3,
};

// What the commands work with; given by whoever assembled the program.
struct Surroundings {
    core::Workshops& workshops;
    const core::Clock& clock;
    core::IdSource& ids;
    // Builds the demo workshop in a folder; the number of its finished job.
    std::function<std::string(const std::filesystem::path&)> buildDemo;
    std::filesystem::path defaultWorkshop;
};

// A command as it was called.
class Call {
public:
    Call(const QCommandLineParser& options, Surroundings& surroundings)
        : m_options(options), m_surroundings(surroundings) {}

    [[nodiscard]] bool wantsJson() const { return m_options.isSet(QStringLiteral("json")); }
    [[nodiscard]] QString option(const QString& name) const { return m_options.value(name); }
    [[nodiscard]] bool has(const QString& name) const { return m_options.isSet(name); }
    // Words after the command's own name.
    [[nodiscard]] QStringList words() const { return m_options.positionalArguments().mid(1); }
    [[nodiscard]] Surroundings& surroundings() const { return m_surroundings; }
    [[nodiscard]] std::filesystem::path workshopFolder() const;
    [[nodiscard]] std::unique_ptr<core::OpenWorkshop> openWorkshop() const;

private:
    const QCommandLineParser& m_options;
    Surroundings& m_surroundings;
};

struct Command {
    QString name;
    QString words;   // after the name: "JOB -o FILE.pdf"
    QString purpose; // one line of the help
    int fewest = 0;  // how many words it takes
    int most = 0;    // -1: any number
    std::vector<QCommandLineOption> options;
    std::function<Exit(const Call&)> run;
};

// A failure that is told in one sentence.
struct Failure {
    Exit exit;
    std::string sentence;
};

// All commands, in the order of the help.
[[nodiscard]] std::vector<Command> allCommands();

// True where the arguments name a command (or ask for help or the version) and no window is meant.
[[nodiscard]] bool isCommandLine(const QStringList& arguments);
[[nodiscard]] int runCommandLine(const QStringList& arguments, Surroundings& surroundings);

void printLine(const std::string& utf8);

// The job a person names by its number; throws Failure where there is none.
[[nodiscard]] core::JobLine jobNumbered(const core::Stores& stores, const QString& number);

} // namespace headcap::app::cli
