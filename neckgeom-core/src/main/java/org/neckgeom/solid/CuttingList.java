package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.stock.Blank;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * A cutting list ({@index "cut list"}): pieces cut one after another from a board, with a saw kerf after each, and the rest.
 * Immutable.
 *
 * <p>Every cut is square across; a scarf's slanted cut is part of its own piece, {@link ScarfBoard}. Kerf and ends are
 * counted: {@code used = trim + sum of (length + kerf)}; a last piece that just reaches the board's end needs no cut.
 */
public final class CuttingList extends ValueAnswer {

    private static final Form<Place> PLACE = Form.<Place>of("piece")
            .fact("name", Kind.NAME, "of the piece", p -> p.piece.name)
            .fact("length", Kind.MM, "of the piece", p -> p.piece.length)
            .fact("start", Kind.MM, "from the end of the board", Place::start);

    private static final Form<CuttingList> FORM = Form.<CuttingList>of("cutting-list")
            .fact("count", Kind.WHOLE, "how many pieces", l -> l.pieces.size())
            .fact("boardLength", Kind.MM, "of the board", l -> l.board.lengthMm())
            .fact("missing", Kind.MM, "by how much the board is too short; 0: it fits", CuttingList::missingMm)
            .fact("leftOver", Kind.MM, "at the end of the board, 0 or more", CuttingList::leftOverMm)
            .fact("pieces", Kind.table(PLACE), "in the order they are sawn", CuttingList::places)
            .finds("fits", CuttingList::fits, "Cutting list: {count:of piece/pieces} from {boardLength:brief}, fits")
            .finds(
                    "too-short",
                    "Cutting list: {count:of piece/pieces} from {boardLength:brief}, {missing:brief} too short")
            .each("pieces", "{name}", "{length:text} from {start:text}", 10, "and {more} more")
            .line("leftOver", "left over", CuttingList::fits, "{leftOver:text}");

    private static final double HAIR = 1e-9;
    private static final int MOST_PIECES = 1_000;

    private final Blank board;
    private final double kerf;
    private final double trim;
    private final List<Piece> pieces;

    private CuttingList(Blank board, double kerf, double trim, List<Piece> pieces) {
        super(FORM, board.style());
        this.board = board;
        this.kerf = kerf;
        this.trim = trim;
        this.pieces = pieces;
    }

    private record Piece(String name, double length) {}

    private record Place(Piece piece, double start) {}

    /**
     * {@return a list without pieces, kerf or trim}
     *
     * @param board the board
     */
    public static CuttingList from(Blank board) {
        return new CuttingList(Objects.requireNonNull(board, "board"), 0, 0, List.of());
    }

    /**
     * {@return a copy with the width of the saw cut}
     *
     * @param kerf 0 or more
     */
    public CuttingList kerf(Quantity<Length> kerf) {
        return new CuttingList(board, LibraryUnits.mmNotNegative(kerf, "saw kerf"), trim, pieces);
    }

    /**
     * {@return a copy whose board is trimmed at its first end before anything is measured}
     *
     * @param length cut away, kerf included, 0 or more
     */
    public CuttingList trimmed(Quantity<Length> length) {
        return new CuttingList(board, kerf, LibraryUnits.mmNotNegative(length, "trim"), pieces);
    }

    /**
     * {@return a copy with one more piece}
     *
     * @param name the piece's name
     * @param length along the board, more than 0
     */
    public CuttingList piece(String name, Quantity<Length> length) {
        return pieces(1, name, length);
    }

    /**
     * {@return a copy with several more equal pieces}
     *
     * @param count 1 to 1,000
     * @param name what they are
     * @param length of each along the board, more than 0
     */
    public CuttingList pieces(int count, String name, Quantity<Length> length) {
        if (count < 1 || count > MOST_PIECES) {
            throw Refusal.of("count of pieces", "range", "be 1 to " + MOST_PIECES, count);
        }
        Piece piece = new Piece(Words.name(name, "a piece's name"), LibraryUnits.mmPositive(length, name));
        List<Piece> more = new ArrayList<>(pieces);
        for (int i = 0; i < count; i++) {
            more.add(piece);
        }
        return new CuttingList(board, kerf, trim, List.copyOf(more));
    }

    /** {@return whether every piece comes from the board} */
    public boolean fits() {
        return missingMm() == 0;
    }

    /** {@return how much longer the board would have to be; 0 when it is long enough} */
    public Amount<Length> missing() {
        return style().amount(missingMm());
    }

    /** {@return what is left of the board after the last cut; 0 when nothing is} */
    public Amount<Length> leftOver() {
        return style().amount(leftOverMm());
    }

    private double leftOverMm() {
        return Math.max(0, board.lengthMm() - netMm() - kerf);
    }

    /** {@return where each piece begins, from the board's first end; one to a piece, in order} */
    public List<Amount<Length>> starts() {
        return places().stream().map(place -> style().amount(place.start)).toList();
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        double x = trim;
        for (Piece piece : pieces) {
            places.add(new Place(piece, x));
            x += piece.length() + kerf;
        }
        return places;
    }

    private double missingMm() {
        double over = netMm() - board.lengthMm();
        return over > HAIR ? over : 0;
    }

    /** Trim, pieces and the kerfs between them; the last cut is not needed when the board ends there. */
    private double netMm() {
        double sum = trim + Math.max(0, pieces.size() - 1) * kerf;
        for (Piece piece : pieces) {
            sum += piece.length();
        }
        return sum;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {board, kerf, trim, pieces};
    }
}
