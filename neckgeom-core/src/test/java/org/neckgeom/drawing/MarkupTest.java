package org.neckgeom.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class MarkupTest {

    @Test
    void escaped_leavesNothingThatCouldBeMarkup() {
        assertEquals("&lt;b&gt;&amp;&quot;&#39;", Markup.escaped("<b>&\"'"));
    }

    @Test
    void escaped_replacesWhatXmlForbids_andKeepsTheRest() {
        assertEquals("a\uFFFDb\tc\n\uFFFD\uFFFD", Markup.escaped("a\u0000b\tc\n\uD800\uFFFE"));
        assertEquals("\u00e9 \u2033 \uD83C\uDFB8", Markup.escaped("\u00e9 \u2033 \uD83C\uDFB8"));
    }

    @Test
    void escaped_survivesTheParser() {
        String odd = "<b>&\"' ]]> <!-- --> <?x?> &amp;";
        String written = new Markup().element("p", odd, "title", odd).toString();

        assertEquals(odd, Xml.parsed(written).getDocumentElement().getTextContent());
        assertEquals(odd, Xml.parsed(written).getDocumentElement().getAttribute("title"));
    }

    @Test
    void toString_refusesAnElementLeftOpen() {
        Markup open = new Markup().open("p").text("x");

        assertEquals(
                "element left open: p",
                assertThrows(IllegalStateException.class, open::toString).getMessage());
    }
}
