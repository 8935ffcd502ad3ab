// A whole command, run in the test's own process.
#pragma once

#include <cstdio>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "cli/run.h"

namespace standin::testing {

struct Ended {
    int status = -1;
    std::string output;  // standard output
    std::string errors;  // standard error
};

// `words` are what a user would type after the program's name.
inline Ended runCommand(std::vector<std::string> const& words, cli::Program const& program) {
    std::vector<char const*> argv{"standin"};
    for (auto const& word : words) argv.push_back(word.c_str());
    ::testing::internal::CaptureStdout();
    ::testing::internal::CaptureStderr();
    Ended ended;
    ended.status = cli::run(static_cast<int>(argv.size()), argv.data(), program);
    std::fflush(stdout);
    ended.output = ::testing::internal::GetCapturedStdout();
    ended.errors = ::testing::internal::GetCapturedStderr();
    return ended;
}

}  // namespace standin::testing
