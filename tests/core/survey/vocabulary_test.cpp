#include <filesystem>
#include <fstream>
#include <set>

#include <gtest/gtest.h>

#include "core/custody/hazards.h"
#include "core/materials/material_kinds.h"
#include "core/survey/condition_terms.h"
#include "core/treatment/techniques.h"
#include "tests/support/job_builder.h"

namespace headcap::core {
namespace {

TEST(ConditionTerms, areReadWholeAndOnce) {
    std::set<std::string> components;
    for (const ConditionComponent& component : conditionComponents()) {
        EXPECT_TRUE(components.insert(component.key).second) << component.key;
        std::set<std::string> terms;
        for (const ConditionTerm& term : component.terms) {
            EXPECT_TRUE(terms.insert(term.key).second) << component.key << "/" << term.key;
            EXPECT_TRUE(term.definition.ends_with('.')) << term.key;
            for (const std::string& hazard : term.hazards) {
                EXPECT_NE(hazardNamed(hazard), nullptr) << hazard;
            }
        }
    }
    EXPECT_EQ(termName("boards", "detached"), "Detached");
    EXPECT_EQ(termName("boards", "gnawed by a dog"), "gnawed by a dog");
}

TEST(Hazards, pointToTermsThatExistAndDeferToQualifiedPersons) {
    for (const HazardKind& kind : hazardKinds()) {
        EXPECT_NE(kind.caution.find("local rules"), std::string::npos) << kind.key;
        EXPECT_FALSE(kind.sources.empty()) << kind.key;
        for (const std::string& likely : kind.likely) {
            const std::size_t slash = likely.find('/');
            EXPECT_NE(conditionTerm(likely.substr(0, slash), likely.substr(slash + 1)), nullptr)
                << likely;
        }
    }
}

TEST(Hazards, areLikelyWhereTheSurveySaysSo) {
    tests::JobBuilder b;
    EXPECT_TRUE(likelyHazards(b.file).empty());
    b.file.item.binding = "Stamped Green cloth, 1855";
    ASSERT_EQ(likelyHazards(b.file).size(), 1U);
    EXPECT_EQ(likelyHazards(b.file).front()->key, "arsenical_green");
    b.file.hazards.push_back(Hazard{.id = b.ids.next<Hazard>(),
                                    .item = b.file.item.id,
                                    .term = "arsenical_green",
                                    .who = std::nullopt});
    EXPECT_TRUE(likelyHazards(b.file).empty());
}

TEST(Techniques, areReadWholeAndSaidOnce) {
    std::set<std::string> keys;
    std::set<std::string> phrases;
    for (const Technique& technique : techniques()) {
        EXPECT_TRUE(keys.insert(technique.key).second) << technique.key;
        EXPECT_FALSE(technique.sources.empty()) << technique.key;
        EXPECT_FALSE(technique.said.empty()) << technique.key;
        for (const auto* said : {&technique.said, &technique.named}) {
            for (const std::string& phrase : *said) {
                EXPECT_TRUE(phrases.insert(phrase).second) << phrase;
            }
        }
    }
    EXPECT_GE(keys.size(), 50U);
    EXPECT_EQ(TechniquesInForce{}.nameOf("tipping_in"), "Tipping in");
    EXPECT_EQ(TechniquesInForce{}.nameOf("own word"), "own word");
}

// Identifiers of the Art & Architecture Thesaurus, read in its published data.
TEST(Vocabularies, nameThesaurusEntriesThatExist) {
    const std::filesystem::path path = std::filesystem::path{HEADCAP_REFERENCE_DIR} / "aat_ids.csv";
    std::ifstream file{path};
    if (!file) {
        GTEST_SKIP() << "no thesaurus identifiers at " << path;
    }
    std::set<std::string> known;
    for (std::string line; std::getline(file, line);) {
        known.insert(line.substr(0, line.find(',')));
    }
    const auto expect = [&](const std::string& id) {
        EXPECT_TRUE(id.empty() || known.contains(id)) << id;
    };
    for (const Technique& technique : techniques()) {
        expect(technique.aat);
    }
    for (const MaterialKind& kind : materialKinds()) {
        expect(kind.aat);
    }
    for (const ConditionComponent& component : conditionComponents()) {
        for (const ConditionTerm& term : component.terms) {
            expect(term.aat);
        }
    }
}

} // namespace
} // namespace headcap::core
