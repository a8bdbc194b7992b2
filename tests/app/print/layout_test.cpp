#include "app/print/layout/layout.h"

#include <algorithm>
#include <numeric>

#include <gtest/gtest.h>

#include "app/print/layout/blocks.h"
#include "app/print/layout/page_setup.h"
#include "app/print/layout/set_text.h"
#include "app/print/layout/table_columns.h"
#include "core/report/sign_line.h"
#include "tests/app/print/sample_document.h"

namespace headcap::app::print {
namespace {

using namespace test;

template <class Kind>
std::vector<Kind> marksOf(const Page& page) {
    std::vector<Kind> found;
    for (const Mark& mark : page.marks) {
        if (const auto* one = std::get_if<Kind>(&mark)) {
            found.push_back(*one);
        }
    }
    return found;
}

std::vector<std::string> linesOf(const Page& page) {
    std::vector<std::string> lines;
    for (const TextLine& line : marksOf<TextLine>(page)) {
        lines.push_back(line.text.toStdString());
    }
    return lines;
}

std::size_t countOf(const Pages& pages, const std::string& line) {
    std::size_t count = 0;
    for (const Page& page : pages.pages) {
        const auto lines = linesOf(page);
        count += static_cast<std::size_t>(std::count(lines.begin(), lines.end(), line));
    }
    return count;
}

class OnEachSheet : public ::testing::TestWithParam<Sheet> {};
INSTANTIATE_TEST_SUITE_P(Sheets, OnEachSheet, ::testing::Values(Sheet::a4, Sheet::letter));

TEST_P(OnEachSheet, saysJobDatePageAndDraftOnEveryPage) {
    const Pages pages = layOut(sampleDocument(), pageSetup(GetParam()));
    ASSERT_GT(pages.pages.size(), 3U);
    for (std::size_t i = 0; i < pages.pages.size(); ++i) {
        const std::string number =
            "page " + std::to_string(i + 1) + " of " + std::to_string(pages.pages.size());
        const auto lines = linesOf(pages.pages[i]);
        for (const std::string& line :
             {std::string("Job 2031-014"), std::string("28 March 2031 · Draft, not issued"), number,
              std::string("DRAFT")}) {
            EXPECT_NE(std::find(lines.begin(), lines.end(), line), lines.end())
                << line << " on page " << i + 1;
        }
        EXPECT_FALSE(marksOf<Hatch>(pages.pages[i]).empty());
    }
}

// Of no step is more asked than of one section, however many there are.
TEST_P(OnEachSheet, isLaidOutTheSameAtOnceAndInSteps) {
    const core::Document document = sampleDocument();
    LayingOut laying(document, pageSetup(GetParam()));
    std::size_t steps = 1;
    while (laying.step()) {
        ++steps;
    }
    EXPECT_GT(steps, document.sections.size());
    const Pages stepped = laying.pages();
    const Pages whole = layOut(document, pageSetup(GetParam()));
    ASSERT_EQ(stepped.pages.size(), whole.pages.size());
    ASSERT_GT(whole.pages.size(), 3U);
    for (std::size_t i = 0; i < whole.pages.size(); ++i) {
        EXPECT_EQ(linesOf(stepped.pages[i]), linesOf(whole.pages[i])) << i;
        EXPECT_EQ(stepped.pages[i].marks.size(), whole.pages[i].marks.size()) << i;
    }
    EXPECT_EQ(stepped.entries.size(), whole.entries.size());
}

TEST_P(OnEachSheet, saysNothingOfADraftWhereItIsIssued) {
    const Pages pages = layOut(sampleDocument(false), pageSetup(GetParam()));
    EXPECT_EQ(countOf(pages, "DRAFT"), 0U);
    EXPECT_EQ(countOf(pages, "28 March 2031 · Issued, version 2"), pages.pages.size());
}

TEST_P(OnEachSheet, keepsAllTextAndPicturesWithinTheBlock) {
    const PageSetup setup = pageSetup(GetParam());
    for (const Page& page : layOut(sampleDocument(), setup).pages) {
        for (const TextLine& line : marksOf<TextLine>(page)) {
            if (!line.upward) { // the word in the draft's edge
                EXPECT_GE(line.at.x(), setup.left - 0.1) << line.text.toStdString();
                EXPECT_LE(line.at.x() + line.width, setup.left + kBlockWidth + 0.1)
                    << line.text.toStdString();
            }
            EXPECT_LT(line.at.y(), setup.height - mm(10));
        }
        for (const Picture& picture : marksOf<Picture>(page)) {
            EXPECT_GE(picture.area.left(), setup.left - 0.1);
            EXPECT_LE(picture.area.right(), setup.left + kBlockWidth + 0.1);
            EXPECT_LE(picture.area.bottom(), setup.bottom + 0.1);
        }
    }
}

TEST_P(OnEachSheet, laysNoLineOverAnotherNorOverAPicture) {
    for (const Page& page : layOut(sampleDocument(), pageSetup(GetParam())).pages) {
        std::vector<QRectF> boxes;
        for (const Picture& picture : marksOf<Picture>(page)) {
            boxes.push_back(picture.area);
        }
        for (const TextLine& line : marksOf<TextLine>(page)) {
            if (line.upward || line.width <= 0) {
                continue;
            }
            const QRectF box = line.box().adjusted(0.1, 0.1, -0.1, -0.1);
            for (const QRectF& other : boxes) {
                EXPECT_FALSE(other.intersects(box)) << line.text.toStdString();
            }
            boxes.push_back(box);
        }
    }
}

TEST(Layout, repeatsTheHeadOfATableOnEveryPageItGoesOnTo) {
    core::Table table;
    table.columns = {{"Lot"}, {"What it is", 4}};
    for (int i = 0; i < 120; ++i) {
        table.rows.push_back({{plainRun("row" + std::to_string(i)), plainRun("Kozo tissue")}});
    }
    const Pages pages = layOut(documentOf({table}), pageSetup(Sheet::a4));
    ASSERT_GT(pages.pages.size(), 2U);
    EXPECT_EQ(countOf(pages, "What it is"), pages.pages.size());
    for (int i = 0; i < 120; ++i) {
        EXPECT_EQ(countOf(pages, "row" + std::to_string(i)), 1U);
    }
}

TEST(Layout, partsARowThatIsLongerThanAPageBetweenItsLines) {
    std::string text;
    for (int i = 0; i < 3'000; ++i) {
        text += "w" + std::to_string(i) + " ";
    }
    const core::Table table{{{"Step"}, {"By"}}, {{{plainRun(text), plainRun("M. Orrin")}}}};
    const PageSetup setup = pageSetup(Sheet::a4);
    const Pages pages = layOut(documentOf({table}), setup);
    EXPECT_GT(pages.pages.size(), 2U);
    std::string all;
    for (const Page& page : pages.pages) {
        for (const TextLine& line : marksOf<TextLine>(page)) {
            all += line.text.toStdString() + " ";
        }
    }
    EXPECT_NE(all.find("w2999 "), std::string::npos);
}

// Common practice: 12 mm for a hand; the rule as wide as its column, and no row of dots.
TEST(Layout, leavesRoomToWriteWhereARowIsFilledInByHand) {
    const core::Table table{{{"I choose", 2}, {"Not above", 3}},
                            {{{plainRun("first"), plainRun(core::report::kSignLine)}},
                             {{plainRun("second"), plainRun(core::report::kSignLine)}}}};
    const Pages pages = layOut(documentOf({table}), pageSetup(Sheet::a4));
    EXPECT_EQ(countOf(pages, core::report::kSignLine), 0U);
    std::vector<double> tops;
    for (const TextLine& line : marksOf<TextLine>(pages.pages.front())) {
        if (line.text == QStringLiteral("first") || line.text == QStringLiteral("second")) {
            tops.push_back(line.at.y());
        }
    }
    ASSERT_EQ(tops.size(), 2U);
    EXPECT_GE(tops[1] - tops[0], mm(12));
    const double narrow = kBlockWidth / 2;
    const double wide = kBlockWidth * 0.9;
    std::size_t blanks = 0;
    for (const Rule& rule : marksOf<Rule>(pages.pages.front())) {
        const double length = rule.to.x() - rule.from.x();
        blanks += length > narrow && length < wide && rule.ink == Ink::text ? 1 : 0;
    }
    EXPECT_EQ(blanks, 2U);
}

// A sum on a page of its own adds up nothing that one sees.
TEST(Layout, keepsTotalsWithTheLastRowTheyAddUp) {
    using Kind = core::TableRow::Kind;
    for (int rows = 20; rows < 60; ++rows) {
        core::Table table{{{"Work", 4}, {"Price", 1, true}}, {}};
        const auto add = [&](const std::string& words, Kind kind) {
            table.rows.push_back({{plainRun(words), plainRun("1.00 EUR")}, {}, false, kind});
        };
        for (int i = 0; i < rows; ++i) {
            add(i + 1 == rows ? "last" : "row", Kind::entry);
        }
        add("before tax", Kind::total);
        add("tax", Kind::total);
        add("in all", Kind::total);
        for (const Page& page : layOut(documentOf({table}), pageSetup(Sheet::a4)).pages) {
            const auto found = linesOf(page);
            const auto has = [&found](const char* line) {
                return std::find(found.begin(), found.end(), line) != found.end();
            };
            for (const char* total : {"before tax", "tax", "in all"}) {
                EXPECT_EQ(has(total), has("last")) << rows;
            }
        }
    }
}

TEST(Layout, leavesNoHeadingAtTheFootOfAPage) {
    for (int lines = 30; lines < 60; ++lines) {
        core::Document document = documentOf({});
        for (int i = 0; i < lines; ++i) {
            document.sections[0].blocks.emplace_back(core::Paragraph{plainRun("a line")});
        }
        document.sections.push_back(
            {"next", "Next section", 1, {core::Subheading{"Under"}, core::Statement{"Nothing."}}});
        const Pages pages = layOut(document, pageSetup(Sheet::a4));
        for (const Page& page : pages.pages) {
            const auto found = linesOf(page);
            const auto has = [&found](const char* line) {
                return std::find(found.begin(), found.end(), line) != found.end();
            };
            EXPECT_EQ(has("Next section"), has("Nothing.")) << lines;
            EXPECT_EQ(has("Under"), has("Nothing.")) << lines;
        }
    }
}

TEST(Layout, leavesNoListItemAloneOnAPage) {
    for (int lines = 38; lines < 62; ++lines) {
        std::vector<core::Block> blocks(static_cast<std::size_t>(lines) / 2,
                                        core::Paragraph{plainRun("a line")});
        blocks.emplace_back(
            core::List{{{plainRun("first")}, {plainRun("second")}, {plainRun("last")}}});
        for (const Page& page : layOut(documentOf(blocks), pageSetup(Sheet::a4)).pages) {
            const auto found = linesOf(page);
            const auto items = std::count_if(found.begin(), found.end(), [](const auto& line) {
                return line == "first" || line == "second" || line == "last";
            });
            EXPECT_NE(items, 1) << lines;
        }
    }
}

TEST(Layout, setsASubheadingOverTheLeftEdgeOfWhatItStandsAbove) {
    const core::Table table{{{"Lot"}}, {{{plainRun("31-006")}}}};
    const Pages pages = layOut(
        documentOf({core::Paragraph{plainRun("text")}, core::Subheading{"Above a table"}, table,
                    core::Subheading{"Above text"}, core::Paragraph{plainRun("more text")}}),
        pageSetup(Sheet::a4));
    const double left = pageSetup(Sheet::a4).left;
    for (const TextLine& line : marksOf<TextLine>(pages.pages[0])) {
        if (line.text == QStringLiteral("Above a table")) {
            EXPECT_DOUBLE_EQ(line.at.x(), left);
        } else if (line.text == QStringLiteral("Above text")) {
            EXPECT_DOUBLE_EQ(line.at.x(), left + kTextLeft);
        }
    }
    EXPECT_EQ(countOf(pages, "Above a table") + countOf(pages, "Above text"), 2U);
}

TEST(Layout, labelsNoParticularThatIsNotKnown) {
    core::Document document = documentOf({});
    EXPECT_EQ(countOf(layOut(document, pageSetup(Sheet::a4)), "Report by"), 1U);
    document.author.clear();
    EXPECT_EQ(countOf(layOut(document, pageSetup(Sheet::a4)), "Report by"), 0U);
}

TEST(Layout, setsColumnFiguresTwoInARowAndFullOnesAlone) {
    using core::FigureWidth;
    const core::Figures figures{
        {figureOf(1, FigureWidth::column, 6000, 4000), figureOf(2, FigureWidth::column, 6000, 4000),
         figureOf(3, FigureWidth::full, 6000, 4000), figureOf(4, FigureWidth::column, 4000, 6000)}};
    std::vector<Picture> all;
    for (const Page& page : layOut(documentOf({figures}), pageSetup(Sheet::a4)).pages) {
        for (const Picture& picture : marksOf<Picture>(page)) {
            all.push_back(picture);
        }
    }
    ASSERT_EQ(all.size(), 4U);
    EXPECT_DOUBLE_EQ(all[0].area.top(), all[1].area.top());
    EXPECT_NEAR(all[0].area.width(), mm(85), 0.01);
    EXPECT_NEAR(all[1].area.left() - all[0].area.right(), mm(4), 0.01);
    EXPECT_NEAR(all[2].area.width(), kBlockWidth, 0.01);
    EXPECT_NEAR(all[3].area.height() / all[3].area.width(), 1.5, 0.001);
    EXPECT_LE(all[3].area.width(), mm(85) + 0.01);
}

std::vector<Picture> picturesOf(const Pages& pages) {
    std::vector<Picture> all;
    for (const Page& page : pages.pages) {
        for (const Picture& picture : marksOf<Picture>(page)) {
            all.push_back(picture);
        }
    }
    return all;
}

TEST(Layout, setsTwoFiguresOfARowAtOneHeightToCompareThem) {
    using core::FigureWidth;
    const core::Figures figures{{figureOf(1, FigureWidth::column, 6000, 4000),
                                 figureOf(2, FigureWidth::column, 3000, 2300),
                                 figureOf(3, FigureWidth::column, 6000, 4000),
                                 figureOf(4, FigureWidth::column, 1000, 3000)}};
    const auto all = picturesOf(layOut(documentOf({figures}), pageSetup(Sheet::a4)));
    ASSERT_EQ(all.size(), 4U);
    EXPECT_NEAR(all[0].area.height(), all[1].area.height(), 0.01);
    EXPECT_NEAR(all[1].area.width() / all[1].area.height(), 3000.0 / 2300, 0.001);
    EXPECT_GT(all[3].area.height(), all[2].area.height()) << "not at any price";
}

// A block of two rows shows one thing, a facsimile and the detail of its statement: whatever stands
// before it, both are on one page.
TEST(Layout, doesNotPartTwoRowsThatShowOneThing) {
    using core::FigureWidth;
    const core::Figures one{
        {figureOf(1, FigureWidth::full, 3000, 2300), figureOf(2, FigureWidth::full, 3000, 1050)}};
    for (std::size_t lines = 0; lines < 60; lines += 3) {
        std::vector<core::Block> blocks;
        for (std::size_t i = 0; i < lines; ++i) {
            blocks.emplace_back(core::Statement{"A line of words"});
        }
        blocks.emplace_back(one);
        std::vector<std::size_t> pagesWithPictures;
        const Pages pages = layOut(documentOf(blocks), pageSetup(Sheet::a4));
        for (std::size_t page = 0; page < pages.pages.size(); ++page) {
            if (!marksOf<Picture>(pages.pages[page]).empty()) {
                pagesWithPictures.push_back(page);
            }
        }
        EXPECT_EQ(pagesWithPictures.size(), 1U) << lines;
    }
}

// Two upright pictures, one below the other, need a page and a little more at their full height.
TEST(Layout, setsPhotographsALittleSmallerWhereThatSparesAPage) {
    using core::FigureWidth;
    std::vector<core::Block> pairs;
    for (int i = 0; i < 4; ++i) {
        pairs.emplace_back(core::Figures{{figureOf(2 * i + 1, FigureWidth::column, 4000, 6000),
                                          figureOf(2 * i + 2, FigureWidth::column, 4000, 6000)}});
    }
    const Pages pages = layOut(documentOf(pairs), pageSetup(Sheet::a4));
    const auto all = picturesOf(pages);
    ASSERT_EQ(all.size(), 8U);
    const double full = printedSize(figureOf(1, FigureWidth::column, 4000, 6000)).height();
    for (const Picture& picture : all) {
        EXPECT_LE(picture.area.height(), full + 0.01);
        EXPECT_GE(picture.area.height(), full * 0.75);
        EXPECT_NEAR(picture.area.height(), all.front().area.height(), 0.01) << "all alike";
    }
    const Pages one = layOut(documentOf({pairs.front()}), pageSetup(Sheet::a4));
    EXPECT_NEAR(picturesOf(one).front().area.height(), full, 0.01)
        << "and not where it spares none";
}

TEST(Layout, printsAPhotographOfUnknownSizeNoLargerThanItsPlace) {
    const QSizeF size = printedSize(figureOf(1, core::FigureWidth::column, 0, 0));
    EXPECT_NEAR(size.width(), mm(85), 0.01);
    EXPECT_GT(size.height(), 0);
}

TEST(Layout, strikesEveryLineOfAStruckRow) {
    core::Table table{{{"Step", 1}},
                      {{{plainRun("said twice, by mistake, on the same day, in the "
                                  "same words, by the same person, at the same "
                                  "bench, and so struck out of what is said here")}}}};
    const auto rulesOf = [](const core::Table& one) {
        return marksOf<Rule>(layOut(documentOf({one}), pageSetup(Sheet::a4)).pages[0]).size();
    };
    const std::size_t plain = rulesOf(table);
    table.rows[0].struck = true;
    EXPECT_EQ(rulesOf(table), plain + 2); // two lines of text
}

TEST(Layout, namesEverySectionWithItsPlace) {
    const core::Document document = sampleDocument();
    const Pages pages = layOut(document, pageSetup(Sheet::a4));
    ASSERT_EQ(pages.entries.size(), document.sections.size());
    for (std::size_t i = 0; i < pages.entries.size(); ++i) {
        const Entry& entry = pages.entries[i];
        EXPECT_EQ(entry.title.toStdString(), document.sections[i].title);
        const auto lines = marksOf<TextLine>(pages.pages[entry.page]);
        const bool stands = std::any_of(lines.begin(), lines.end(), [&](const TextLine& line) {
            return entry.title.startsWith(line.text.split(u' ').front()) &&
                   line.at.y() > entry.top && line.at.y() < entry.top + 30;
        });
        EXPECT_TRUE(stands) << document.sections[i].title;
    }
}

TEST(Layout, bearsADocumentWithNothingInIt) {
    const Pages pages = layOut(core::Document{}, pageSetup(Sheet::a4));
    EXPECT_EQ(pages.pages.size(), 1U);
}

TEST(TableColumns, sharesTheWidthByWeightAndRaisesWhatIsTooNarrow) {
    const std::vector<double> even = shareWidth({1, 3}, {10, 10}, 400);
    EXPECT_EQ(even, (std::vector<double>{100, 300}));
    const std::vector<double> raised = shareWidth({1, 3}, {150, 10}, 400);
    EXPECT_DOUBLE_EQ(raised[0], 150);
    EXPECT_DOUBLE_EQ(raised[1], 250);
    for (const std::vector<double>& least :
         {std::vector<double>{50, 500}, {300, 300}, {0, 0}, {399, 1}}) {
        const std::vector<double> widths = shareWidth({2, 1}, least, 400);
        EXPECT_NEAR(std::accumulate(widths.begin(), widths.end(), 0.0), 400, 0.001);
    }
}

} // namespace
} // namespace headcap::app::print
