package org.neckgeom.examples.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Links of a made-up site: those that lead somewhere pass, each other one is named. */
class LinkCheckTest {

    @TempDir
    Path site;

    @Test
    void broken_isNoneWhereEveryLinkLeadsSomewhere() throws IOException {
        page("index.html", """
                <a href="a/one.html#of(org.some.Type%3CQ%3E)">a method</a> <a href="#here">here</a> <i id="here"></i>
                <a href="a/">a folder</a> <img src="picture.svg"> <a href="https://www.w3.org/nowhere">outside</a>""");
        page("a/one.html", "<i id=\"of(org.some.Type&lt;Q&gt;)\"></i> <a href=\"../index.html?is=not-asked\">up</a>");
        page("a/index.html", "<a href=\"one.html#\">top</a>");
        page("picture.svg", "<svg/>");

        LinkCheck check = LinkCheck.of(site);

        assertThat(check.broken()).isEmpty();
        assertThat(check.inside()).isEqualTo(6);
        assertThat(check.outside()).isEqualTo(1);
    }

    @Test
    void broken_namesEachLinkThatLeadsNowhere() throws IOException {
        page("index.html", """
                <a href="gone.html">x</a> <img src="gone.svg"> <a href="a/one.html#gone">x</a> <a href="#gone">x</a>
                <a href="../outside.html">x</a>""");
        page("a/one.html", "<i id=\"here\"></i>");

        assertThat(LinkCheck.of(site).broken())
                .containsExactly(
                        "index.html links to gone.html, which is not there",
                        "index.html links to gone.svg, which is not there",
                        "index.html links to a/one.html#gone, a place that is not on that page",
                        "index.html links to #gone, a place that is not on that page",
                        "index.html links to ../outside.html outside the site");
    }

    @Test
    void main_failsOnABrokenLinkAndOnNoSiteAtAll() throws IOException {
        assertThatThrownBy(() -> LinkCheck.main(new String[] {site.toString()}))
                .hasMessage("links that lead nowhere: 0, on pages: 0");

        page("index.html", "<a href=\"gone.html\">x</a>");

        assertThatThrownBy(() -> LinkCheck.main(new String[] {site.toString()}))
                .hasMessage("links that lead nowhere: 1, on pages: 1");
    }

    private void page(String name, String html) throws IOException {
        Path file = site.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, html);
    }
}
