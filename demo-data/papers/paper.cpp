#include "demo-data/papers/paper.h"

#include <cstring>

#include <fmt/format.h>

namespace headcap::demo {
namespace {

std::string escaped(std::string_view line) {
    std::string text;
    for (const char c : line) {
        if (c == '(' || c == ')' || c == '\\') {
            text += '\\';
        }
        text += c;
    }
    return text;
}

std::string pageContent(std::string_view text) {
    std::string content = "BT /F1 11 Tf 72 760 Td 15 TL\n";
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        content += fmt::format("({}) Tj T*\n", escaped(text.substr(0, end)));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return content + "ET\n";
}

} // namespace

std::vector<std::byte> textFile(std::string_view text) {
    std::vector<std::byte> bytes(text.size());
    std::memcpy(bytes.data(), text.data(), text.size());
    return bytes;
}

std::vector<std::byte> letterPdf(std::string_view text) {
    const std::string content = pageContent(text);
    const std::vector<std::string> objects{
        "<< /Type /Catalog /Pages 2 0 R >>", "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 5 0 R "
        "/Resources << /Font << /F1 4 0 R >> >> >>",
        "<< /Type /Font /Subtype /Type1 /BaseFont /Times-Roman /Encoding /WinAnsiEncoding >>",
        fmt::format("<< /Length {} >>\nstream\n{}endstream", content.size(), content)};
    std::string file = "%PDF-1.4\n";
    std::string table = fmt::format("xref\n0 {}\n0000000000 65535 f \n", objects.size() + 1);
    for (std::size_t i = 0; i < objects.size(); ++i) {
        table += fmt::format("{:010} 00000 n \n", file.size());
        file += fmt::format("{} 0 obj\n{}\nendobj\n", i + 1, objects[i]);
    }
    file += fmt::format("{}trailer\n<< /Size {} /Root 1 0 R >>\nstartxref\n{}\n%%EOF\n", table,
                        objects.size() + 1, file.size());
    return textFile(file);
}

} // namespace headcap::demo
