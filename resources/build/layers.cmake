# What every target of the house shares: its flags, its include path, and how data are built in.

add_library(headcap_flags INTERFACE)
# gcc's warnings are errors; clang, which builds for the sanitizers, has others of the same names.
# -Wrestrict is wrong about "x" + string in gcc 12 (GCC bug 105651).
target_compile_options(headcap_flags INTERFACE
    -Wall -Wextra -Wpedantic -Werror -Wshadow -Wconversion -Wnon-virtual-dtor -Woverloaded-virtual
    -Wno-missing-field-initializers $<$<CXX_COMPILER_ID:Clang>:-Wno-error> $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>)
if(HEADCAP_SANITIZE)
    target_compile_options(headcap_flags INTERFACE
        -fsanitize=${HEADCAP_SANITIZE} -fno-omit-frame-pointer -fno-sanitize-recover=all)
    target_link_options(headcap_flags INTERFACE -fsanitize=${HEADCAP_SANITIZE})
endif()

# Under a sanitizer what every source includes of the libraries is read once a target, which saves a
# third of the time. In no other build: there a missing include must show.
function(headcap_precompile target)
    if(HEADCAP_SANITIZE)
        target_precompile_headers(${target} PRIVATE
            <algorithm> <array> <chrono> <filesystem> <functional> <map> <memory> <optional> <set>
            <span> <string> <string_view> <variant> <vector> <fmt/format.h> <nlohmann/json.hpp>
            <tl/expected.hpp> ${ARGN})
    endif()
endfunction()

# Gives a target one folder of the house, and no other, on its include path: files are named from
# the root ("core/values/length.h"), and an include that points upward does not compile.
function(headcap_layer target folder)
    set(gate ${PROJECT_BINARY_DIR}/layers/${folder})
    file(MAKE_DIRECTORY ${gate})
    file(CREATE_LINK ${PROJECT_SOURCE_DIR}/${folder} ${gate}/${folder} SYMBOLIC)
    target_include_directories(${target} PUBLIC ${gate})
    target_link_libraries(${target} PRIVATE headcap_flags)
endfunction()

# Builds text files into a target: headcap_embed(target function file…) defines
# std::vector<headcap::EmbeddedFile> FUNCTION(), in the order given, names without their folder.
function(headcap_embed target function)
    set(out ${CMAKE_CURRENT_BINARY_DIR}/${function}.cpp)
    set(inputs)
    foreach(file ${ARGN})
        list(APPEND inputs ${CMAKE_CURRENT_SOURCE_DIR}/${file})
    endforeach()
    add_custom_command(OUTPUT ${out}
        COMMAND ${CMAKE_COMMAND} -DOUT=${out} -DFUNCTION=${function} "-DINPUTS=${inputs}"
                -P ${PROJECT_SOURCE_DIR}/resources/build/embed.cmake
        DEPENDS ${inputs} ${PROJECT_SOURCE_DIR}/resources/build/embed.cmake
        VERBATIM)
    target_sources(${target} PRIVATE ${out})
endfunction()
