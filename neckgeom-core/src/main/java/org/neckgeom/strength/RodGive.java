package org.neckgeom.strength;

import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;

/** How far a rod and the neck round it give for one newton in the rod, and what that newton does to relief. */
final class RodGive {

    private static final int STEPS = 200;

    private RodGive() {}

    /** Diameter of the rod's thread, mm: as thick as one of its bars. */
    static double threadMm(StrungNeck strung) {
        TrussRod rod = strung.neck().channel().flatMap(Channel::rod).orElse(null);
        if (rod == null) {
            return 0;
        }
        return strung.isTwoWay() ? Math.min(rod.widthMm(), rod.heightMm() / 2) : rod.heightMm();
    }

    /** Shortening of the rod's thread for one newton, mm: bars, and the neck that bends and is pressed together; NaN without a rod. */
    static double of(StrungNeck strung) {
        RodPull rod = strung.rodPull();
        if (rod == null) {
            return Double.NaN;
        }
        NeckBeam beam = strung.beam();
        double end = Math.min(rod.end(), beam.length());
        double start = Math.max(rod.start(), 0);
        double d = threadMm(strung);
        double bar = (end - start) / (NeckModel.STEEL_MPA * Math.PI * d * d / 4);
        double sum = 0;
        SectionMoments section = new SectionMoments();
        for (int i = 0; i < STEPS; i++) {
            double x = start + (end - start) * (i + 0.5) / STEPS;
            beam.section(x, section);
            double moment = rod.moment(x, section.neutralAxis());
            sum += moment * moment * beam.flexibility(x, section) + rod.push(x) / section.stretchStiffness();
        }
        return (strung.isTwoWay() ? 2 : 1) * bar + sum * (end - start) / STEPS;
    }

    /** Relief that one newton takes away, mm, as the model has it. */
    static double reliefPerNewton(StrungNeck strung) {
        Straightedge edge = strung.bench().middle();
        double hundred = 100;
        return (edge.bow(0) - edge.bow(hundred)) / hundred;
    }
}
