// A report as a PDF/A-1b file. Photographs are printed at 300 dots to the inch and read one at a
// time; forty of 24 megapixels stay under 15 MB at half a page's width and 40 MB at full width.
// The file appears whole or not at all: it is written beside its place, synced, and renamed.
// Needs a QGuiApplication; works on any thread.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include <QString>

#include <tl/expected.hpp>

#include "app/print/layout/page_setup.h"
#include "app/print/photo_reader.h"
#include "core/report/document.h"

namespace headcap::app::print {

// Called after each page; false stops.
using PdfProgress = std::function<bool(int pagesDone, int pages)>;

struct PdfOptions {
    Sheet sheet = Sheet::a4;
    // When the file says it was made; by default the document's date. Nothing else in the file
    // depends on the time: the same document gives the same bytes.
    std::optional<core::Instant> madeAt{};
    PdfProgress progress{}; // where it stops, no file is left
};

// A photograph that stands in the report as a ruled box.
struct AbsentPhoto {
    core::Digest photograph;
    int figure = 0;
    PhotoFault fault = PhotoFault::missing;
};

struct PdfOutcome {
    int pages = 0;
    std::int64_t bytes = 0;
    core::Digest digest; // SHA-256 of the file
    std::vector<AbsentPhoto> absent{};
    QString signsWithoutFace{}; // shown as empty boxes: no installed face has them
};

struct PdfError {
    enum class Code { folderMissing, notWritable, diskFull, writeFailed, stopped };
    Code code = Code::writeFailed;
    QString path{};
    QString detail{}; // English, from below
};

[[nodiscard]] QString sentence(const PdfError& error);

[[nodiscard]] tl::expected<PdfOutcome, PdfError> writePdf(const core::Document& document,
                                                          const PhotoLookup& photos,
                                                          const QString& path,
                                                          const PdfOptions& options = {});

} // namespace headcap::app::print
