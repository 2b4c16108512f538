package org.neckgeom.order;

import java.util.Iterator;
import java.util.List;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * The conflicts ({@index conflicts}) in an order of work, such as {@code 1 conflict, with a remedy}; empty without a conflict.
 * Immutable.
 */
public final class Conflicts extends ValueAnswer implements Iterable<Conflict> {

    private static final int MOST_CHARACTERS = 950;

    static final Form<Conflicts> FORM = Form.<Conflicts>of("conflicts")
            .fact("count", Kind.WHOLE, "how many conflicts", conflicts -> conflicts.conflicts.size())
            .fact("withoutRemedy", Kind.WHOLE, "how many of them have no remedy", Conflicts::stuck)
            .fact("conflicts", Kind.table(Conflict.FORM), "in the order in which they are met", Conflicts::list)
            .finds("none", Conflicts::isEmpty, "Conflicts: none")
            .finds("with-remedies", Conflicts::haveRemedies, "Conflicts: {count:of conflict/conflicts}, with a remedy")
            .finds(
                    "no-remedy",
                    conflicts -> conflicts.stuck() == conflicts.conflicts.size(),
                    "Conflicts: {count:of conflict/conflicts}, no remedy")
            .finds("some-without-remedy", "Conflicts: {count:of conflict/conflicts}, {withoutRemedy} without remedy")
            .laidOut((conflicts, style) -> conflicts.text(style, MOST_CHARACTERS));

    private final List<Conflict> conflicts;

    private Conflicts(List<Conflict> conflicts) {
        super(
                FORM,
                conflicts.isEmpty() ? LengthStyle.MILLIMETRES : conflicts.get(0).style());
        this.conflicts = conflicts;
    }

    /**
     * {@return the conflicts}
     *
     * @param conflicts in the order in which they are met
     */
    public static Conflicts of(List<Conflict> conflicts) {
        return new Conflicts(Names.all(conflicts, "conflict"));
    }

    /** {@return all of them; in the order in which they are met} */
    public List<Conflict> list() {
        return conflicts;
    }

    /** {@return whether nothing conflicts} */
    public boolean isEmpty() {
        return conflicts.isEmpty();
    }

    /** {@return whether there is a way out of every conflict; true if there is none} */
    public boolean haveRemedies() {
        return stuck() == 0;
    }

    @Override
    public Iterator<Conflict> iterator() {
        return conflicts.iterator();
    }

    /** {@return all conflicts as text, numbered, however long} */
    public String table() {
        return text(style(), Integer.MAX_VALUE);
    }

    private int stuck() {
        return (int) conflicts.stream()
                .filter(conflict -> conflict.remedies().isEmpty())
                .count();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {conflicts};
    }

    private String text(LengthStyle style, int most) {
        StringBuilder out = new StringBuilder(FORM.render(this, style).finding());
        for (int i = 0; i < conflicts.size(); i++) {
            String entry = "\n" + (i + 1) + ". " + conflicts.get(i).text(style);
            if (out.length() + entry.length() > most) {
                // The long form of one conflict always fits after the title, its parts being limited: see Names.
                return out + "\nand " + (conflicts.size() - i) + " more: table()";
            }
            out.append(entry);
        }
        return out.toString();
    }
}
