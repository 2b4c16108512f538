/**
 * What a maker asks at the machine: from the first trial cut to a finished rod channel.
 *
 * <p>Open {@link org.neckgeom.setup.Centring} first. The fence lies on one side of the cutter; offsets are positive when
 * the slot lies too far from it. Stations run in x from the nut, positive toward the body. Every answer is a value that
 * prints itself in the units it was asked in and carries its standard uncertainty. {@code offset()} of a centring is an
 * {@link org.neckgeom.setup.Offset}, whose quantity is {@code offset().amount()}.
 *
 * @since 0.1.0
 */
package org.neckgeom.setup;
