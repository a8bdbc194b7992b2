// What the fault programs share: how much to do, what was lost, and the closing line.
#pragma once

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

    void lost(const std::string& what) {
        ++m_lost;
        if (!m_isControl) {
            std::printf("LOST     %s\n", what.c_str());
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
        std::printf("%s: %d lost\n", tried.c_str(), m_lost);
        return m_lost == 0 ? 0 : 1;
    }

private:
    int m_rounds;
    int m_lost = 0;
    bool m_isControl = false;
};

} // namespace headcap::test
