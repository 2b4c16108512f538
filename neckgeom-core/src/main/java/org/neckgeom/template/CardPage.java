package org.neckgeom.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.form.Statement;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.shop.Caution;
import org.neckgeom.units.Amount;

/**
 * A card of one operation laid out on its half of a sheet: sketch, settings in large figures, passes and boxes, limits, the way
 * back, cautions. Words get smaller until all has room; then the last cautions give way, with their number in their place.
 */
final class CardPage {

    /** Height of a figure that is set. */
    private static final double FIGURE = 8;

    private static final double TITLE = 4.2;
    private static final double GREATEST = 2.6;
    private static final double HEAD = 2.0;
    private static final double LEAST = 1.5;
    private static final double STEP = 0.1;

    /** From line to line, in heights of capitals. */
    private static final double LINE = 1.65;

    private static final double TICK = 4;
    private static final double BOX_WIDTH = 15;
    private static final double BOX_HEIGHT = 5.2;
    private static final double GAP = 4;
    private static final double LEAST_FOR_TWO = 110;
    private static final double READING_WIDTH = 60;
    private static final double NARROW_READING_WIDTH = 38;

    /** Letters this small leave room for narrow readings. */
    private static final double SMALL = 1.8;

    /** How far letters reach below their line. */
    private static final double BELOW = 0.7;

    private static final double PASS_WIDTH = 11;

    /** What leaves a full card, one after the other: boxes to write each pass's depth in, the sketch, the way back. */
    private static final int MOST_LEFT_OUT = 3;

    /** Lines of passes on a card from which all has left that may. */
    private static final int PASS_LINES = 6;

    private final BenchCard card;
    private final String running;
    private final double width;
    private final double height;
    private final double capital;
    private final int cautions;
    private final int leftOut;
    private final CardMarks marks = new CardMarks();
    private final double column;
    private double x;
    private double y;
    private double top;

    private CardPage(
            BenchCard card, String running, double width, double height, double capital, int cautions, int leftOut) {
        this.card = card;
        this.running = running;
        this.width = width;
        this.height = height;
        this.capital = capital;
        this.cautions = cautions;
        this.leftOut = leftOut;
        this.column = width > height ? (width - 2 * GAP) / 2 : width;
    }

    /**
     * The marks of a card.
     *
     * @param running title: the set and the card's number
     * @param width of its half of the sheet, within the edges
     * @param height of it
     */
    static CardMarks of(BenchCard card, String running, double width, double height) {
        int most = card.cautions().size();
        for (int leftOut = 0; leftOut <= MOST_LEFT_OUT; leftOut++) {
            for (int cautions = most; cautions >= 0; cautions--) {
                for (double capital = GREATEST; capital > LEAST - STEP / 2; capital -= STEP) {
                    CardPage page = new CardPage(card, running, width, height, capital, cautions, leftOut);
                    if (page.hasRoom()) {
                        return page.marks;
                    }
                }
            }
        }
        throw new AssertionError(card + " has no room on " + width + " mm x " + height + " mm");
    }

    private boolean hasRoom() {
        head();
        if (leftOut < 2) {
            sketch();
        }
        List<PlanSection> settings = card.settings();
        for (int i = 0; i < settings.size(); i++) {
            if (i < settings.size() - 1) {
                heading(settings.get(i).title());
                lines(settings.get(i));
                boxes(card.trial());
            } else {
                heading(settings.size() > 1 ? settings.get(i).title() : "Set");
                figures(settings.get(i));
            }
        }
        passes();
        if (!card.readings().isEmpty()) {
            heading("Read after it");
            boxes(card.readings());
            card.limits().forEach(limit -> sentence(limit.toString()));
        }
        if (leftOut < MOST_LEFT_OUT) {
            sentences("What can go wrong, and the way back", card.wayBack());
        }
        care();
        return y + BELOW <= height;
    }

