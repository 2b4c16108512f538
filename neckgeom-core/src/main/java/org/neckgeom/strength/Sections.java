package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Report;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * The sections of a neck from the nut to the body joint: {@code Sections.of(neck).atFret(7)}. Immutable.
 *
 * <p>Fingerboard, wood less channel, strip and bonded bars as one transformed section; an unbonded rod adds nothing and
 * its channel is a void.
 */
public final class Sections implements SaysLengths<Sections> {

    private static final int STATIONS = 241;
    private static final int PRINTED = 6;

    private final NeckDesign neck;
    private final NeckBeam beam;

    private Sections(NeckDesign neck, NeckBeam beam) {
        this.neck = neck;
        this.beam = beam;
    }

    /**
     * Returns the sections of a neck.
     *
     * @param neck with scale, fingerboard and its wood, back and wood
     * @return the sections
     * @throws IllegalArgumentException if a part has not been told
     */
    public static Sections of(NeckDesign neck) {
        return new Sections(Objects.requireNonNull(neck, "neck"), NeckModel.beam(neck));
    }

    /**
     * Returns the section at a station.
     *
     * @param station from the nut, between 0 and the body joint
     * @return the section
     * @throws ArithmeticException if the channel breaks through the back there
     */
    public Section at(Quantity<Length> station) {
        double x = HouseUnits.mm(station, "station");
        if (!(x >= 0 && x <= beam.length())) {
            throw HouseUnits.refused(
                    "station",
                    "range",
                    "between the nut and the body joint at " + neck.style().brief(beam.length()),
                    station);
        }
        return section(x);
    }

    /**
     * Returns the section at a fret.
     *
     * @param fret 0 (the nut) to the fret at the body
     * @return the section
     */
    public Section atFret(int fret) {
        if (fret < 0 || fret > neck.bodyAtFret()) {
            throw Refusal.of("fret", "range", "be between 0 and that at the body, " + neck.bodyAtFret(), fret);
        }
        return section(neck.scale().fretMm(fret));
    }

    private Section section(double x) {
        return Section.of(x, beam, Relief.spread(neck), neck.style());
    }

    /**
     * Returns the sections at 241 even stations from the nut to the body joint.
     *
     * @return the sections, in order
     */
    public List<Section> all() {
        List<Section> sections = new ArrayList<>(STATIONS);
        for (int i = 0; i < STATIONS; i++) {
            sections.add(section(beam.length() * i / (STATIONS - 1)));
        }
        return List.copyOf(sections);
    }

    /**
     * Returns the softest of {@link #all()}.
     *
     * @return the section with the least stiffness
     */
    public Section softest() {
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        SectionMoments section = new SectionMoments();
        for (int i = 0; i < STATIONS; i++) {
            double x = beam.length() * i / (STATIONS - 1);
            beam.section(x, section);
            if (section.bendingStiffness() < least) {
                least = section.bendingStiffness();
                at = x;
            }
        }
        return section(at);
    }

    /**
     * Returns all sections, a line each.
     *
     * @return station, stiffness and neutral axis
     */
    public String table() {
        return all().stream()
                .map(s -> neck.style().text(s.station().house()) + "  EI " + s.stiffnessText() + "  axis "
                        + neck.style().text(s.neutralAxis().house()))
                .collect(Collectors.joining("\n"));
    }

    @Override
    public Sections in(LengthStyle other) {
        return new Sections(neck.in(other), beam);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Sections other && neck.equals(other.neck);
    }

    @Override
    public int hashCode() {
        return neck.hashCode();
    }

    /** Returns a few sections and the softest one; {@link #table()} has them all. */
    @Override
    public String toString() {
        Report report = Report.titled("Stiffness EI of " + neck.name());
        int last = 0;
        for (int i = 1; i <= PRINTED; i++) {
            int fret = (int) Math.round((double) i * neck.bodyAtFret() / PRINTED);
            if (fret > last) {
                report.row("fret " + fret, atFret(fret).stiffnessText());
                last = fret;
            }
        }
        Section softest = softest();
        return report.row(
                        "softest",
                        softest.stiffnessText() + " at "
                                + Likely.place(neck.style(), softest.station().house()) + " from the nut")
                .note("Estimate: transformed section, rod unbonded; interval for 95 of 100 pairs of woods.")
                .toString();
    }
}
