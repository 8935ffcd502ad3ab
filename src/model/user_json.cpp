// The library keeps the last of two equal members without a word; here the keys
// of all open objects are watched while it parses. Tested by
// tests/src/model/user_json_test.cpp.
#include "model/user_json.h"

#include <set>
#include <vector>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace standin::model {

namespace {

constexpr int kDeepestNesting = 32;

using Event = nlohmann::json::parse_event_t;

class Watch {
public:
    bool operator()(int depth, Event event, nlohmann::json const& parsed) {
        if (depth > kDeepestNesting) {
            tooDeep = true;
            return false;
        }
        if (event == Event::object_start) m_keys.emplace_back();
        if (event == Event::object_end && !m_keys.empty()) m_keys.pop_back();
        if (event == Event::key && !m_keys.empty() && !m_keys.back().insert(parsed.get<std::string>()).second && repeated.empty()) repeated = parsed.get<std::string>();
        return true;
    }

    bool tooDeep = false;
    std::string repeated;  // the first member that stands twice

private:
    std::vector<std::set<std::string>> m_keys;
};

}  // namespace

Result<nlohmann::json> parseUserJson(std::string_view text, std::string_view schema, std::string const& file) {
    auto const refuse = [&](std::string message) { return tl::unexpected(Error{ErrorKind::Usage, std::move(message), file}); };
    Watch watch;
    auto const callback = [&watch](int depth, Event event, nlohmann::json& parsed) { return watch(depth, event, parsed); };
    auto json = nlohmann::json::parse(text.begin(), text.end(), callback, /*allow_exceptions=*/false);
    if (watch.tooDeep) return refuse("is nested too deeply");
    if (json.is_discarded() || !json.is_object()) return refuse("is not valid JSON");
    if (!watch.repeated.empty()) return refuse(fmt::format("has the member \"{}\" twice in one place; keep one", watch.repeated));
    auto const found = json.find("schema");
    if (found == json.end() || !found->is_string() || found->get_ref<std::string const&>() != schema) {
        return refuse(fmt::format("is of another kind; a file for this option begins with \"schema\": \"{}\"", schema));
    }
    return json;
}

}  // namespace standin::model
