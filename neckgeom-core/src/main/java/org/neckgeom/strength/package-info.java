/**
 * Will the neck stand? Stiffness of its sections, the load of its strings, the relief they leave and what a rod can do
 * about it, and what dry or damp air does to the wood.
 *
 * <p>x runs along the centreline from the nut toward the body, z up from the fingerboard's glue face toward the strings.
 * A moment, a curvature or a bow is positive when it lifts the head: relief. A force in a rod is positive when it works
 * against that. Whatever rests on the modulus of wood is an estimate and carries the interval that pieces of a species
 * leave it. No argument may be null.
 *
 * <p>Open first: {@link org.neckgeom.strength.Relief}, then {@link org.neckgeom.strength.Weather}.
 *
 * @since 0.1.0
 */
package org.neckgeom.strength;
