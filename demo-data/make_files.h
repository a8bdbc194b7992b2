// Makes the demo's photographs and papers and keeps them in the workshop. Photographs are drawn by
// two hands at once, in the order in which the story needs them.
#pragma once

#include <condition_variable>
#include <exception>
#include <map>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

#include "core/record/stores.h"
#include "demo-data/loader/kept_files.h"
#include "demo-data/loader/story.h"

namespace headcap::demo {

class MadeFiles final : public KeptFiles {
public:
    MadeFiles(const Story& story, const DemoDays& days, core::FileStore& store, double scale);
    ~MadeFiles() override;
    MadeFiles(const MadeFiles&) = delete;
    MadeFiles& operator=(const MadeFiles&) = delete;

    // Waits until it is drawn.
    KeptFile picture(const std::string& scope, const std::string& name) override;
    KeptFile paper(const std::string& scope, const std::string& name) override;

private:
    struct Order {
        const DataFile* file;
        std::string name;
        std::string takenAt; // as the camera writes it; empty where it knows no time
    };
    void gather(const Json& object, const Group& group, const DemoDays& days);
    void work();
    [[nodiscard]] KeptFile made(const Order& order) const;

    const Story& m_story;
    core::FileStore& m_store;
    double m_scale;
    std::vector<Order> m_orders;
    std::mutex m_lock;
    std::condition_variable m_oneMore;
    std::size_t m_next = 0;
    bool m_stopped = false;
    std::map<std::string, KeptFile> m_made; // by "scope/name"
    std::exception_ptr m_failure;
    std::vector<std::thread> m_hands;
};

} // namespace headcap::demo
