// A check of our own reasoning, kept in every build: what fails here is a bug of the program, and
// it stops before it can write. Nothing a person can type or open may fail one.
#pragma once

namespace headcap::core {

[[noreturn]] void contractBroken(const char* condition, const char* file, int line);

} // namespace headcap::core

#define HEADCAP_CONTRACT(condition)                                                                \
    do {                                                                                           \
        if (!(condition)) {                                                                        \
            ::headcap::core::contractBroken(#condition, __FILE__, __LINE__);                       \
        }                                                                                          \
    } while (false)
