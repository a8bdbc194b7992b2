// The demo's photographs: before and after show one book, a detail what the whole shows, the same
// bytes every time, and EXIF as a camera writes it.
#include <cmath>

#include <QBuffer>
#include <QImage>
#include <QImageReader>
#include <gtest/gtest.h>

#include "demo-data/pictures/base/noise.h"
#include "demo-data/pictures/scene/photographer.h"
#include "tests/demo/built_demo.h"

namespace headcap::demo {
namespace {

Json drawn() {
    return Json::parse(R"({
     "leaves": {"page": {"size": [90, 140], "matter": {"title": {"lines": [{"t": "OF SHIPS", "size": 9}]}},
       "harm": [{"kind": "loss", "points": [[60, 144], [94, 144], [94, 110]]},
                {"kind": "tear", "from": [90, 50], "to": [50, 60]}]}},
     "pictures": {
       "before": {"size": [600, 800], "shows": [{"leaf": "page", "turn": 0}]},
       "after": {"size": [600, 800], "treated": true, "shows": [{"leaf": "page", "turn": 0}]},
       "sideways": {"size": [300, 400], "sideways": true, "shows": [{"leaf": "page"}]},
       "nobody": {"shows": [{"leaf": "missing"}]}}})");
}

QImage imageOf(const Photographed& photograph, bool upright = true) {
    QByteArray bytes(reinterpret_cast<const char*>(photograph.jpeg.data()),
                     static_cast<qsizetype>(photograph.jpeg.size()));
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setAutoTransform(upright);
    return reader.read();
}

double greyOf(const QImage& image, const QRect& box) {
    double sum = 0;
    for (int y = box.top(); y <= box.bottom(); ++y) {
        for (int x = box.left(); x <= box.right(); ++x) {
            sum += qGray(image.pixel(x, y));
        }
    }
    return sum / (box.width() * box.height());
}

TEST(DemoPicture, isTheSameEveryTime) {
    const auto one = photographed(drawn(), "test", "before", "", 0.5);
    const auto two = photographed(drawn(), "test", "before", "", 0.5);
    EXPECT_EQ(one.jpeg, two.jpeg);
}

TEST(DemoPicture, showsTheSameLeafBeforeAndAfterButForWhatWasMended) {
    const QImage before = imageOf(photographed(drawn(), "test", "before", "", 1));
    const QImage after = imageOf(photographed(drawn(), "test", "after", "", 1));
    const QRect type{240, 90, 120, 60};
    EXPECT_NEAR(greyOf(before, type), greyOf(after, type), 6);
    const QRect corner{478, 650, 12, 12}; // where the loss is
    EXPECT_GT(greyOf(after, corner), greyOf(before, corner) + 40);
}

TEST(DemoPicture, heldSidewaysSaysSo) {
    const auto photograph = photographed(drawn(), "test", "sideways", "2031:03:05 09:10:00", 1);
    EXPECT_EQ(imageOf(photograph, false).size(), QSize(400, 300));
    EXPECT_EQ(imageOf(photograph, true).size(), QSize(300, 400));
    EXPECT_EQ(photograph.width, 300);
}

TEST(DemoPicture, whatIsNotDescribedIsAnError) {
    EXPECT_ANY_THROW(static_cast<void>(photographed(drawn(), "test", "nobody", "", 1)));
}

TEST(DemoNoise, isTheSameInARowAsAtEachPlace) {
    const Noise noise{seedOf("paper"), 3.7, 1.9};
    std::vector<float> row(400, 0);
    noise.addTo(row, {-12.3, 0.173, 41.9}, 1);
    for (std::size_t i = 0; i < row.size(); ++i) {
        EXPECT_NEAR(row[i], noise.at(-12.3 + 0.173 * static_cast<double>(i), 41.9), 1e-3) << i;
    }
}

TEST(DemoPicture, oneIsStoredSidewaysAndSeveralAreOfTwentyFourMegapixels) {
    const auto stores = theDemo().stores();
    int sideways = 0;
    int large = 0;
    int timed = 0;
    for (const auto& one : core::all<core::Photograph>(stores.records)) {
        const auto path =
            stores.files.pathOf(core::FileStore::Shelf::photograph, one.record.digest);
        QImageReader reader(QString::fromStdString(path.string()));
        const QSize stored = reader.size();
        sideways += stored.width() == one.record.heightPx &&
                    stored.height() == one.record.widthPx && stored.width() != stored.height();
        large += one.record.widthPx == 240; // 6,000 at the scale of the tests
        timed += one.record.takenAt.has_value();
    }
    EXPECT_EQ(sideways, 1);
    EXPECT_GE(large, 3);
    EXPECT_GE(timed, 10);
}

} // namespace
} // namespace headcap::demo
