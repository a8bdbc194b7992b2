// The safe keeping of a workshop as a test wants it: what it says is laid ready, and what was asked
// of it is remembered.
#pragma once

#include <atomic>
#include <thread>

#include "core/record/safe_keeping.h"

namespace headcap::tests {

class FakeKeeping final : public core::Upkeep, public core::SafeKeeping {
public:
    std::optional<core::Instant> lastOutside;
    std::optional<core::Instant> lastInside;
    std::optional<std::filesystem::path> lastFolder;
    core::VerifyReport found;
    core::MendReport mended;
    std::optional<core::StoreError> failure;
    std::atomic<bool> goesOn = false; // long work ends only when it is stopped
    std::vector<std::string> asked;

    core::VerifyReport verify(const core::Progress& progress) const override {
        (void)progress(1, 2);
        return found;
    }
    core::BackupReport backup(const std::filesystem::path& folder,
                              const core::Progress& progress) override {
        asked.push_back("backup " + folder.string());
        work(progress);
        lastFolder = folder;
        return {folder, 12, 3'400, 5'000};
    }
    std::optional<core::Instant> lastOutsideBackup() const override { return lastOutside; }
    void rebuildSearch() override {}
    std::filesystem::path folder() const override { return "/srv/bindery"; }
    std::optional<core::Instant> lastInsideBackup() const override { return lastInside; }
    std::optional<std::filesystem::path> outsideFolder() const override { return lastFolder; }
    core::MendReport mendFiles(const std::filesystem::path& from, const core::Progress&) override {
        asked.push_back("mend " + from.string());
        return mended;
    }
    bool restore(const std::filesystem::path& backup, const std::filesystem::path& folder,
                 const core::Progress& progress) override {
        asked.push_back("restore " + backup.string() + " " + folder.string());
        return work(progress);
    }

private:
    bool work(const core::Progress& progress) {
        if (failure) {
            throw *failure;
        }
        while (progress(1'280, 3'412)) {
            if (!goesOn) {
                return true;
            }
            std::this_thread::sleep_for(std::chrono::milliseconds{1});
        }
        return false;
    }
};

} // namespace headcap::tests
