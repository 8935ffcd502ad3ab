#include "report/overlay.h"

#include <gtest/gtest.h>

#include "report/overlay_page.h"

namespace standin::report {
namespace {

using namespace model;

std::size_t countOf(std::string const& text, std::string_view part) {
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) ++count;
    return count;
}

Word word(std::string text, Rect box, Owner owner) {
    Word word;
    word.text = std::move(text);
    word.box = box;
    word.size = 9;
    word.owner = owner;
    return word;
}

PageLayout page() {
    PageLayout page;
    page.page = 1;
    page.width = 400;
    page.height = 300;
    page.words = {word("Delay", {20, 50, 60, 60}, Owner::Parameter), word("25", {100, 50, 115, 60}, Owner::Parameter), word("<7>", {20, 100, 30, 110}, Owner::None)};
    page.blocks = {{0, 1, {20, 50, 115, 60}, BlockRole::Paragraph, 0, 0}};
    return page;
}

Cell cell(int column, std::string text, Rect box) {
    Cell cell;
    cell.row = 1;
    cell.column = column;
    cell.text = std::move(text);
    cell.box = box;
    return cell;
}

Datasheet sheet() {
    Datasheet sheet;
    sheet.document.file = "<b>.pdf";
    sheet.document.pages = 1;
    Table table;
    table.id = "t1";
    table.page = 1;
    table.kind = TableKind::Specification;
    table.box = {20, 40, 300, 70};
    table.cells = {cell(0, "Delay", {20, 48, 95, 62}), cell(1, "VDD = 3 V", {200, 48, 260, 62}), cell(2, "25", {98, 48, 120, 62}), cell(3, "ms", {270, 48, 300, 62})};
    sheet.tables = {table};
    Parameter p;
    p.id = "p1";
    p.table = "t1";
    p.page = 1;
    p.name = "Delay";
    p.condition = "VDD = 3 V";
    p.typ = Value{"25", "25", "0.025", {100, 50, 115, 60}};
    p.unit = "ms";
    p.box = {20, 48, 300, 62};
    p.confidence = {0.6, {"no column titles"}};
    sheet.parameters = {p};
    sheet.coverage.unaccounted = {{"7", 1, {20, 100, 30, 110}}};
    return sheet;
}

TEST(RoleIn, TellsWhatACellIsInTheRow) {
    auto const s = sheet();
    auto const& cells = s.tables[0].cells;
    EXPECT_EQ(roleIn(s.parameters[0], cells[0]), CellRole::Name);
    EXPECT_EQ(roleIn(s.parameters[0], cells[1]), CellRole::Condition);
    EXPECT_EQ(roleIn(s.parameters[0], cells[2]), CellRole::Typ);
    EXPECT_EQ(roleIn(s.parameters[0], cells[3]), CellRole::Unit);
    auto below = cells[0];
    below.box = {20, 80, 95, 94};
    EXPECT_EQ(roleIn(s.parameters[0], below), CellRole::None);
}

TEST(OverlayHtml, DrawsEveryLayer) {
    PageLayout const pages[] = {page()};
    auto const html = overlayHtml(sheet(), pages, nullptr);
    EXPECT_EQ(countOf(html, "<rect class=\"word "), 3U);
    EXPECT_EQ(countOf(html, "<rect class=\"number parameter\""), 1U);
    EXPECT_EQ(countOf(html, "<rect class=\"number none\""), 1U);
    EXPECT_EQ(countOf(html, "<rect class=\"cell\""), 4U);
    EXPECT_EQ(countOf(html, "<rect class=\"role typ\""), 1U);
    EXPECT_EQ(countOf(html, "<rect class=\"role name\""), 1U);
    EXPECT_EQ(countOf(html, "<rect class=\"row doubted\""), 1U);
    EXPECT_EQ(countOf(html, "<rect class=\"unaccounted\""), 1U);
    EXPECT_NE(html.find("no column titles"), std::string::npos);
    EXPECT_NE(html.find("svg viewBox=\"0 0 400.0 300.0\""), std::string::npos);
    EXPECT_NE(html.find("class=\"plain\""), std::string::npos);
}

// Foreign text may not become part of the page, and nothing is fetched or run.
TEST(OverlayHtml, IsHarmless) {
    PageLayout const pages[] = {page()};
    auto const html = overlayHtml(sheet(), pages, nullptr);
    EXPECT_EQ(html.find("<b>.pdf"), std::string::npos);
    EXPECT_EQ(html.find("<7>"), std::string::npos);
    EXPECT_EQ(html.find("<script"), std::string::npos);
    EXPECT_NE(html.find("default-src 'none'"), std::string::npos);
}

class OnePicture final : public PagePictures {
public:
    [[nodiscard]] int pageCount() const override { return 1; }
    [[nodiscard]] Result<Rect> pageBox(int) const override { return Rect{0, 0, 400, 300}; }
    [[nodiscard]] Result<Picture> render(int page, Rect const& box, double) override {
        if (page != 1) return tl::unexpected(Error{ErrorKind::Usage, "no such page", {}});
        return Picture{2, 1, box, {255, 0, 0, 0, 0, 255}};
    }
};

TEST(OverlayHtml, PutsThePictureBeneath) {
    PageLayout pages[] = {page(), page()};
    pages[1].page = 2;
    OnePicture pictures;
    auto const html = overlayHtml(sheet(), pages, &pictures);
    EXPECT_EQ(countOf(html, "href=\"data:image/png;base64,"), 1U);
    EXPECT_EQ(countOf(html, "class=\"drawn\""), 1U);
    EXPECT_EQ(countOf(html, "class=\"plain\""), 1U);
}

}  // namespace
}  // namespace standin::report
