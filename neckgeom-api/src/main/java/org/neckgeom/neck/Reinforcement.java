package org.neckgeom.neck;

import org.neckgeom.form.Answer;

/**
 * The reinforcement in the rod channel: a {@link TrussRod}, or a stiffening {@link Bar}; or the locating groove of a neck
 * without either, in which nothing lies. Immutable.
 */
public sealed interface Reinforcement extends Answer permits TrussRod, Bar, LocatingGroove {

    /** {@return the length in mm; more than 0} */
    double lengthMm();

    /** {@return the width across the channel in mm; more than 0} */
    double widthMm();

    /** {@return the height in the channel in mm; more than 0} */
    double heightMm();
}
