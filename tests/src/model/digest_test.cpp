#include "model/digest.h"

#include <gtest/gtest.h>

namespace standin::model {
namespace {

// Known answers of FIPS 180-2.
TEST(Sha256Hex, KnownAnswers) {
    EXPECT_EQ(sha256Hex(std::string_view{""}), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    EXPECT_EQ(sha256Hex(std::string_view{"abc"}), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

}  // namespace
}  // namespace standin::model
