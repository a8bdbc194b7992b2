#include "tests/bench/workshop/make_workshop.h"

#include <algorithm>
#include <array>
#include <random>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "db/workshop.h"
#include "tests/bench/workshop/bulk_writer.h"

namespace headcap::bench {
namespace {

using namespace core;

constexpr std::int64_t kFiles = 500; // pictures of a few bytes, each shown by many records
constexpr std::int64_t kLongLived = 25;
constexpr std::int64_t kJobsALot = 20;
constexpr std::int64_t kLotsOpen = 40;

constexpr std::array<const char*, 24> kTitles{"A Hymnal for the Use of Kell",
                                              "The Husbandman's Almanack",
                                              "Sermons on Several Occasions",
                                              "De re metallica excerpta",
                                              "A Treatise of Orchards",
                                              "Accounts of the Guild of Dyers",
                                              "Maps of the Lower Marches",
                                              "The Compleat Farrier",
                                              "Psalms in Metre",
                                              "Herbarium vivum",
                                              "Letters from the Northern Sea",
                                              "An Essay on Bridges",
                                              "Statuta collegii",
                                              "Breviarium",
                                              "The Young Clerk's Instructor",
                                              "Travels in the High Fells",
                                              "Canzonets for Four Voices",
                                              "Observations on the Tides",
                                              "A Discourse of Bees",
                                              "The Ladies' Cabinet Opened",
                                              "Institutiones grammaticae",
                                              "Chronicle of Thole",
                                              "Fables with Cuts",
                                              "Elements of Fluxions"};
constexpr std::array<const char*, 20> kDone{"surface cleaned with a soft brush",
                                            "guarded on the fold",
                                            "joint reinforced from within",
                                            "spine lined with paper and cloth",
                                            "corner rebuilt in layers",
                                            "tear closed along its edges",
                                            "washed in two baths",
                                            "pressed between blotters",
                                            "text block consolidated at the shoulder",
                                            "old animal glue softened with a poultice",
                                            "board reattached with linen",
                                            "headcap rebuilt",
                                            "leaves rejoined in pairs",
                                            "infill toned to match",
                                            "label put back",
                                            "endband resewn",
                                            "leather consolidated",
                                            "hinge pasted and put down",
                                            "plates numbered in pencil",
                                            "loose gathering sewn in"};
constexpr std::array<const char*, 12> kTechniques{
    "surface_cleaning", "guarding",    "joint_repair",     "spine_lining",
    "corner_repair",    "tear_repair", "washing",          "pressing",
    "consolidation",    "poulticing",  "board_attachment", "toning"};
constexpr std::array<const char*, 10> kSeen{"upper board detached",
                                            "headcap torn",
                                            "spine leather powdery",
                                            "water stain at the fore edge",
                                            "wormholes through the first gatherings",
                                            "corners worn through",
                                            "sewing broken at the third station",
                                            "foxing throughout",
                                            "two leaves loose",
                                            "tail edge frayed"};

class Maker {
public:
    Maker(const std::filesystem::path& folder, std::int64_t jobs)
        : m_folder(folder), m_jobs(jobs), m_ids(m_clock, 1590) {}

    void make() {
        m_clock.at = m_start;
        {
            const auto open =
                db::SqliteWorkshops(m_clock, {.makesBackups = false}).create(m_folder);
            keepFiles(open->stores().files);
        }
        BulkWriter writer(m_folder);
        addPeople(writer);
        addMaterials(writer);
        for (std::int64_t i = 0; i < m_jobs; ++i) {
            m_clock.at = m_start + (m_end - m_start) / m_jobs * i;
            if (i % 4 == 0) {
                addOwner(writer);
            }
            if (i % kJobsALot == 0) {
                addLot(writer, false);
            }
            addJob(writer, i);
        }
        writer.finish();
    }

private:
    struct MovingClock final : Clock {
        Instant at{};
        Instant now() const override { return at; }
        Day today() const override { return dayOf(at); }
        Day dayOf(Instant instant) const override {
            return Day{std::chrono::floor<std::chrono::days>(instant)};
        }
    };

