package org.neckgeom.sheet;

import org.neckgeom.plan.NeckDetails;
import org.neckgeom.plan.NeckPlan;

/**
 * What has been settled of a neck's shape beyond its design, as drawings need it.
 *
 * @param details strings across, posts, fanned frets
 * @param saddleMm station of the saddle on the centreline; used where strings are told
 * @param stockMm width of the blank, of which ears make up what the head is wider; 0 when it is not known
 */
record Settled(NeckDetails details, double saddleMm, double stockMm) {

    static Settled nothing() {
        return new Settled(NeckDetails.none(), 0, 0);
    }

    static Settled of(NeckPlan plan) {
        double saddle = plan.neckSet()
                .map(set -> plan.design().bodyJointMm() + set.reach().house())
                .orElse(plan.design().scale().lengthMm());
        return new Settled(plan.details(), saddle, plan.blank().widthMm());
    }
}
