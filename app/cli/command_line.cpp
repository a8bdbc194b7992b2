#include "app/cli/command.h"

#include <algorithm>
#include <cstdio>
#include <exception>

#include <QCoreApplication>

#include "app/cli/commands.h"
#include "app/session/sentences.h"

namespace headcap::app::cli {
namespace {

const QString kJson = QStringLiteral("json");
const QString kWorkshop = QStringLiteral("workshop");

void printError(const QString& sentence) {
    std::fprintf(stderr, "headcap: %s\n", sentence.toUtf8().constData());
}

QString usageOf(const Command& command) {
    return QStringLiteral("headcap %1 %2").arg(command.name, command.words).trimmed();
}

int printHelp() {
    std::string text = "Headcap keeps the treatment records of a conservation bindery.\n\n"
                       "  headcap                      opens the window\n"
                       "  headcap --workshop DIR …     on this workshop, not the usual one\n"
                       "  headcap COMMAND … --json     answers as one JSON object\n\n";
    for (const Command& command : allCommands()) {
        text += "  " + usageOf(command).toStdString() + "\n      " + command.purpose.toStdString() +
                "\n";
    }
    text += "\nExit status: 0 done; 1 the answer is no; 2 the input could not be used; "
            "3 the workshop could not be used.";
    printLine(text);
    return static_cast<int>(Exit::done);
}

QList<QCommandLineOption> commonOptions() {
    return {{kJson, QStringLiteral("Answer as one JSON object.")},
            {kWorkshop, QStringLiteral("The workshop's folder."), QStringLiteral("DIR")}};
}

// The help of one command: what it does, and each option it knows.
int printHelpOf(const Command& command) {
    std::string text = usageOf(command).toStdString() + "\n    " + command.purpose.toStdString();
    const auto addOption = [&](const QCommandLineOption& option) {
        QStringList names;
        for (const QString& name : option.names()) {
            names << (name.size() == 1 ? QStringLiteral("-") : QStringLiteral("--")) + name;
        }
        const QString said =
            QStringLiteral("  %1 %2").arg(names.join(QStringLiteral(", ")), option.valueName());
        text +=
            "\n" + said.leftJustified(24).toStdString() + " " + option.description().toStdString();
    };
    text += "\n";
    for (const QCommandLineOption& option : command.options) {
        addOption(option);
    }
    for (const QCommandLineOption& option : commonOptions()) {
        addOption(option);
    }
    printLine(text);
    return static_cast<int>(Exit::done);
}

int runCommand(const Command& command, const QStringList& arguments, Surroundings& surroundings) {
    QCommandLineParser parser;
    parser.addOptions(commonOptions());
    parser.addOptions(QList<QCommandLineOption>(command.options.begin(), command.options.end()));
    if (!parser.parse(arguments)) {
        printError(parser.errorText() + QStringLiteral(" Usage: ") + usageOf(command));
        return static_cast<int>(Exit::inputUnusable);
    }
    const Call call{parser, surroundings};
    const auto count = call.words().size();
    if (count < command.fewest || (command.most >= 0 && count > command.most)) {
        printError(QStringLiteral("usage: ") + usageOf(command));
        return static_cast<int>(Exit::inputUnusable);
    }
    try {
        return static_cast<int>(command.run(call));
    } catch (const Failure& failure) {
        printError(QString::fromStdString(failure.sentence));
        return static_cast<int>(failure.exit);
    } catch (const core::StoreError& error) {
        const bool isDamage = error.code() == core::StoreError::Code::fileAltered ||
                              error.code() == core::StoreError::Code::fileMissing;
        printError(QStringLiteral("%1 (%2)").arg(sentence(error), QString::fromUtf8(error.what())));
        return static_cast<int>(isDamage ? Exit::answerIsNo : Exit::workshopUnusable);
    } catch (const std::exception& error) {
        // A fault of the program, told like any other.
        printError(QStringLiteral("%1 could not be done: %2")
                       .arg(command.name, QString::fromUtf8(error.what())));
        return static_cast<int>(Exit::inputUnusable);
    }
}

// The command among the arguments: the first word that is no option nor an option's value.
QString commandWord(const QStringList& arguments) {
    for (qsizetype i = 1; i < arguments.size(); ++i) {
        if (arguments[i] == QStringLiteral("--workshop")) {
            ++i;
        } else if (!arguments[i].startsWith(u'-')) {
            return arguments[i];
        }
    }
    return {};
}

bool asksFor(const QStringList& arguments, const char* option) {
    return arguments.mid(1).contains(QLatin1String(option));
}

} // namespace

std::filesystem::path Call::workshopFolder() const {
    return has(kWorkshop) ? std::filesystem::path{option(kWorkshop).toStdString()}
                          : m_surroundings.defaultWorkshop;
}

std::unique_ptr<core::OpenWorkshop> Call::openWorkshop() const {
    return m_surroundings.workshops.open(workshopFolder());
}

bool isCommandLine(const QStringList& arguments) {
    return asksFor(arguments, "--help") || asksFor(arguments, "-h") ||
           asksFor(arguments, "--version") || !commandWord(arguments).isEmpty();
}

int runCommandLine(const QStringList& arguments, Surroundings& surroundings) {
    const QString word = commandWord(arguments);
    if (word.isEmpty() && asksFor(arguments, "--version")) {
        printLine("headcap " + QCoreApplication::applicationVersion().toStdString());
        return static_cast<int>(Exit::done);
    }
    const auto commands = allCommands();
    const auto command = std::find_if(commands.begin(), commands.end(),
                                      [&](const Command& c) { return c.name == word; });
    if (asksFor(arguments, "--help") || asksFor(arguments, "-h")) {
        return command == commands.end() ? printHelp() : printHelpOf(*command);
    }
    if (command == commands.end()) {
        printError(
            QStringLiteral("there is no command “%1”; headcap --help lists them.").arg(word));
        return static_cast<int>(Exit::inputUnusable);
    }
    return runCommand(*command, arguments, surroundings);
}

void printLine(const std::string& utf8) {
    std::fwrite(utf8.data(), 1, utf8.size(), stdout);
    std::fputc('\n', stdout);
}

core::JobLine jobNumbered(const core::Stores& stores, const QString& number) {
    auto job = stores.jobs.numbered(number.toStdString());
    if (!job) {
        throw Failure{Exit::inputUnusable,
                      "there is no job " + number.toStdString() + " in this workshop."};
    }
    return *job;
}

} // namespace headcap::app::cli
