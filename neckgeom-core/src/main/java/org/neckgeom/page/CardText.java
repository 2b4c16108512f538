package org.neckgeom.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.neckgeom.form.Statement;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.shop.Caution;
import org.neckgeom.units.Amount;

/** A card of one operation as plain text, 80 columns wide. */
final class CardText {

    private static final int TICK_COLUMN = 74;
    private static final int LEAD = 7;
    private static final int PASSES_A_LINE = 8;

    /** Where the second of two readings in a line starts, after the lead. */
    private static final int HALF = 37;

    /** What A5 takes in letters that can be read at the bench, a line for how to see the rest left free. */
    private static final int MOST_LINES = 44;

    /** For how many cautions there are more, and for the machine's own instructions. */
    private static final int LAST_LINES = 3;

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
            setting("CUT", card.settings().get(1));
        } else {
            card.settings().forEach(settings -> setting("SET", settings));
        }
        passes();
        readings("AFTER", card.readings());
        sentences("LIMIT", card.limits().stream().map(Statement::toString).toList());
        sentences("BACK", card.wayBack());
        cautions();
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
        out.wrapped("", card.wood().toString());
        out.line("");
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
            out.line(lead("PASS") + cells(some.stream().map(card::figure).toList()));
            out.line(lead("") + cells(some.stream().map(depth -> "[ ]").toList()));
            out.line(lead("read") + cells(some.stream().map(depth -> BOX).toList()));
        }
    }

    private static String cells(List<String> cells) {
        return cells.stream()
                .map(cell -> cell + " ".repeat(Math.max(1, 9 - cell.length())))
                .collect(Collectors.joining());
    }

    /** A box for each reading, its usual range beside it. */
    private void readings(String word, List<BenchQuestion> questions) {
        String lead = lead(word);
        String line = "";
        for (BenchQuestion question : questions) {
            String cell = question.words() + " " + BOX + " " + card.range(question);
            if (!line.isEmpty() && LEAD + HALF + cell.length() <= TextLines.WIDTH && line.length() < HALF - 1) {
                out.line(lead + line + " ".repeat(HALF - line.length()) + cell);
                lead = lead("");
                line = "";
            } else {
                if (!line.isEmpty()) {
                    out.wrapped(lead, line);
                    lead = lead("");
                }
                line = cell;
            }
        }
        if (!line.isEmpty()) {
            out.wrapped(lead, line);
        }
    }

    /** As many cautions as the card has room for, and how many there are more. */
    private void cautions() {
        List<String> cautions = card.cautions().stream()
                .map(Caution::text)
                .map(text -> text + ".")
                .toList();
        int more = card.moreCautions();
        String lead = lead("CARE");
        for (String caution : cautions) {
            int lines = new TextLines().wrapped(lead, caution).list().size();
            if (out.list().size() + lines <= MOST_LINES - LAST_LINES) {
                out.wrapped(lead, caution);
                lead = lead("");
            } else {
                more++;
            }
        }
        if (more > 0) {
            out.line(lead + more + (more == 1 ? " more caution" : " more cautions") + " in the plan.");
        }
        out.wrapped(lead(""), Wording.MACHINE_FIRST);
    }

    private void sentences(String word, List<String> sentences) {
        String lead = lead(word);
        for (String sentence : sentences) {
            out.wrapped(lead, sentence);
            lead = lead("");
        }
    }
}
