// The second pass over a PDF, with libqpdf: what Qt's writer can't say. Title, author, language,
// dates and bookmarks go in, each photograph's own JPEG takes the place of the small picture that
// kept it free, and the file's identifier is made from its content, so that the same report is the
// same file to the byte. Stays PDF/A-1b.
#pragma once

#include <cstdint>
#include <vector>

#include <QByteArray>
#include <QIODevice>
#include <QSize>
#include <QString>

#include <tl/expected.hpp>

#include "app/print/layout/marks.h"
#include "core/values/digest.h"
#include "core/values/time.h"

namespace headcap::app::print {

struct EncodedPicture {
    QByteArray jpeg;
    QSize size;
};

struct PdfFacts {
    QString title;
    QString subject;
    QString author;
    QString language;
    core::Instant madeAt;
    double pageHeight = 0; // points
    std::vector<Entry> entries;
    std::vector<EncodedPicture> pictures; // in the order they were drawn
};

struct PdfWritten {
    std::int64_t bytes = 0;
    core::Digest digest;
};

// Writes to an open device, or says in English what libqpdf or the device made of it.
[[nodiscard]] tl::expected<PdfWritten, QString> finishPdf(const QByteArray& raw,
                                                          const PdfFacts& facts, QIODevice& out);

} // namespace headcap::app::print
