package org.neckgeom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.neckgeom.sheet.Mark.Run;
import org.neckgeom.text.Numbers;

/**
 * Sheets of templates cut into pages of paper that overlap, with crosses to join them by. Each page is a window on the
 * whole sheet of its part; crosses lie on the sheet, so that two pages show the same cross.
 */
final class TemplatePages {

    /** Edge that printers leave white. */
    static final double MARGIN = 10;

    /** How far neighbouring pages show the same. */
    static final double OVERLAP = 10;

    private static final double CROSS = 4;

    private final TemplatePart part;
    private final Template.Laid sheet;
    private final Paper paper;
    private final double windowAcross;
    private final double windowDown;

    private TemplatePages(TemplatePart part, Template.Laid sheet, Paper paper) {
        this.part = part;
        this.sheet = sheet;
        this.paper = paper;
        this.windowAcross = paper.acrossMm() - 2 * MARGIN;
        this.windowDown = paper.downMm() - 2 * MARGIN;
    }

    static String of(String name, Map<TemplatePart, Template.Laid> sheets, Paper paper) {
        Markup page = new Markup();
        page.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").open("head");
        page.empty("meta", "charset", "utf-8");
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.element("title", name + ": templates on " + paper.css());
        page.open("style").append(style(paper)).close().close().open("body");
        page.element(
                "p",
                "Print at 100 %, without fitting to the page. Measure the bars on the paper, both ways, before use. Join"
                        + " the pages of a part at their crosses: rows are lettered downwards, pages numbered across.");
        sheets.forEach((part, sheet) -> new TemplatePages(part, sheet, paper).writeOn(page, name));
        page.close().close();
        return "<!DOCTYPE html>\n" + page + "\n";
    }

    /** A page's place: column from the left, row from the top, and the sheet's point at its upper left. */
    private record Tile(int column, int row, double u, double v) {

        String name() {
            return (char) ('A' + row) + String.valueOf(column + 1);
        }
    }

    private void writeOn(Markup page, String name) {
        List<Tile> tiles = tiles();
        List<Mark> marks = new ArrayList<>(sheet.marks());
        marks.addAll(crosses());
        for (Tile tile : tiles) {
            page.open("section");
            page.element("h2", name + ": " + part + ", page " + tile.name() + " of " + tiles.size());
            page.open(
                    "svg",
                    "xmlns",
                    "http://www.w3.org/2000/svg",
                    "role",
                    "img",
                    "aria-label",
                    "The " + part + " at full size, page " + tile.name(),
                    "width",
                    n(windowAcross) + "mm",
                    "height",
                    n(windowDown) + "mm",
                    "viewBox",
                    n(tile.u()) + " " + n(tile.v()) + " " + n(windowAcross) + " " + n(windowDown));
            List<Mark> here = marks.stream().filter(mark -> isOn(mark, tile)).toList();
            TemplateSvg.draw(page, here, sheet.height());
            page.close().close();
        }
    }

    private static String style(Paper paper) {
        return "@page{size:" + paper.css() + " landscape;margin:0}\n"
                + "body{margin:0;background:#fff;color:#000;font-family:system-ui,sans-serif}\n"
                + "p{margin:1rem}\n"
                + "section{position:relative;box-sizing:border-box;overflow:hidden;width:" + n(paper.acrossMm())
                + "mm;height:" + n(paper.downMm()) + "mm;padding:" + n(MARGIN) + "mm;break-inside:avoid}\n"
                + "section+section{break-before:page}\n"
                + "h2{position:absolute;left:" + n(MARGIN) + "mm;top:3mm;margin:0;font-size:3.6mm}\n"
                + "svg{display:block}\n"
                + "@media print{p{display:none}}\n";
    }

    private double stepAcross() {
        return windowAcross - OVERLAP;
    }

    private double stepDown() {
        return windowDown - OVERLAP;
    }

    private int columns() {
        return (int) Math.max(1, Math.ceil((sheet.width() - OVERLAP) / stepAcross()));
    }

    private int rows() {
        return (int) Math.max(1, Math.ceil((sheet.height() - OVERLAP) / stepDown()));
    }

    private List<Tile> tiles() {
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                Tile tile = new Tile(column, row, column * stepAcross(), row * stepDown());
                if (sheet.marks().stream().anyMatch(mark -> isOn(mark, tile))) {
                    tiles.add(tile);
                }
            }
        }
        return tiles;
    }

    /** Crosses at the middle of every overlap, where four pages meet or two. */
    private List<Mark> crosses() {
        List<Mark> crosses = new ArrayList<>();
        for (int row = 0; row <= rows(); row++) {
            for (int column = 0; column <= columns(); column++) {
                double u = column * stepAcross() + OVERLAP / 2;
                double v = sheet.height() - (row * stepDown() + OVERLAP / 2);
                crosses.add(Run.line(Layer.CHECK, u - CROSS, v, u + CROSS, v));
                crosses.add(Run.line(Layer.CHECK, u, v - CROSS, u, v + CROSS));
            }
        }
        return crosses;
    }

    /** Whether a mark's box meets a page's window; an arc's box is that of its ends and middle. */
    private boolean isOn(Mark mark, Tile tile) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Point p : mark.reach()) {
            least = Math.min(least, p.u());
            most = Math.max(most, p.u());
            top = Math.min(top, sheet.height() - p.v());
            bottom = Math.max(bottom, sheet.height() - p.v());
        }
        return most >= tile.u()
                && least <= tile.u() + windowAcross
                && bottom >= tile.v()
                && top <= tile.v() + windowDown;
    }

    private static String n(double value) {
        return Numbers.trimmed(value, 4);
    }
}
