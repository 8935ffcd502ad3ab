// One cause, one finding: what stands in one sheet only because the other has no such
// section, no such row for a further version, no such running head; and what is told of
// several versions in the same words. Private to this folder.
//
//     groupFindings(findings, called, sheets);
//     // 84 sentences of "Application information" in the reference only
//     //   -> one finding of kind Section, and the 84 as consequences of it
#pragma once

#include <string>
#include <vector>

#include "model/comparison.h"
#include "risk/sheet_view.h"

namespace standin::risk {

// `findings` are judged and in document order, `called` holds the cautions of each
// (the two stay parallel). Only findings that stand on their own are grouped,
// nothing is dropped, and no finding changes its level or severity. Of one-sided ones:
//  - sentences, other rows, figures and headings of note and below, by chapter; the
//    group gets a new finding of kind Section in front of its first member;
//  - lines of running heads, and rows of one parameter: under the first of them.
// Of two-sided ones: rows of several versions that print the same in everything else, in each
// sheet: under the first of them, whose title names the other versions.
void groupFindings(std::vector<model::Finding>& findings, std::vector<std::vector<std::string>>& called, SheetView const& sheets);

}  // namespace standin::risk
