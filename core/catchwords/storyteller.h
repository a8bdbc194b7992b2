// Finds the least surprising account of a book's leaves, a beam along them. Internal to it:
// leaf_story.h is what others use.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/catchwords/leaf_story.h"
#include "core/catchwords/story_state.h"

namespace headcap::core {

inline constexpr double kBeamDepth = 14.0; // accounts dearer by more are let go

class Storyteller {
public:
    Storyteller(const BoundBook& book, const LeafOrder& order, const LeafLinks& links,
                const BookHabits& habits);

    std::vector<StoryLeaf> tell();

private:
    using State = StoryState;
    using Node = StoryNode;

    struct Mark {
        bool any = false;
        bool named = false;
        int series = kUnknownSeries;
        int rank = 0;
        int leaf = 0;
    };

    // What an account is worth, and which are kept: leaf_story.cpp.
    Mark intern(const std::optional<PrintedMark>& mark);
    void emit(Node node, double cost);
    double markCost(Node& node) const;
    void keep(const Node& node, double cost);
    void prune();
    std::vector<StoryLeaf> traceBack() const;
    static void nameEarlierLeaves(std::vector<StoryLeaf>& story);

    // The ways from one leaf to the next: story_turns.cpp.
    void begin();
    void advance();
    void leave(int counted, double cost);
    static double lackingCost(int leaves);
    Node step(int counted, int lacking) const;
    void stay(int counted, int lacking, double cost);
    void turnOver(int counted, double cost);
    void loseAtTurn(int counted, double cost);
    void enterNext(int countedBefore, int countedAfter, int lackingBefore, int lackingAfter,
                   int gatherings, double cost);
    void breakOff(int counted, double cost);
    void beginSeries(Node next, double cost, int counted, int before);

    const BoundBook& m_book;
    const LeafOrder& m_order;
    const LeafLinks& m_links;
    const BookHabits& m_habits;
    int m_unit;
    std::vector<std::string> m_series;
    std::vector<Mark> m_marks;
    std::vector<TurnEvidence> m_turns;
    std::vector<std::vector<Node>> m_layers;
    std::size_t m_at = 0;
    std::size_t m_from = 0;
    const Node* m_node = nullptr;
    std::vector<Node> m_next;
    std::unordered_map<State, std::size_t, StoryStateHash> m_index;
    double m_best = 0;
};

} // namespace headcap::core
