# Writes OUT: a C++ source whose FUNCTION returns the texts of INPUTS, named without their folder.
set(body "")
foreach(file ${INPUTS})
    get_filename_component(name ${file} NAME)
    file(READ ${file} text)
    string(LENGTH "${text}" length)
    set(pieces "")
    set(at 0)
    # Several literals, so that none is longer than a compiler must accept.
    while(at LESS length)
        string(SUBSTRING "${text}" ${at} 8000 piece)
        string(APPEND pieces "R\"~~~(${piece})~~~\"\n")
        math(EXPR at "${at} + 8000")
    endwhile()
    if(pieces STREQUAL "")
        set(pieces "\"\"")
    endif()
    string(APPEND body "        {\"${name}\", ${pieces}},\n")
endforeach()
file(WRITE ${OUT} "#include \"core/values/embedded_file.h\"

#include <vector>

namespace headcap {
std::vector<EmbeddedFile> ${FUNCTION}();
std::vector<EmbeddedFile> ${FUNCTION}() {
    return {
${body}    };
}
} // namespace headcap
")
