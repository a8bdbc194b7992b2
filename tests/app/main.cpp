// Runs the tests of the windows and of printing: Qt needs its application first, off screen.
#include <QApplication>
#include <gtest/gtest.h>

#include "app/look/dress.h"

int main(int argc, char** argv) {
    qputenv("TZ", "Asia/Kathmandu"); // an odd one: UTC+05:45
    ::testing::InitGoogleTest(&argc, argv);
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen"); // the listing of tests, too, has no display
    }
    QApplication application(argc, argv);
    headcap::app::dress(application, {.tone = headcap::app::Tone::light});
    return RUN_ALL_TESTS();
}
