// A head glued on at 13 degrees: where are the joint's lines, and which board does it need?
var scarf = Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8));
println(ScarfJoint.inTheHead(scarf));            // glue face, joint lines
println(ScarfJoint.inTheShaft(scarf));
println(ScarfRoll.of(scarf.pitch(), deg(0.5)));  // saw line out of square
println(ScarfJoint.inTheShaft(scarf).board(mm(560), mm(185)));
println(BreakAngle.over(scarf.pitch(), mm(7.5)).post(mm(60), mm(8)));

// The head's face is planed by 0.6 mm and a 2 mm veneer goes on: the break line moves.
println(ScarfJoint.inTheHead(scarf).planingHeadFace(mm(0.6)).veneered(HeadSide.FACE, mm(2)));

// A layout by its run that is not the angle it is meant to be.
println(ScarfRun.of(mm(22.2), mm(63.5)));

// A nut that slants by 6 degrees for fanned frets, 60 mm of width kept: two cuts of opposite hand.
println(ScarfJoint.inTheShaft(scarf.nutSlant(deg(6))).keeping(mm(60)).board(mm(560), mm(185)));

// Each string at its own post, and what they press on the nut together.
var nut = StringSpacing.diameters(mm(1.1), mm(0.8), mm(0.5), mm(0.35)).inside(mm(34), mm(3)).equalGaps();
var head = HeadLayout.of(Head.angled(deg(13)).length(mm(185)).width(mm(76)).thickness(mm(15))
    .posts(TunerPost.at(mm(60)).aside(mm(-26)).above(mm(8)), TunerPost.at(mm(105)).aside(mm(-25)).above(mm(8)),
           TunerPost.at(mm(105)).aside(mm(25)).above(mm(8)), TunerPost.at(mm(60)).aside(mm(26)).above(mm(8))));
println(nut);
for (var string : head.breaks(nut, mm(7.5))) println(string);
println(head.nutForces(nut, mm(7.5), newton(95)));
println(head.wings(mm(61)));                      // what must be glued on each side of a 61 mm shaft
