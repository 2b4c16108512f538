package org.neckgeom.plan;

import org.jspecify.annotations.Nullable;
import org.neckgeom.shop.TrialCut;

/**
 * One step at the machine: a trial cut that was read, or a fence move.
 *
 * @param cut the trial cut, or null for a move
 * @param moveMm the move in mm, positive toward the cutter; without meaning for a cut
 */
record CentringStep(@Nullable TrialCut cut, double moveMm) {}
