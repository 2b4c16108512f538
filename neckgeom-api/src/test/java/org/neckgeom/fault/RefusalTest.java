package org.neckgeom.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.neckgeom.units.ShopUnits.mm;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.Limits;

class RefusalTest {

    @Test
    void of_hasASentenceAndAFault() {
        Refusal refusal = Refusal.of("frets", "range", "be between 1 and 60", "were", 0);

        assertThat(refusal).hasMessage("frets must be between 1 and 60, but were 0");
        assertThat(refusal.faults()).containsExactly(new Fault("frets", "range", "be between 1 and 60", "0"));
        assertThat(Refusal.of("strings", "at-least", "be 1 or more", "there were none", ""))
                .hasMessage("strings must be 1 or more, but there were none");
        assertThat(Refusal.because("note", "unreadable", "no note").faults().get(0))
                .hasToString("no note");
    }

    @Test
    void of_severalFaults_hasThemAll() {
        List<Fault> faults = List.of(
                new Fault("width", "more-than", "be more than 0 mm", "0 mm"),
                new Fault("length", "missing", "length is missing", ""));

        assertThat(Refusal.of(faults).faults()).isEqualTo(faults);
        assertThat(Refusal.of(faults)).hasMessage("width must be more than 0 mm, but was 0 mm; length is missing");
        assertThatThrownBy(() -> Refusal.of(List.of())).isInstanceOf(Refusal.class);
    }

    @Test
    void at_putsPathsUnderAPlace() {
        Refusal placed =
                Refusal.of("width", "more-than", "be more than 0 mm", "0 mm").at("blank");

        assertThat(placed).hasMessage("blank: width must be more than 0 mm, but was 0 mm");
        assertThat(placed.faults()).extracting(Fault::path).containsExactly("blank.width");
    }

    @Test
    void door_refusesWithPathRuleAndWhatWasGiven() {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> Limits.within(mm(-0.1)));

        assertThat(refusal.faults()).containsExactly(new Fault("limit", "more-than", "be more than 0 mm", "-0.1 mm"));
    }

    /** A throwable may be written by whoever logs it, so its faults go with it. */
    @Test
    void refusal_isWrittenAndReadWithItsFaults() throws IOException, ClassNotFoundException {
        Refusal refusal = Refusal.of("width", "more-than", "be more than 0 mm", "0 mm");
        NoAnswer none = NoAnswer.because("radius", "flat", "a flat floor has no radius");

        assertThat(((Refusal) copy(refusal)).faults()).isEqualTo(refusal.faults());
        assertThat(((NoAnswer) copy(none)).fault()).isEqualTo(none.fault());
    }

    private static Object copy(Object original) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(original);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return in.readObject();
        }
    }
}
