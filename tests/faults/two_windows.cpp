// Two windows on one workshop, each a process of its own, write into it at once: no update is lost,
// a record that both change is a conflict and nothing is overwritten, and each, looking every
// quarter of a second as the program does, sees what the other did within half a second.
#include <atomic>
#include <chrono>
#include <thread>

#include <sys/mman.h>
#include <sys/wait.h>
#include <unistd.h>

#include "db/workshop.h"
#include "tests/db/workshop_fixture.h"
#include "tests/faults/day_of_work.h"
#include "tests/faults/fault_program.h"

namespace headcap::test {
namespace {

namespace fs = std::filesystem;

constexpr int kWindows = 2;
constexpr int kLookMs = 250; // as the program's window does
constexpr std::int64_t kSoonEnoughMs = 500;
constexpr std::size_t kMostEntries = 1U << 17U;

// What the processes tell one another.
struct Board {
    std::atomic<std::int64_t> committed[kWindows]{}; // the last entry each wrote
    std::atomic<std::int64_t> marks[kWindows]{};     // how often each wrote into the shared note
    std::atomic<std::int64_t> conflicts{};
    std::atomic<std::int64_t> written{};
    std::atomic<std::int64_t> looks{};
    std::atomic<std::int64_t> unseen{};
    std::atomic<std::int64_t> refused{};
    // When an entry was acknowledged, by its number; and how many of them were seen, how late.
    std::atomic<std::int64_t> madeAtMs[kWindows][kMostEntries]{};
    std::atomic<std::int64_t> seen{};
    std::atomic<std::int64_t> seenLate{};
    std::atomic<std::int64_t> latestMs{};
};

std::int64_t nowMs() {
    return std::chrono::duration_cast<std::chrono::milliseconds>(
               std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

// The entries of the other window, up to this one, are on this window's screen.
void noteSeen(Board& board, int other, std::int64_t from, std::int64_t to) {
    for (std::int64_t i = from + 1; i <= to && i < std::int64_t{kMostEntries}; ++i) {
        const std::int64_t made = board.madeAtMs[other][i];
        if (made == 0) {
            continue; // this window's own, or one whose maker has not come to note it
        }
        const std::int64_t late = nowMs() - made;
        ++board.seen;
        board.seenLate += late > kSoonEnoughMs ? 1 : 0;
        std::int64_t latest = board.latestMs;
        while (late > latest && !board.latestMs.compare_exchange_weak(latest, late)) {
        }
    }
}

// Looks as a window does, beside the work.
void watch(core::Stores stores, Board& board, int window, const std::atomic<bool>& isOver) {
    std::int64_t version = stores.records.dataVersion();
    std::int64_t seen = stores.journal.latest(1).front().sequence;
    while (!isOver) {
        std::this_thread::sleep_for(std::chrono::milliseconds{kLookMs});
        const std::int64_t other = board.committed[1 - window];
        if (const auto now = stores.records.dataVersion(); now != version) {
            version = now;
            const std::int64_t newest = stores.journal.latest(1).front().sequence;
            noteSeen(board, 1 - window, seen, newest);
            seen = newest;
        }
        ++board.looks;
        board.unseen += seen < other ? 1 : 0;
    }
}

// Adds a mark of its own to the note of the item both change.
void addMark(core::Stores stores, Board& board, int window) {
    for (;;) {
        auto item = core::all<core::Item>(stores.records).front();
        item.record.note += static_cast<char>('a' + window);
        const auto made = stores.records.apply(
            core::Change{.sentence = "Note"}.update(item.record, item.revision));
        if (made) {
            ++board.marks[window];
            const auto entry = static_cast<std::size_t>(made->sequence);
            if (entry < kMostEntries) {
                board.madeAtMs[window][entry] = nowMs();
            }
            board.committed[window] = made->sequence;
            return;
        }
        if (made.error().code != core::Refusal::Code::changedSince) {
            ++board.refused;
            return;
        }
        ++board.conflicts;
    }
}

void work(const fs::path& folder, Board& board, int window, std::chrono::seconds span) {
    const core::SystemClock clock;
    core::IdSource ids(clock);
    db::SqliteWorkshops workshops(clock, {.makesBackups = false});
    const auto open = workshops.open(folder);
    const auto stores = open->stores();
    DayOfWork day(stores, ids, clock, *benchOf(stores), static_cast<std::uint64_t>(window) + 5);
    const auto end = std::chrono::steady_clock::now() + span;
    std::atomic<bool> isOver = false;
    std::thread watching([&] { watch(stores, board, window, isOver); });
    while (std::chrono::steady_clock::now() < end) {
        addMark(stores, board, window);
        // Undo is each person's own, and both are the same one here.
        (void)day.addOnly();
        ++board.written;
    }
    isOver = true;
    watching.join();
}

void inItsOwnProcess(const std::function<void()>& work, std::vector<::pid_t>& children) {
    const ::pid_t child = ::fork();
    if (child == 0) {
        int status = 0;
        try {
            work();
        } catch (const std::exception& error) {
            std::fprintf(stderr, "a window failed: %s\n", error.what());
            status = 1;
        }
        ::_exit(status);
    }
    children.push_back(child);
}

void expectBothWhole(FaultProgram& program, const fs::path& folder, const Board& board) {
    const core::SystemClock clock;
    db::SqliteWorkshops workshops(clock, {.makesBackups = false});
    const auto open = workshops.open(folder);
    const auto note = core::all<core::Item>(open->stores().records).front().record.note;
    for (int window = 0; window < kWindows; ++window) {
        const auto kept = std::count(note.begin(), note.end(), static_cast<char>('a' + window));
        if (kept != board.marks[window]) {
            program.lost("updates of one record: " + std::to_string(board.marks[window] - kept));
        }
    }
    if (board.unseen > 0) {
        program.lost("sight of the other's changes, " + std::to_string(board.unseen) + " times");
    }
    // A machine that is busy with other things may once in a while not let a window look.
    if (board.seen == 0 || board.seenLate * 100 > board.seen) {
        program.lost("sight within half a second, " + std::to_string(board.seenLate) + " of " +
                     std::to_string(board.seen) + " times");
    }
    if (board.refused > 0) {
        program.lost(std::to_string(board.refused) + " changes that were refused");
    }
    if (const std::string found = findings(open->stores()); !found.empty()) {
        program.lost("soundness:\n" + found);
    }
}

} // namespace
} // namespace headcap::test

int main(int argc, char** argv) {
    using namespace headcap::test;
    FaultProgram program(argc, argv, 6, 240);
    const std::chrono::seconds span{program.rounds()};
    const TempFolder temp;
    const auto folder = temp.path() / "workshop";
    {
        const headcap::core::SystemClock clock;
        headcap::core::IdSource ids(clock);
        headcap::db::SqliteWorkshops workshops(clock, {.makesBackups = false});
        (void)setUpBench(workshops.create(folder)->stores(), ids, clock);
    }
    void* shared =
        ::mmap(nullptr, sizeof(Board), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
    auto& board = *new (shared) Board;
    std::vector<::pid_t> children;
    for (int window = 0; window < kWindows; ++window) {
        inItsOwnProcess([&] { work(folder, board, window, span); }, children);
    }
    for (const ::pid_t child : children) {
        int status = 0;
        ::waitpid(child, &status, 0);
        if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
            program.lost("a window");
        }
    }
    expectBothWhole(program, folder, board);
    return program.close("two windows wrote for " + std::to_string(span.count()) + " s, " +
                         std::to_string(board.written.load()) + " times each kind, " +
                         std::to_string(board.conflicts.load()) + " conflicts told, " +
                         std::to_string(board.looks.load()) + " looks, " +
                         std::to_string(board.seen.load()) + " changes of the other seen, " +
                         std::to_string(board.seenLate.load()) + " later than half a second, the " +
                         "last after " + std::to_string(board.latestMs.load()) + " ms");
}
