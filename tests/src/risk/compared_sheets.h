// Two sheets compared and judged with the built-in vocabulary and no options.
#pragma once

#include <utility>

#include <gtest/gtest.h>

#include "risk/compare_datasheets.h"

namespace standin::risk::testing {

inline model::Comparison compared(model::Datasheet const& reference, model::Datasheet const& candidate) {
    static vocabulary::Vocabulary const words = *vocabulary::Vocabulary::builtIn();
    auto comparison = compareDatasheets(reference, candidate, {}, words);
    EXPECT_TRUE(comparison.has_value());
    return comparison ? std::move(*comparison) : model::Comparison{};
}

}  // namespace standin::risk::testing
