// What the window reads of the store, counted: a workshop of twenty years is as quick as a new one
// only where opening a job, logging a step and the bench line read no more than they show.
#include <map>
#include <mutex>

#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

#include "app/session/actions.h"
#include "app/shell/bench_line.h"
#include "app/shell/job_view.h"
#include "app/shell/main_window.h"
#include "tests/support/sample_workshop.h"
#include "tests/support/settled.h"

namespace headcap::app {
namespace {

// Passes everything on, and counts what is read whole: by the window, and by what it reads aside.
class CountingStore final : public core::RecordStore {
public:
    explicit CountingStore(core::RecordStore& store) : m_store(store) {}
    int readsWhole(core::RecordKind kind) const {
        const std::scoped_lock lock(m_counting);
        return m_wholeKinds[kind];
    }
    int reads(const core::RecordRef& ref) const {
        const std::scoped_lock lock(m_counting);
        return m_single[ref];
    }
    void forget() {
        const std::scoped_lock lock(m_counting);
        m_wholeKinds.clear();
        m_single.clear();
    }

    std::optional<core::Found> find(const core::RecordRef& ref) const override {
        count(m_single, ref);
        return m_store.find(ref);
    }
    std::vector<core::Found> all(core::RecordKind kind) const override {
        count(m_wholeKinds, kind);
        return m_store.all(kind);
    }
    std::vector<core::Found> allWith(core::RecordKind kind, std::string_view column,
                                     const core::ColumnValue& value) const override {
        return m_store.allWith(kind, column, value);
    }
    std::vector<core::Found> allBetween(core::RecordKind kind, std::string_view column,
                                        std::string_view from, std::string_view to) const override {
        return m_store.allBetween(kind, column, from, to);
    }
    std::vector<core::Found> newestWith(core::RecordKind kind, std::string_view column,
                                        const core::ColumnValue& value,
                                        std::size_t most) const override {
        return m_store.newestWith(kind, column, value, most);
    }
    std::optional<std::string> greatest(core::RecordKind kind, std::string_view column,
                                        std::string_view prefix) const override {
        return m_store.greatest(kind, column, prefix);
    }
    std::vector<std::string> lately(core::RecordKind kind, std::string_view column,
                                    std::size_t records) const override {
        return m_store.lately(kind, column, records);
    }
    tl::expected<core::Revision, core::Refusal> apply(const core::Change& change) override {
        return m_store.apply(change);
    }
    std::int64_t dataVersion() const override { return m_store.dataVersion(); }

private:
    template <class Key>
    void count(std::map<Key, int>& counts, const Key& key) const {
        const std::scoped_lock lock(m_counting);
        ++counts[key];
    }

    core::RecordStore& m_store;
    mutable std::mutex m_counting;
    mutable std::map<core::RecordKind, int> m_wholeKinds;
    mutable std::map<core::RecordRef, int> m_single;
};

class ReadsTest : public testing::Test {
protected:
    ReadsTest() {
        window.setVisible(true);
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
        window.activateWindow();
        // A window reads the shelf ahead, half a second after it has come: not of these tests.
        EXPECT_TRUE(tests::isReadAhead(window));
        store.forget();
    }
    bool open(core::Page page) {
        return window.go({.view = ViewId::job, .job = sample.grafting, .page = page});
    }
    void expectNoKindOfTheShelfReadWhole() {
        for (const auto kind : {core::RecordKind::lot, core::RecordKind::material,
                                core::RecordKind::lotPart, core::RecordKind::ledgerEntry,
                                core::RecordKind::step, core::RecordKind::photograph}) {
            EXPECT_EQ(store.readsWhole(kind), 0) << core::nameOf(kind);
        }
    }

    tests::SampleWorkshop sample;
    CountingStore store{sample.store};
    Session session{[this] {
        const auto given = sample.means();
        const core::Stores& of = given.stores;
        return Session::Means{
            .stores = {store, of.jobs, of.journal, of.search, of.files, of.upkeep},
            .clock = sample.clock,
            .ids = sample.ids,
            .prompts = sample.prompts,
            .settings = sample.settings};
    }()};
    MainWindow window{session};
};

TEST_F(ReadsTest, openingAJobReadsItsFileOnceAndNothingOfTheShelfWhole) {
    ASSERT_TRUE(open(core::Page::book));
    EXPECT_EQ(store.reads(core::refOf(*sample.grafting)), 1);
    expectNoKindOfTheShelfReadWhole();
}

TEST_F(ReadsTest, turningThePagesReadsItNotAgain) {
    ASSERT_TRUE(open(core::Page::book));
    store.forget();
    auto* job = qobject_cast<JobView*>(window.current());
    for (const auto page :
         {core::Page::survey, core::Page::proposal, core::Page::photographs, core::Page::book}) {
        ASSERT_TRUE(job->turnTo(page));
    }
    EXPECT_EQ(store.reads(core::refOf(*sample.grafting)), 0);
    expectNoKindOfTheShelfReadWhole();
}

TEST_F(ReadsTest, theShelfIsReadOnceForALineHoweverLongItIs) {
    ASSERT_TRUE(open(core::Page::book));
    auto* job = qobject_cast<JobView*>(window.current());
    QLineEdit& line = job->benchLine().line();
    line.setFocus();
    store.forget();
    QTest::keyClicks(&line, QStringLiteral("guarded K7 with 31-006 0.6 g 18 min"));
    EXPECT_EQ(store.readsWhole(core::RecordKind::lot), 1);
    EXPECT_EQ(store.readsWhole(core::RecordKind::ledgerEntry), 1);
}

} // namespace
} // namespace headcap::app
