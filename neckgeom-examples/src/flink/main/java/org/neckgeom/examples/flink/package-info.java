/**
 * A sweep on a distributed engine. What travels between its machines is the place in the sweep, a number, and the answer,
 * a number or a sentence; designs stay where they are made. Each machine makes the same {@link org.neckgeom.sweep.Sweep}
 * from code, or from a design's JSON in its settings, and asks for the results of the places it is given.
 */
package org.neckgeom.examples.flink;
