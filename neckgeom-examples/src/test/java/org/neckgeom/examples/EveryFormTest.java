package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.template.Template;

/** What judges every form sees a fault where there is one. */
class EveryFormTest {

    private static final Job OCTAVE = NeckFile.read("octave-mandolin.yaml");

    private final EveryForm octave = new EveryForm(OCTAVE);
    private final List<String> faults = new ArrayList<>();

    @Test
    void fault_isNoneInTheShippedNecks() {
        assertThat(EveryForm.fault(OCTAVE, true)).isEmpty();
        assertThat(EveryForm.fault(NeckFile.read("short-scale-bass.yaml"), true))
                .isEmpty();
        assertThat(EveryForm.fault(NeckFile.read("fanned-baritone.yaml"), false))
                .isEmpty();
    }

    @Test
    void numbers_thatAreNoneAreSeen() {
        EveryForm.refuseNoNumber("text", "an offset of NaN mm", faults);
        EveryForm.refuseNoNumber("text", "an offset of 3 mm, banana", faults);

        assertThat(faults).containsExactly("text has NaN in: an offset of NaN mm");
    }

    @Test
    void wood_thatIsLackingMustBeStated() {
        String stations = Sheet.of(OCTAVE).stationCsv();
        octave.woodIsThereOrItsLackIsStated(stations, faults);
        assertThat(faults).isEmpty();

        octave.woodIsThereOrItsLackIsStated(stations + "made up,1,1,1,1,-0.001\n", faults);
        assertThat(faults).containsExactly("wood left is less than nothing, and no check stops for it");
    }

    @Test
    void frets_thatAreDrawnElsewhereAreSeen() {
        String table = Sheet.of(OCTAVE).fretCsv();
        String drawn = Template.of(OCTAVE).toDxf();
        octave.fretsAreDrawnWhereTheTableHasThem(drawn, table, faults);
        assertThat(faults).isEmpty();

        octave.fretsAreDrawnWhereTheTableHasThem(drawn, table.replaceFirst("\n5,140", "\n5,141"), faults);
        assertThat(faults).singleElement().asString().startsWith("fret 5 is drawn -0.99999999");
        octave.fretsAreDrawnWhereTheTableHasThem(drawn, table + "21,400,1,50\n", faults);
        assertThat(faults).contains("21 frets are listed, and 20 drawn");
    }
}
