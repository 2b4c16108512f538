package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.examples.DesignSearch;

@Tag("long")
class DesignSearchTest {

    /**
     * Walnut's design is the best of all 6,375, which were asked one by one. By the Wood Handbook's moduli the rod has more to do
     * in cedar, which needs a deeper neck.
     */
    @Test
    void main_printsTheAnswerInEachWood() throws Exception {
        String printed = Printed.by(() -> DesignSearch.main(new String[0]));

        assertThat(printed).isEqualTo("""
                black walnut: head angle 6.5 deg, blank thickness 18 mm after 387 designs
                  head angle       6.5 deg
                  blank thickness  18 mm
                  depth at fret 1  14.75 mm
                  binds            blank-large-enough eased by 1 mm: head angle 0 deg better, blank thickness 1 mm better
                  refused          104, the first: blank.thickness must be 16.585 mm or more: the back at its deepest before the heel, 290.548 mm from the nut, comes from it, but was 15.5 mm
                sugar maple: head angle 6.5 deg, blank thickness 18 mm after 348 designs
                  head angle       6.5 deg
                  blank thickness  18 mm
                  depth at fret 1  14.75 mm
                  binds            blank-large-enough eased by 1 mm: head angle 0 deg better, blank thickness 1 mm better
                  binds            rod force eased by 1 N: head angle 0 deg better, blank thickness 0.5 mm better
                  refused          81, the first: blank.thickness must be 16.585 mm or more: the back at its deepest before the heel, 290.548 mm from the nut, comes from it, but was 15.5 mm
                Spanish-cedar: head angle 6.5 deg, blank thickness 18.5 mm after 342 designs
                  head angle       6.5 deg
                  blank thickness  18.5 mm
                  depth at fret 1  15.25 mm
                  binds            blank-large-enough eased by 1 mm: head angle 0 deg better, blank thickness 1 mm better
                  refused          82, the first: blank.thickness must be 16.585 mm or more: the back at its deepest before the heel, 290.548 mm from the nut, comes from it, but was 15.5 mm
                """);
    }
}
