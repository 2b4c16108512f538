// A head glued on at 13 degrees: where are the joint's lines, and which board does it need?
var scarf = Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8));
println(ScarfJoint.inTheHead(scarf));            // glue face, joint lines
println(ScarfJoint.inTheShaft(scarf));
println(ScarfRoll.of(scarf.angle(), deg(0.5)));  // saw line out of square
println(ScarfJoint.inTheShaft(scarf).board(mm(560), mm(185)));
println(BreakAngle.over(scarf.angle(), mm(7.5)).post(mm(60), mm(8)));

// The head's face is planed by 0.6 mm and a 2 mm veneer goes on: the break line moves.
println(ScarfJoint.inTheHead(scarf).planingHeadFace(mm(0.6)).veneered(HeadSide.FACE, mm(2)));

// A layout by its run that is not the angle it is meant to be.
println(ScarfRun.of(mm(22.2), mm(63.5)));

// A nut that slants by 6 degrees for fanned frets, 60 mm of width kept: two cuts of opposite hand.
println(ScarfJoint.inTheShaft(scarf.nutSlant(deg(6))).keeping(mm(60)).board(mm(560), mm(185)));

// Each string at its own post, what is free round the posts, and what the strings press on the nut with.
var pull = newton(95);
var strings = StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4")).
    diameters(mm(1.1), mm(0.8), mm(0.5), mm(0.35)).across(Across.of(mm(3), mm(50)));
var head = Head.angled(deg(13)).length(mm(185)).width(mm(76)).thickness(mm(15)).posts(Posts.of(
    TunerPost.at(mm(60)).aside(mm(-26)).above(mm(8)), TunerPost.at(mm(105)).aside(mm(-25)).above(mm(8)),
    TunerPost.at(mm(105)).aside(mm(25)).above(mm(8)), TunerPost.at(mm(60)).aside(mm(26)).above(mm(8))).
    diameter(mm(6)).washers(mm(14)));
var solid = NeckSolid.of(Neck.named("Practice neck").scale(mm(560)).
    fingerboard(Fingerboard.tapered(mm(34), mm(46)).fretHeight(mm(1.1))).
    back(BackProfile.between(mm(14.5), mm(16.5))).strings(strings).head(head));
for (var string : solid.strings()) println(string);
println(solid.clearances().orElseThrow());
println(solid.nutForces(pull).orElseThrow());
println(HeadLayout.of(head).wings(mm(61)));       // what must be glued on each side of a 61 mm shaft
println(solid.meshes(mm(0.05)));                  // closed, for CAD: mesh.toStl(), mesh.toObj()
