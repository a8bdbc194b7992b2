#include "app/print/qpdf_pass.h"

#include <map>
#include <stdexcept>

#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

namespace headcap::app::print {

namespace {

using Object = QPDFObjectHandle;

Object text(const std::string& utf8) {
    return Object::newUnicodeString(utf8);
}

class OutPipeline final : public Pipeline {
public:
    explicit OutPipeline(const QpdfOut& out) : Pipeline("report", nullptr), m_out(out) {}

    void write(unsigned char const* data, size_t length) override { m_out(data, length); }
    void finish() override {}

private:
    const QpdfOut& m_out;
};

void setInformation(QPDF& pdf, const QpdfFacts& facts) {
    Object info = pdf.makeIndirectObject(Object::newDictionary());
    info.replaceKey("/Title", text(facts.title));
    info.replaceKey("/Subject", text(facts.subject));
    info.replaceKey("/Author", text(facts.author));
    info.replaceKey("/Creator", text(facts.creator));
    info.replaceKey("/Producer", text(facts.producer));
    info.replaceKey("/CreationDate", Object::newString(facts.date));
    info.replaceKey("/ModDate", Object::newString(facts.date));
    pdf.getTrailer().replaceKey("/Info", info);
    pdf.getTrailer().removeKey("/ID"); // Qt's is by chance, and would be kept

    Object metadata = Object::newStream(&pdf, facts.xmp);
    metadata.getDict().replaceKey("/Type", Object::newName("/Metadata"));
    metadata.getDict().replaceKey("/Subtype", Object::newName("/XML"));

    Object root = pdf.getRoot();
    root.replaceKey("/Metadata", metadata);
    root.replaceKey("/Lang", text(facts.language));
    Object preferences = Object::newDictionary();
    preferences.replaceKey("/DisplayDocTitle", Object::newBool(true));
    root.replaceKey("/ViewerPreferences", preferences);
}

// The bookmarks: a tree linked by hand, as the format wants it.
class Outline {
public:
    Outline(QPDF& pdf, double pageHeight)
        : m_pdf(pdf), m_pageHeight(pageHeight), m_pages(QPDFPageDocumentHelper(pdf).getAllPages()),
          m_root(pdf.makeIndirectObject(Object::newDictionary())), m_parent(m_root) {
        m_root.replaceKey("/Type", Object::newName("/Outlines"));
    }

    void add(const QpdfEntry& entry) {
        Object item = m_pdf.makeIndirectObject(Object::newDictionary());
        item.replaceKey("/Title", text(entry.title));
        item.replaceKey("/Dest", destination(entry));
        const bool isMain = entry.level <= 1 || m_parent.isNull();
        if (isMain) {
            link(m_root, item);
            m_parent = item;
        } else {
            link(m_parent, item);
        }
    }

    [[nodiscard]] Object root() const { return m_root; }

private:
    [[nodiscard]] Object destination(const QpdfEntry& entry) const {
        Object place = Object::newArray();
        place.appendItem(m_pages.at(entry.page).getObjectHandle());
        place.appendItem(Object::newName("/XYZ"));
        place.appendItem(Object::newInteger(0));
        place.appendItem(Object::newReal(m_pageHeight - entry.top + 7, 2));
        place.appendItem(Object::newNull());
        return place;
    }

    static void link(Object parent, Object item) {
        item.replaceKey("/Parent", parent);
        if (parent.hasKey("/Last")) {
            Object before = parent.getKey("/Last");
            before.replaceKey("/Next", item);
            item.replaceKey("/Prev", before);
        } else {
            parent.replaceKey("/First", item);
        }
        parent.replaceKey("/Last", item);
        countOneMore(parent);
    }

    // All are open: each ancestor counts what shows below it.
    static void countOneMore(Object parent) {
        for (; parent.isDictionary(); parent = parent.getKey("/Parent")) {
            Object count = parent.getKey("/Count");
            const long long before = count.isInteger() ? count.getIntValue() : 0;
            parent.replaceKey("/Count", Object::newInteger(before + 1));
        }
    }

