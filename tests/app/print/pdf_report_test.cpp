#include "app/print/pdf_report.h"

#include <sys/resource.h>
#include <unistd.h>

#include <csignal>

#include <QDir>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "tests/app/print/sample_document.h"
#include "tests/app/print/sample_photos.h"

namespace headcap::app::print {
namespace {

using namespace test;

#define SKIP_WITHOUT(result, name)                                                                 \
    if (!(result).isThere) {                                                                       \
        GTEST_SKIP() << name << " is not installed";                                               \
    }

class PdfReport : public ::testing::Test {
protected:
    PdfReport() { writeFile(photoPath(), jpegOf(noisyPhotograph(1'800, 1'200))); }

    QString at(const QString& name) const { return m_folder.filePath(name); }
    QString photoPath() const { return at(QStringLiteral("photo.jpg")); }
    PhotoLookup lookup() const {
        return [path = photoPath()](const core::Digest&) { return path; };
    }
    PdfOutcome write(const core::Document& document, const PdfOptions& options = {}) {
        const auto outcome = writePdf(document, lookup(), pdfPath(), options);
        EXPECT_TRUE(outcome.has_value());
        return outcome.value_or(PdfOutcome{});
    }
    QString pdfPath() const { return at(QStringLiteral("report.pdf")); }
    // As a person would copy it: words with single spaces between them.
    ProgramResult text() const {
        ProgramResult result = runProgram(QStringLiteral("pdftotext"),
                                          {QStringLiteral("-raw"), pdfPath(), QStringLiteral("-")});
        result.output = QString::fromUtf8(result.output).simplified().toUtf8();
        return result;
    }

