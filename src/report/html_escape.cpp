// Tested by tests/src/report/html_report_test.cpp.
#include "report/html_escape.h"

#include "text/visible.h"

namespace standin::report {

std::string escaped(std::string_view foreign) {
    std::string out;
    for (char const c : text::visible(foreign)) {
        switch (c) {
            case '&': out += "&amp;"; break;
            case '<': out += "&lt;"; break;
            case '>': out += "&gt;"; break;
            case '"': out += "&quot;"; break;
            case '\'': out += "&#39;"; break;
            default: out += c;
        }
    }
    return out;
}

}  // namespace standin::report
