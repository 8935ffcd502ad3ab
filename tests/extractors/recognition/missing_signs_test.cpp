#include "extractors/recognition/missing_signs.h"

#include <utility>

#include <gtest/gtest.h>

namespace standin::recognition {
namespace {

TEST(WithOhms, ValuesAndPrefixesOnly) {
    for (auto const& [read, meant] : {std::pair{"75mQ", "75m\u03A9"},
                                      {"120Q", "120\u03A9"},
                                      {"1.5kQ", "1.5k\u03A9"},
                                      {"MQ", "M\u03A9"},
                                      {"Q", "Q"},
                                      {"IQ", "IQ"},
                                      {"Q1", "Q1"},
                                      {"D2Q", "D2Q"},
                                      {"AmQ", "AmQ"},
                                      {"", ""}}) {
        EXPECT_EQ(withOhms(read), meant);
    }
}

}  // namespace
}  // namespace standin::recognition
