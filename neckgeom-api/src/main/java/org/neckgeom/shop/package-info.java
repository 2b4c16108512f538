/**
 * What stands on the bench? Cutters, fences, feeler leaves, test pieces and the trial cuts read on them.
 *
 * <p>The fence side of a piece is the edge that rides the fence; the far side is the other one. Open first: {@link
 * org.neckgeom.shop.TrialCut}. No argument may be null.
 *
 * @since 0.1.0
 */
package org.neckgeom.shop;
