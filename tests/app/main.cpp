#include <gtest/gtest.h>

#include <QApplication>

#include "app/look/dress.h"

int main(int argc, char** argv) {
    ::testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    headcap::app::dress(application, {.tone = headcap::app::Tone::light});
    return RUN_ALL_TESTS();
}
