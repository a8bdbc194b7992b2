// What the program does as a workshop grows: opening a job, the worklist, finding, logging a step
// beside bare SQLite, starting beside a bare window, and memory.
//
//   size_bench [--full | --only JOBS] [--keep DIR]
//   size_bench --make DIR JOBS
//
// Makes workshops of 1,000 and 10,000 jobs, with --full of 100,000 as well, and prints a table; or
// only makes one.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <functional>
#include <random>
#include <string>
#include <vector>

#include <QApplication>
#include <QProcess>
#include <QTemporaryDir>

#include <fmt/format.h>

#include "app/shell/worklist.h"
#include "db/workshop.h"
#include "tests/bench/workshop/bare_log.h"
#include "tests/bench/workshop/make_workshop.h"
#include "tests/bench/workshop/window_run.h"

namespace headcap::bench {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr int kJobsOpened = 300;
constexpr int kStepsLogged = 300;

double millisecondsOf(const std::function<void()>& work) {
    const auto start = Clock::now();
    work();
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

struct Times {
    std::vector<double> all;
    double at(double share) {
        std::sort(all.begin(), all.end());
        return all[static_cast<std::size_t>(share * static_cast<double>(all.size() - 1))];
    }
    [[nodiscard]] std::string text() {
        return fmt::format("{:.1f} (99 of 100 under {:.1f})", at(0.5), at(0.99));
    }
};

struct Figures {
    std::int64_t jobs = 0;
    double megabytes = 0;
    std::string openJob;
    std::string worklist;
    std::string find;
    std::string logStep;
    double logRatio = 0;
    std::string logAll;
    double logAllRatio = 0;
    double startRatio = 0;
    std::string start;
    double emptyRatio = 0;
    std::string empty;
    std::int64_t memory = 0;
    std::string longest;
};

std::vector<core::JobLine> someJobs(core::Stores stores) {
    std::vector<core::JobLine> lines;
    const std::size_t count = stores.jobs.count();
    for (int i = 0; i < kJobsOpened; ++i) {
        auto page = stores.jobs.page(count * static_cast<std::size_t>(i) / kJobsOpened, 1);
        lines.insert(lines.end(), page.begin(), page.end());
    }
    std::shuffle(lines.begin(), lines.end(), std::mt19937_64{7});
    return lines;
}

std::string openJobs(core::Stores stores) {
    Times times;
    for (const core::JobLine& line : someJobs(stores)) {
        times.all.push_back(
            millisecondsOf([&] { (void)core::loadJobFile(stores.records, line.id); }));
    }
    return times.text();
}

std::string makeWorklists(core::Stores stores, const core::Clock& clock) {
    Times times;
    for (int i = 0; i < 30; ++i) {
        times.all.push_back(millisecondsOf([&] { (void)app::worklistOf(stores, clock); }));
    }
    return times.text();
}

std::string findThings(core::Stores stores) {
    Times times;
    for (const char* words :
         {"g", "gu", "guarded", "guarded fold", "orchards volume 7", "linen", "board reattached",
          "kell", "foxing", "h", "washed in two", "nothing"}) {
        for (int i = 0; i < 5; ++i) {
            times.all.push_back(millisecondsOf([&] { (void)stores.search.find(words, 50); }));
        }
    }
    return times.text();
}

void logSteps(core::Stores stores, const fs::path& workshop, const fs::path& scratch,
              const core::Clock& clock, Figures& figures) {
    core::IdSource ids(clock);
    BareLog bare(workshop, scratch / "records", Rows::records);
    BareLog bareAll(workshop, scratch / "all", Rows::all);
    const auto job = someJobs(stores).front().id;
    const auto person = core::all<core::Person>(stores.records).front().record.id;
    const auto lot = core::all<core::Lot>(stores.records).back().record.id;
    Times ours;
    Times theirs;
    Times theirsAll;
    for (int i = 0; i < kStepsLogged; ++i) {
        // A step a day: no day of this workshop grows with every run.
        const core::Instant at = clock.now() - std::chrono::days{i + 1};
        const core::Step step{.id = ids.next<core::Step>(),
                              .job = job,
                              .at = at,
                              .who = person,
                              .technique = "guarding",
                              .place = "K7",
                              .description = "guarded on the fold with paste and tissue",
                              .minutes = core::Minutes{20}};
        const core::MaterialUse use{.id = ids.next<core::MaterialUse>(),
                                    .job = job,
                                    .step = step.id,
                                    .lot = lot,
                                    .amount = core::Amount::of(core::Mass::milligrams(400)),
                                    .role = "adhesive"};
        const core::LedgerEntry entry{.id = ids.next<core::LedgerEntry>(),
                                      .lot = lot,
                                      .at = at,
                                      .who = person,
                                      .kind = core::LedgerKind::used,
                                      .amount = use.amount->negated(),
                                      .use = use.id};
        core::Change change{.sentence = "Step logged", .who = person};
        change.add(step);
        change.add(use);
        change.add(entry);
        ours.all.push_back(millisecondsOf([&] { (void)stores.records.apply(change); }));
        bare.readLast();
        bareAll.readLast();
        theirs.all.push_back(millisecondsOf([&] { bare.writeThem(); }));
        theirsAll.all.push_back(millisecondsOf([&] { bareAll.writeThem(); }));
    }
    figures.logRatio = ours.at(0.5) / theirs.at(0.5);
    figures.logStep = fmt::format("{:.2f} beside {:.2f}", ours.at(0.5), theirs.at(0.5));
    figures.logAllRatio = ours.at(0.5) / theirsAll.at(0.5);
    figures.logAll = fmt::format("{:.2f}", theirsAll.at(0.5));
}

QStringList saidBy(const QStringList& words, QChar apart) {
    QProcess program;
    program.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    program.start(QCoreApplication::applicationFilePath(), words);
    program.waitForFinished(-1);
    return QString::fromUtf8(program.readAllStandardOutput()).trimmed().split(apart);
}

// From the call of the program to its first painted window, and its memory after some work.
std::pair<double, std::int64_t> startedIn(const QStringList& words) {
    Times times;
    std::int64_t memory = 0;
    for (int i = 0; i < 11; ++i) {
        QProcess program;
        times.all.push_back(millisecondsOf([&] {
            program.start(QCoreApplication::applicationFilePath(), words);
            program.waitForReadyRead(-1);
        }));
        program.waitForFinished(-1);
        const auto lines = QString::fromUtf8(program.readAllStandardOutput()).split(u'\n');
        memory = std::max<std::int64_t>(memory, lines.value(1).toLongLong());
    }
    return {times.at(0.5), memory};
}

Figures measure(const fs::path& folder, std::int64_t jobs) {
    const fs::path workshop = folder / fmt::format("jobs-{}", jobs);
    Figures figures{.jobs = jobs};
    if (!fs::exists(workshop / "workshop.sqlite")) {
        const double made = millisecondsOf([&] { makeWorkshop(workshop, jobs); });
        std::fprintf(stderr, "%lld jobs made in %.0f s\n", static_cast<long long>(jobs),
                     made / 1'000);
    }
    figures.megabytes =
        static_cast<double>(fs::file_size(workshop / "workshop.sqlite")) / 1'000'000;
    const core::SystemClock clock;
    {
        db::SqliteWorkshops workshops(clock, {.makesBackups = false});
        const auto open = workshops.open(workshop);
        const auto stores = open->stores();
        figures.openJob = openJobs(stores);
        figures.worklist = makeWorklists(stores, clock);
        figures.find = findThings(stores);
        logSteps(stores, workshop, folder / "bare", clock, figures);
    }
    // The first word on a window has the system's fonts read; no useful window is without.
    const auto empty = startedIn({QStringLiteral("--bare")});
    const auto bare = startedIn({QStringLiteral("--bare"), QStringLiteral("Worklist")});
    const auto ours = startedIn({QStringLiteral("--start"), QString::fromStdString(workshop)});
    figures.startRatio = ours.first / bare.first;
    figures.emptyRatio = ours.first / empty.first;
    figures.start = fmt::format("{:.0f} beside {:.0f}", ours.first, bare.first);
    figures.empty = fmt::format("{:.0f}", empty.first);
    figures.memory = ours.second;
    const auto replay =
        saidBy({QStringLiteral("--replay"), QString::fromStdString(workshop)}, u'|');
    figures.longest = fmt::format("{} ({}); {} of {} over 50", replay.value(0).toStdString(),
                                  replay.value(1).toStdString(), replay.value(2).toStdString(),
                                  replay.value(3).toStdString());
    return figures;
}

void print(const std::vector<Figures>& all) {
    const auto row = [&](const char* what, const std::function<std::string(const Figures&)>& said) {
        std::string line = fmt::format("| {} |", what);
        for (const Figures& figures : all) {
            line += " " + said(figures) + " |";
        }
        std::printf("%s\n", line.c_str());
    };
    row("jobs", [](const Figures& f) { return std::to_string(f.jobs); });
    std::string rule = "|---|";
    for (std::size_t i = 0; i < all.size(); ++i) {
        rule += "---|";
    }
    std::printf("%s\n", rule.c_str());
    row("database, MB", [](const Figures& f) { return fmt::format("{:.0f}", f.megabytes); });
    row("opening a job, ms", [](const Figures& f) { return f.openJob; });
    row("the worklist, ms", [](const Figures& f) { return f.worklist; });
    row("finding, ms", [](const Figures& f) { return f.find; });
    row("logging a step beside bare SQLite, ms", [](const Figures& f) { return f.logStep; });
    row("… ratio", [](const Figures& f) { return fmt::format("{:.2f}", f.logRatio); });
    row("bare SQLite with its journal and index rows too, ms",
        [](const Figures& f) { return f.logAll; });
    row("… ratio", [](const Figures& f) { return fmt::format("{:.2f}", f.logAllRatio); });
    row("start beside a bare window with one word, ms", [](const Figures& f) { return f.start; });
    row("… ratio", [](const Figures& f) { return fmt::format("{:.2f}", f.startRatio); });
    row("an empty window, ms", [](const Figures& f) { return f.empty; });
    row("… ratio", [](const Figures& f) { return fmt::format("{:.2f}", f.emptyRatio); });
    row("longest the window was busy in an hour's work, ms",
        [](const Figures& f) { return f.longest; });
    row("memory after 40 jobs, MB", [](const Figures& f) { return std::to_string(f.memory); });
}

} // namespace
} // namespace headcap::bench

int main(int argc, char** argv) {
    using namespace headcap::bench;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QStringList words = application.arguments();
    if (words.value(1) == QStringLiteral("--bare")) {
        return startBare(words.value(2));
    }
    if (words.value(1) == QStringLiteral("--start")) {
        return startOnce(application, words.value(2));
    }
    if (words.value(1) == QStringLiteral("--replay")) {
        return replayAnHour(application, words.value(2));
    }
    if (words.value(1) == QStringLiteral("--make") && words.size() == 4) {
        makeWorkshop(words[2].toStdString(), words[3].toLongLong());
        return 0;
    }
    std::vector<std::int64_t> sizes{1'000, 10'000};
    if (words.contains(QStringLiteral("--full"))) {
        sizes.push_back(100'000);
    }
    if (const auto only = words.indexOf(QStringLiteral("--only")); only > 0) {
        sizes = {words.value(only + 1).toLongLong()};
    }
    const QTemporaryDir temporary;
    const auto keep = words.indexOf(QStringLiteral("--keep"));
    const QString folder = keep > 0 ? words.value(keep + 1) : temporary.path();
    std::vector<Figures> all;
    for (const std::int64_t jobs : sizes) {
        all.push_back(measure(folder.toStdString(), jobs));
    }
    print(all);
    return 0;
}
