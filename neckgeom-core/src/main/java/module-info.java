import org.jspecify.annotations.NullMarked;

/** What a neck maker asks: pure functions of the nouns in {@code org.neckgeom.api}, and their answers as values. */
@NullMarked
module org.neckgeom.core {
    requires transitive org.neckgeom.api;
    requires static org.jspecify;

    exports org.neckgeom.board;
    exports org.neckgeom.budget;
    exports org.neckgeom.channel;
    exports org.neckgeom.head;
    exports org.neckgeom.heel;
    exports org.neckgeom.order;
    exports org.neckgeom.page;
    exports org.neckgeom.plan;
    exports org.neckgeom.search;
    exports org.neckgeom.shape;
    exports org.neckgeom.solid;
    exports org.neckgeom.state;
    exports org.neckgeom.strength;
    exports org.neckgeom.sweep;
    exports org.neckgeom.template;
}
