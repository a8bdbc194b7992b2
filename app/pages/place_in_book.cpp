#include "app/pages/place_in_book.h"

#include <QCoreApplication>

#include "app/session/words.h"
#include "core/collation/job_places.h"

namespace headcap::app {

QString placeWords(const std::optional<core::PlaceReading>& reading) {
    if (!reading) {
        return {};
    }
    const QString said = fromCore(reading->text);
    return reading->isThere
               ? said
               : QCoreApplication::translate("Place", "Kept as typed; but %1.").arg(said);
}

std::function<QString(const QString&)> placeInBook(std::function<const core::JobFile*()> file) {
    return [file = std::move(file)](const QString& text) {
        const core::JobFile* now = file();
        return now == nullptr
                   ? QString{}
                   : placeWords(readPlace(core::booksOf(*now), {}, toCore(text.trimmed())));
    };
}

std::function<QString(const QString&)> placeInBook(const std::optional<core::JobFile>& file) {
    return placeInBook([&file] { return file ? &*file : nullptr; });
}

} // namespace headcap::app
