// The record on A4 pages, with what the HTML form has. The same record gives the
// same bytes.
#pragma once

#include <string>

#include "record/record.h"

namespace standin::record {

[[nodiscard]] std::string recordPdf(Record const& record);

}  // namespace standin::record
