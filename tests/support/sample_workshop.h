// An invented workshop in memory, for tests and pictures of windows. It is Thursday 6 March 2031,
// 13:48 at the workshop.
#pragma once

#include <QTemporaryDir>

#include "app/session/session.h"
#include "tests/support/memory_store.h"

namespace headcap::tests {

class FixedClock final : public core::Clock {
public:
    core::Instant at = *core::instantFromIso("2031-03-06T08:03:00Z");
    core::Instant now() const override { return at; }
    core::Day today() const override { return dayOf(at); }
    core::Day dayOf(core::Instant instant) const override {
        return core::Day{std::chrono::floor<std::chrono::days>(instant)};
    }
};

// Answers what a test has laid ready, and remembers what was asked.
class FakePrompts final : public app::Prompts {
public:
    QStringList files;
    std::optional<QString> file;
    QStringList asked;
    QStringList filesToOpen(const QString& title, const QString&) override {
        asked << title;
        return files;
    }
    std::optional<QString> fileToSave(const QString& title, const QString&,
                                      const QString&) override {
        asked << title;
        return file;
    }
    std::optional<QString> folder(const QString& title) override {
        asked << title;
        return file;
    }
    void open(const QUrl& address) override { asked << address.toString(); }
};

struct SampleWorkshop {
    SampleWorkshop();

    FixedClock clock;
    core::IdSource ids{clock, 2031};
    MemoryStore store;
    MemorySearch search{store};
    QTemporaryDir folder;
    MemoryFiles files{folder.path().toStdString()};
    MemoryUpkeep upkeep;
    FakePrompts prompts;
    app::Settings settings{folder.filePath(QStringLiteral("settings.ini"))};

    std::optional<core::Id<core::Person>> orrin; // at the bench
    std::optional<core::Id<core::Job>> grafting; // the job most is known of
    std::optional<core::Id<core::Job>> hymnal;   // a job just received, nothing else

    [[nodiscard]] app::Session::Means means() {
        return {.stores = {store, store, store, search, files, upkeep},
                .clock = clock,
                .ids = ids,
                .prompts = prompts,
                .settings = settings};
    }
    [[nodiscard]] core::JobFile file(const core::Id<core::Job>& id) const {
        return *core::loadJobFile(store, id);
    }

private:
    struct Given {
        const char* number;
        const char* title;
        const char* date;
        const char* owner;
        core::OwnerKind kind = core::OwnerKind::institution;
        core::JobState state = core::JobState::received;
        const char* due = "";
    };
    core::Id<core::Job> addJob(const Given& given);
    void fillGrafting();
    void fillProposal();
    void fillLog(const core::Id<core::Lot>& paste);
    core::Id<core::Lot> addLot(const core::Lot& lot, const core::Material& material,
                               core::Amount received);
};

} // namespace headcap::tests
