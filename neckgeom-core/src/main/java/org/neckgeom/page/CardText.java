package org.neckgeom.page;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.neckgeom.form.Statement;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.shop.Caution;
import org.neckgeom.stock.Blank;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** A card of one operation as plain text, 80 columns wide. */
final class CardText {

    private static final int TICK_COLUMN = 74;
    private static final int LEAD = 7;
    private static final int PASSES_A_LINE = 8;
    private static final String BOX = "______";

    private final BenchCard card;
    private final TextLines out = new TextLines();

    private CardText(BenchCard card) {
        this.card = card;
    }

    static String of(BenchCard card) {
        return new CardText(card).written();
    }

    private String written() {
        head();
        if (!card.trial().isEmpty()) {
            setting("TRIAL", card.settings().get(0));
            readings("read", card.trial());
            setting("CUT", card.settings().get(1).without(Set.of("depths")));
        } else {
            card.settings().forEach(settings -> setting("SET", settings));
        }
        passes();
        readings("AFTER", card.readings());
        sentences("LIMIT", card.limits().stream().map(Statement::toString).toList());
        sentences("BACK", card.wayBack());
        sentences(
                "CARE",
                card.cautions().stream()
                        .map(Caution::text)
                        .map(text -> text + ".")
                        .toList());
        out.wrapped(lead(""), Wording.MACHINE_FIRST);
        return out.toString();
    }

    private void head() {
        Neck neck = card.job().neck();
        out.line("CARD " + card.number() + "  " + card.operation().name().toUpperCase(Locale.ROOT));
        String paper = "set " + Document.mark(card.job()) + "   date " + BOX + BOX;
        int room = TextLines.WIDTH - neck.name().length() - paper.length();
        out.line(room >= 2 ? neck.name() + " ".repeat(room) + paper : neck.name());
        if (room < 2) {
            out.line(paper);
        }
        Blank blank = card.job().blank();
        LengthStyle style = card.job().style();
        out.wrapped(
                "",
                "Blank " + wood(style, blank.lengthMm()) + " x " + wood(style, blank.widthMm()) + " x "
                        + wood(style, blank.thicknessMm())
                        + (blank.nutFromHeadEndMm() > 0
                                ? ", nut line " + wood(style, blank.nutFromHeadEndMm()) + " from its head end"
                                : "")
                        + ".");
        out.line("");
    }

    private static String wood(LengthStyle style, double mm) {
        return style == LengthStyle.MILLIMETRES ? Numbers.trimmed(mm, 1) + " mm" : style.mark(mm);
    }

    private static String lead(String word) {
        return word + " ".repeat(LEAD - word.length());
    }

    /** Each setting with a box to tick at the end of its line. */
    private void setting(String word, PlanSection settings) {
        int width = settings.rows().stream()
                .mapToInt(row -> row.label().length())
                .max()
                .orElse(0);
        String lead = lead(word);
        for (PlanSection.Row row : settings.rows()) {
            String start = lead + row.label() + " ".repeat(width - row.label().length() + 2);
            List<String> lines = new TextLines().lines(start, row.value()).list();
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                boolean isLast = i == lines.size() - 1;
                boolean hasRoom = line.length() < TICK_COLUMN;
                out.line(isLast && hasRoom ? line + " ".repeat(TICK_COLUMN - line.length()) + "[ ]" : line);
                if (isLast && !hasRoom) {
                    out.line(" ".repeat(TICK_COLUMN) + "[ ]");
                }
            }
            lead = lead("");
        }
    }

    private void passes() {
        List<Amount<Length>> depths = card.depths();
        for (int from = 0; from < depths.size(); from += PASSES_A_LINE) {
            List<Amount<Length>> some = depths.subList(from, Math.min(depths.size(), from + PASSES_A_LINE));
            out.line(lead("PASS") + cells(some.stream().map(this::depth).toList()));
            out.line(lead("") + cells(some.stream().map(depth -> "[ ]").toList()));
            out.line(lead("read") + cells(some.stream().map(depth -> BOX).toList()));
        }
    }

    private String depth(Amount<Length> depth) {
        LengthStyle style = card.job().style();
        return style == LengthStyle.MILLIMETRES
                ? Numbers.fixed(depth.libraryValue(), 2)
                : Numbers.fixed(LengthStyle.DECIMAL_INCHES.unit().fromLibrary(depth.libraryValue()), 3);
    }

    private static String cells(List<String> cells) {
        return cells.stream()
                .map(cell -> cell + " ".repeat(Math.max(1, 9 - cell.length())))
                .collect(Collectors.joining());
    }

    /** A box for each reading, its usual range beside it. */
    private void readings(String word, List<BenchQuestion> questions) {
        String lead = lead(word);
        for (BenchQuestion question : questions) {
            String range = question.usual().map(Object::toString).orElse(String.join(" or ", question.choices()));
            out.wrapped(lead, question.words() + "  " + BOX + "  usually " + range);
            lead = lead("");
        }
    }

    private void sentences(String word, List<String> sentences) {
        String lead = lead(word);
        for (String sentence : sentences) {
            out.wrapped(lead, sentence);
            lead = lead("");
        }
    }
}
