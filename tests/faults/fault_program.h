// What the fault programs share: how much to do, how far it is, what was lost, and the closing
// line.
#pragma once

#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string>

namespace headcap::test {

class FaultProgram {
public:
    FaultProgram(int argc, char** argv, int briefly, int longer) : m_rounds(briefly) {
        for (int i = 1; i < argc; ++i) {
            if (std::strcmp(argv[i], "--long") == 0) {
                m_rounds = longer;
            } else if (std::strcmp(argv[i], "--minutes") == 0 && i + 1 < argc) {
                m_mostSeconds = std::llround(60 * std::strtod(argv[++i], nullptr));
            }
        }
    }
    [[nodiscard]] int rounds() const { return m_rounds; }

    // Whether this round is to be tried; how far it is, it says now and then on standard error.
    [[nodiscard]] bool goesOn(int round) {
        m_tried = round;
        if (round > 0 && round % kSayEvery == 0 && round < m_rounds) {
            std::fprintf(stderr, "%d of %d, %lld s, %d lost\n", round, m_rounds, seconds(), m_lost);
        }
        return round < m_rounds && (m_mostSeconds == 0 || seconds() < m_mostSeconds);
    }
    // "1000", or "640 of 1000" where the minutes were over before.
    [[nodiscard]] std::string tried() const {
        return std::to_string(m_tried) +
               (m_tried < m_rounds ? " of " + std::to_string(m_rounds) : std::string{});
    }

    void lost(const std::string& what) {
        ++m_lost;
        if (!m_isControl) {
            std::printf("LOST     %s\n", what.c_str());
            std::fflush(stdout);
        }
    }
    // A control runs what must lose something, for a program that can't find a loss proves nothing.
    template <class Work>
    void control(const std::string& name, Work work) {
        const int before = m_lost;
        m_isControl = true;
        work();
        m_isControl = false;
        const bool hasLost = m_lost > before;
        m_lost = before;
        if (!hasLost) {
            lost("the control: " + name + " lost nothing");
        }
    }
    // The exit status.
    int close(const std::string& tried) const {
        std::printf("%s: %d lost (%lld s)\n", tried.c_str(), m_lost, seconds());
        return m_lost == 0 ? 0 : 1;
    }

private:
    static constexpr int kSayEvery = 50;

    [[nodiscard]] long long seconds() const {
        return std::chrono::duration_cast<std::chrono::seconds>(std::chrono::steady_clock::now() -
                                                                m_begun)
            .count();
    }

    std::chrono::steady_clock::time_point m_begun = std::chrono::steady_clock::now();
    int m_rounds;
    int m_tried = 0;
    long long m_mostSeconds = 0; // 0: as many as it takes
    int m_lost = 0;
    bool m_isControl = false;
};

} // namespace headcap::test
