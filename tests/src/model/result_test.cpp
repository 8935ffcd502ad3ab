#include "model/result.h"

#include <gtest/gtest.h>

namespace standin::model {
namespace {

TEST(Describe, NamesFilePageAndCauseOnOneLine) {
    EXPECT_EQ(describe({ErrorKind::Damaged, "the page cannot be read;\nsave it again", "a.pdf", 3}), "a.pdf: page 3: the page cannot be read; save it again");
    EXPECT_EQ(describe({ErrorKind::Usage, "two outputs to standard output", "", 0}), "two outputs to standard output");
}

}  // namespace
}  // namespace standin::model
