#include "core/values/local_time.h"

#include <ctime>

#include "core/values/contract.h"

namespace headcap::core {

using namespace std::chrono;

seconds systemUtcOffset(Instant at) {
    const std::time_t time = system_clock::to_time_t(floor<seconds>(at));
    std::tm local{};
    // localtime_r alone would not see a time zone that changed while the program runs.
    tzset();
    localtime_r(&time, &local);
    return seconds{local.tm_gmtoff};
}

Minutes timeOfDay(Instant at, const UtcOffset& offset) {
    const Instant local = at + offset(at);
    return floor<Minutes>(local - floor<days>(local));
}

Instant momentAt(Day day, Minutes sinceMidnight, const UtcOffset& offset) {
    HEADCAP_CONTRACT(day.ok());
    const Instant local = sys_days{day} + sinceMidnight;
    // No offset is a whole day, so these two are in force before and after any change near it.
    const seconds before = offset(local - days{1});
    const seconds after = offset(local + days{1});
    const bool isBefore = offset(local - before) == before;
    const bool isAfter = offset(local - after) == after;
    return isAfter && !isBefore ? local - after : local - before;
}

} // namespace headcap::core
