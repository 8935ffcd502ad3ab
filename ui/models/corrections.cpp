// The file stays as people wrote it: members keep their order, and undo puts back
// the very text that was there. A file that somebody else changed in between is
// left alone.
//
// Tested by tests/ui/models/corrections_test.cpp.
#include "ui/models/corrections.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUndoCommand>
#include <nlohmann/json.hpp>

#include "model/durable_file.h"
#include "model/file.h"
#include "ui/models/qt_text.h"
#include "ui/models/session.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

using corrections::Field;
using nlohmann::ordered_json;

constexpr std::array kNamingFields{Field::Name, Field::Symbol, Field::Condition, Field::Variant, Field::Min, Field::Typ, Field::Max, Field::Unit};
constexpr std::size_t kHashDigits = 16;   // of the document's SHA-256
constexpr double kSamePlace = 0.11;       // points, the rounding of both
constexpr int kIndent = 1;

std::string valueText(std::optional<model::Value> const& value) { return value ? value->text : std::string{}; }

std::string textOf(model::Parameter const& parameter, Field field) {
    switch (field) {
        case Field::Name: return parameter.name;
        case Field::Symbol: return parameter.symbol;
        case Field::Condition: return parameter.condition;
        case Field::TableCondition: return parameter.tableCondition;
        case Field::Variant: return parameter.variant;
        case Field::Min: return valueText(parameter.min);
        case Field::Typ: return valueText(parameter.typ);
        case Field::Max: return valueText(parameter.max);
        case Field::Unit: return parameter.unit;
        case Field::Kind:
        case Field::Printed: break;
    }
    return {};
}

model::Parameter const* findParameter(model::Datasheet const& sheet, std::string const& id) {
    auto const found = std::find_if(sheet.parameters.begin(), sheet.parameters.end(), [&](auto const& parameter) { return parameter.id == id; });
    return found == sheet.parameters.end() ? nullptr : &*found;
}

std::array<double, 4> rounded(model::Rect const& box) {
    auto const tenth = [](model::Points value) { return std::round(static_cast<double>(value) * 10) / 10; };
    return {tenth(box.x0), tenth(box.y0), tenth(box.x1), tenth(box.y1)};
}

ordered_json orNull(std::string const& text) { return text.empty() ? ordered_json(nullptr) : ordered_json(text); }

std::string nameText(Field field) { return std::string(corrections::nameOf(field)); }

bool isAbout(ordered_json const& entry, std::string const& sha256, int page, std::array<double, 4> const& box) {
    auto const hash = entry.at("document").get<std::string>();
    if (!sha256.starts_with(hash) || entry.at("page").get<int>() != page || !entry.contains("box")) return false;
    for (std::size_t i = 0; i < box.size(); ++i) {
        if (std::abs(entry.at("box").at(i).get<double>() - box[i]) > kSamePlace) return false;
    }
    return true;
}

void put(ordered_json& says, std::vector<corrections::FieldText> const& texts) {
    for (auto const& text : texts) says[nameText(text.field)] = orNull(text.text);
}

model::Error usage(std::string const& path, QString const& message) { return {model::ErrorKind::Usage, fromQt(message), path, 0}; }

}  // namespace

std::string textAsRead(model::Datasheet const& sheet, model::Parameter const& parameter, Field field) {
    for (auto const& done : sheet.document.corrections) {
        if (done.outcome == model::CorrectionOutcome::Applied && done.parameter == parameter.id && done.field == corrections::nameOf(field)) return done.read;
    }
    return textOf(parameter, field);
}

model::Result<std::string> withCorrection(std::string const& file, std::string const& path, ReadPair const& pair, RowCorrection const& correction) {
    auto const& sheet = sheetOf(pair, correction.side);
    auto const* parameter = findParameter(sheet, correction.parameter);
    if (!correction.parameter.empty() && parameter == nullptr) return tl::unexpected(usage(path, Corrections::tr("the row is no longer there")));
    // Checked before it is changed: what is no file of corrections is not touched.
    if (!file.empty()) {
        if (auto const entries = corrections::parseCorrections(file, path); !entries) return tl::unexpected(entries.error());
    }
    auto whole = file.empty() ? ordered_json{{"schema", "standin.corrections/1"}, {"corrections", ordered_json::array()}} : ordered_json::parse(file);
    auto& list = whole["corrections"];
    int const page = parameter != nullptr ? parameter->page : correction.page;
    auto const box = rounded(parameter != nullptr ? parameter->box : correction.box);
    auto const found = parameter == nullptr ? list.end() : std::find_if(list.begin(), list.end(), [&](auto const& entry) { return isAbout(entry, sheet.document.sha256, page, box); });
    bool const putIn = found != list.end() && found->contains("add");
    if (putIn && correction.notAParameter) {
        list.erase(found);
    } else {
        ordered_json entry;
        if (found != list.end()) {
            entry = *found;
        } else {
            entry["document"] = sheet.document.sha256.substr(0, kHashDigits);
            entry["page"] = page;
            if (parameter != nullptr) {
                ordered_json row;
                for (auto const field : kNamingFields) {
                    if (auto const text = textAsRead(sheet, *parameter, field); !text.empty()) row[nameText(field)] = text;
                }
                if (!row.empty()) entry["row"] = std::move(row);
            }
            entry["box"] = box;
        }
        if (correction.notAParameter) {
            entry.erase("set");
            entry["not_a_parameter"] = true;
        } else {
            entry.erase("not_a_parameter");
            put(entry[parameter == nullptr || putIn ? "add" : "set"], correction.texts);
        }
        entry["by"] = correction.by;
        entry["date"] = correction.date;
        entry["why"] = correction.why;
        if (found != list.end()) *found = std::move(entry);
        else list.push_back(std::move(entry));
    }
    auto text = whole.dump(kIndent, ' ', false, ordered_json::error_handler_t::replace) + '\n';
    if (auto const entries = corrections::parseCorrections(text, path); !entries) return tl::unexpected(entries.error());
    return text;
}