    private void head() {
        double room = width - LetterWidths.mm(running, HEAD) - GAP;
        List<String> name = CardMarks.lines(card.job().neck().name(), HEAD, room);
        y = HEAD;
        marks.toTheRight(width, y, HEAD, running);
        for (String line : name) {
            marks.words(0, y, HEAD, line);
            y += HEAD * LINE;
        }
        y += 3.2;
        String date = "date ______________";
        String title = card.operation().name().toUpperCase(Locale.ROOT);
        double own =
                Math.min(TITLE, TITLE * (width - LetterWidths.mm(date, HEAD) - GAP) / LetterWidths.mm(title, TITLE));
        marks.words(0, y, own, title);
        marks.toTheRight(width, y, HEAD, date);
        y += 1.4;
        sentence(card.wood().toString(), width);
        top = y + 1;
        y = top;
    }

    private void sketch() {
        CardSketch.of(card, column).ifPresent(sketch -> {
            room(sketch.height());
            marks.addAll(sketch.marks(), x, y);
            y += sketch.height();
        });
    }

    /** Goes to the next column where a block of a height has no room in this one. */
    private void room(double block) {
        if (y + block + BELOW > height && x + column < width - GAP) {
            x += column + 2 * GAP;
            y = top;
        }
    }

    private void heading(String words) {
        room(16);
        y += capital * LINE + 1.2;
        marks.words(x, y, capital, words.toUpperCase(Locale.ROOT));
        double end = x + LetterWidths.mm(words.toUpperCase(Locale.ROOT), capital) + 2;
        marks.line(Layer.OUTLINE, end, y - capital / 2, x + column, y - capital / 2);
        y += 0.8;
    }

    private void sentences(String title, List<String> sentences) {
        if (!sentences.isEmpty()) {
            heading(title);
            sentences.forEach(this::sentence);
        }
    }

    private void sentence(String words) {
        List<String> lines = CardMarks.lines(words, capital, column);
        room(lines.size() * capital * LINE);
        lines.forEach(line -> line(x, line));
        y += 0.5;
    }

    private void sentence(String words, double within) {
        CardMarks.lines(words, HEAD, within).forEach(line -> {
            y += HEAD * LINE;
            marks.words(x, y, HEAD, line);
        });
    }

    private void line(double from, String words) {
        y += capital * LINE;
        marks.words(from, y, capital, words);
    }

    /** Each setting in words, a box to tick before it; two in a line where there is room. */
    private void lines(PlanSection section) {
        int inLine = column >= LEAST_FOR_TWO ? 2 : 1;
        double cell = (column - GAP * (inLine - 1)) / inLine;
        List<PlanSection.Row> rows = section.rows();
        for (int from = 0; from < rows.size(); from += inLine) {
            List<List<String>> words = rows.subList(from, Math.min(rows.size(), from + inLine)).stream()
                    .map(row -> row.label() + ": " + row.value().replace('\n', ' '))
                    .map(text -> CardMarks.lines(text, capital, cell - TICK - 0.5))
                    .toList();
            int most = words.stream().mapToInt(List::size).max().orElse(0);
            double tall = Math.max(TICK, most * capital * LINE + 0.6);
            room(tall);
            double start = y;
            for (int i = 0; i < words.size(); i++) {
                double left = x + i * (cell + GAP);
                y = start;
                marks.box(left, start + 0.6, 3, 3);
                words.get(i).forEach(line -> line(left + TICK + 0.5, line));
            }
            y = start + tall;
        }
    }

    /** Each setting that begins with a figure in a cell: its label and more words over the figure, a box to tick beside it. */
    private void figures(PlanSection section) {
        double half = (column - GAP) / 2;
        boolean isBeside = false;
        double next = y;
        List<PlanSection.Row> plain = new ArrayList<>();
        for (PlanSection.Row row : section.rows()) {
            Optional<String> figure = row.figure();
            if (figure.isEmpty()) {
                plain.add(row);
                continue;
            }
            double wide = LetterWidths.mm(figure.get(), FIGURE) + TICK + 2;
            if (wide > column) {
                plain.add(row);
                continue;
            }
            boolean isWhole = wide > half;
            if (isWhole && isBeside) {
                y = next;
                isBeside = false;
            }
            double cell = isWhole ? column : half;
            List<String> label = CardMarks.lines(label(row), capital, cell);
            double tall = label.size() * capital * LINE + FIGURE + 3;
            if (!isBeside) {
                room(tall);
            }
            double from = isBeside ? x + half + GAP : x;
            double start = y;
            label.forEach(line -> line(from, line));
            y += FIGURE + 1.6;
            marks.words(from + TICK + 1, y, FIGURE, figure.get());
            marks.box(from, y - FIGURE / 2 - 2, TICK, TICK);
            double end = y + 1.4;
            next = isBeside ? Math.max(next, end) : end;
            isBeside = !isWhole && !isBeside;
            y = isBeside ? start : next;
        }
        y = Math.max(y, next);
        if (!plain.isEmpty()) {
            lines(PlanSection.of(section.code(), section.title(), plain, List.of(), section.style()));
        }
    }

