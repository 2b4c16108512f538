// How much wood is left under the rod once the back is carved?
var neck = Neck.named("Octave mandolin, walnut")
    .scale(mm(560))
    .fingerboard(Fingerboard.tapered(mm(34), mm(46)).thickness(mm(6)).radius(mm(400)).wood(Wood.INDIAN_ROSEWOOD))
    .back(BackProfile.between(mm(14.5), mm(16.5)).rounded()).frets(20).bodyAtFret(14)
    .wood(Wood.BLACK_WALNUT)
    .trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
    .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4")).doubled().tensions(newton(95)));
println(FloorThickness.under(neck).least());           // the thinnest place of the whole channel
println(FloorThickness.under(neck).probabilityBelow(mm(3), ErrorDistribution.normal(mm(0.3))));

// Depth, offset and carving each with its own spread; then the channel off the middle.
println(FloorThickness.under(neck).probabilityBelow(mm(4),
    WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.1))).offset(ErrorDistribution.rectangular(mm(0.4))).carving(ErrorDistribution.triangular(mm(0.6)))));
println(FloorThickness.under(neck).offCentre(mm(0.7)).least());
println(BackShape.of(neck).at(mm(150)));          // the curve at 150 mm from the nut
println(BackShape.of(neck).at(mm(150)).facets(true));    // and the flats to carve it by

// How hard do the strings pull, will the neck stand, how far does it bow, and what must the rod do about it?
println(StringLoad.of(neck));
println(Relief.of(neck).stress());
println(Sections.of(neck));
println(Relief.of(neck).underStrings());
println(Relief.of(neck).rodForceFor(mm(0.2)));
println(Relief.of(neck).between(1, 12).rodTravel());

// A pair of carbon bars beside the rod; and a piece of walnut that was bent under a weight before it became a neck.
println(Relief.of(neck).addingBars(Bar.carbon(mm(305)).section(mm(3.2), mm(9.5)), mm(7)));
println(Relief.of(neck.wood(Wood.BLACK_WALNUT.withName("tested walnut").modulus(gigapascal(12.4)).modulusVariation(percent(4)))).underStrings());

// What does winter do to the board, the fret ends, the rod in its channel?
var winter = Weather.from(percent(45), celsius(21)).to(percent(25), celsius(21));
println(winter.across(mm(46), Wood.INDIAN_ROSEWOOD));
println(winter.across(mm(46), Wood.INDIAN_ROSEWOOD).quartersawn());
println(winter.on(neck));

// After a fortnight of it the thin board has dried, the neck not yet; and the strings have pulled for a year.
println(winter.days(14).on(neck));
println(Relief.of(neck).underStrings().after(365));

// The test piece was read in the dry week, the blank is cut in the damp one.
println(Weather.from(percent(35), celsius(20)).to(percent(55), celsius(20)).readOnDifferentDays(mm(61), Wood.BLACK_WALNUT));
