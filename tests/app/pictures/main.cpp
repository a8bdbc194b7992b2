// Makes pictures of the windows: headcap_pictures OUTDIR [ONLY]. Light and dark, at 1x and 2x, at
// 1,024 and 1,440 px; ONLY keeps those whose name holds it.
#include <cstdio>

#include <QApplication>
#include <QDir>
#include <QPixmap>
#include <QWidget>

#include "app/look/dress.h"
#include "app/pages/page_table.h"
#include "tests/support/sample_workshop.h"

namespace headcap::tests {
namespace {

class Album {
public:
    Album(QDir folder, QString only, QString tone, int scale)
        : m_folder(std::move(folder)), m_only(std::move(only)), m_tone(std::move(tone)),
          m_scale(scale) {}

    [[nodiscard]] bool wants(const QString& name) const {
        return m_only.isEmpty() || name.contains(m_only);
    }

    void take(QWidget& window, const QString& name, const QSize& size) const {
        window.resize(size);
        window.show();
        for (int i = 0; i < 5; ++i) {
            QApplication::processEvents();
        }
        const QString file =
            QStringLiteral("%1-%2-%3-%4x.png").arg(name, m_tone).arg(size.width()).arg(m_scale);
        window.grab().save(m_folder.filePath(file));
        std::printf("%s\n", qPrintable(file));
    }

private:
    QDir m_folder;
    QString m_only;
    QString m_tone;
    int m_scale;
};

void takePages(const Album& album) {
    for (const app::PageEntry& entry : app::pageTable()) {
        SampleWorkshop sample;
        app::Session session{sample.means()};
        const QString name = QStringLiteral("page-") + app::titleOf(entry.page).toLower();
        if (!album.wants(name)) {
            continue;
        }
        const std::unique_ptr<app::JobPage> page{entry.make(session)};
        page->load(sample.file(*sample.grafting));
        album.take(*page, name, {1000, 2400});
    }
}

} // namespace
} // namespace headcap::tests

int main(int argc, char** argv) {
    using namespace headcap;
    if (argc < 2) {
        std::fputs("headcap_pictures OUTDIR [ONLY]\n", stderr);
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QDir folder{QString::fromLocal8Bit(argv[1])};
    folder.mkpath(QStringLiteral("."));
    const QString only = argc > 2 ? QString::fromLocal8Bit(argv[2]) : QString{};
    const int scale = qRound(application.devicePixelRatio());
    for (const auto tone : {app::Tone::light, app::Tone::dark}) {
        app::dress(application, {.tone = tone});
        const tests::Album album{
            folder, only,
            tone == app::Tone::light ? QStringLiteral("light") : QStringLiteral("dark"), scale};
        tests::takePages(album);
    }
    return 0;
}
