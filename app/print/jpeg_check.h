// Whether a JPEG is all there. Decoders fill what is missing with grey and call it a success; the
// structure tells: markers, then scans, up to the end-of-image marker (ITU-T T.81, annex B).
#pragma once

class QIODevice;

namespace headcap::app::print {

enum class JpegState { whole, truncated, notJpeg };

// Reads on from the start of an open device; what follows the end of the image is not looked at.
[[nodiscard]] JpegState checkJpeg(QIODevice& device);

} // namespace headcap::app::print
