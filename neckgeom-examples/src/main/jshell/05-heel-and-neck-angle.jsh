// How far back must the neck stand, and what comes off the heel when it does not?
var heights = NeckSet.saddle(mm(15.2)).atNut(mm(0.4)).action(mm(2.0)).fretPlane(mm(7.1)).compensation(mm(2.2));
var set = BackSet.of(Scale.of(mm(560)), 14, heights);
println(set.angle());                            // 1.02 deg, head back
println(set.actionPer(deg(0.1)));                // sensitivity
println(set.heelFace());                         // wood angle at the mating face
println(set.wedge(mm(78), mm(-1.0)));            // bridge end must drop 1 mm: what comes off the heel, and where
println(set.cheek(mm(54), mm(0.8)));             // centreline 0.8 mm off at the bridge
println(set.angleWith(ErrorDistribution.normal(mm(0.15))).interval(percent(95)));

// Both corrections from one plane, as what comes off at four corners.
println(set.correction(Heel.of(mm(78), mm(54)).capWidth(mm(20)), mm(-1.0), mm(0.8)));

// The readings small shops take at the bridge, without any angle.
println(set.angle().atBridge(mm(11), mm(7.1)));  // bridge without saddle; fingerboard and fret

// The same neck over a domed top, and the blocks its heel is stacked from.
println(BackSet.of(Scale.of(mm(560)), 14, heights.dome(Dome.of(mm(9000)).pole(mm(220), mm(30)))).angle());
println(HeelBlocks.of(mm(76), mm(20)).at(deg(1.02)));
println(Dovetail.tapered(deg(3)));                // what a shim does to the seat
println(set.shim(mm(70), mm(1.2)));
