package org.neckgeom.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Tree;

class MovesTest {

    /** A shelf of books, whose keys were others before. */
    private static final class Shelf extends Noun<Shelf> {

        static final Table<Shelf> TABLE = Table.of("shelf", "a shelf", Shelf::new);
        static final Key<Shelf, List<Book>> BOOKS =
                TABLE.needed("books", Types.list(Types.group(Book.TABLE), 1, 9), "on the shelf");
        static final Key<Shelf, Place> PLACE = TABLE.inlineOptional(Place.TABLE);
        static final Form<Shelf> FORM = Form.<Shelf>of("shelf").finds("shelf", "a shelf");

        static {
            TABLE.moved(Moves.none().and("volumes", "books"));
        }

        Shelf(Values<Shelf> values) {
            super(values);
        }

        @Override
        public Form<Shelf> form() {
            return FORM;
        }
    }

    private static final class Place extends Noun<Place> {

        static final Table<Place> TABLE = Table.of("", "where it is", Place::new);
        static final Key<Place, Integer> FLOOR = TABLE.needed("floor", Types.whole(0, 9), "of the house");
        static final Form<Place> FORM = Form.<Place>of("place").finds("place", "a place");

        static {
            TABLE.moved(Moves.none().and("storey", "floor"));
        }

        Place(Values<Place> values) {
            super(values);
        }

        @Override
        public Form<Place> form() {
            return FORM;
        }
    }

    private static final class Book extends Noun<Book> {

        static final Table<Book> TABLE = Table.of("", "a book", Book::new);
        static final Key<Book, Chapter> LONGEST =
                TABLE.needed("longest", Types.group(Chapter.TABLE), "of its chapters");
        static final Form<Book> FORM = Form.<Book>of("book").finds("book", "a book");

        static {
            TABLE.moved(Moves.none().and("chapter", "longest.number").and("thick, thin -> longest.paper", Book::paper));
        }

        Book(Values<Book> values) {
            super(values);
        }

        private static Branch paper(Branch old) {
            for (String word : List.of("thick", "thin")) {
                if (old.has(word)) {
                    return old.moved(word, "longest.pages").with("longest.paper", word);
                }
            }
            return old;
        }

        @Override
        public Form<Book> form() {
            return FORM;
        }
    }

    private static final class Chapter extends Noun<Chapter> {

        static final Table<Chapter> TABLE = Table.of("", "a chapter", Chapter::new);
        static final Key<Chapter, Integer> NUMBER = TABLE.needed("number", Types.whole(1, 99), "in the book");
        static final Key<Chapter, Integer> PAGES = TABLE.needed("pages", Types.whole(1, 999), "how many");
        static final Key<Chapter, String> PAPER = TABLE.needed("paper", Types.TEXT, "thick or thin");
        static final Form<Chapter> FORM = Form.<Chapter>of("chapter").finds("chapter", "a chapter");

        Chapter(Values<Chapter> values) {
            super(values);
        }

        @Override
        public Form<Chapter> form() {
            return FORM;
        }
    }

    private static final Map<String, Object> NEW = Map.of(
            "floor",
            "2",
            "books",
            List.of(
                    Map.of("longest", Map.of("number", "3", "pages", "40", "paper", "thick")),
                    Map.of("longest", Map.of("number", "1", "pages", "12", "paper", "thin"))));

    private static final Map<String, Object> OLD = Map.of(
            "storey",
            "2",
            "volumes",
            List.of(Map.of("chapter", "3", "thick", "40"), Map.of("chapter", "1", "thin", "12")));

    @Test
    void read_movesInGroupsInListsAndAtTheSameLevel() {
        assertThat(Shelf.TABLE.read(Tree.of(OLD))).isEqualTo(Shelf.TABLE.read(Tree.of(NEW)));
    }

    @Test
    void read_namesEachFaultWhereItWasWritten() {
        Map<String, Object> wrong = Map.of(
                "storey",
                "12",
                "volumes",
                List.of(Map.of("chapter", "100", "thick", "40"), Map.of("chapter", "1", "thin", "0", "weight", "1")));

        assertThat(faults(wrong))
                .extracting(Fault::path)
                .containsExactlyInAnyOrder("storey", "volumes[1].chapter", "volumes[2].thin", "volumes[2].weight");
        assertThat(faults(wrong))
                .extracting(Fault::toString)
                .contains("volumes[1].chapter must be a whole number from 1 to 99, but was \"100\"");
    }

