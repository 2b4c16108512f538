// Which depths of back and which rods will do? All the plan's checks are asked of every combination.
var file = NeckFile.read("octave-mandolin.yaml");
var sweep = Sweep.of(file.neck()).
    over("depth at the nut", Axis.steps(mm(11), mm(16), mm(0.5)), (neck, depth) ->
        neck.back(BackProfile.between(depth, depth.plus(mm(2))))).
    over("height of the rod", Axis.steps(mm(7), mm(11), mm(1)), (neck, height) ->
        neck.channel(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), height)).startingAt(mm(3))));
println(sweep);

// No check may stop the work; what is not known yet may still be open.
println(sweep.keeping(neck -> Job.of(neck, file.blank(), file.shop()).plan().checks().stream().
    noneMatch(check -> check.outcome() == Outcome.STOP)));

// The three with the most wood left under the channel.
for (var one : sweep.results(neck -> FloorThickness.under(neck).least()).collect(Best.greatest(3, wood -> wood.woodMm())))
    println(one);
