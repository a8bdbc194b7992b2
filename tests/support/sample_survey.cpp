#include "tests/support/sample_survey.h"

#include <array>
#include <span>

#include <QBuffer>
#include <QImage>
#include <QPainter>

namespace headcap::tests {
namespace {

struct GivenFinding {
    const char* component;
    const char* term;
    const char* place;
    const char* extent;
    std::int64_t severity;
    const char* observed;
    const char* inferred;
    bool isRepair = false;
};

constexpr std::array kFindings{
    GivenFinding{"boards", "detached", "upper board", "whole height", 3,
                 "Hangs by two threads of the lowest cord.", ""},
    GivenFinding{"boards", "corner_exposed", "lower board, fore-edge corners", "2 corners", 1,
                 "Covering worn through; board sound.", ""},
    GivenFinding{"joints", "outer_joint_cracked", "upper joint", "120 of 148 mm", 2,
                 "Leather parted along the joint from head to third band.",
                 "Opened wide while the spine was stiff."},
    GivenFinding{"spine", "lacking", "second compartment", "about 20 × 30 mm", 2,
                 "Covering gone; the linings show.", ""},
    GivenFinding{"leather", "red_rot", "spine", "all over", 2, "Comes off on the hand.", ""},
    GivenFinding{"textblock patches", "glassine tape", "K7, inner margin", "60 mm", 1,
                 "A strip of shiny brown paper over a tear.", "A repair of the last century.",
                 true},
};

struct GivenPhotograph {
    core::PhotoRole role;
    const char* caption;
    const char* place;
    QSize size;
    bool isInReport = true;
    core::FigureWidth width = core::FigureWidth::column;
};

const std::array kPhotographs{
    GivenPhotograph{core::PhotoRole::before, "Upper board as received", "upper board", {600, 800}},
    GivenPhotograph{core::PhotoRole::before, "Spine as received", "spine", {300, 800}},
    GivenPhotograph{core::PhotoRole::before, "Upper joint, cracked", "upper joint", {800, 600}},
    GivenPhotograph{
        core::PhotoRole::before, "Title page", "A1", {600, 800}, true, core::FigureWidth::full},
    GivenPhotograph{core::PhotoRole::during, "", "", {800, 600}, false},
    GivenPhotograph{core::PhotoRole::detail, "Shiny tape over the tear of K7", "K7", {800, 500}},
};

} // namespace

QByteArray drawnJpeg(QSize size, unsigned seed) {
    QImage image(size, QImage::Format_RGB32);
    const auto tint = static_cast<int>(seed * 37 % 120);
    image.fill(QColor::fromHsv(28 + tint / 8, 40 + tint, 190 - tint / 2));
    QPainter painter(&image);
    painter.setPen(QPen(QColor(60, 48, 36), 3));
    painter.drawRect(image.rect().adjusted(30, 30, -30, -30));
    for (int y = 90; y < size.height() - 80; y += 34 + tint / 6) {
        painter.drawLine(60, y, size.width() - 60 - static_cast<int>(seed) * y % 90, y);
    }
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG", 88);
    return bytes;
}

void addSurvey(SampleWorkshop& sample) {
    using namespace std::chrono;
    core::IdSource& ids = sample.ids;
    for (const GivenFinding& given : kFindings) {
        sample.store.put(core::Finding{.id = ids.next<core::Finding>(),
                                       .job = *sample.grafting,
                                       .component = given.component,
                                       .term = given.term,
                                       .place = given.place,
                                       .extent = given.extent,
                                       .severity = given.severity,
                                       .handling = given.severity == 3 ? core::Handling::no
                                                                       : core::Handling::withCare,
                                       .observed = given.observed,
                                       .inferred = given.inferred,
                                       .earlierRepair = given.isRepair});
    }
    sample.store.put(core::Examination{.id = ids.next<core::Examination>(),
                                       .job = *sample.grafting,
                                       .onDay = year{2031} / 2 / 5,
                                       .who = sample.orrin,
                                       .method = "raking and transmitted light, loupe 10×",
                                       .notExamined = "the sewing under the spine linings"});
    sample.store.put(core::Test{.id = ids.next<core::Test>(),
                                .job = *sample.grafting,
                                .onDay = year{2031} / 2 / 6,
                                .who = sample.orrin,
                                .place = "A1, inscription",
                                .purpose = "solubility of the ink in water",
                                .method = "drop and blotter, 60 s",
                                .result = "no colour on the blotter"});
}

void addPhotographs(SampleWorkshop& sample) {
    unsigned seed = 0;
    for (const GivenPhotograph& given : kPhotographs) {
        const QByteArray bytes = drawnJpeg(given.size, ++seed);
        const auto span =
            std::as_bytes(std::span{bytes.constData(), static_cast<std::size_t>(bytes.size())});
        const bool isMissing = given.caption == kPhotographs[2].caption;
        const core::Digest digest =
            isMissing ? core::sha256(span)
                      : sample.files.put(core::FileStore::Shelf::photograph, span, "jpg");
        sample.store.put(core::Photograph{.id = sample.ids.next<core::Photograph>(),
                                          .job = *sample.grafting,
                                          .role = given.role,
                                          .position = seed,
                                          .caption = given.caption,
                                          .place = given.place,
                                          .digest = digest,
                                          .mediaType = "image/jpeg",
                                          .fileName = "IMG_470" + std::to_string(seed) + ".JPG",
                                          .bytes = bytes.size(),
                                          .widthPx = given.size.width(),
                                          .heightPx = given.size.height(),
                                          .takenAt = core::instantFromIso("2031-02-05T05:10:00Z"),
                                          .addedAt = sample.clock.now(),
                                          .inReport = given.isInReport,
                                          .figureWidth = given.width});
    }
}

} // namespace headcap::tests
