package org.neckgeom.page;

/**
 * The page's style sheet: system type, large figures, one column on a phone and two where there is room, light and dark
 * as the device asks, and black on white on paper. Holds no {@code <} or {@code &}, so that the page reads as XML too.
 */
final class Style {

    private Style() {}

    static String sheet() {
        return (":root{color-scheme:light dark;" + Ink.variables(false) + "}\n"
                        + "@media (prefers-color-scheme:dark){:root{" + Ink.variables(true) + "}}\n"
                        + "@media print{:root{color-scheme:light;" + Ink.variables(false) + "}}\n"
                        + PAGE
                        + DRAWINGS
                        + WIDE
                        + PRINT)
                .replaceAll("@(\\w+(-\\w+)?)@", "var(--$1)");
    }

    private static final String PAGE = """
            *{box-sizing:border-box}
            html{font:18px/1.4 system-ui,sans-serif;-webkit-text-size-adjust:100%}
            body{margin:0 auto;max-width:76rem;padding:12px;background:@paper@;color:@text@;overflow-wrap:break-word}
            h1{font-size:1.9rem;line-height:1.15;margin:0 0 .3rem}
            h2{font-size:1.35rem;margin:2rem 0 .5rem;padding-top:.4rem;border-top:4px solid @text@}
            h3{font-size:1.15rem;margin:0}
            h4{font-size:1.05rem;margin:1rem 0 0}
            summary{cursor:pointer;padding:.55rem 0;min-height:44px}
            summary h3{display:inline}
            details{border-top:1px solid @rule@}
            details[open]{padding-bottom:1rem}
            :focus-visible{outline:4px solid @good@;outline-offset:2px}
            p{margin:.25rem 0}
            a{color:@good@}
            ul,ol{margin:.4rem 0;padding-left:1.4rem}
            nav{margin:.8rem 0}
            nav a{display:inline-block;margin:0 1rem .2rem 0;padding:.5rem 0}
            .quiet{color:@quiet@}
            .steps{list-style:none;padding:0}
            .steps summary .number{display:inline-block;min-width:2.2rem;color:@quiet@;font-variant-numeric:tabular-nums}
            #now dl div,#neck dl div{display:grid;grid-template-columns:6.4rem 1fr;gap:.6rem}
            #now .first,#neck .first{font-size:1.1rem}
            .steps .mark{border:2px solid @text@;margin:0 0 0 .8rem}
            .cautions li{padding:.15rem 0}
            .tally{list-style:none;display:flex;flex-wrap:wrap;gap:.4rem;padding:0;margin:.8rem 0}
            .tally li{font-weight:700;font-size:1.15rem;padding:.25rem .7rem}
            .stop .mark,.tally .stop{background:@stop@;color:@on-stop@;border:2px solid @stop@}
            .open .mark,.tally .open{border:2px dashed @open@;color:@open@}
            .ok .mark,.tally .ok{border:2px solid @good@;color:@good@}
            .checks{list-style:none;padding:0}
            .checks li{border-top:1px solid @rule@;padding:.6rem 0}
            .mark{display:inline-block;min-width:4.2rem;text-align:center;font-weight:700;padding:0 .5rem;margin-right:.6rem}
            .checks h3{display:inline}
            .found{font-size:1.25rem;font-weight:650;font-variant-numeric:tabular-nums}
            .todo:before{content:"Next: ";font-weight:700}
            dl{margin:.4rem 0}
            dl div{border-top:1px solid @rule@;padding:.35rem 0}
            dt{color:@quiet@}
            dd{margin:0;font-variant-numeric:tabular-nums}
            span.first,span.more{display:block}
            .first{font-size:1.2rem;font-weight:600}
            .more{padding-left:1rem}
            .scroll{overflow-x:auto}
            table{border-collapse:collapse;font-variant-numeric:tabular-nums;width:100%}
            th,td{text-align:right;padding:.3rem .4rem;border-top:1px solid @rule@;white-space:nowrap}
            th{font-size:.85rem;white-space:normal;vertical-align:bottom}
            th:first-child,td:first-child{text-align:left;font-weight:700}
            tbody tr:nth-child(even){background:@panel@}
            figure{margin:1rem 0;border-top:1px solid @rule@;padding-top:.6rem}
            figcaption{margin-top:.3rem}
            .key{list-style:none;padding:0}
            .key li{padding:.2rem 0}
            .key b{display:inline-block;min-width:1.6rem}
            footer{margin-top:2.5rem;border-top:4px solid @text@;padding-top:.5rem}
            """;

