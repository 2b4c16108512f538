package org.neckgeom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.geometry.NeckSet;
import org.neckgeom.geometry.ScarfJoint;
import org.neckgeom.geometry.WoodAt;
import org.neckgeom.geometry.WoodLeft;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.setup.Caution;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * What a sheet shows, in the order it shows it; both the text and the page are written from this.
 *
 * @param design the neck
 * @param style how lengths print
 * @param scarf the joint, if the head is pitched
 * @param neckSet neck angle, if it is told
 * @param checks what stands and what does not
 * @param cautions what can hurt
 * @param sections settings in order of work
 */
record Contents(
        NeckDesign design,
        LengthStyle style,
        Optional<ScarfJoint> scarf,
        Optional<NeckSet> neckSet,
        List<PlanCheck> checks,
        List<Caution> cautions,
        List<PlanSection> sections) {

    Contents {
        checks = List.copyOf(checks);
        cautions = List.copyOf(cautions);
        sections = List.copyOf(sections);
    }

    static Contents of(NeckPlan plan) {
        return new Contents(
                plan.design(),
                plan.style(),
                plan.scarf(),
                plan.neckSet(),
                plan.checks(),
                plan.cautions(),
                plan.sections());
    }

    /** A station that tables and sections name. */
    record Station(String name, double x) {}

    /** Checks to stop for first, then open ones, then good ones, each kind as the plan has them. */
    List<PlanCheck> worstFirst() {
        List<PlanCheck> sorted = new ArrayList<>();
        for (PlanCheck.Outcome outcome :
                List.of(PlanCheck.Outcome.STOP, PlanCheck.Outcome.OPEN, PlanCheck.Outcome.GOOD)) {
            checks.stream().filter(check -> check.outcome() == outcome).forEach(sorted::add);
        }
        return sorted;
    }

    long count(PlanCheck.Outcome outcome) {
        return checks.stream().filter(check -> check.outcome() == outcome).count();
    }

    /** Such as {@code 560 mm scale, 20 frets, body at fret 14}. */
    String inOneLine() {
        return shown().length(design.scale().lengthMm()) + " scale, " + design.frets() + " frets, body at fret "
                + design.bodyAtFret();
    }

    Shown shown() {
        return new Shown(style);
    }

    /** Wood left at a station, if the channel reaches it. */
    Optional<WoodAt> woodAt(double x) {
        return design.channel()
                .filter(channel -> channel.depthAtMm(x) > 0)
                .map(channel -> WoodLeft.under(design).at(ShopUnits.mm(x)));
    }

    /** The thinnest place under the channel, if there is a channel. */
    Optional<WoodAt> thinnest() {
        return design.channel().map(channel -> WoodLeft.under(design).least());
    }

    /** Nut, every other fret up to the body, both ends of the channel, the thinnest place, the body joint. */
    List<Station> stations() {
        List<Station> stations = new ArrayList<>();
        stations.add(new Station("nut", 0));
        for (int n = 1; n < design.bodyAtFret(); n += 2) {
            stations.add(new Station("fret " + n, design.scale().fretMm(n)));
        }
        design.channel().ifPresent(channel -> {
            stations.add(new Station("channel from", channel.startMm()));
            stations.add(new Station("channel to", channel.endMm()));
        });
        thinnest().ifPresent(wood -> stations.add(new Station("thinnest", wood.stationMm())));
        stations.add(new Station("body, fret " + design.bodyAtFret(), design.bodyJointMm()));
        stations.sort((a, b) -> Double.compare(a.x(), b.x()));
        return stations;
    }

    /** Four stations to draw: fret 1, the thinnest place or a third of the way, two thirds, and short of the body. */
    List<Station> cuts() {
        int body = design.bodyAtFret();
        TreeSet<Integer> frets = new TreeSet<>(List.of(
                1, Math.max(1, Math.round(body / 3f)), Math.max(1, Math.round(2 * body / 3f)), Math.max(1, body - 2)));
        List<Station> cuts = new ArrayList<>();
        frets.forEach(n -> cuts.add(new Station("fret " + n, design.scale().fretMm(n))));
        thinnest().ifPresent(wood -> {
            int nearest = 0;
            for (int i = 1; i < cuts.size(); i++) {
                if (Math.abs(cuts.get(i).x() - wood.stationMm())
                        < Math.abs(cuts.get(nearest).x() - wood.stationMm())) {
                    nearest = i;
                }
            }
            cuts.set(nearest, new Station("the thinnest place", wood.stationMm()));
        });
        return cuts;
    }
}