    private static String label(PlanSection.Row row) {
        String more = row.answer() instanceof Statement statement
                ? statement.afterLead().map(Statement::toString).orElse("")
                : "";
        return more.isEmpty() ? row.label() : row.label() + ": " + more;
    }

    /** A table of passes: the depth, a box to tick, a box for what was read. */
    private void passes() {
        List<Amount<Length>> all = card.depths();
        if (all.isEmpty()) {
            return;
        }
        int inLine = (int) (column / PASS_WIDTH);
        int shown = leftOut < MOST_LEFT_OUT ? all.size() : Math.min(all.size(), PASS_LINES * inLine);
        List<Amount<Length>> depths = all.subList(0, shown);
        boolean isRead = leftOut < 1;
        heading("Depth after each pass, in " + (all.get(0).unit().symbol().equals("mm") ? "mm" : "in") + ": tick"
                + (isRead ? ", read" : ""));
        double cell = Math.min(2 * PASS_WIDTH, column / Math.min(inLine, depths.size()));
        for (int from = 0; from < depths.size(); from += inLine) {
            double tall = 3 + 2 + TICK + 1 + (isRead ? BOX_HEIGHT + 1 : 0);
            room(tall);
            for (int i = from; i < Math.min(depths.size(), from + inLine); i++) {
                double middle = x + (i - from + 0.5) * cell;
                marks.centred(middle, y + 4, 3, card.figure(depths.get(i)));
                marks.box(middle - TICK / 2, y + 5, TICK, TICK);
                if (isRead) {
                    marks.box(middle - cell / 2 + 0.6, y + 6 + TICK, cell - 1.2, BOX_HEIGHT);
                }
            }
            y += tall;
        }
        if (shown < all.size()) {
            sentence((all.size() - shown) + " more passes in the plan.");
        }
    }

    /** A box for each reading, its limit or its range beside it; as many in a line as have room. */
    private void boxes(List<BenchQuestion> questions) {
        double least = capital < SMALL + STEP / 2 ? NARROW_READING_WIDTH : READING_WIDTH;
        int inLine = Math.max(1, (int) ((column + GAP) / (least + GAP)));
        double cell = (column - GAP * (inLine - 1)) / inLine;
        for (int from = 0; from < questions.size(); from += inLine) {
            List<BenchQuestion> some = questions.subList(from, Math.min(questions.size(), from + inLine));
            List<List<String>> words = some.stream()
                    .map(question -> beside(question, cell - BOX_WIDTH - 1.5))
                    .toList();
            int most = words.stream().mapToInt(List::size).max().orElse(0);
            double tall = Math.max(BOX_HEIGHT, most * capital * LINE + 0.6) + 1;
            room(tall);
            double start = y;
            for (int i = 0; i < some.size(); i++) {
                double left = x + i * (cell + GAP);
                y = start;
                marks.box(left, start + 0.8, BOX_WIDTH, BOX_HEIGHT);
                words.get(i).forEach(line -> line(left + BOX_WIDTH + 1.5, line));
            }
            y = start + tall;
        }
    }

    private List<String> beside(BenchQuestion question, double room) {
        List<String> lines = new ArrayList<>(CardMarks.lines(question.words(), capital, room));
        lines.addAll(CardMarks.lines(card.range(question), capital, room));
        return lines;
    }

    private void care() {
        List<Caution> all = card.cautions();
        List<String> sentences = new ArrayList<>(all.subList(0, cautions).stream()
                .map(caution -> caution.text() + ".")
                .toList());
        int more = all.size() - cautions + card.moreCautions();
        sentences.add(Caution.known("MACHINE_FIRST").text() + "."
                + (more > 0 ? " " + more + (more == 1 ? " more caution" : " more cautions") + " in the plan." : ""));
        sentences("Care", sentences);
    }
}
