// What the fault programs share: how much to do, how far it is, what was lost, and the closing
// line.
#pragma once

#include <chrono>
#include <cstdio>
#include <cstring>
#include <string>

namespace headcap::test {

class FaultProgram {
public:
    FaultProgram(int argc, char** argv, int briefly, int longer) : m_rounds(briefly) {
        for (int i = 1; i < argc; ++i) {
            if (std::strcmp(argv[i], "--long") == 0) {
                m_rounds = longer;
            }
        }
    }
    [[nodiscard]] int rounds() const { return m_rounds; }

    // Said now and then on standard error, for a long form runs for minutes.
    void tried(int rounds) const {
        if (rounds % kSayEvery == 0 && rounds < m_rounds) {
            std::fprintf(stderr, "%d of %d, %lld s, %d lost\n", rounds, m_rounds, seconds(),
                         m_lost);
        }
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
    int m_lost = 0;
    bool m_isControl = false;
};

} // namespace headcap::test
