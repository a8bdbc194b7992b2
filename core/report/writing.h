// What the sections of the report are written with: runs, facts and rows, and the names of things.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "core/report/sections.h"

namespace headcap::core::report {

[[nodiscard]] std::vector<Run> plain(std::string text);
[[nodiscard]] std::vector<Run> italic(std::string text);
[[nodiscard]] std::vector<Run> bold(std::string text);

// Adds the fact where there is something to say.
void addFact(Facts& facts, std::string_view label, std::string value,
             std::optional<RecordRef> source = std::nullopt);
[[nodiscard]] TableRow row(std::initializer_list<std::string> cells,
                           std::optional<RecordRef> source = std::nullopt);
// The heading of the rows below it: its name, what is said of it, what they come to.
[[nodiscard]] TableRow group(std::string name, std::string said = {}, std::string sum = {},
                             std::optional<RecordRef> source = std::nullopt);
// Adds the block, or the statement where the block has nothing in it.
void addOr(Section& section, Table table, std::string_view nothing);
void addOr(Section& section, List list, std::string_view nothing);
void addIf(Section& section, Facts facts);
void addPart(Section& section, std::string heading, Table table);

// "vol. 2: K5": a place in its volume, where the item has several.
[[nodiscard]] std::string placeIn(const JobFile& file, const std::optional<Id<Item>>& part,
                                  const std::string& place);
// "Joints, upper joint"; a place that is the component's own name is said once.
[[nodiscard]] std::string partAndPlace(const JobFile& file, const Finding& finding);
// Of a material of which nothing stays.
inline constexpr std::string_view kNotLeft = "not meant to stay in the book";
[[nodiscard]] std::string lowerFirst(std::string_view text);
[[nodiscard]] std::string orUnnamed(std::string place); // or "a place not named"
[[nodiscard]] std::string orNot(std::string text);      // or "NOT RECORDED"
[[nodiscard]] std::string personName(const JobFile& file, const std::optional<Id<Person>>& id);
[[nodiscard]] std::string lotText(const JobFile& file, const std::optional<Id<Lot>>& id);
// "grain along the spine"; empty where nothing is said.
[[nodiscard]] std::string grainText(GrainAtSpine grain);
// "half a sheet", "0.02 of a skin", as the lot's material is counted.
[[nodiscard]] std::string amountText(const JobFile& file, Amount amount,
                                     const std::optional<Id<Lot>>& lot);
// Of the use, where it was measured.
[[nodiscard]] std::string amountText(const JobFile& file, const MaterialUse& use);
[[nodiscard]] std::string useText(const JobFile& file, const MaterialUse& use); // "0.4 g of …"
// As it was written, its ranges with the dash of print: "A–N²" for "A-N²".
[[nodiscard]] std::string formulaText(const std::string& formula);
[[nodiscard]] std::string itemTitle(const Item& item); // author, title, date

// Joined with "; ", the empty ones left out, without full stops before the joints.
[[nodiscard]] std::string joined(const std::vector<std::string>& texts,
                                 std::string_view with = "; ");

// What people wrote and what the program says of it, one sentence after the other, the empty ones
// left out: "Lacking. Cut away; a stub remains".
[[nodiscard]] std::string told(const std::vector<std::string>& texts);

} // namespace headcap::core::report
