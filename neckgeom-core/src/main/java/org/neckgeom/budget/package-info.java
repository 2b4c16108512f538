/**
 * What becomes of many small errors, and which step is worth improving? Budgets of named contributors with their exact
 * distribution, registration trees that make such budgets out of how one feature is located on another, trials by Monte
 * Carlo (JCGM 101:2008), and first-order propagation through any function.
 *
 * <p>Open {@link org.neckgeom.budget.Budget} first, then {@link org.neckgeom.budget.Registration}. Errors count in the
 * house unit of their kind; lateral errors are positive toward the treble side, heights toward the strings, places along
 * the neck toward the body. No argument may be null.
 *
 * @since 0.1.0
 */
package org.neckgeom.budget;
