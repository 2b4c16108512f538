package org.neckgeom.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.junit.jupiter.api.Test;

class ReportTest {

    @Test
    void toString_alignsValuesAndEndsWithNotes() {
        Report report = Report.titled("Slot offset: UNDECIDED")
                .row("offset", "0.140 mm")
                .row("chance within", "69.0 %")
                .note("read again, or read better");

        assertThat(report)
                .hasToString(String.join(
                        "\n",
                        "Slot offset: UNDECIDED",
                        "  offset         0.140 mm",
                        "  chance within  69.0 %",
                        "  read again, or read better"));
    }

    @Test
    void toString_indentsAValueOfSeveralLines() {
        assertThat(Report.titled("Neck").row("a", "one\ntwo").row("bcd", 3))
                .hasToString("Neck\n  a    one\n       two\n  bcd  3");
    }

    @Test
    void toString_ofATitleAloneIsTheTitle() {
        assertThat(Report.titled("Neck")).hasToString("Neck");
    }

    @Test
    void parts_mayNotBeMissing() {
        assertThatNullPointerException().isThrownBy(() -> Report.titled(null)).withMessage("title");
        assertThatNullPointerException()
                .isThrownBy(() -> Report.titled("Neck").row(null, 1))
                .withMessage("label");
        assertThatNullPointerException()
                .isThrownBy(() -> Report.titled("Neck").row("a", null))
                .withMessage("value");
        assertThatNullPointerException()
                .isThrownBy(() -> Report.titled("Neck").note(null))
                .withMessage("note");
    }
}
