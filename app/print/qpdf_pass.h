// What libqpdf does to a finished PDF. Apart from the rest of the program, and in C++17, since
// clang 14 can't read libqpdf's headers as C++20: only the standard library passes in and out.
// Texts are UTF-8, lengths points from the head of the page.
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace headcap::app::print {

struct QpdfEntry {
    std::string title;
    int level = 1;
    std::size_t page = 0;
    double top = 0;
};

struct QpdfPicture {
    const unsigned char* jpeg = nullptr; // of the caller
    std::size_t bytes = 0;
    int width = 0;
    int height = 0;
};

struct QpdfFacts {
    std::string title;
    std::string subject;
    std::string author;
    std::string creator;
    std::string producer;
    std::string language;
    std::string date; // as the information dictionary writes it
    std::string xmp;
    double pageHeight = 0;
    std::vector<QpdfEntry> entries;
    std::vector<QpdfPicture> pictures; // in the order they were drawn
};

using QpdfOut = std::function<void(const unsigned char*, std::size_t)>;

// Throws what libqpdf or `out` throws; all of it derives from std::exception.
void runQpdfPass(const char* pdfData, std::size_t bytes, const QpdfFacts& facts,
                 const QpdfOut& out);

} // namespace headcap::app::print
