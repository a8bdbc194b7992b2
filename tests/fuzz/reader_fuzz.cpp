// All readers for clang's fuzzer: the first byte chooses one.
#include <cstddef>
#include <cstdint>

#include "tests/fuzz/reader_trials.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size > 0) {
        const auto readers = headcap::fuzz::readers();
        readers[data[0] % readers.size()].read({reinterpret_cast<const char*>(data) + 1, size - 1});
    }
    return 0;
}
