// standin_accuracy PDF_DIR LABEL_DIR [--show] [--only NAME] [--floor F1]
//
// Reads PDF_DIR/NAME.pdf for every LABEL_DIR/NAME.json and prints a line for
// each document and the means. --floor: exit 1 where a document's strict F1 is
// below it. --show: also what differs, row by row.

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <fmt/format.h>

#include "extractors/read_datasheet.h"
#include "score.h"

namespace {

using namespace standin;

struct Arguments {
    std::filesystem::path pdfs, labels;
    std::string only;
    double floor = 0;
    bool show = false;
};

std::optional<Arguments> parse(std::vector<std::string_view> const& words) {
    Arguments out;
    std::vector<std::string_view> places;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "--show") {
            out.show = true;
        } else if (words[i] == "--only" && i + 1 < words.size()) {
            out.only = words[++i];
        } else if (words[i] == "--floor" && i + 1 < words.size()) {
            ++i;
            std::from_chars(words[i].data(), words[i].data() + words[i].size(), out.floor);
        } else {
            places.push_back(words[i]);
        }
    }
    if (places.size() != 2) return std::nullopt;
    out.pdfs = places[0];
    out.labels = places[1];
    return out;
}

std::string contentOf(std::filesystem::path const& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

int run(Arguments const& arguments) {
    auto const vocabulary = vocabulary::Vocabulary::builtIn();
    if (!vocabulary) {
        fmt::print(stderr, "vocabulary: {}\n", vocabulary.error().message);
        return 2;
    }
    std::vector<std::filesystem::path> labels;
    for (auto const& entry : std::filesystem::directory_iterator(arguments.labels)) {
        if (entry.path().extension() == ".json") labels.push_back(entry.path());
    }
    std::ranges::sort(labels);
    double strict = 0, loose = 0, condition = 0, pins = 0;
    int documents = 0, pinDocuments = 0, sure = 0, sureRight = 0, rows = 0;
    bool below = false;
    fmt::print("{:<28} {:>5} {:>5} {:>7} {:>7} {:>7} {:>7}\n", "document", "truth", "read", "strict", "loose", "cond", "pins");
    for (auto const& path : labels) {
        std::string const name = path.stem().string();
        if (!arguments.only.empty() && name.find(arguments.only) == std::string::npos) continue;
        auto const pdf = arguments.pdfs / (name + ".pdf");
        auto const label = accuracy::parseLabel(contentOf(path));
        if (!label || !std::filesystem::exists(pdf)) continue;
        auto const sheet = reading::readDatasheet(pdf.string(), {}, *vocabulary);
        if (!sheet) {
            fmt::print("{:<28} not read: {}\n", name, sheet.error().message);
            continue;
        }
        accuracy::Score const score = accuracy::scoreReading(*label, *sheet);
        bool const empty = score.strict.truth == 0 && score.strict.read == 0;
        double const f1 = empty ? 1.0 : score.strict.f1();
        fmt::print("{:<28} {:>5} {:>5} {:>7.4f} {:>7.4f} {:>7.4f} ", name, score.strict.truth, score.strict.read, f1, empty ? 1.0 : score.loose.f1(), score.conditionShare());
        if (score.pins.truth > 0) {
            fmt::print("{:>7.4f}\n", score.pins.f1());
            pins += score.pins.f1();
            ++pinDocuments;
        } else {
            fmt::print("{:>7}\n", "-");
        }
        if (arguments.show) {
            for (std::string const& line : score.differences) fmt::print("    {}\n", line);
            for (std::string const& line : score.sureWrong) fmt::print("    sure, wrong {}\n", line);
        }
        strict += f1;
        loose += empty ? 1.0 : score.loose.f1();
        condition += score.conditionShare();
        sure += score.sure;
        sureRight += score.sureRight;
        rows += score.strict.read;
        below = below || f1 < arguments.floor || (score.pins.truth > 0 && score.pins.f1() < arguments.floor);
        ++documents;
    }
    if (documents == 0) {
        fmt::print(stderr, "no labelled document found\n");
        return 2;
    }
    fmt::print("{:<28} {:>5} {:>5} {:>7.4f} {:>7.4f} {:>7.4f} {:>7.4f}\n", "mean", "", "", strict / documents, loose / documents, condition / documents,
               pinDocuments > 0 ? pins / pinDocuments : 0.0);
    fmt::print("rows with confidence of 0.9 and more: {:.3f} of all, {:.4f} of them right\n", rows > 0 ? static_cast<double>(sure) / rows : 0.0,
               sure > 0 ? static_cast<double>(sureRight) / sure : 0.0);
    return below ? 1 : 0;
}

}  // namespace

int main(int count, char** values) {
    std::vector<std::string_view> const words(values + std::min(1, count), values + count);
    std::optional<Arguments> const arguments = parse(words);
    if (!arguments) {
        fmt::print(stderr, "usage: standin_accuracy PDF_DIR LABEL_DIR [--show] [--only NAME] [--floor F1]\n");
        return 2;
    }
    return run(*arguments);
}
