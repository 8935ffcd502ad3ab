# How a folder becomes a target.
#
#   standin_library(NAME [PUBLIC targets…] [PRIVATE targets…])
#     the library standin_NAME out of every *.cpp of the calling folder
#   standin_test(NAME targets…)
#     the program test_NAME out of every *_test.cpp of the calling folder,
#     its cases known to ctest one by one

add_library(standin_warnings INTERFACE)
target_compile_options(standin_warnings INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor -Woverloaded-virtual)
if(STANDIN_WERROR)
  target_compile_options(standin_warnings INTERFACE -Werror)
endif()

function(standin_library name)
  cmake_parse_arguments(ARG "" "" "PUBLIC;PRIVATE" ${ARGN})
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*.cpp)
  if(NOT sources)  # a folder whose first source is still to come
    set(sources ${CMAKE_CURRENT_BINARY_DIR}/${name}_empty.cpp)
    file(TOUCH ${sources})
  endif()
  add_library(standin_${name} STATIC ${sources})
  add_library(standin::${name} ALIAS standin_${name})
  target_include_directories(standin_${name} PUBLIC ${CMAKE_SOURCE_DIR}/src ${CMAKE_SOURCE_DIR})
  target_link_libraries(standin_${name} PUBLIC ${ARG_PUBLIC} PRIVATE ${ARG_PRIVATE} standin_warnings)
endfunction()

function(standin_test name)
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*_test.cpp)
  if(NOT sources)
    return()
  endif()
  add_executable(test_${name} ${sources})
  target_include_directories(test_${name} PRIVATE ${CMAKE_SOURCE_DIR}/tests)
  target_link_libraries(test_${name} PRIVATE ${ARGN} standin_warnings GTest::gtest_main GTest::gmock)
  target_compile_definitions(test_${name} PRIVATE STANDIN_TESTDATA="${CMAKE_SOURCE_DIR}/testdata"
                                                  STANDIN_SOURCE="${CMAKE_SOURCE_DIR}")
  gtest_discover_tests(test_${name} TEST_PREFIX ${name}. PROPERTIES LABELS unit TIMEOUT 120 DISCOVERY_TIMEOUT 60)
endfunction()
