package org.neckgeom.template;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.template.Mark.Stroke;

/**
 * A part's sheet cut into windows of paper that overlap, rows lettered downwards, columns numbered across. Windows with
 * nothing in them are left out. Crosses lie on the sheet, so that two pages show the same cross.
 */
final class PageGrid {

    /** How far neighbouring pages show the same. */
    static final double OVERLAP = 10;

    /** Of the sheet's own white edge, which a page has too. */
    private static final double TRIM = 9;

    private static final double CROSS = 4;

    /** A page's place: its name, and its window's left and upper edge on the sheet, v downwards. */
    record Tile(String name, double u, double v) {}

    private final Sheet sheet;
    private final double across;
    private final double down;
    private final List<Tile> tiles;

    PageGrid(Sheet sheet, Paper paper) {
        this.sheet = sheet;
        this.across = TemplatePage.windowAcross(paper);
        this.down = TemplatePage.windowDown(paper);
        this.tiles = tiles();
    }

    List<Tile> list() {
        return tiles;
    }

    Sheet sheet() {
        return sheet;
    }

    /** Marks of the sheet and its crosses that a page shows, and the edge of its window. */
    List<Mark> on(Tile tile) {
        List<Mark> marks = new ArrayList<>(sheet.marks());
        marks.addAll(crosses());
        marks.removeIf(mark -> !isOn(mark, tile));
        marks.add(frame(tile));
        return marks;
    }

    /** The edge of a page's window on the sheet. */
    Stroke frame(Tile tile) {
        double left = tile.u();
        double right = left + across;
        double top = sheet.height() - tile.v();
        double low = top - down;
        return Stroke.round(Layer.CENTRE, left, low, right, low, right, top, left, top);
    }

    /** The lower edge of a page's window on the sheet, v upwards. */
    double bottom(Tile tile) {
        return sheet.height() - tile.v() - down;
    }

    private int columns() {
        return (int) Math.max(1, Math.ceil((sheet.width() - 2 * TRIM - OVERLAP) / (across - OVERLAP)));
    }

    private int rows() {
        return (int) Math.max(1, Math.ceil((sheet.height() - 2 * TRIM - OVERLAP) / (down - OVERLAP)));
    }

    private List<Tile> tiles() {
        List<Tile> all = new ArrayList<>();
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                String name = (char) ('A' + row) + String.valueOf(column + 1);
                Tile tile = new Tile(name, TRIM + column * (across - OVERLAP), TRIM + row * (down - OVERLAP));
                if (sheet.marks().stream().anyMatch(mark -> isOn(mark, tile))) {
                    all.add(tile);
                }
            }
        }
        return List.copyOf(all);
    }

    /** Crosses at the middle of every overlap, where four pages meet or two. */
    private List<Mark> crosses() {
        List<Mark> crosses = new ArrayList<>();
        for (int row = 0; row <= rows(); row++) {
            for (int column = 0; column <= columns(); column++) {
                double u = TRIM + column * (across - OVERLAP) + OVERLAP / 2;
                double v = sheet.height() - (TRIM + row * (down - OVERLAP) + OVERLAP / 2);
                crosses.add(Stroke.through(Layer.SCALE, u - CROSS, v, u + CROSS, v));
                crosses.add(Stroke.through(Layer.SCALE, u, v - CROSS, u, v + CROSS));
            }
        }
        return crosses;
    }

    /** Whether a mark's box meets a page's window. */
    private boolean isOn(Mark mark, Tile tile) {
        double[] box = mark.box();
        double top = sheet.height() - box[3];
        double bottom = sheet.height() - box[1];
        return box[2] >= tile.u() && box[0] <= tile.u() + across && bottom >= tile.v() && top <= tile.v() + down;
    }
}
