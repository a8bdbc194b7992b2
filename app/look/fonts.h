// The faces: Noto Sans for the interface, Gentium Plus for headings, book titles and formulas.
// Both have tabular figures by default. Sizes are shares of the application's font, which is never
// under 10.5 pt and grows with the system's.
#pragma once

#include <future>

#include <QFont>
#include <QStringList>

namespace headcap::app {

enum class Face {
    body,
    strong,      // bold
    small,       // labels, hints, counts
    smallStrong, // what is open
    heading,     // italic, of a section
    formula,     // the text face, in running size
    slip,        // a book's title on a slip
    book,        // a book's title at the head
    title,       // of a page
    bench,       // the bench line and its log
    clock,       // read across the room
};

[[nodiscard]] QFont faceFont(Face face);

// In the order of fallback; Hebrew and Chinese by script, DejaVu Sans for signs no other has.
[[nodiscard]] QStringList interfaceFamilies();
[[nodiscard]] QStringList textFamilies();

// The interface's font at the system's size, or 10.5 pt where that is less, times the share the
// person has set.
[[nodiscard]] QFont interfaceFont(const QFont& system, double share);

// Reads which fonts the system has, beside whatever comes before the first words are drawn: it
// takes as long as all else that a first window of words takes. The result waits for its end.
[[nodiscard]] std::future<void> readFontsAhead();

} // namespace headcap::app