    QTemporaryDir m_folder;
};

TEST_F(PdfReport, isSoundAndSaysWhatItIs) {
    const PdfOutcome outcome = write(sampleDocument());
    EXPECT_EQ(outcome.bytes, QFileInfo(pdfPath()).size());
    EXPECT_EQ(outcome.digest, core::sha256(readFile(pdfPath()).toStdString()));
    const ProgramResult check =
        runProgram(QStringLiteral("qpdf"), {QStringLiteral("--check"), pdfPath()});
    SKIP_WITHOUT(check, "qpdf");
    EXPECT_EQ(check.status, 0) << check.output.toStdString();
    const ProgramResult info = runProgram(QStringLiteral("pdfinfo"), {pdfPath()});
    SKIP_WITHOUT(info, "pdfinfo");
    for (const char* line :
         {"Treatment report 2031-014: Josias Harrowgate, A Booke of Grafting, 1612", "Maud Orrin",
          "Headcap", "28", "(A4)", "PDF version:     1.4"}) {
        EXPECT_TRUE(info.output.contains(line)) << line << "\n" << info.output.toStdString();
    }
}

TEST_F(PdfReport, isOfLetterSizeWhereThatIsAskedFor) {
    PdfOptions options;
    options.sheet = Sheet::letter;
    write(sampleDocument(), options);
    const ProgramResult info = runProgram(QStringLiteral("pdfinfo"), {pdfPath()});
    SKIP_WITHOUT(info, "pdfinfo");
    EXPECT_TRUE(info.output.contains("612 x 792")) << info.output.toStdString();
}

TEST_F(PdfReport, embedsEveryFaceWithItsText) {
    write(sampleDocument());
    const ProgramResult fonts = runProgram(QStringLiteral("pdffonts"), {pdfPath()});
    SKIP_WITHOUT(fonts, "pdffonts");
    const QStringList lines = QString::fromUtf8(fonts.output).trimmed().split(u'\n');
    ASSERT_GT(lines.size(), 4);
    for (const QString& line : lines.mid(2)) {
        // embedded, a subset, with its map to Unicode
        EXPECT_TRUE(line.contains(QStringLiteral(" yes yes yes "))) << line.toStdString();
    }
}

TEST_F(PdfReport, letsEveryTextOfTheDocumentBeFoundAndCopied) {
    const core::Document document = sampleDocument();
    write(document);
    const ProgramResult result = text();
    SKIP_WITHOUT(result, "pdftotext");
    const QString all = QString::fromUtf8(result.output);
    const QStringList words = all.split(u' ');
    const QSet<QString> known(words.begin(), words.end());
    for (const std::string& one : textsOf(document)) {
        const QString wanted = QString::fromStdString(one).simplified();
        if (wanted.contains(QStringLiteral("ספר")) || wanted.contains(QStringLiteral("2Ax"))) {
            // Right-to-left and raised letters break its line there: word for word instead.
            continue;
        }
        EXPECT_TRUE(all.contains(wanted)) << one;
        for (const QString& word : wanted.split(u' ')) {
            EXPECT_TRUE(known.contains(word)) << word.toStdString();
        }
    }
    for (const char* word : {"softened", "officinal", "afflicted", "fly-leaf", "ſpecial", "π²",
                             "A–K⁸", "χ1;", "¶", "†"}) {
        EXPECT_TRUE(known.contains(QString::fromUtf8(word))) << word;
    }
}

TEST_F(PdfReport, isReadInOrderAndKeepsHebrewWhole) {
    write(sampleDocument());
    const ProgramResult result =
        runProgram(QStringLiteral("pdftotext"), {pdfPath(), QStringLiteral("-")});
    SKIP_WITHOUT(result, "pdftotext");
    EXPECT_TRUE(result.output.contains("ספר"));
}

TEST_F(PdfReport, isPdfAWithoutTransparency) {
    write(sampleDocument());
    const QByteArray bytes = readFile(pdfPath());
    EXPECT_TRUE(bytes.startsWith("%PDF-1.4"));
    EXPECT_TRUE(bytes.contains("<pdfaid:part>1</pdfaid:part>"));
    EXPECT_TRUE(bytes.contains("<pdfaid:conformance>B</pdfaid:conformance>"));
    EXPECT_TRUE(bytes.contains("/OutputIntents"));
    const ProgramResult plain = runProgram(
        QStringLiteral("qpdf"), {QStringLiteral("--qdf"), pdfPath(), QStringLiteral("-")});
    SKIP_WITHOUT(plain, "qpdf");
    // ISO 19005-1, 6.4: no soft masks, no blend modes, no alpha but 1.
    const QString objects = QString::fromLatin1(plain.output);
    EXPECT_FALSE(objects.contains(QRegularExpression(QStringLiteral("/SMask (?!/None)"))));
    EXPECT_FALSE(objects.contains(QRegularExpression(QStringLiteral("/BM (?!/Normal)"))));
    EXPECT_FALSE(objects.contains(QRegularExpression(QStringLiteral("/(ca|CA) (?!1(\\.0+)?\\s)"))));
}

// A document of one text in every place that takes one.
core::Document filledWith(const std::string& text) {
    core::Document document{.title = "Treatment report", .jobNumber = "2031-014"};
    document.date = core::Day{std::chrono::year{2031}, std::chrono::March, std::chrono::day{6}};
    document.subtitle = text;
    document.author = text;
    document.letterhead = {text, {text}};
    const auto runs = plainRun(text);
    core::Table table{{{text}, {"Second"}}, {{{runs, runs}}}};
    document.sections.push_back(
        {"book",
         text,
         1,
         {core::Paragraph{runs}, core::Statement{text}, core::Caution{text, text},
          core::Facts{{{text, runs}}}, table, core::List{{{runs}}}, core::Subheading{text}}});
    return document;
}

TEST_F(PdfReport, setsMarkupAsTheTextItIs) {
    const std::string markup = "<b>x</b> &amp; <i>y</i> %1 <script>";
    write(filledWith(markup));
    const ProgramResult result = text();
    SKIP_WITHOUT(result, "pdftotext");
    EXPECT_GE(result.output.count(markup.c_str()), 8) << result.output.toStdString();
}

TEST_F(PdfReport, isSoundWhateverIsWritten) {
    const std::string longText = [] {
        std::string all;
        while (all.size() < 60'000) {
            all += "paste, tissue, ſewn and “put” down ";
        }
        return all;
    }();
    for (const std::string& any :
         {std::string("\x01\x02\x1b[31m\x7f\ttab\a"), std::string("a\0b", 3),
          std::string("line\nline\r\nline\u2028end"), std::string("\u202eright to left\u202c שלום"),
          std::string("(un)balanced ) \\ ( <</Type"), std::string(2'000, 'W'), longText}) {
        write(filledWith(any));
        const ProgramResult check =
            runProgram(QStringLiteral("qpdf"), {QStringLiteral("--check"), pdfPath()});
        SKIP_WITHOUT(check, "qpdf");
        EXPECT_EQ(check.status, 0) << any.substr(0, 40) << check.output.toStdString();
    }
}

TEST_F(PdfReport, hasABookmarkForEverySectionAndALanguage) {
    const core::Document document = sampleDocument();
    write(document);
    const ProgramResult plain = runProgram(
        QStringLiteral("qpdf"), {QStringLiteral("--qdf"), pdfPath(), QStringLiteral("-")});
    SKIP_WITHOUT(plain, "qpdf");
    EXPECT_EQ(plain.output.count("/Dest ["), static_cast<qsizetype>(document.sections.size()));
    EXPECT_TRUE(plain.output.contains("/Lang (en-GB)"));
    EXPECT_TRUE(plain.output.contains("/DisplayDocTitle true"));
}

TEST_F(PdfReport, isTheSameToTheByteForTheSameDocument) {
    const PdfOutcome first = write(sampleDocument());
    const QByteArray bytes = readFile(pdfPath());
    const PdfOutcome second = write(sampleDocument());
    EXPECT_EQ(first.digest, second.digest);
    EXPECT_EQ(bytes, readFile(pdfPath()));
    PdfOptions later;
    later.madeAt = core::Instant(std::chrono::hours(24 * 365 * 61));
    EXPECT_NE(write(sampleDocument(), later).digest, first.digest);
}

TEST_F(PdfReport, printsPhotographsAtThreeHundredDots) {
    writeFile(photoPath(), jpegOf(noisyPhotograph(3'000, 2'000)));
    write(documentOf({core::Figures{{figureOf(1, core::FigureWidth::column, 3'000, 2'000),
                                     figureOf(2, core::FigureWidth::full, 3'000, 2'000)}}}));
    const ProgramResult images =
        runProgram(QStringLiteral("pdfimages"), {QStringLiteral("-list"), pdfPath()});
    SKIP_WITHOUT(images, "pdfimages");
    EXPECT_EQ(images.output.count(" 300   300 "), 2) << images.output.toStdString();
    EXPECT_EQ(images.output.count(" jpeg "), 2);
}

TEST_F(PdfReport, showsABoxForAPhotographThatIsNotThereAndReportsIt) {
    const core::Figures figures{{figureOf(1, core::FigureWidth::column, 1'800, 1'200),
                                 figureOf(2, core::FigureWidth::column, 1'800, 1'200)}};
    const core::Digest missing = figures.figures[0].photograph;
    const auto outcome = writePdf(
        documentOf({figures}),
        [&](const core::Digest& digest) { return digest == missing ? QString() : photoPath(); },
        pdfPath());
    ASSERT_TRUE(outcome.has_value());
    ASSERT_EQ(outcome->absent.size(), 1U);
    EXPECT_EQ(outcome->absent[0].photograph, missing);
    EXPECT_EQ(outcome->absent[0].figure, 1);
    EXPECT_EQ(outcome->absent[0].fault, PhotoFault::missing);
    const ProgramResult result = text();
    SKIP_WITHOUT(result, "pdftotext");
    EXPECT_TRUE(result.output.contains("The file of this photograph is missing."));
}

TEST_F(PdfReport, reportsTheSignsNoFaceHas) {
    const PdfOutcome outcome =
        write(documentOf({core::Paragraph{plainRun("a\U0010FFFDb and again \U0010FFFD")}}));
    EXPECT_EQ(outcome.signsWithoutFace.toUcs4(), QList<uint>{0x10FFFDU});
}

TEST_F(PdfReport, leavesTheOldFileWhereItIsStopped) {
    writeFile(pdfPath(), "the old report");
    PdfOptions options;
    options.progress = [](int done, int) { return done < 2; };
    const auto outcome = writePdf(sampleDocument(), lookup(), pdfPath(), options);
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().code, PdfError::Code::stopped);
    EXPECT_EQ(readFile(pdfPath()), "the old report");
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files).size(), 2); // and the photograph
}

TEST_F(PdfReport, leavesTheOldFileWhereTheDiskTakesNoMore) {
    writeFile(pdfPath(), "the old report");
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit little{20'000, before.rlim_max};
    setrlimit(RLIMIT_FSIZE, &little); // a write beyond fails, as on a full disk
    const auto outcome = writePdf(sampleDocument(), lookup(), pdfPath());
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, handler);
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().code, PdfError::Code::writeFailed);
    EXPECT_TRUE(sentence(outcome.error()).contains(pdfPath()));
    EXPECT_EQ(readFile(pdfPath()), "the old report");
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files).size(), 2);
}