// One correction: the file's text before and after.
class CorrectCommand : public QUndoCommand {
public:
    CorrectCommand(Corrections& corrections, std::string path, std::optional<std::string> before, std::string after, QString const& name)
        : QUndoCommand(name), m_corrections(corrections), m_path(std::move(path)), m_before(std::move(before)), m_after(std::move(after)) {}

    void undo() override {
        if (!m_corrections.replace(m_path, m_after, m_before)) setObsolete(true);
    }
    void redo() override {
        if (!m_corrections.replace(m_path, m_before, m_after)) setObsolete(true);
    }

private:
    Corrections& m_corrections;
    std::string m_path;
    std::optional<std::string> m_before;
    std::string m_after;
};

Corrections::Corrections(Session& session) : m_session(session) {}

std::string Corrections::keptPath() const {
    QFileInfo const decisions(m_session.decisions().filePath());
    if (decisions.filePath().isEmpty()) return {};
    return fromQt(decisions.path() + QLatin1Char('/') + decisions.completeBaseName() + QStringLiteral(".corrections.json"));
}

std::string Corrections::filePath() const {
    auto const& given = m_session.request().corrections;
    return given.empty() ? keptPath() : given.back();
}

int Corrections::keptCount() const {
    auto const path = keptPath();
    auto const& given = m_session.request().corrections;
    if (path.empty() || !QFile::exists(toQt(path)) || std::find(given.begin(), given.end(), path) != given.end()) return 0;
    auto const text = model::readFile(path, model::kLongestUserFile);
    if (!text) return 0;
    auto const entries = corrections::parseCorrections(*text, path);
    return entries ? static_cast<int>(entries->size()) : 0;
}

void Corrections::applyKept() {
    auto request = m_session.request();
    request.corrections.push_back(keptPath());
    m_session.open(std::move(request));
}

void Corrections::correct(RowCorrection const& correction) {
    if (!m_session.pair()) return;
    auto const path = filePath();
    std::optional<std::string> before;
    if (QFile::exists(toQt(path))) {
        auto text = model::readFile(path, model::kLongestUserFile);
        if (!text) {
            Q_EMIT troubled(tr("Not corrected. %1").arg(errorText(text.error())));
            return;
        }
        before = std::move(*text);
    }
    auto after = withCorrection(before.value_or(std::string{}), path, *m_session.pair(), correction);
    if (!after) {
        Q_EMIT troubled(tr("Not corrected. %1").arg(errorText(after.error())));
        return;
    }
    auto const* parameter = findParameter(sheetOf(*m_session.pair(), correction.side), correction.parameter);
    auto const row = parameter == nullptr ? tr("a row put in") : shownText(parameter->symbol.empty() ? parameter->name : parameter->symbol);
    m_session.decisions().undoStack().push(new CorrectCommand(*this, path, std::move(before), std::move(*after), tr("correction of %1").arg(row)));
}

bool Corrections::replace(std::string const& path, std::optional<std::string> const& expected, std::optional<std::string> const& text) {
    auto const name = toQt(path);
    std::optional<std::string> found;
    if (QFile::exists(name)) {
        if (auto read = model::readFile(path, model::kLongestUserFile)) found = std::move(*read);
    }
    if (found != expected) {
        Q_EMIT troubled(tr("The file of corrections was changed by somebody else and is left as it is: %1").arg(name));
        return false;
    }
    if (text) {
        QDir().mkpath(QFileInfo(name).absolutePath());
        if (auto const done = model::replaceFile(path, *text); !done) {
            Q_EMIT troubled(tr("The correction could not be saved. %1").arg(errorText(done.error())));
            return false;
        }
    } else if (!QFile::remove(name)) {
        Q_EMIT troubled(tr("The file of corrections could not be removed: %1").arg(name));
        return false;
    }
    auto request = m_session.request();
    std::erase(request.corrections, path);
    if (text) request.corrections.push_back(path);
    Q_EMIT written(name);
    m_session.open(std::move(request));
    return true;
}

}  // namespace standin::ui
