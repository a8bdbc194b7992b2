#include "core/report/disclosure_check.h"

#include <gtest/gtest.h>

#include "core/report/compose_report.h"
#include "core/values/english.h"
#include "tests/support/random_job.h"

namespace headcap::core {
namespace {

using tests::day;
using tests::FinishedJob;
using tests::JobBuilder;
using tests::RandomJob;

Document documentOf(const JobBuilder& job) {
    return composeReport(job.file, {.date = day(2031, 4, 2)}, job.clock);
}

std::string namesOf(const std::vector<RecordRef>& refs) {
    std::string names;
    for (const RecordRef& ref : refs) {
        names += std::string{nameOf(ref.kind)} + " ";
    }
    return names;
}

// Calls with the document as it would be without one thing that comes from a record, for each.
template <class Visit>
void withoutEach(const Document& whole, Visit visit) {
    const auto without = [&](std::size_t s, std::size_t b, auto&& cut) {
        Document document = whole;
        cut(document.sections[s].blocks, b);
        visit(document, s);
    };
    for (std::size_t s = 0; s < whole.sections.size(); ++s) {
        for (std::size_t b = 0; b < whole.sections[s].blocks.size(); ++b) {
            const Block& block = whole.sections[s].blocks[b];
            const auto cutBlock = [](auto& blocks, std::size_t at) {
                blocks.erase(blocks.begin() + static_cast<std::ptrdiff_t>(at));
            };
            const auto cutEach = [&](const auto& things, auto member) {
                for (std::size_t i = 0; i < things.size(); ++i) {
                    without(s, b, [&](auto& blocks, std::size_t at) {
                        auto& list = member(blocks[at]);
                        list.erase(list.begin() + static_cast<std::ptrdiff_t>(i));
                    });
                }
            };
            if (const auto* paragraph = std::get_if<Paragraph>(&block)) {
                if (paragraph->source) {
                    without(s, b, cutBlock);
                }
            } else if (std::holds_alternative<Caution>(block)) {
                without(s, b, cutBlock);
            } else if (const auto* table = std::get_if<Table>(&block)) {
                cutEach(
                    table->rows, [](Block & t) -> auto& { return std::get<Table>(t).rows; });
            } else if (const auto* figures = std::get_if<Figures>(&block)) {
                cutEach(
                    figures->figures,
                    [](Block & t) -> auto& { return std::get<Figures>(t).figures; });
            } else if (const auto* list = std::get_if<List>(&block)) {
                for (std::size_t i = 0; i < list->items.size(); ++i) {
                    if (list->items[i].source) {
                        without(s, b, [&](auto& blocks, std::size_t at) {
                            auto& items = std::get<List>(blocks[at]).items;
                            items.erase(items.begin() + static_cast<std::ptrdiff_t>(i));
                        });
                    }
                }
            } else if (const auto* facts = std::get_if<Facts>(&block)) {
                for (std::size_t i = 0; i < facts->facts.size(); ++i) {
                    if (facts->facts[i].source) {
                        without(s, b, [&](auto& blocks, std::size_t at) {
                            auto& all = std::get<Facts>(blocks[at]).facts;
                            all.erase(all.begin() + static_cast<std::ptrdiff_t>(i));
                        });
                    }
                }
            }
        }
    }
}

TEST(Disclosure, whateverIsRecordedIsComposed) {
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const RandomJob job{seed};
        EXPECT_EQ(namesOf(undisclosed(job.file, documentOf(job))), "") << "seed " << seed;
    }
}

// Nothing that comes from a record can be taken out of a report unnoticed.
TEST(Disclosure, nothingCanBeLeftOutUnnoticed) {
    int cuts = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const RandomJob job{seed};
        const Document whole = documentOf(job);
        withoutEach(whole, [&](const Document& less, std::size_t section) {
            ++cuts;
            EXPECT_FALSE(undisclosed(job.file, less).empty())
                << "seed " << seed << ", section " << whole.sections[section].key;
        });
    }
    EXPECT_GT(cuts, 500);
}

// What was put in is named in the words of the report, not only by a source beside it.
TEST(Disclosure, namesWhatWasPutIn) {
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const RandomJob job{seed};
        const std::string text = plainText(documentOf(job));
        const auto expect = [&](const std::string& words) {
            EXPECT_NE(text.find(words), std::string::npos) << words << ", seed " << seed;
        };
        for (const Facsimile& leaf : job.file.facsimiles) {
            expect(leaf.place);
            expect(leaf.shelfmark);
            expect(leaf.marking);
            expect(leaf.removal);
        }
        for (const MaterialUse& use : job.file.uses) {
            if (use.amount) {
                expect(toText(*use.amount));
            }
        }
        for (const Lot& lot : job.file.lots) {
            expect(lot.number);
            expect(lot.supplier);
        }
        for (const Step& step : job.file.steps) {
            expect(capitalised(step.description)); // which begins a sentence
            expect(step.removed);
            expect(step.struckWhy);
        }
    }
}

TEST(Disclosure, aWordChangedInTheReportIsNoticed) {
    const FinishedJob job;
    Document document = documentOf(job);
    for (Section& section : document.sections) {
        if (section.key != "disclosures_a") {
            continue;
        }
        for (Block& block : section.blocks) {
            if (auto* facts = std::get_if<Facts>(&block)) {
                facts->facts.front().value = {headcap::core::Run{"K6"}};
            }
        }
    }
    const auto missing = undisclosed(job.file, document);
    ASSERT_EQ(missing.size(), 1U);
    EXPECT_EQ(missing.front(), refOf(job.file.facsimiles.front().id));
}

} // namespace
} // namespace headcap::core
