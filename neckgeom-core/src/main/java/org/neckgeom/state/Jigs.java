package org.neckgeom.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.units.Amount;

/**
 * The jigs that cuts of one neck are located on, and the label of its own causes among those of other necks.
 *
 * @param label of the neck, empty where it is alone
 * @param byCut jig of each cut that has one
 */
record Jigs(String label, Map<String, Located> byCut) {

    static final Jigs NONE = new Jigs("", Map.of());

    /** A jig in the channel of this neck, for one cut. */
    record Located(String cut, JigError jig, JigPlay play) {

        private String pin(String which) {
            return which + " pin's play, " + cut;
        }

        Deviation deviation(double x) {
            double first = play.first().libraryValue();
            double second = play.second().libraryValue();
            Deviation off = jig.deviation(x);
            if (play.isPressed()) {
                return off;
            }
            return off.plus(
                    Deviation.onLine(Deviation.of(pin("first")), first, Deviation.of(pin("second")), second, x));
        }

        List<Cause> plays() {
            return play.isPressed()
                    ? List.of()
                    : List.of(cause("first", play.firstPlay()), cause("second", play.secondPlay()));
        }

        private Cause cause(String which, Amount<Length> clearance) {
            Amount<Length> half = play.style().amount(clearance.libraryValue() / 2);
            return new Cause(pin(which), cut, ErrorDistribution.rectangular(half), Basis.GIVEN);
        }
    }

    Jigs {
        byCut = Map.copyOf(byCut);
    }

    Jigs with(String cut, JigError jig, JigPlay play) {
        Objects.requireNonNull(jig, "jig");
        Located here = new Located(cut, jig, Objects.requireNonNull(play, "play"));
        for (Located other : byCut.values()) {
            if (!other.cut.equals(cut) && other.jig.name().equals(jig.name()) && !other.jig.equals(jig)) {
                throw Refusal.of("jig", "one-error", "have one error", "had two", "\"" + jig.name() + "\"");
            }
        }
        Map<String, Located> all = new TreeMap<>(byCut);
        all.put(cut, here);
        return new Jigs(label, all);
    }

    Jigs label(String other) {
        return new Jigs(other, byCut);
    }

    boolean isLabelled() {
        return !label.isEmpty();
    }

    String labelled(String cause) {
        return label.isEmpty() ? cause : label + ": " + cause;
    }

    @Nullable
    Located of(String cut) {
        return byCut.get(cut);
    }

    boolean isJig(String cause) {
        return byCut.values().stream()
                .flatMap(l -> l.jig.causes().stream())
                .anyMatch(c -> c.name().equals(cause));
    }

    /** The errors of its jigs, each once, and the plays of each cut. */
    List<Cause> causes() {
        Map<String, Located> inOrder = new TreeMap<>(byCut);
        List<Cause> all = new ArrayList<>(inOrder.values().stream()
                .flatMap(l -> l.jig.causes().stream())
                .distinct()
                .toList());
        inOrder.values().forEach(l -> all.addAll(l.plays()));
        return all;
    }
}
