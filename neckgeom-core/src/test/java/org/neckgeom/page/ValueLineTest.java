package org.neckgeom.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ValueLineTest {

    @Test
    void of_takesALaidOutValueApart() {
        String value =
                "Stops, head end leading\n  rear stop   634 mm\n  or marks    on the fence:\n              the first";

        assertEquals(
                List.of(
                        new ValueLine(0, "", "Stops, head end leading", 0),
                        new ValueLine(2, "rear stop", "634 mm", 3),
                        new ValueLine(2, "or marks", "on the fence:", 4),
                        new ValueLine(14, "", "the first", 0)),
                ValueLine.of(value));
    }

    @Test
    void of_anEmptyLine_isALine() {
        assertEquals(List.of(new ValueLine(0, "", "", 0), new ValueLine(0, "a", "b c", 2)), ValueLine.of("\na  b   c"));
    }
}
