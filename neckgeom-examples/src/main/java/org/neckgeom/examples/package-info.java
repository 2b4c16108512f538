/**
 * The main job: {@link org.neckgeom.examples.PlanANeck} reads a neck file and prints the plan. Neck files are in {@code
 * neck}, reading text files against a shape in {@code file}, JShell in {@code shell}.
 */
package org.neckgeom.examples;
