package org.neckgeom.order;

import java.util.Iterator;
import java.util.List;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * What clashes in an order of work, such as {@code 1 clash, with a remedy}; empty when nothing does. Immutable.
 */
public final class Clashes implements Iterable<Clash>, SaysLengths<Clashes> {

    private static final int MOST_CHARACTERS = 950;

    private final List<Clash> clashes;

    private Clashes(List<Clash> clashes) {
        this.clashes = Names.all(clashes, "clash");
    }

    /**
     * Returns clashes.
     *
     * @param clashes in the order in which they are met
     * @return the clashes
     */
    public static Clashes of(List<Clash> clashes) {
        return new Clashes(clashes);
    }

    /**
     * Returns all of them.
     *
     * @return in the order in which they are met
     */
    public List<Clash> list() {
        return clashes;
    }

    /**
     * Says whether nothing clashes.
     *
     * @return true if there is none
     */
    public boolean isEmpty() {
        return clashes.isEmpty();
    }

    /**
     * Says whether there is a way out of every clash.
     *
     * @return true if each has a remedy, and if there is none
     */
    public boolean haveRemedies() {
        return clashes.stream().noneMatch(clash -> clash.remedies().isEmpty());
    }

    @Override
    public Iterator<Clash> iterator() {
        return clashes.iterator();
    }

    /**
     * Returns all clashes as text, numbered, however long.
     *
     * @return the text
     */
    public String table() {
        return text(Integer.MAX_VALUE);
    }

    @Override
    public Clashes in(LengthStyle other) {
        return new Clashes(clashes.stream().map(clash -> clash.in(other)).toList());
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Clashes other && clashes.equals(other.clashes);
    }

    @Override
    public int hashCode() {
        return clashes.hashCode();
    }

    /** Returns how many there are, then as many of them as fit, numbered. */
    @Override
    public String toString() {
        return text(MOST_CHARACTERS);
    }

    private String text(int most) {
        StringBuilder out = new StringBuilder(title());
        for (int i = 0; i < clashes.size(); i++) {
            String entry = "\n" + (i + 1) + ". " + clashes.get(i);
            if (out.length() + entry.length() > most) {
                // The long form of one clash always fits after the title, its parts being limited: see Names.
                return out + "\nand " + (clashes.size() - i) + " more: table()";
            }
            out.append(entry);
        }
        return out.toString();
    }

    private String title() {
        if (clashes.isEmpty()) {
            return "Clashes: none";
        }
        long stuck =
                clashes.stream().filter(clash -> clash.remedies().isEmpty()).count();
        String counted = clashes.size() + (clashes.size() == 1 ? " clash" : " clashes");
        String verdict =
                stuck == 0 ? "with a remedy" : stuck == clashes.size() ? "no remedy" : stuck + " without remedy";
        return "Clashes: " + counted + ", " + verdict;
    }
}
