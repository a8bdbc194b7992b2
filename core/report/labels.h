// The labels of facts that must stand in a report: the composer writes under them, the check looks
// for them.
#pragma once

#include <string_view>

namespace headcap::core::report::labels {

inline constexpr std::string_view kThisCopy = "This copy";
inline constexpr std::string_view kFormula = "Formula";
inline constexpr std::string_view kExtent = "Extent";
inline constexpr std::string_view kAgainst = "Against";
inline constexpr std::string_view kTally = "Tally";
inline constexpr std::string_view kEstablished = "How established";
inline constexpr std::string_view kNotLookedAt = "Not looked at";
inline constexpr std::string_view kFinished = "Finished";

// Of an entry of the log: what follows is the day, by whom and why.
inline constexpr std::string_view kStruckOn = "Struck on";

inline constexpr std::string_view kLeaf = "Leaf";
inline constexpr std::string_view kTakenFrom = "Taken from";
inline constexpr std::string_view kEdition = "Edition of the source";
inline constexpr std::string_view kImages = "Images";
inline constexpr std::string_view kPermission = "Permission";
inline constexpr std::string_view kProvenance = "Provenance";
inline constexpr std::string_view kAgreement = "Agreement with this copy";
inline constexpr std::string_view kPrinted = "Printed";
inline constexpr std::string_view kHeldBy = "Held by";
inline constexpr std::string_view kMarked = "Marked";
inline constexpr std::string_view kComesOut = "Comes out";
inline constexpr std::string_view kPutIn = "Put in";

} // namespace headcap::core::report::labels