    QPDF& m_pdf;
    double m_pageHeight;
    std::vector<QPDFPageObjectHelper> m_pages;
    Object m_root;
    Object m_parent;
};

void addOutline(QPDF& pdf, const QpdfFacts& facts) {
    if (facts.entries.empty()) {
        return;
    }
    Outline outline(pdf, facts.pageHeight);
    for (const QpdfEntry& entry : facts.entries) {
        outline.add(entry);
    }
    pdf.getRoot().replaceKey("/Outlines", outline.root());
}

// Qt numbers its objects as it draws: the n-th picture drawn is the n-th image object.
std::vector<Object> inOrder(QPDF& pdf, const std::string& subtype) {
    std::map<int, Object> found;
    for (Object object : pdf.getAllObjects()) {
        Object dictionary = object.isStream() ? object.getDict() : object;
        if (dictionary.isDictionary() && dictionary.getKey("/Subtype").isNameAndEquals(subtype)) {
            found.emplace(object.getObjectID(), object);
        }
    }
    std::vector<Object> ordered;
    for (const auto& [number, object] : found) {
        ordered.push_back(object);
    }
    return ordered;
}

// Six capitals before the name of a face say that only a part of it is embedded (ISO 32000-1,
// 9.6.4). Qt's differ from run to run and stand in one of the three places.
void nameFonts(QPDF& pdf) {
    constexpr int kLetters = 26;
    int number = 0;
    for (Object font : inOrder(pdf, "/Type0")) {
        Object descendant = font.getKey("/DescendantFonts").getArrayItem(0);
        Object descriptor = descendant.getKey("/FontDescriptor");
        const std::string before = descriptor.getKey("/FontName").getName();
        const auto plus = before.find('+');
        const std::string face = before.substr(plus == std::string::npos ? 1 : plus + 1);
        const char first = static_cast<char>('A' + number / kLetters % kLetters);
        const char second = static_cast<char>('A' + number % kLetters);
        ++number;
        const Object name = Object::newName(std::string("/HCAP") + first + second + "+" + face);
        font.replaceKey("/BaseFont", name);
        descendant.replaceKey("/BaseFont", name);
        descriptor.replaceKey("/FontName", name);
    }
}

void replacePictures(QPDF& pdf, const std::vector<QpdfPicture>& pictures) {
    const std::vector<Object> images = inOrder(pdf, "/Image");
    if (images.size() != pictures.size()) {
        throw std::logic_error("the pictures drawn and those in the file differ in number");
    }
    for (std::size_t i = 0; i < images.size(); ++i) {
        const QpdfPicture& picture = pictures[i];
        Object dictionary = Object::newDictionary();
        dictionary.replaceKey("/Type", Object::newName("/XObject"));
        dictionary.replaceKey("/Subtype", Object::newName("/Image"));
        dictionary.replaceKey("/Width", Object::newInteger(picture.width));
        dictionary.replaceKey("/Height", Object::newInteger(picture.height));
        dictionary.replaceKey("/ColorSpace", Object::newName("/DeviceRGB"));
        dictionary.replaceKey("/BitsPerComponent", Object::newInteger(8));
        Object image = images[i];
        image.replaceDict(dictionary);
        image.replaceStreamData(
            [&picture](Pipeline* pipeline) {
                pipeline->write(picture.jpeg, picture.bytes);
                pipeline->finish();
            },
            Object::newName("/DCTDecode"), Object::newNull());
    }
}

} // namespace

void runQpdfPass(const char* pdfData, std::size_t bytes, const QpdfFacts& facts,
                 const QpdfOut& out) {
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.processMemoryFile("report", pdfData, bytes);
    replacePictures(pdf, facts.pictures);
    nameFonts(pdf);
    setInformation(pdf, facts);
    addOutline(pdf, facts);
    OutPipeline pipeline(out);
    QPDFWriter writer(pdf);
    writer.setOutputPipeline(&pipeline);
    writer.setObjectStreamMode(qpdf_o_disable);
    writer.setNewlineBeforeEndstream(true);
    writer.setDeterministicID(true);
    writer.write();
}

} // namespace headcap::app::print
