// The few signatures that differ between Poppler's releases. The version comes
// from pkg-config as STANDIN_POPPLER_VERSION (22.12 is 2212).
#pragma once

#include <array>
#include <string>

class GooString;

#ifndef STANDIN_POPPLER_VERSION
#define STANDIN_POPPLER_VERSION 2212
#endif

namespace standin::poppler {

#if STANDIN_POPPLER_VERSION >= 2604
using ActualTextString = std::string const&;
#else
using ActualTextString = GooString const*;
#endif

#if STANDIN_POPPLER_VERSION >= 2509
using GroupBox = std::array<double, 4> const&;
#else
using GroupBox = double const*;
#endif

}  // namespace standin::poppler
