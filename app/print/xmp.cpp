#include "app/print/xmp.h"

#include <fmt/format.h>

namespace headcap::app::print {

namespace {

std::string escaped(const QString& text) {
    return text.toHtmlEscaped().toStdString();
}

// To the second, as the information dictionary has it.
std::string xmpDate(core::Instant instant) {
    return core::isoText(instant).substr(0, 19) + "Z";
}

} // namespace

std::string pdfDate(core::Instant instant) {
    std::string digits;
    for (const char sign : core::isoText(instant).substr(0, 19)) {
        if (sign >= '0' && sign <= '9') {
            digits += sign;
        }
    }
    return "D:" + digits + "Z";
}

std::string xmpPacket(const PdfFacts& facts) {
    constexpr const char* kPacket =
        R"(<?xpacket begin="{bom}" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
<dc:description><rdf:Alt><rdf:li xml:lang="x-default">{subject}</rdf:li></rdf:Alt></dc:description>
<dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>
<dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
</rdf:Description>
<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
<xmp:CreatorTool>{creator}</xmp:CreatorTool>
<xmp:CreateDate>{date}</xmp:CreateDate>
<xmp:ModifyDate>{date}</xmp:ModifyDate>
</rdf:Description>
<rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
<pdf:Producer>{producer}</pdf:Producer>
</rdf:Description>
<rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
<pdfaid:part>1</pdfaid:part>
<pdfaid:conformance>B</pdfaid:conformance>
</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="w"?>)";
    using fmt::arg;
    return fmt::format(kPacket, arg("bom", "\xEF\xBB\xBF"), arg("title", escaped(facts.title)),
                       arg("subject", escaped(facts.subject)), arg("author", escaped(facts.author)),
                       arg("language", escaped(facts.language)), arg("creator", kPdfCreator),
                       arg("producer", kPdfProducer), arg("date", xmpDate(facts.madeAt)));
}

} // namespace headcap::app::print