TEST_F(PdfReport, saysWhereThereIsNoFolder) {
    const auto outcome = writePdf(sampleDocument(), lookup(), at(QStringLiteral("none/r.pdf")));
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().code, PdfError::Code::folderMissing);
}

TEST_F(PdfReport, saysWhereTheFolderIsReadOnly) {
    if (geteuid() == 0) {
        GTEST_SKIP() << "nothing is read-only to root";
    }
    QFile::setPermissions(m_folder.path(), QFile::ReadOwner | QFile::ExeOwner);
    const auto outcome = writePdf(sampleDocument(), lookup(), pdfPath());
    QFile::setPermissions(m_folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().code, PdfError::Code::notWritable);
}

// The limits promised in pdf_report.h: forty photographs of 24 megapixels with camera noise.
class FortyPhotographs : public PdfReport,
                         public ::testing::WithParamInterface<core::FigureWidth> {};
INSTANTIATE_TEST_SUITE_P(Widths, FortyPhotographs,
                         ::testing::Values(core::FigureWidth::column, core::FigureWidth::full));

TEST_P(FortyPhotographs, stayWithinTheirSize) {
    writeFile(photoPath(), jpegOf(noisyPhotograph(6'000, 4'000), 95));
    ASSERT_GT(QFileInfo(photoPath()).size(), 12'000'000); // as large as a camera's own
    core::Figures figures;
    for (int i = 1; i <= 40; ++i) {
        figures.figures.push_back(figureOf(i, GetParam(), 6'000, 4'000));
        figures.figures.back().caption = "A photograph";
    }
    const PdfOutcome outcome = write(documentOf({figures}));
    const bool isColumn = GetParam() == core::FigureWidth::column;
    EXPECT_LT(outcome.bytes, isColumn ? 15'000'000 : 40'000'000);
    EXPECT_GT(outcome.bytes, isColumn ? 2'000'000 : 8'000'000); // not starved of their detail
    RecordProperty("bytes", static_cast<int>(outcome.bytes));
}

} // namespace
} // namespace headcap::app::print
