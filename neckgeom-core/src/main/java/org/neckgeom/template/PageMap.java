package org.neckgeom.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;

/**
 * The page with the instructions to print and join the others: each part made small, its pages framed and named, two
 * true bars.
 */
final class PageMap {

    private static final double WORDS = 3;
    private static final double LINE = 6;
    private static final double COLUMN_GAP = 8;
    private static final double BARS = 22;

    private static final List<String> HOW = List.of(
            "Print at 100 %, without fitting to the page. Measure the bars of the print, both ways, before it is used.",
            "Join the pages of a part at their crosses: rows are lettered downwards, pages numbered across; neighbours"
                    + " overlap by 10 mm.");

    private final Paper paper;
    private final List<Mark> marks = new ArrayList<>();

    private PageMap(Paper paper) {
        this.paper = paper;
    }

    static List<Mark> of(Map<TemplatePart, PageGrid> grids, Paper paper) {
        return new PageMap(paper).drawn(grids);
    }

    private List<Mark> drawn(Map<TemplatePart, PageGrid> grids) {
        double across = TemplatePage.windowAcross(paper);
        double v = TemplatePage.windowDown(paper);
        for (String line : HOW) {
            v -= LINE;
            marks.add(new Words(new Spot(0, v), WORDS, false, line));
        }
        double room = v - BARS;
        int rows = (grids.size() + 1) / 2;
        double cellAcross = (across - COLUMN_GAP) / 2;
        double cellDown = room / rows;
        int i = 0;
        for (Map.Entry<TemplatePart, PageGrid> grid : grids.entrySet()) {
            double u = i % 2 * (cellAcross + COLUMN_GAP);
            int row = i / 2;
            double top = v - row * cellDown;
            part(grid.getKey(), grid.getValue(), new Cell(u, top, cellAcross, cellDown));
            i++;
        }
        Sheet.bars(marks, 0, 10);
        return List.copyOf(marks);
    }

    /** Room on the map: its upper left corner and its size. */
    private record Cell(double u, double top, double across, double down) {}

    private void part(TemplatePart part, PageGrid grid, Cell cell) {
        int pages = grid.list().size();
        double v = cell.top() - LINE;
        marks.add(new Words(
                new Spot(cell.u(), v), WORDS, false, part + ", " + pages + (pages == 1 ? " page" : " pages")));
        double wide = grid.list().stream()
                .mapToDouble(tile -> tile.u() + TemplatePage.windowAcross(paper))
                .max()
                .orElse(1);
        double high = grid.list().stream()
                .mapToDouble(tile -> tile.v() + TemplatePage.windowDown(paper))
                .max()
                .orElse(1);
        double scale = Math.min(cell.across() / wide, (cell.down() - 2 * LINE) / high);
        double base = v - 2 - grid.sheet().height() * scale;
        grid.sheet().marks().forEach(mark -> small(mark, cell.u(), base, scale));
        for (PageGrid.Tile tile : grid.list()) {
            Stroke frame = grid.frame(tile);
            small(frame, cell.u(), base, scale);
            double[] box = frame.box();
            marks.add(new Words(
                    new Spot(cell.u() + box[0] * scale + 1.5, base + box[3] * scale - WORDS - 1.5),
                    WORDS,
                    false,
                    tile.name()));
        }
    }

    private void small(Mark mark, double u, double v, double scale) {
        if (mark instanceof Stroke stroke && stroke.layer() != Layer.SCALE) {
            // Dashes of a centreline would be as long as the small drawing's own lines.
            Layer layer = stroke.layer() == Layer.CENTRE ? Layer.SCALE : stroke.layer();
            marks.add(new Stroke(layer, stroke.line().scaled(scale).plus(u, v)));
        }
    }
}
