package org.neckgeom.neck;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.units.Amount;

/**
 * The joint of the heel with the body (neck joint): a flat face, with {@link HeelInserts} or
 * {@link PlateScrews}, a {@link Dovetail}, a {@link Tenon}, or a {@link SpanishFoot}. Immutable.
 */
public sealed interface HeelJoint permits HeelJoint.Flat, Dovetail, Tenon, HeelInserts, PlateScrews, SpanishFoot {

    /**
     * {@return how far it reaches past the shoulder, into the body; more than 0; nothing where it does not, or its
     * length was not given}
     */
    Optional<Amount<Length>> pastShoulder();

    /**
     * {@return how far it reaches down from the glue face; more than 0; nothing where it does not, or its height was
     * not given}
     */
    Optional<Amount<Length>> below();

    /** A heel that is glued or bolted on by its flat face. All are equal. */
    record Flat() implements HeelJoint {

        @Override
        public Optional<Amount<Length>> pastShoulder() {
            return Optional.empty();
        }

        @Override
        public Optional<Amount<Length>> below() {
            return Optional.empty();
        }

        @Override
        public String toString() {
            return "flat face";
        }
    }
}
