package org.neckgeom.units;

import java.util.Objects;
import javax.measure.quantity.Frequency;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Words;

/** Note names and their frequencies in equal temperament. */
final class Pitches {

    private static final double A4_HZ = 440;
    private static final int A4_STEP = 69;
    private static final String LETTERS = "C.D.EF.G.A.B";

    private Pitches() {}

    static Amount<Frequency> frequency(String note) {
        int step = step(Objects.requireNonNull(note, "note"));
        // Whole octaves are exact powers of two; only the step inside the octave needs a power.
        int above = step - A4_STEP;
        int octaves = Math.floorDiv(above, 12);
        double within = StrictMath.pow(2, Math.floorMod(above, 12) / 12.0);
        return ShopUnit.HERTZ.of(Math.scalb(A4_HZ * within, octaves));
    }

    private static int step(String note) {
        int length = note.length();
        int letter = length == 0 ? -1 : LETTERS.indexOf(note.charAt(0));
        if (letter >= 0 && note.charAt(0) != '.') {
            int at = 1;
            int shift = 0;
            if (at < length && (note.charAt(at) == '#' || note.charAt(at) == 'b')) {
                shift = note.charAt(at) == '#' ? 1 : -1;
                at++;
            }
            boolean below = at < length && note.charAt(at) == '-';
            at += below ? 1 : 0;
            if (at == length - 1 && note.charAt(at) >= '0' && note.charAt(at) <= '9') {
                int octave = note.charAt(at) - '0';
                return 12 * ((below ? -octave : octave) + 1) + letter + shift;
            }
        }
        throw Refusal.because(
                "note",
                "unreadable",
                Words.quoted(note) + " cannot be read as a note; write it like \"A3\", \"F#2\" or \"Bb1\"");
    }
}