    @Test
    void read_refusesAllThatIsGivenTwiceWhereItWasWritten() {
        assertThat(faults(Map.of("storey", "1", "floor", "1", "books", List.of(), "volumes", List.of())))
                .extracting(Fault::toString)
                .containsExactlyInAnyOrder(
                        "volumes is given, and books too; keep one of them",
                        "storey is given, and floor too; keep one of them");
        assertThat(faults(Map.of(
                        "volumes",
                        List.of(Map.of("chapter", "3", "longest", Map.of("number", "3", "pages", "1", "paper", "x"))))))
                .extracting(Fault::toString)
                .containsExactly("volumes[1].chapter is given, and longest.number too; keep one of them");
    }

    static List<Moves> moves() {
        return List.of(
                Moves.none().and("a", "b"),
                Moves.none().and("a", "b.c"),
                Moves.none().and("a.b", "c"),
                Moves.none().and("list[2]", "second"),
                Moves.none().and("a", "list[3]"),
                Moves.none().and("put", branch -> branch.with("x.y", "z")),
                Moves.none().and("words", branch -> branch.worded("word", Map.of("old", "new"))),
                Moves.none().and("without", branch -> branch.without("a")),
                Moves.none().and("each", branch -> branch.each("list", item -> item.moved("a", "b"))));
    }

    /** On a group that has something for each of them. */
    @ParameterizedTest
    @MethodSource("moves")
    void moved_twiceIsMovedOnce_andChangesSomething(Moves move) {
        Tree old = Tree.of(
                move.lines().get(0).startsWith("a.b")
                        ? Map.of("a", Map.of("b", "1"))
                        : Map.of("a", "1", "word", "old", "list", List.of(Map.of("a", "1"), Map.of("n", "2"))));
        Tree once = move.moved(old);

        assertThat(once).isNotEqualTo(old);
        assertThat(move.lines().get(0).equals("list[2] -> second") ? once : move.moved(once))
                .isEqualTo(once);
        assertThat(move.moved(Tree.of(Map.of("other", "1"))))
                .isEqualTo(
                        move.lines().get(0).equals("put")
                                ? Tree.of(Map.of("other", "1", "x", Map.of("y", "z")))
                                : Tree.of(Map.of("other", "1")));
    }

    @Test
    void moved_dropsWhatItEmpties_andKeepsTheRest() {
        assertThat(Moves.none().and("a.b", "c").moved(Tree.of(Map.of("a", Map.of("b", "1")))))
                .isEqualTo(Tree.of(Map.of("c", "1")));
        assertThat(Moves.none().and("a.b", "c").moved(Tree.of(Map.of("a", Map.of("b", "1", "d", "2")))))
                .isEqualTo(Tree.of(Map.of("c", "1", "a", Map.of("d", "2"))));
        assertThat(Moves.none().and("at[1]", "first").moved(Tree.of(Map.of("at", List.of("1", "2")))))
                .isEqualTo(Tree.of(Map.of("at", List.of("2"), "first", "1")));
    }

    @Test
    void moved_findsCamelCase_andLeavesWhatHasNoRoom() {
        assertThat(Moves.none().and("old key", "new key").moved(Tree.of(Map.of("oldKey", 1))))
                .isEqualTo(Tree.of(Map.of("new key", 1)));
        assertThat(Moves.none().and("a", "b.c").moved(Tree.of(Map.of("a", 1, "b", "no group"))))
                .isEqualTo(Tree.of(Map.of("a", 1, "b", "no group")));
        assertThat(Moves.none().and("a", "b").moved(Tree.of(List.of("a")))).isEqualTo(Tree.of(List.of("a")));
    }

    @Test
    void and_refusesWhatIsNoPath() {
        for (String path : List.of("", "a.", "a[0]", "a[x]", "[1]", "a[1]b", "a\nb")) {
            assertThatThrownBy(() -> Moves.none().and(path, "b"))
                    .as(path)
                    .isInstanceOf(Refusal.class)
                    .hasMessageStartingWith("from must be keys with points between");
        }
    }

    @Test
    void branch_answersWhatIsThere() {
        Branch branch = Branch.of(Map.of("word", "a", "list", List.of("1", "2"), "number", 3.0), "");

        assertThat(branch.text("word")).contains("a");
        assertThat(branch.text("number")).isEmpty();
        assertThat(branch.count("list")).isEqualTo(2);
        assertThat(branch.count("word")).isZero();
        assertThat(branch.has("list[2]")).isTrue();
        assertThat(branch.has("list[3]")).isFalse();
    }

    @Test
    void toString_hasEachMoveInALine() {
        assertThat(Moves.none()).hasToString("no moves");
        assertThat(Moves.none().and("a", "b").then(Moves.none().and("c", "d"))).hasToString("a -> b; c -> d");
    }

    private static List<Fault> faults(Map<String, Object> data) {
        try {
            Shelf.TABLE.read(Tree.of(data));
        } catch (Refusal refusal) {
            return refusal.faults();
        }
        return List.of();
    }
}
