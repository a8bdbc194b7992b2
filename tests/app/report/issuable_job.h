// A finished job in a workshop in memory, whose report can be issued.
#pragma once

#include <filesystem>
#include <functional>
#include <utility>
#include <vector>

#include <QTemporaryDir>

#include "tests/app/print/sample_photos.h"
#include "tests/support/job_builder.h"
#include "tests/support/memory_store.h"

namespace headcap::app::test {

// Every photograph is there, the same small one; while one is looked for, a test may act.
class PhotographsThere final : public core::FileStore {
public:
    PhotographsThere(core::FileStore& kept, std::filesystem::path photograph)
        : m_kept(kept), m_photograph(std::move(photograph)) {}
    std::function<void()> whileDrawn = [] {};
    core::Digest put(Shelf shelf, std::span<const std::byte> bytes,
                     std::string_view suffix) override {
        return m_kept.put(shelf, bytes, suffix);
    }
    std::filesystem::path pathOf(Shelf shelf, const core::Digest& digest) const override {
        return shelf == Shelf::photograph ? m_photograph : m_kept.pathOf(shelf, digest);
    }
    bool has(Shelf shelf, const core::Digest& digest) const override {
        if (shelf == Shelf::photograph) {
            whileDrawn();
        }
        return shelf == Shelf::photograph || m_kept.has(shelf, digest);
    }
    std::filesystem::path cacheFolder() const override { return m_kept.cacheFolder(); }

private:
    core::FileStore& m_kept;
    std::filesystem::path m_photograph;
};

// With all that may be issued, and nothing that may not.
struct IssuableJob {
    IssuableJob() {
        print::test::writeFile(photograph(),
                               print::test::jpegOf(print::test::noisyPhotograph(60, 40)));
        store.put(job.file.item);
        store.put(job.file.owner);
        store.put(job.file.job);
        keep(job.file.people, job.file.materials, job.file.lots, job.file.lotParts, job.file.ledger,
             job.file.pieces, job.file.moves, job.file.notices, job.file.followUps,
             job.file.examinations, job.file.findings, job.file.tests, job.file.collations,
             job.file.collationFindings, job.file.facsimiles, job.file.proposals, job.file.options,
             job.file.lines, job.file.decisions, job.file.steps, job.file.uses,
             job.file.photographs, job.file.stepChecks);
    }
    template <class... Records>
    void keep(const std::vector<Records>&... records) {
        const auto keepAll = [this](const auto& all) {
            for (const auto& one : all) {
                store.put(one);
            }
        };
        (keepAll(records), ...);
    }
    QString photograph() const { return folder.filePath(QStringLiteral("photograph.jpg")); }
    core::Stores stores() { return {store, store, store, search, files, upkeep}; }
    core::JobFile file() { return *core::loadJobFile(store, job.file.job.id); }

    core::tests::FinishedJob job;
    QTemporaryDir folder;
    tests::MemoryStore store;
    tests::MemorySearch search{store};
    tests::MemoryFiles kept{folder.path().toStdString()};
    PhotographsThere files{kept, photograph().toStdString()};
    tests::MemoryUpkeep upkeep;
};

} // namespace headcap::app::test
