package org.neckgeom.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.neckgeom.drawing.PaperSet;
import org.neckgeom.order.Operation;
import org.neckgeom.page.Document;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.Job;

/**
 * Cards to print and hang at the bench, one for each operation: two of A5 on a sheet of A4, or two of half a sheet of letter
 * paper, to be cut apart. Each is upright, or lies across by {@link #landscape}. Immutable.
 *
 * @see org.neckgeom.page.Sheet#toCard
 */
public final class Cards {

    /** White on each side of the line along which the two cards of a sheet are cut apart. */
    private static final double EDGE = 5;

    private final Job job;
    private final boolean landscape;

    private Cards(Job job, boolean landscape) {
        this.job = job;
        this.landscape = landscape;
    }

    /**
     * {@return the cards of all operations of a neck, upright}
     *
     * @param job of the neck
     */
    public static Cards of(Job job) {
        return new Cards(Objects.requireNonNull(job, "job"), false);
    }

    /** {@return these cards with their long side across, one under the other on a sheet} */
    public Cards landscape() {
        return new Cards(job, true);
    }

    /**
     * {@return the sheets, two cards on each, in the order of work; to be drawn on anything that prints}
     *
     * @param paper to print on
     */
    public List<TemplatePage> pages(Paper paper) {
        Objects.requireNonNull(paper, "paper");
        List<Operation> operations = BenchCard.operations(job);
        String set = PaperSet.named(Document.mark(job));
        double across = TemplatePage.window(landscape ? paper.downMm() : paper.acrossMm());
        double down = TemplatePage.window(landscape ? paper.acrossMm() : paper.downMm());
        double right = landscape ? 0 : across / 2 + EDGE;
        double below = landscape ? down / 2 + EDGE : 0;
        double wide = across - right;
        double high = down - below;
        List<TemplatePage> pages = new ArrayList<>();
        for (int i = 0; i < operations.size(); i += 2) {
            boolean isPair = i + 1 < operations.size();
            List<Mark> marks =
                    new ArrayList<>(card(set, operations, i, wide, high).at(0, down));
            if (isPair) {
                marks.addAll(card(set, operations, i + 1, wide, high).at(right, down - below));
            }
            CardMarks cut = new CardMarks();
            cut.line(
                    Layer.CUT,
                    landscape
                            ? new double[] {0, down / 2, across, down / 2}
                            : new double[] {across / 2, 0, across / 2, down});
            marks.addAll(cut.at(0, down));
            String numbers = isPair ? "cards " + (i + 1) + " and " + (i + 2) : "card " + (i + 1);
            pages.add(new TemplatePage(paper, landscape, name(set) + ": " + numbers, marks, 0, 0));
        }
        return List.copyOf(pages);
    }

    private CardMarks card(String set, List<Operation> operations, int i, double wide, double high) {
        BenchCard card = BenchCard.of(job, operations.get(i).name());
        return CardPage.of(card, set + ", card " + card.number() + " of " + operations.size(), wide, high);
    }

    private String name(String set) {
        return job.neck().name() + " (" + set + ")";
    }

    /**
     * {@return the {@link #pages} as one page of HTML that is well-formed XML too, complete in itself, in UTF-8, to print at
     * 100 %}
     *
     * @param paper to print on
     */
    public String toPages(Paper paper) {
        return TemplatePages.html(
                name(PaperSet.named(Document.mark(job))) + ": cards on "
                        + Objects.requireNonNull(paper, "paper").css(),
                pages(paper));
    }

    /** True for cards of the same job that lie the same way. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Cards that && landscape == that.landscape && job.equals(that.job);
    }

    @Override
    public int hashCode() {
        return Objects.hash(job, landscape);
    }

    /** Returns such as {@code Octave mandolin: 27 cards, upright}. */
    @Override
    public String toString() {
        return job.neck().name() + ": " + BenchCard.operations(job).size() + " cards, "
                + (landscape ? "across" : "upright");
    }
}
