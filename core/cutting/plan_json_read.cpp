#include "core/cutting/plan_json.h"

#include <set>

#include "core/cutting/plan_json_fields.h"

namespace headcap::core {

namespace {

using nlohmann::json;
using Error = std::optional<PlanFileError>;

constexpr double kPpmPerCent = 10'000;

GrainWay grainOf(PlanJsonFields& fields, const char* none) {
    const std::string word = fields.word("grain");
    if (word == "width") {
        return GrainWay::alongWidth;
    }
    if (word == "height") {
        return GrainWay::alongHeight;
    }
    if (!word.empty() && word != none) {
        fields.fail(PlanFileFault::unknownWord, "grain");
    }
    return GrainWay::none;
}

EdgeTrim trimOf(PlanJsonFields& fields, Error& error) {
    const json* trim = fields.find("trim");
    if (trim == nullptr) {
        return {};
    }
    if (trim->is_number()) {
        const Length each = fields.length("trim");
        return {each, each, each, each};
    }
    PlanJsonFields sides(*trim, fields.placeOf("trim"), error);
    const EdgeTrim by{sides.length("left"), sides.length("right"), sides.length("top"),
                      sides.length("bottom")};
    sides.refuseOthers();
    return by;
}

Stretch stretchOf(PlanJsonFields& fields, Error& error) {
    const json* stretch = fields.find("stretch");
    if (stretch == nullptr) {
        return {};
    }
    PlanJsonFields ways(*stretch, fields.placeOf("stretch"), error);
    const Stretch by{ways.number("across", kPpmPerCent).value_or(0),
                     ways.number("along", kPpmPerCent).value_or(0)};
    ways.refuseOthers();
    return by;
}

StockSheet sheetOf(const json& object, const std::string& place, Error& error) {
    PlanJsonFields fields(object, place, error);
    StockSheet sheet;
    sheet.id = fields.id();
    sheet.width = fields.requiredLength("width");
    sheet.height = fields.requiredLength("height");
    sheet.grain = grainOf(fields, "none");
    sheet.count = fields.count("count");
    sheet.cost = fields.number("value", 1e6);
    sheet.isKeptBack = fields.flag("kept_back", false);
    sheet.trim = trimOf(fields, error);
    sheet.stretch = stretchOf(fields, error);
    fields.refuseOthers();
    return sheet;
}

WantedPiece pieceOf(const json& object, const std::string& place, Error& error) {
    PlanJsonFields fields(object, place, error);
    WantedPiece piece;
    piece.id = fields.id();
    piece.width = fields.requiredLength("width");
    piece.height = fields.requiredLength("height");
    piece.grain = grainOf(fields, "any");
    piece.count = fields.count("count");
    piece.value = fields.number("value", 1e6);
    piece.isPasted = fields.flag("pasted", false);
    piece.overlap = fields.length("overlap");
    fields.refuseOthers();
    return piece;
}

template <class Row, class Read>
void readRows(PlanJsonFields& plan, const char* name, std::vector<Row>& rows, Error& error,
              Read read) {
    const json* list = plan.require(name);
    if (list == nullptr) {
        return;
    }
    if (!list->is_array()) {
        plan.fail(PlanFileFault::wrongType, name);
        return;
    }
    if (list->size() > kMostCutRows) {
        plan.fail(PlanFileFault::problem, name, CutProblemFault::tooManyRows);
        return;
    }
    std::set<std::string> ids;
    for (std::size_t i = 0; i < list->size() && !error; ++i) {
        const std::string place = plan.placeOf(name) + "/" + std::to_string(i);
        rows.push_back(read((*list)[i], place, error));
        if (!ids.insert(rows.back().id).second && !error) {
            error = PlanFileError{PlanFileFault::doubleId, place + "/id", 0, std::nullopt};
        }
    }
}

CutObjective objectiveOf(PlanJsonFields& plan) {
    const std::string word = plan.word("objective");
    if (word == "most_value") {
        return CutObjective::mostValue;
    }
    if (!word.empty() && word != "all_pieces") {
        plan.fail(PlanFileFault::unknownWord, "objective");
    }
    return CutObjective::allPieces;
}

// Where the text stops being JSON: the parser tells it to whoever asks for its callbacks.
class WhereBroken : public nlohmann::json_sax<json> {
public:
    std::size_t at = 0;
    bool null() override { return true; }
    bool boolean(bool) override { return true; }
    bool number_integer(number_integer_t) override { return true; }
    bool number_unsigned(number_unsigned_t) override { return true; }
    bool number_float(number_float_t, const string_t&) override { return true; }
    bool string(string_t&) override { return true; }
    bool binary(binary_t&) override { return true; }
    bool start_object(std::size_t) override { return true; }
    bool key(string_t&) override { return true; }
    bool end_object() override { return true; }
    bool start_array(std::size_t) override { return true; }
    bool end_array() override { return true; }
    bool parse_error(std::size_t position, const std::string&,
                     const nlohmann::detail::exception&) override {
        at = position;
        return false;
    }
};

} // namespace

tl::expected<CutProblem, PlanFileError> readCutProblem(std::string_view text) {
    if (text.size() > kLongestPlanFile) {
        return tl::unexpected(PlanFileError{PlanFileFault::tooLong, {}, kLongestPlanFile, {}});
    }
    const json root = json::parse(text, nullptr, false);
    if (root.is_discarded()) {
        WhereBroken where;
        json::sax_parse(text, &where);
        return tl::unexpected(PlanFileError{PlanFileFault::notJson, {}, where.at, {}});
    }
    Error error;
    PlanJsonFields plan(root, "", error);
    CutProblem problem;
    readRows(plan, "sheets", problem.sheets, error, sheetOf);
    readRows(plan, "pieces", problem.pieces, error, pieceOf);
    problem.objective = objectiveOf(plan);
    problem.rules.kerf = plan.length("kerf");
    problem.rules.leastStrip = plan.length("least_strip");
    problem.rules.leastOffcut = plan.length("least_offcut");
    problem.rules.mayTurn = plan.flag("rotate", true);
    plan.refuseOthers();
    if (!error) {
        if (const std::optional<CutProblemError> fault = faultOf(problem)) {
            error = placeInFile(*fault);
        }
    }
    if (error) {
        return tl::unexpected(*error);
    }
    return problem;
}

PlanFileError placeInFile(const CutProblemError& error) {
    std::string place;
    if (error.place != CutProblemPlace::plan) {
        place = error.place == CutProblemPlace::sheet ? "/sheets/" : "/pieces/";
        place += std::to_string(error.index);
    }
    place += "/";
    place += error.field;
    return {PlanFileFault::problem, place, 0, error.fault};
}

} // namespace headcap::core
