package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.LibraryUnits;

/**
 * The sections of a neck from the nut to the body joint: {@code Sections.of(neck).atFret(7)}. Immutable.
 *
 * <p>Fingerboard, wood less channel, strip and bonded bars as one transformed section; an unbonded rod adds nothing and
 * its channel is a void.
 */
public final class Sections extends ValueAnswer {

    private static final int STATIONS = 241;
    private static final int PRINTED = 6;

    private record AtFret(int fret, Section section) {
        static final Form<AtFret> FORM = Form.<AtFret>of("section-at-fret")
                .fact("fret", Kind.WHOLE, "1 or more", AtFret::fret)
                .fact("stiffness", Section.STIFFNESS, "EI", AtFret::section);
    }

    private static final Form<Sections> FORM = Form.<Sections>of("sections")
            .fact("neck", Kind.NAME, "its name", sections -> sections.neck.name())
            .fact("frets", Kind.table(AtFret.FORM), "a few, to the one at the body", Sections::atSomeFrets)
            .finds("sections", "Bending stiffness EI of {neck}")
            .each("frets", "fret {fret}", "{stiffness}")
            .row("softest", "softest", Section.IN_ROW, "of 241 from nut to body", Sections::softest)
            .note("estimate", "Estimate: transformed section, rod unbonded; 95 % interval over pairs of woods.");

    private final Neck neck;
    private final NeckBeam beam;

    private Sections(Neck neck, NeckBeam beam) {
        super(FORM, neck.style());
        this.neck = neck;
        this.beam = beam;
    }

    /**
     * {@return the sections of a neck}
     *
     * @param neck with scale, fingerboard and its wood, back and wood
     * @throws IllegalArgumentException if a part is missing
     */
    public static Sections of(Neck neck) {
        return new Sections(Objects.requireNonNull(neck, "neck"), NeckModel.beam(neck));
    }

    /**
     * {@return the section at a station}
     *
     * @param station from the nut, between 0 and the body joint
     * @throws ArithmeticException if the channel breaks through the back there
     */
    public Section at(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        if (!(x >= 0 && x <= beam.length())) {
            throw LibraryUnits.refused(
                    "station",
                    "range",
                    "between the nut and the body joint at " + neck.style().brief(beam.length()),
                    station);
        }
        return section(x);
    }

    /**
     * {@return the section at a fret}
     *
     * @param fret 0 (the nut) to the fret at the body
     */
    public Section atFret(int fret) {
        if (fret < 0 || fret > neck.bodyAtFret()) {
            throw Refusal.of("fret", "range", "be between 0 and that at the body, " + neck.bodyAtFret(), fret);
        }
        return section(neck.scale().fretMm(fret));
    }

    private Section section(double x) {
        return Section.of(x, beam, NeckModel.spread(neck), neck.style());
    }

    /** {@return the sections at 241 even stations from the nut to the body joint; in order} */
    public List<Section> all() {
        List<Section> sections = new ArrayList<>(STATIONS);
        for (int i = 0; i < STATIONS; i++) {
            sections.add(section(beam.length() * i / (STATIONS - 1)));
        }
        return List.copyOf(sections);
    }

    /** {@return the softest of {@link #all()}; the section with the least stiffness} */
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

    /** {@return all sections, a line each; station, stiffness and neutral axis} */
    public String table() {
        return all().stream()
                .map(s -> neck.style().text(s.station().libraryValue()) + "  EI " + s.stiffnessText() + "  axis "
                        + neck.style().text(s.neutralAxis().libraryValue()))
                .collect(Collectors.joining("\n"));
    }

    private List<AtFret> atSomeFrets() {
        return IntStream.rangeClosed(1, PRINTED)
                .map(i -> (int) Math.round((double) i * neck.bodyAtFret() / PRINTED))
                .filter(fret -> fret > 0)
                .distinct()
                .mapToObj(fret -> new AtFret(fret, atFret(fret)))
                .toList();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {neck};
    }
}
