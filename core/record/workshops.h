// The way to workshops on the disk, for whoever opens one: the window, the command line. The
// program is assembled with the one that keeps them in SQLite.
#pragma once

#include <filesystem>
#include <memory>

#include "core/record/stores.h"

namespace headcap::core {

// A workshop that is open; closed when it goes.
class OpenWorkshop {
public:
    virtual ~OpenWorkshop() = default;
    [[nodiscard]] virtual Stores stores() = 0;
};

// Each throws StoreError, and changes nothing on the disk where it refuses.
class Workshops {
public:
    virtual ~Workshops() = default;
    [[nodiscard]] virtual std::unique_ptr<OpenWorkshop>
    open(const std::filesystem::path& folder) = 0;
    // In a folder that is missing or empty.
    [[nodiscard]] virtual std::unique_ptr<OpenWorkshop>
    create(const std::filesystem::path& folder) = 0;
    // A new workshop from a backup, in a folder that is missing or empty.
    virtual void restore(const std::filesystem::path& backup,
                         const std::filesystem::path& folder) = 0;
};

} // namespace headcap::core