    std::int64_t upTo(std::int64_t n) {
        return std::uniform_int_distribution<std::int64_t>{0, n - 1}(m_chance);
    }
    template <class Words>
    std::string oneOf(const Words& words) {
        return words[static_cast<std::size_t>(upTo(static_cast<std::int64_t>(words.size())))];
    }
    template <class Record>
    Id<Record> oneOf(const std::vector<Id<Record>>& ids) {
        return ids[static_cast<std::size_t>(upTo(static_cast<std::int64_t>(ids.size())))];
    }
    // As many as the average, with a long tail: one job in thirty has four times as much.
    std::int64_t about(std::int64_t average) {
        const std::int64_t most = upTo(30) == 0 ? 4 * average : average + average * 4 / 5;
        return upTo(most) + 1;
    }
    Id<Person> someone() { return oneOf(m_people); }
    [[nodiscard]] std::int64_t lotsInAll() const { return kLongLived + m_jobs / kJobsALot; }

    void keepFiles(FileStore& files) {
        for (std::int64_t i = 0; i < kFiles; ++i) {
            const std::string bytes = fmt::format("picture {}", i);
            m_digests.push_back(
                files.put(FileStore::Shelf::photograph, std::as_bytes(std::span{bytes}), ".jpg"));
        }
    }

    void addPeople(BulkWriter& writer) {
        std::vector<AnyRecord> all;
        for (const char* name : {"Una Thole", "Orrin Vey", "Mab Sker", "Tam Ellis"}) {
            const Person person{.id = m_ids.next<Person>(), .name = name};
            m_people.push_back(person.id);
            all.emplace_back(person);
        }
        writer.add(m_start, m_people.front(), "People added", all);
        addOwner(writer);
    }

    void addOwner(BulkWriter& writer) {
        const Owner owner{.id = m_ids.next<Owner>(),
                          .name = fmt::format(
                              "{} of {} {}",
                              oneOf(std::array{"Library", "Chapel", "Archive", "House"}),
                              oneOf(std::array{"Kell", "Thole", "Vey", "Marle"}), m_owners.size())};
        m_owners.push_back(owner.id);
        writer.add(m_clock.at, m_people.front(), "Owner added", {owner});
    }

    void addMaterials(BulkWriter& writer) {
        std::vector<AnyRecord> all;
        for (const char* name :
             {"Wheat starch paste", "Kozo tissue 5 g", "Linen thread", "Calf", "Methyl cellulose",
              "Aerolinen", "Handmade laid paper", "Gelatine", "Millboard", "Silk"}) {
            const Material material{.id = m_ids.next<Material>(), .name = name, .unit = Unit::gram};
            m_materials.push_back(material.id);
            all.emplace_back(material);
        }
        writer.add(m_start, m_people.front(), "Materials added", all);
        for (std::int64_t i = 0; i < kLongLived; ++i) {
            addLot(writer, true);
        }
    }

