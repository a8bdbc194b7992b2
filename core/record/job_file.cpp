#include "core/record/job_file.h"

#include <algorithm>
#include <utility>

namespace headcap::core {
namespace {

template <class Record, class Key>
const Record* lookUp(const std::vector<Record>& records, const Key& id) {
    const auto at =
        std::find_if(records.begin(), records.end(), [&](const Record& r) { return r.id == id; });
    return at == records.end() ? nullptr : &*at;
}

} // namespace

JobFile::JobFile(Job theJob, Item theItem, Owner theOwner)
    : job(std::move(theJob)), item(std::move(theItem)), owner(std::move(theOwner)) {}
JobFile::JobFile(const JobFile&) = default;
JobFile::JobFile(JobFile&&) noexcept = default;
JobFile& JobFile::operator=(const JobFile&) = default;
JobFile& JobFile::operator=(JobFile&&) noexcept = default;
JobFile::~JobFile() = default;

Revision JobFile::revisionOf(const RecordRef& ref) const {
    const auto at = revisions.find(ref);
    return at == revisions.end() ? Revision{} : at->second;
}

const Person* JobFile::person(const std::optional<Id<Person>>& id) const {
    return id ? lookUp(people, *id) : nullptr;
}

const Lot* JobFile::lot(const std::optional<Id<Lot>>& id) const {
    return id ? lookUp(lots, *id) : nullptr;
}

const Material* JobFile::material(const Id<Material>& id) const {
    return lookUp(materials, id);
}

const Item* JobFile::part(const std::optional<Id<Item>>& id) const {
    if (!id) {
        return nullptr;
    }
    return *id == item.id ? &item : lookUp(parts, *id);
}

const Step* JobFile::step(const std::optional<Id<Step>>& id) const {
    return id ? lookUp(steps, *id) : nullptr;
}

std::vector<const MaterialUse*> JobFile::usesOf(const Step& step) const {
    std::vector<const MaterialUse*> found;
    for (const MaterialUse& use : uses) {
        if (use.step == step.id) {
            found.push_back(&use);
        }
    }
    return found;
}

std::string headingOf(const Item& item) {
    std::string heading = item.shortTitle.empty() ? item.title : item.shortTitle;
    if (heading.empty()) {
        heading = "(no title)";
    }
    return item.date ? heading + ", " + toText(*item.date) : heading;
}

} // namespace headcap::core
