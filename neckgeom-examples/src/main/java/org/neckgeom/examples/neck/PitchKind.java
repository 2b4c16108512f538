package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.quantity.Frequency;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Node;
import org.neckgeom.examples.file.Problems;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The pitch of a string, as a note with its octave: {@code G2}, {@code F#3}, {@code Bb1}. */
final class PitchKind implements Kind<Amount<Frequency>> {

    static final PitchKind PITCH = new PitchKind();

    private PitchKind() {}

    @Override
    public Found<Amount<Frequency>> read(Node node, Problems problems) {
        if (node instanceof Node.Text text) {
            try {
                return Found.of(ShopUnits.pitch(text.text()));
            } catch (IllegalArgumentException unreadable) {
                problems.add(node.place(), node.place().path() + ": " + unreadable.getMessage());
                return Found.unusable();
            }
        }
        problems.add(node.place(), node.place().path() + " is " + node.found() + ", but must be " + allowed());
        return Found.unusable();
    }

    @Override
    public String allowed() {
        return "a note with its octave, such as G2, F#3 or Bb1 (A4 is 440 Hz)";
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("pattern", "^[A-G][#b]?-?[0-9]+$");
        return schema;
    }
}
