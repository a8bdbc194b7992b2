#include "core/values/contract.h"

#include <cstdio>
#include <cstdlib>

namespace headcap::core {

void contractBroken(const char* condition, const char* file, int line) {
    std::fprintf(stderr, "headcap: broken contract: %s (%s:%d)\n", condition, file, line);
    std::abort();
}

} // namespace headcap::core
