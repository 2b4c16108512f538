// How much wood is left under the rod once the back is carved?
var neck = NeckDesign.named("Octave mandolin, walnut")
    .scale(mm(560)).frets(20).bodyAtFret(14)
    .fingerboard(Fingerboard.tapered(mm(34), mm(46)).thickness(mm(6)).radius(mm(400)).wood(Wood.INDIAN_ROSEWOOD))
    .back(BackProfile.between(mm(14.5), mm(16.5)).rounded())
    .wood(Wood.BLACK_WALNUT)
    .rod(Rod.twoWay(mm(300), mm(6), mm(9)))
    .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4")).doubled().tensions(newton(95)));
println(WoodLeft.under(neck).least());           // the thinnest place of the whole channel
println(WoodLeft.under(neck).chanceBelow(mm(3), Spread.normal(mm(0.3))));

// Depth, offset and carving each with its own spread; then the channel off the middle.
println(WoodLeft.under(neck).chanceBelow(mm(4),
    WoodSpreads.ofDepth(Spread.normal(mm(0.1))).offset(Spread.rectangular(mm(0.4))).carving(Spread.triangular(mm(0.6)))));
println(WoodLeft.under(neck).offCentre(mm(0.7)).least());
println(BackShape.of(neck).at(mm(150)));          // the curve at 150 mm from the nut
println(Facets.at(neck, mm(150), true));         // and the flats to carve it by
