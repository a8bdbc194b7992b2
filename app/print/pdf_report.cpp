#include "app/print/pdf_report.h"

#include <utility>

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QStorageInfo>

#include "app/print/layout/layout.h"
#include "app/print/paint.h"
#include "app/print/pdf_finish.h"
#include "app/print/sync_folder.h"

namespace headcap::app::print {

namespace {

using Code = PdfError::Code;

constexpr int kResolution = 1200;
constexpr double kPictureDpi = 300;

// Bytes for a picture: 40 of 85 × 60 mm come to 13.5 MB, 40 of full width to 38 MB.
qint64 bytesFor(QSize pixels) {
    const double count = static_cast<double>(pixels.width()) * pixels.height();
    return static_cast<qint64>(130'000 + 0.29 * count);
}

// Reads and encodes each photograph as it is drawn; the page gets a small picture in its place,
// which the second pass exchanges.
class PdfPictures {
public:
    explicit PdfPictures(const PhotoLookup& photos) : m_photos(photos) {}

    void paint(QPainter& painter, const Picture& picture) {
        const QString path = m_photos ? m_photos(picture.photograph) : QString();
        const auto image = readPhoto(path, pixelsOf(picture, kPictureDpi));
        if (!image) {
            absent.push_back({picture.photograph, picture.figure, image.error()});
            paintAbsence(painter, picture, sentence(image.error()));
            return;
        }
        encoded.push_back({encodeJpeg(*image, bytesFor(image->size())), image->size()});
        // Of few pixels, each its own image to Qt.
        QImage stand(2, 2, QImage::Format_RGB32);
        stand.fill(static_cast<uint>(encoded.size()));
        paintPhoto(painter, areaOf(picture, image->size()), stand);
    }

    std::vector<EncodedPicture> encoded;
    std::vector<AbsentPhoto> absent;

private:
    const PhotoLookup& m_photos;
};

QPageLayout pageLayoutOf(Sheet sheet) {
    const QPageSize size(sheet == Sheet::a4 ? QPageSize::A4 : QPageSize::Letter);
    QPageLayout layout(size, QPageLayout::Portrait, {0, 0, 0, 0}, QPageLayout::Point);
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

// The pages as Qt writes them, photographs apart; nothing where it was stopped.
std::optional<QByteArray> drawPages(const Pages& pages, const PdfOptions& options,
                                    PdfPictures& pictures) {
    QByteArray raw;
    QBuffer buffer(&raw);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(kResolution);
    writer.setPageLayout(pageLayoutOf(options.sheet));
    QPainter painter(&writer);
    painter.scale(kResolution / 72.0, kResolution / 72.0);
    const int count = static_cast<int>(pages.pages.size());
    for (int i = 0; i < count; ++i) {
        if (i > 0) {
            writer.newPage();
        }
        paintPage(
            painter, pages.pages[static_cast<std::size_t>(i)],
            [&pictures](QPainter& on, const Picture& picture) { pictures.paint(on, picture); });
        if (options.progress && !options.progress(i + 1, count)) {
            return std::nullopt;
        }
    }
    painter.end();
    return raw;
}

PdfFacts factsOf(const core::Document& document, const Pages& pages, const PdfOptions& options) {
    PdfFacts facts;
    facts.title =
        QStringLiteral("%1 %2: %3")
            .arg(QString::fromStdString(document.title), QString::fromStdString(document.jobNumber),
                 QString::fromStdString(document.subtitle));
    facts.subject = QString::fromStdString(document.subtitle);
    facts.author = QString::fromStdString(document.author);
    facts.language = QString::fromStdString(document.language);
    facts.madeAt = options.madeAt.value_or(core::Instant(std::chrono::sys_days(document.date)));
    facts.pageHeight = pages.size.height();
    facts.entries = pages.entries;
    return facts;
}

PdfError errorOf(const QString& path, const QString& detail) {
    const QFileInfo folder(QFileInfo(path).absolutePath());
    const QStorageInfo storage(folder.absoluteFilePath());
    constexpr qint64 kNearlyNothing = 64 * 1024;
    if (!folder.isDir()) {
        return {Code::folderMissing, path, detail};
    }
    if (storage.isValid() && storage.bytesAvailable() < kNearlyNothing) {
        return {Code::diskFull, path, detail};
    }
    return {folder.isWritable() ? Code::writeFailed : Code::notWritable, path, detail};
}

QString say(const char* text) {
    return QCoreApplication::translate("PdfError", text);
}

} // namespace

QString sentence(const PdfError& error) {
    const QString path = QDir::toNativeSeparators(error.path);
    switch (error.code) {
    case Code::folderMissing:
        return say(QT_TRANSLATE_NOOP("PdfError", "%1 was not written: there is no such folder."))
            .arg(path);
    case Code::notWritable:
        return say(QT_TRANSLATE_NOOP("PdfError", "%1 was not written: its folder is read-only."))
            .arg(path);
    case Code::diskFull:
        return say(QT_TRANSLATE_NOOP("PdfError", "%1 was not written: the disk is full."))
            .arg(path);
    case Code::writeFailed:
        return say(QT_TRANSLATE_NOOP("PdfError", "%1 was not written: %2")).arg(path, error.detail);
    case Code::stopped:
        return say(QT_TRANSLATE_NOOP("PdfError", "%1 was not written: it was stopped.")).arg(path);
    }
    return {};
}

tl::expected<PdfOutcome, PdfError> writePdf(const core::Document& document,
                                            const PhotoLookup& photos, const QString& path,
                                            const PdfOptions& options) {
    // Opened first: where it can't be written, no time is lost on drawing.
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return tl::unexpected(errorOf(path, file.errorString()));
    }
    const Pages pages = layOut(document, pageSetup(options.sheet));
    PdfPictures pictures(photos);
    const std::optional<QByteArray> raw = drawPages(pages, options, pictures);
    if (!raw.has_value()) {
        return tl::unexpected(PdfError{Code::stopped, path});
    }
    PdfFacts facts = factsOf(document, pages, options);
    facts.pictures = std::move(pictures.encoded);
    const auto written = finishPdf(*raw, facts, file);
    if (!written) {
        return tl::unexpected(errorOf(path, written.error()));
    }
    if (!file.commit()) { // syncs, then renames
        return tl::unexpected(errorOf(path, file.errorString()));
    }
    syncFolder(QFileInfo(path).absolutePath());
    return PdfOutcome{static_cast<int>(pages.pages.size()), written->bytes, written->digest,
                      std::move(pictures.absent), pages.signsWithoutFace};
}

} // namespace headcap::app::print