    void addLot(BulkWriter& writer, bool isLongLived) {
        const Lot lot{.id = m_ids.next<Lot>(),
                      .number = fmt::format("{:02}-{:04}", m_lotCount / 1'000, m_lotCount % 1'000),
                      .material = oneOf(m_materials),
                      .supplier = "Sker and Daughters",
                      .receivedOn = m_clock.today(),
                      .finished = !isLongLived && m_lotCount + kLotsOpen < lotsInAll()};
        const LedgerEntry received{.id = m_ids.next<LedgerEntry>(),
                                   .lot = lot.id,
                                   .at = m_clock.at,
                                   .who = someone(),
                                   .amount = Amount::of(Mass::grams(90'000))};
        ++m_lotCount;
        (isLongLived ? m_longLived : m_lots).push_back(lot.id);
        // What was opened long ago is used up.
        if (m_lots.size() > static_cast<std::size_t>(kLotsOpen)) {
            m_lots.erase(m_lots.begin());
        }
        writer.add(m_clock.at, m_people.front(), "Lot " + lot.number + " received",
                   {lot, received});
    }

    void addJob(BulkWriter& writer, std::int64_t number) {
        const bool isInTheHouse = number >= m_jobs - kInTheHouse;
        const Item item{.id = m_ids.next<Item>(),
                        .owner = oneOf(m_owners),
                        .title = fmt::format("{}, volume {}", oneOf(kTitles), number % 90 + 1),
                        .imprint = "Kell, at the sign of the Heron",
                        .format = "8°",
                        .binding = "full calf over pasteboard, sewn on five cords"};
        const Job job{.id = m_ids.next<Job>(),
                      .number = fmt::format("{}-{:05}", 2011 + number * 20 / m_jobs, number),
                      .item = item.id,
                      .owner = item.owner,
                      .state = isInTheHouse ? JobState::atTheBench : JobState::returned,
                      .receivedOn = m_clock.today(),
                      .request = "make it usable again and keep what is there"};
        const StateChange change{.id = m_ids.next<StateChange>(),
                                 .job = job.id,
                                 .fromState = JobState::approved,
                                 .toState = job.state,
                                 .at = m_clock.at,
                                 .who = someone()};
        writer.add(m_clock.at, someone(), "Job " + job.number + " received", {item, job, change});
        addFindings(writer, job.id);
        addSteps(writer, job.id);
        addPhotographs(writer, job.id);
    }

    void addFindings(BulkWriter& writer, const Id<Job>& job) {
        std::vector<AnyRecord> all;
        for (std::int64_t i = about(2); i > 0; --i) {
            all.emplace_back(
                Finding{.id = m_ids.next<Finding>(),
                        .job = job,
                        .component = "boards",
                        .term = "detached",
                        .place = fmt::format("{}{}", "ABCDEFGHIK"[upTo(10)], upTo(8) + 1),
                        .severity = upTo(4),
                        .observed = oneOf(kSeen)});
        }
        writer.add(m_clock.at, someone(), "Surveyed", all);
    }

    void addSteps(BulkWriter& writer, const Id<Job>& job) {
        const std::int64_t steps = about(kStepsAJob);
        for (std::int64_t i = 0; i < steps; ++i) {
            m_clock.at += std::chrono::minutes{30};
            const Step step{.id = m_ids.next<Step>(),
                            .job = job,
                            .at = m_clock.at,
                            .who = someone(),
                            .technique = oneOf(kTechniques),
                            .place = fmt::format("{}{}", "ABCDEFGHIK"[upTo(10)], upTo(8) + 1),
                            .description = oneOf(kDone) + ", " + oneOf(kDone),
                            .minutes = Minutes{5 + upTo(90)}};
            std::vector<AnyRecord> all{step};
            if (upTo(kStepsAJob) < kUsesAJob) {
                addUse(all, step);
            }
            writer.add(m_clock.at, step.who, "Step logged: " + step.description, all);
        }
    }

    void addUse(std::vector<AnyRecord>& all, const Step& step) {
        const MaterialUse use{.id = m_ids.next<MaterialUse>(),
                              .job = step.job,
                              .step = step.id,
                              .lot = upTo(4) == 0 ? oneOf(m_longLived) : oneOf(m_lots),
                              .amount = Amount::of(Mass::milligrams(100 + upTo(900))),
                              .role = "adhesive",
                              .place = step.place,
                              .removal = "softens in water"};
        all.emplace_back(use);
        all.emplace_back(LedgerEntry{.id = m_ids.next<LedgerEntry>(),
                                     .lot = *use.lot,
                                     .at = m_clock.at,
                                     .who = step.who,
                                     .kind = LedgerKind::used,
                                     .amount = use.amount->negated(),
                                     .use = use.id});
    }

    void addPhotographs(BulkWriter& writer, const Id<Job>& job) {
        std::vector<AnyRecord> all;
        const std::int64_t count = about(kPhotographsAJob);
        for (std::int64_t i = 0; i < count; ++i) {
            const auto file = static_cast<std::size_t>(upTo(kFiles));
            all.emplace_back(Photograph{
                .id = m_ids.next<Photograph>(),
                .job = job,
                .role = static_cast<PhotoRole>(i * 4 / count),
                .position = i,
                .caption = oneOf(kSeen),
                .digest = m_digests[file],
                .mediaType = "image/jpeg",
                .fileName = fmt::format("IMG_{:05}.jpg", upTo(99'999)),
                .bytes = static_cast<std::int64_t>(fmt::format("picture {}", file).size()),
                .addedAt = m_clock.at});
            if (all.size() == 5 || i + 1 == count) {
                writer.add(m_clock.at, someone(), fmt::format("{} photographs added", all.size()),
                           all);
                all.clear();
            }
        }
    }

    std::filesystem::path m_folder;
    std::int64_t m_jobs;
    Instant m_start = *instantFromIso("2011-01-03T08:00:00Z");
    Instant m_end = *instantFromIso("2031-01-03T08:00:00Z");
    MovingClock m_clock{};
    IdSource m_ids;
    std::mt19937_64 m_chance{1612};
    std::vector<Id<Person>> m_people;
    std::vector<Id<Owner>> m_owners;
    std::vector<Id<Material>> m_materials;
    std::vector<Id<Lot>> m_longLived;
    std::vector<Id<Lot>> m_lots;
    std::int64_t m_lotCount = 0;
    std::vector<Digest> m_digests;
};

} // namespace

void makeWorkshop(const std::filesystem::path& folder, std::int64_t jobs) {
    Maker(folder, jobs).make();
}

} // namespace headcap::bench
