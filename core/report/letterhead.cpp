#include "core/report/letterhead.h"

#include <sstream>

namespace headcap::core::report {

Letterhead letterheadOf(const JobFile& file) {
    Letterhead head;
    if (!file.workshop) {
        return head;
    }
    head.name = file.workshop->name;
    std::istringstream address{file.workshop->address};
    for (std::string line; std::getline(address, line);) {
        head.lines.push_back(line);
    }
    for (const std::string& line :
         {file.workshop->telephone, file.workshop->email, file.workshop->letterheadNote}) {
        if (!line.empty()) {
            head.lines.push_back(line);
        }
    }
    return head;
}

} // namespace headcap::core::report
