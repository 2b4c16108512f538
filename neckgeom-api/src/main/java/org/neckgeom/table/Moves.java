package org.neckgeom.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Tree;

/**
 * Where keys of earlier versions have gone: a list that turns an old group of keys into a new one and leaves a new one as it
 * is. Immutable.
 *
 * <p>A table has the moves of its own keys, so they hold wherever its noun is written: at the top of a document, in another
 * noun, or in each item of a list.
 */
public final class Moves {

    private final List<Move> moves;

    /** One move, and the line that describes it. */
    private record Move(String line, UnaryOperator<Branch> change) {}

    private Moves(List<Move> moves) {
        this.moves = moves;
    }

    /** {@return no moves; every group stays as it is} */
    public static Moves none() {
        return new Moves(List.of());
    }

    /**
     * {@return these moves with one more, from one path to another}
     *
     * @param from path of the old key, such as {@code scarf}; see {@link Branch}
     * @param to path of the new one, such as {@code head.scarf}
     */
    public Moves and(String from, String to) {
        Branch.path(from, "from");
        Branch.path(to, "to");
        return and(from + " -> " + to, branch -> branch.moved(from, to));
    }

    /**
     * {@return these moves with one more, for what changes its shape}
     *
     * @param line from what to what, such as {@code height, width -> size}
     * @param change makes the new group of the old one; of a new one, the same
     */
    public Moves and(String line, UnaryOperator<Branch> change) {
        List<Move> more = new ArrayList<>(moves);
        more.add(new Move(Objects.requireNonNull(line, "line"), Objects.requireNonNull(change, "change")));
        return new Moves(List.copyOf(more));
    }

    /**
     * {@return these moves, then others}
     *
     * @param others for the same group of keys
     */
    public Moves then(Moves others) {
        List<Move> all = new ArrayList<>(moves);
        all.addAll(Objects.requireNonNull(others, "others").moves);
        return new Moves(List.copyOf(all));
    }

    /**
     * {@return a group of keys as it would be written today}
     *
     * @param tree a group of any version; anything else stays as it is
     * @throws IllegalArgumentException if something is given under the old key and under the new one
     */
    public Tree moved(Tree tree) {
        return Objects.requireNonNull(tree, "tree").plain() instanceof Map<?, ?> map
                ? Tree.of(moved(Branch.of(map, "")).plain())
                : tree;
    }

    boolean isNone() {
        return moves.isEmpty();
    }

    /** All that is given twice is refused at once. */
    Branch moved(Branch old) {
        Branch branch = old;
        List<Fault> twice = new ArrayList<>();
        for (Move move : moves) {
            try {
                branch = move.change().apply(branch);
            } catch (Refusal refusal) {
                twice.addAll(refusal.faults());
            }
        }
        if (!twice.isEmpty()) {
            throw Refusal.of(twice);
        }
        return branch;
    }

    /** {@return each move in a line, such as {@code pins -> lock.pins}; the lines} */
    public List<String> lines() {
        return moves.stream().map(Move::line).toList();
    }

    /** Each move, such as {@code pins -> lock.pins}. */
    @Override
    public String toString() {
        return moves.isEmpty() ? "no moves" : moves.stream().map(Move::line).collect(Collectors.joining("; "));
    }
}
