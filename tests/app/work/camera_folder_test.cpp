#include "app/photo/camera_folder.h"

#include <QFile>
#include <QSignalSpy>

#include "app/photo/camera_desk.h"
#include "app/photo/exif.h"
#include "app/shell/job_view.h"
#include "app/shell/quiet_line.h"
#include "tests/app/work/window_test.h"
#include "tests/support/sample_survey.h"

namespace headcap::app {
namespace {

class CameraFolderTest : public WindowTest {
protected:
    CameraFolderTest() {
        written("old.jpg", tests::drawnJpeg({40, 30}, 1));
        sample.settings.set(Setting::watchedFolder, camera.path());
        look();
    }
    QString written(const char* name, const QByteArray& bytes) {
        const QString path = camera.filePath(QLatin1String(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }
    void lookOnce() {
        QSignalSpy looked(&window.camera(), &photo::CameraDesk::looked);
        window.camera().look();
        ASSERT_TRUE(looked.wait());
    }
    // A picture is whole when it has not grown between two looks.
    void look() {
        lookOnce();
        lookOnce();
    }
    QString said() { return window.cameraLine().sentence(); }
    bool waitFor(std::size_t photographs) {
        return QTest::qWaitFor([&] { return file().photographs.size() == photographs; });
    }

    QTemporaryDir camera;
};

TEST_F(CameraFolderTest, whatLayThereBeforeIsNotOffered) {
    EXPECT_EQ(said(), QString{});
    written("notes.txt", "not a picture");
    look();
    EXPECT_EQ(said(), QString{});
}

TEST_F(CameraFolderTest, whatComesIsOfferedOnAnyViewAndTakenIntoTheJobInHand) {
    const auto before = file().photographs.size();
    written("new.jpg", tests::drawnJpeg({400, 300}, 2));
    lookOnce();
    EXPECT_EQ(said(), QString{}) << "it may still grow";
    lookOnce();
    EXPECT_TRUE(said().contains(QStringLiteral("1 photograph"))) << said().toStdString();
    press(ActionId::takeFromCamera);
    EXPECT_EQ(file().photographs.size(), before) << "no job is open";
    window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
    EXPECT_TRUE(said().contains(fromCore(file().job.number))) << said().toStdString();
    press(ActionId::takeFromCamera);
    ASSERT_TRUE(waitFor(before + 1));
    EXPECT_EQ(said(), QString{});
}

TEST_F(CameraFolderTest, whatCouldNotBeKeptIsOfferedAgain) {
    const auto before = file().photographs.size();
    written("new.jpg", tests::drawnJpeg({400, 300}, 2));
    look();
    window.go({.view = ViewId::job, .job = sample.grafting, .page = core::Page::bench});
    sample.store.failNext = core::StoreError::Code::diskFull;
    QSignalSpy taken(&window.camera(), &photo::CameraDesk::takenIn);
    press(ActionId::takeFromCamera);
    ASSERT_TRUE(taken.wait());
    EXPECT_EQ(file().photographs.size(), before);
    EXPECT_TRUE(said().contains(QStringLiteral("1 photograph"))) << said().toStdString();
    press(ActionId::takeFromCamera);
    ASSERT_TRUE(waitFor(before + 1));
    EXPECT_EQ(said(), QString{});
}

TEST_F(CameraFolderTest, whatIsPutAsideIsNotOfferedAgain) {
    written("new.jpg", tests::drawnJpeg({400, 300}, 2));
    look();
    window.camera().putAside();
    look();
    EXPECT_EQ(said(), QString{});
}

} // namespace
} // namespace headcap::app
