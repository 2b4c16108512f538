/**
 * What shall the neck be? Scale, head, fingerboard, back, rod and its channel, strings, heel, and the design that joins
 * them.
 *
 * <p>Frame: x runs along the centreline, 0 at the fingerboard-side face of the nut, positive toward the body, so the head
 * has x &lt; 0; y runs across, 0 on the centreline, positive toward the treble side; z is normal to the fingerboard's glue
 * face, 0 on that face, positive toward the strings, so the neck's wood has z &lt; 0. Depths are given as positive numbers
 * below the glue face.
 *
 * <p>Open first: {@link org.neckgeom.design.NeckDesign}. No argument may be null.
 *
 * @since 0.1.0
 */
package org.neckgeom.design;
