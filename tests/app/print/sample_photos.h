// Photographs made for tests, and programs of the system to look at what was written.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>
#include <QStringList>

namespace headcap::app::print::test {

// Light falling off over grey paper, with the noise of a camera's sensor.
[[nodiscard]] QImage noisyPhotograph(int width, int height, unsigned seed = 1);
[[nodiscard]] QByteArray jpegOf(const QImage& image, int quality = 92);
// A JPEG with an EXIF segment that gives its orientation, 1 to 8.
[[nodiscard]] QByteArray withOrientation(const QByteArray& jpeg, int orientation);
void writeFile(const QString& path, const QByteArray& bytes);
[[nodiscard]] QByteArray readFile(const QString& path);

struct ProgramResult {
    bool isThere = false; // the program is installed
    int status = -1;
    QByteArray output;
};
[[nodiscard]] ProgramResult runProgram(const QString& program, const QStringList& arguments);

} // namespace headcap::app::print::test
