#include "demo-data/make_files.h"

#include <algorithm>

#include <fmt/format.h>

#include "demo-data/loader/data_error.h"
#include "demo-data/papers/paper.h"
#include "demo-data/pictures/scene/photographer.h"

namespace headcap::demo {
namespace {

constexpr int kHands = 2;

std::string keyOf(const std::string& scope, const std::string& name) {
    return scope + "/" + name;
}

} // namespace

MadeFiles::MadeFiles(const Story& story, const DemoDays& days, core::FileStore& store, double scale)
    : m_story(story), m_store(store), m_scale(scale) {
    for (const Group& group : story.groups()) {
        if (const auto adds = group.content->find("add"); adds != group.content->end()) {
            gather(*adds, group, days);
        }
    }
    for (int i = 0; i < kHands; ++i) {
        m_hands.emplace_back([this] { work(); });
    }
}

MadeFiles::~MadeFiles() {
    {
        const std::lock_guard guard{m_lock};
        m_stopped = true;
    }
    for (std::thread& hand : m_hands) {
        hand.join();
    }
}

// Photographs stand at any depth: beside a finding, a step, a facsimile.
void MadeFiles::gather(const Json& object, const Group& group, const DemoDays& days) {
    if (object.is_array()) {
        for (const Json& one : object) {
            gather(one, group, days);
        }
        return;
    }
    if (!object.is_object()) {
        return;
    }
    if (const auto picture = object.find("picture"); picture != object.end()) {
        const auto taken = days.instant(object.value("taken_at", std::string{}));
        m_orders.push_back({group.file, picture->get<std::string>(),
                            taken ? days.cameraTime(*taken) : std::string{}});
    }
    for (const auto& [member, value] : object.items()) {
        gather(value, group, days);
    }
}

void MadeFiles::work() {
    for (;;) {
        const Order* order = nullptr;
        {
            const std::lock_guard guard{m_lock};
            if (m_stopped || m_failure || m_next == m_orders.size()) {
                return;
            }
            order = &m_orders[m_next++];
        }
        try {
            KeptFile kept = made(*order);
            const std::lock_guard guard{m_lock};
            m_made.insert_or_assign(keyOf(order->file->scope, order->name), std::move(kept));
        } catch (...) {
            const std::lock_guard guard{m_lock};
            m_failure = m_failure ? m_failure : std::current_exception();
        }
        m_oneMore.notify_all();
    }
}

KeptFile MadeFiles::made(const Order& order) const {
    const auto drawn = order.file->content.find("drawn");
    if (drawn == order.file->content.end()) {
        throw DataError{order.file->name + " draws nothing"};
    }
    const Photographed photograph =
        photographed(*drawn, order.file->scope, order.name, order.takenAt, m_scale);
    KeptFile kept;
    kept.digest = m_store.put(core::FileStore::Shelf::photograph, photograph.jpeg, ".jpg");
    kept.fileName = order.file->scope + "-" + order.name + ".jpg";
    kept.mediaType = "image/jpeg";
    kept.bytes = static_cast<std::int64_t>(photograph.jpeg.size());
    kept.widthPx = photograph.width;
    kept.heightPx = photograph.height;
    return kept;
}

KeptFile MadeFiles::picture(const std::string& scope, const std::string& name) {
    std::unique_lock guard{m_lock};
    const std::string key = keyOf(scope, name);
    m_oneMore.wait(guard, [&] { return m_failure || m_made.contains(key); });
    if (m_failure) {
        std::rethrow_exception(m_failure);
    }
    return m_made.at(key);
}

KeptFile MadeFiles::paper(const std::string& scope, const std::string& name) {
    for (const DataFile& file : m_story.files()) {
        const Json papers = file.content.value("papers", Json::object());
        if (file.scope != scope || !papers.contains(name)) {
            continue;
        }
        std::string text;
        for (const Json& line : papers.at(name)) {
            text += line.get<std::string>() + "\n";
        }
        const bool pdf = name.ends_with(".pdf");
        const auto bytes = pdf ? letterPdf(text) : textFile(text);
        KeptFile kept;
        kept.digest = m_store.put(core::FileStore::Shelf::attachment, bytes, pdf ? ".pdf" : ".txt");
        kept.fileName = name;
        kept.mediaType = pdf ? "application/pdf" : "text/plain";
        kept.bytes = static_cast<std::int64_t>(bytes.size());
        return kept;
    }
    throw DataError{fmt::format("{} has no paper named {}", scope, name)};
}

} // namespace headcap::demo
