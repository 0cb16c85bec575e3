package kitwright.document;

/**
 * How a page looks: black on white and one dark red, as the drawings do, so that nothing is lost in
 * grey print. Letters of the reader’s own machine; from 320 px up to a wide screen, and on paper.
 */
final class PageStyle {
  static final String SHEET =
      """
      :root { color-scheme: light; }
      * { box-sizing: border-box; }
      body { margin: 0 auto; padding: 1.25rem 1rem 3rem; max-width: 56rem; background: #fff; color: #1a1a1a;
        font: 1.0625rem/1.55 system-ui, "Segoe UI", "Helvetica Neue", Arial, sans-serif; overflow-wrap: break-word; }
      h1 { font-size: 1.75rem; line-height: 1.2; margin: 0.5rem 0 1rem; }
      h2 { font-size: 1.25rem; line-height: 1.3; margin: 2.25rem 0 0.75rem; padding-top: 0.5rem; border-top: 2px solid #1a1a1a; }
      h3, h4, h5, h6 { font-size: 1.0625rem; margin: 1.5rem 0 0.25rem; color: #9a3412; }
      p, ul, ol { margin: 0.5rem 0 0.75rem; max-width: 46rem; }
      ul, ol { padding-left: 1.4rem; }
      li { margin: 0.25rem 0; }
      a { color: #9a3412; }
      code { font-size: 0.9em; }
      pre { overflow-x: auto; padding: 0.75rem; border: 1px solid #bbb; }
      blockquote { margin: 1rem 0; padding: 0 1rem; border-left: 3px solid #9a3412; }
      .table { overflow-x: auto; margin: 0.75rem 0; }
      table { font-size: 0.9375rem; line-height: 1.45; border-collapse: collapse; min-width: 60%; font-variant-numeric: tabular-nums; }
      th, td { padding: 0.35rem 0.75rem 0.35rem 0; border-bottom: 1px solid #bbb; text-align: left; vertical-align: top; }
      th { border-bottom: 2px solid #1a1a1a; }
      th[align="right"], td[align="right"] { text-align: right; }
      td code, .option { white-space: nowrap; }
      th[align="center"], td[align="center"] { text-align: center; }
      p:has(> img) { max-width: none; }
      img { display: block; max-width: 100%; height: auto; }
      img + br { display: none; }
      img ~ em { font-size: 0.9375rem; font-style: normal; color: #5a5a5a; }
      @media (max-width: 37rem) {
        .wide table, .wide tbody, .wide tr, .wide td { display: block; }
        .wide table { min-width: 0; }
        .wide thead { display: none; }
        .wide tr { padding: 0.4rem 0; border-bottom: 1px solid #bbb; }
        .wide td, .wide td[align] { display: flow-root; border: 0; padding: 0.1rem 0 0.1rem 7.25rem; text-align: left; white-space: normal; }
        .wide td::before { content: attr(data-label); float: left; width: 6.75rem; margin-left: -7.25rem; color: #5a5a5a; }
        td code { display: inline-block; max-width: 100%; white-space: normal; }
        .wide td:empty { display: none; }
      }
      @media print {
        @page { margin: 18mm 16mm; }
        body { max-width: none; padding: 0; font-size: 10.5pt; }
        h1, h2, h3, h4, p:has(+ ul, + ol, + .table, + pre) { break-after: avoid; }
        p, li { orphans: 3; widows: 3; }
        h3, h4, h5, h6, a, blockquote, img ~ em { color: #1a1a1a; border-color: #1a1a1a; }
        tr, li, pre, p { break-inside: avoid; }
        .table, pre { overflow: visible; }
        img { max-height: 15cm; }
      }
      """;

  private PageStyle() {}
}