    private static final String DRAWINGS = """
            svg{display:block;width:100%;max-width:36rem;height:auto;margin:0 auto}
            svg text{fill:@text@;font-family:system-ui,sans-serif}
            svg .number{font-size:13px;font-weight:650}
            svg .words{font-size:11.5px;fill:@quiet@}
            svg .name{font-size:12.5px}
            svg .halo{paint-order:stroke;stroke:@paper@;stroke-width:4px;stroke-linejoin:round}
            svg polygon,svg polyline,svg line{stroke:@text@;stroke-width:1.2;fill:none;stroke-linejoin:round}
            svg .wood{fill:@wood@}
            svg .board{fill:@board@}
            svg .hollow{fill:@paper@}
            svg .rod{fill:@rod@;stroke-width:.8}
            svg .hidden{fill:@wood@;stroke-dasharray:5 3}
            svg .outline{stroke-dasharray:9 3}
            svg .centre{stroke:@text@;stroke-width:.8;stroke-dasharray:12 3 2 3}
            svg .leader{stroke:@rule@;stroke-width:.9}
            svg .dot{fill:@text@}
            svg .fret{stroke-width:.9}
            svg .nut{stroke-width:2.6}
            svg .string{stroke-width:.6}
            svg .post{fill:@paper@;stroke:@text@;stroke-width:1}
            svg .glue{stroke-width:2.4;stroke-dasharray:3 2}
            svg .seam{stroke-width:.6}
            svg .least{stroke-width:2.4}
            svg .offcut{fill:@rod@}
            svg .bar{fill:@rod@}
            svg .curve{fill:@rod@}
            svg .link{stroke:@rule@;stroke-width:1}
            svg .head{fill:@rule@;stroke:none}
            svg .grid{stroke:@rule@;stroke-width:.4}
            svg .axis{stroke-width:1.2}
            svg .reading{stroke:@good@;stroke-width:2.2}
            svg .limit{stroke-width:1.6;stroke-dasharray:6 3}
            """;

    private static final String WIDE = """
            @media (max-width:40rem){
            table{font-size:.78rem}
            th{font-size:.68rem}
            th,td{padding:.3rem .13rem}
            th:first-child,td:first-child{white-space:normal}
            }
            @media (min-width:52rem){
            .top,.checks,.figures{display:grid;grid-template-columns:1fr 1fr;gap:0 2.2rem;align-items:start}
            .top{grid-template:"neck now" auto "checks now" 1fr/1fr 1fr}
            #neck{grid-area:neck}
            #now{grid-area:now}
            .top #checks{grid-area:checks}
            .top .checks{display:block}
            .tables{display:grid;grid-template-columns:2fr 3fr;gap:0 2.2rem;align-items:start}
            .part dl div,#what-if dl div{display:grid;grid-template-columns:12rem 1fr;gap:.8rem}
            }
            """;

    private static final String PRINT = """
            @page{margin:12mm}
            @media print{
            html{font-size:9.5pt;line-height:1.3}
            body{max-width:none;padding:0}
            nav{display:none}
            h2,h3,h4,summary{break-after:avoid;break-inside:avoid}
            h2{margin:1.2rem 0 .2rem;padding-top:.2rem}
            h4{margin:.5rem 0 0}
            details::details-content{content-visibility:visible;display:block;height:auto}
            details[open]{padding-bottom:0}
            summary{list-style:none;min-height:0;padding:1mm 0}
            summary::-webkit-details-marker{display:none}
            .again{display:none}
            .part,.checks li,.cautions li,figure,dl div,tr,.budget{break-inside:avoid}
            .first,.found{font-size:1rem}
            dl{margin:.2rem 0}
            dl div{padding:.4mm 0}
            .part dl div,#what-if dl div,.steps dl div{display:grid;grid-template-columns:34mm 1fr;gap:4mm}
            .top{display:block}
            #neck{float:left;width:48%}
            #now{margin-left:52%}
            #now .cautions{columns:1}
            #now dl div,#neck dl div{grid-template-columns:22mm 1fr;gap:3mm}
            #checks{clear:both}
            .top .checks{display:block;columns:2;column-gap:8mm}
            .checks li{padding:.3rem 0}
            .checks p{margin:0}
            .cautions{columns:2;column-gap:8mm;margin:.2rem 0}
            .budget dl{display:grid;grid-template-columns:repeat(4,1fr);gap:0 6mm}
            .budget svg{max-height:42mm}
            .figures{display:grid;grid-template-columns:1fr 1fr;gap:0 8mm;align-items:start}
            .steps figure{display:inline-block;width:85mm;vertical-align:top;margin:.3rem 3mm .3rem 0}
            figure{margin:.4rem 0;padding-top:.2rem}
            svg{max-height:170mm}
            .scroll{overflow:visible}
            .tables{display:grid;grid-template-columns:2fr 3fr;gap:0 8mm;align-items:start}
            table{font-size:9pt}
            th,td{padding:.5mm 1mm}
            .stop .mark,.tally .stop{print-color-adjust:exact;-webkit-print-color-adjust:exact}
            svg{print-color-adjust:exact;-webkit-print-color-adjust:exact}
            a{color:inherit;text-decoration:none}
            }
            """;
}
