package org.neckgeom.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.drawing.Markup;
import org.neckgeom.text.Numbers;

/** Sheets of templates cut into pages of paper, the map of them first; as they are, or as one page of HTML to print. */
final class TemplatePages {

    private TemplatePages() {}

    static List<TemplatePage> of(String name, Map<TemplatePart, Sheet> sheets, Paper paper) {
        Map<TemplatePart, PageGrid> grids = new LinkedHashMap<>();
        sheets.forEach((part, sheet) -> grids.put(part, new PageGrid(sheet, paper)));
        int count = grids.values().stream().mapToInt(grid -> grid.list().size()).sum();
        List<TemplatePage> pages = new ArrayList<>();
        pages.add(new TemplatePage(
                paper, name + ": map of " + count + " pages of templates", PageMap.of(grids, paper), 0, 0));
        grids.forEach((part, grid) -> {
            for (PageGrid.Tile tile : grid.list()) {
                String heading = name + ": " + part + ", page " + tile.name() + " of "
                        + grid.list().size();
                pages.add(new TemplatePage(paper, heading, grid.on(tile), tile.u(), grid.bottom(tile)));
            }
        });
        return List.copyOf(pages);
    }

    /** The pages, all of one paper that lies one way. */
    static String html(String title, List<TemplatePage> pages) {
        Markup page = new Markup();
        page.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").open("head");
        page.empty("meta", "charset", "utf-8");
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.element("title", title);
        page.open("style").append(style(pages.get(0))).close().close().open("body");
        page.open("main").element("h1", title);
        pages.forEach(sheet -> writeOn(page, sheet));
        page.close().close().close();
        return "<!DOCTYPE html>\n" + page + "\n";
    }

    private static void writeOn(Markup page, TemplatePage sheet) {
        double across = TemplatePage.window(sheet.acrossMm());
        double down = TemplatePage.window(sheet.downMm());
        page.open("section");
        page.element("h2", sheet.heading());
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "role",
                "img",
                "aria-label",
                "At full size: " + sheet.heading(),
                "width",
                n(across) + "mm",
                "height",
                n(down) + "mm",
                "viewBox",
                n(sheet.left()) + " 0 " + n(across) + " " + n(down));
        // Drawn downwards from the window's upper edge, so that the view box begins at 0.
        TemplateSvg.draw(page, sheet.marks(), sheet.bottom() + down);
        page.close().close();
    }

    private static String style(TemplatePage page) {
        return "@page{size:" + page.paper().css() + (page.isUpright() ? " portrait" : " landscape") + ";margin:0}\n"
                + "body{margin:0;background:#fff;color:#000;font-family:system-ui,sans-serif}\n"
                + "section{position:relative;box-sizing:border-box;overflow:hidden;width:" + n(page.acrossMm())
                + "mm;height:" + n(page.downMm()) + "mm;padding:" + n(TemplatePage.MARGIN)
                + "mm;break-inside:avoid}\n"
                + "section+section{break-before:page}\n"
                // For those who do not see the sheets; nothing of it is printed.
                + "h1{position:absolute;width:1px;height:1px;margin:0;overflow:hidden;clip-path:inset(50%)}\n"
                + "h2{position:absolute;left:" + n(TemplatePage.MARGIN) + "mm;top:3mm;margin:0;font-size:3.6mm}\n"
                + "svg{display:block}\n"
                + "text{font-family:\"Liberation Sans\",Arial,Helvetica,sans-serif}\n";
    }

    private static String n(double value) {
        return Numbers.trimmed(value, 4);
    }
}
