import org.jspecify.annotations.NullMarked;

/** What a neck maker has: units, readings, tolerances, and the nouns of the bench and of the design. */
@NullMarked
module org.neckgeom.api {
    requires transitive java.measure;
    requires tech.units.indriya;
    requires static org.jspecify;

    exports org.neckgeom.neck;
    exports org.neckgeom.fault;
    exports org.neckgeom.fixture;
    exports org.neckgeom.form;
    exports org.neckgeom.measure;
    exports org.neckgeom.numeric to
            org.neckgeom.core;
    exports org.neckgeom.shop;
    exports org.neckgeom.stock;
    exports org.neckgeom.text to
            org.neckgeom.core;
    exports org.neckgeom.table;
    exports org.neckgeom.units;
}
