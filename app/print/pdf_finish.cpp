#include "app/print/pdf_finish.h"

#include <exception>
#include <span>
#include <stdexcept>

#include "app/print/qpdf_pass.h"
#include "app/print/xmp.h"

namespace headcap::app::print {

namespace {

QpdfFacts factsForPass(const PdfFacts& facts) {
    QpdfFacts pass;
    pass.title = facts.title.toStdString();
    pass.subject = facts.subject.toStdString();
    pass.author = facts.author.toStdString();
    pass.creator = kPdfCreator;
    pass.producer = kPdfProducer;
    pass.language = facts.language.toStdString();
    pass.date = pdfDate(facts.madeAt);
    pass.xmp = xmpPacket(facts);
    pass.pageHeight = facts.pageHeight;
    for (const Entry& entry : facts.entries) {
        pass.entries.push_back({entry.title.toStdString(), entry.level, entry.page, entry.top});
    }
    for (const EncodedPicture& picture : facts.pictures) {
        pass.pictures.push_back({reinterpret_cast<const unsigned char*>(picture.jpeg.constData()),
                                 static_cast<std::size_t>(picture.jpeg.size()),
                                 picture.size.width(), picture.size.height()});
    }
    return pass;
}

} // namespace

tl::expected<PdfWritten, QString> finishPdf(const QByteArray& raw, const PdfFacts& facts,
                                            QIODevice& out) {
    PdfWritten written;
    core::Sha256 hash;
    const auto write = [&](const unsigned char* data, std::size_t length) {
        const auto count = static_cast<qint64>(length);
        if (out.write(reinterpret_cast<const char*>(data), count) != count) {
            throw std::runtime_error(out.errorString().toStdString());
        }
        hash.add(std::as_bytes(std::span(data, length)));
        written.bytes += count;
    };
    try {
        runQpdfPass(raw.constData(), static_cast<std::size_t>(raw.size()), factsForPass(facts),
                    write);
    } catch (const std::exception& error) {
        return tl::unexpected(QString::fromUtf8(error.what()));
    }
    written.digest = hash.finish();
    return written;
}

} // namespace headcap::app::print
