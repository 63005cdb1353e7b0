namespace Protocolist.Sheets;

/// <summary>
/// The look of the printed page: slate on white, a rule at the left of each step for the pencil, amber for cautions. Nothing is said by colour alone.
/// </summary>
internal static class HtmlLook
{
    public const string Css = """
        :root { --ink: #1c2a33; --rule: #5b7f8f; --pale: #eef3f5; --warn: #8a4b00; --stop: #9b1c1c; }
        * { box-sizing: border-box; }
        body { margin: 0 auto; max-width: 52rem; padding: 1.5rem; color: var(--ink); background: #fff;
          font: 11pt/1.45 "Source Sans 3", "Segoe UI", "Noto Sans", sans-serif; }
        h1 { margin: 0; font-size: 1.6rem; line-height: 1.2; }
        h2 { margin: 2rem 0 .6rem; padding-bottom: .2rem; border-bottom: 2px solid var(--rule); font-size: 1.2rem; }
        h3 { margin: 0; font-size: 1.05rem; }
        p { margin: .3rem 0; }
        ul { margin: .3rem 0; padding-left: 1.3rem; }
        .under { color: #44555f; }
        .stop { margin: 1rem 0; padding: .6rem .8rem; border: 3px solid var(--stop); color: var(--stop); font-weight: 700; }
        .findings { list-style: none; padding: 0; }
        .findings li { margin: .3rem 0; padding: .3rem .6rem; border-left: 4px solid var(--rule); background: var(--pale); }
        .error li { border-color: var(--stop); }
        .warning li { border-color: var(--warn); }
        .step { margin: 1rem 0; padding-left: 1rem; border-left: 4px solid var(--rule); }
        .step h3 label { display: flex; gap: .6rem; align-items: flex-start; }
        .step input, .looks input { width: 1.1rem; height: 1.1rem; margin-top: .15rem; flex: none; accent-color: var(--rule); }
        .when { font-weight: 600; font-variant-numeric: tabular-nums; }
        .cautions { list-style: none; padding: .3rem .7rem; border: 1px solid var(--warn); }
        .cautions li::before { content: "\26A0  "; color: var(--warn); }
        .looks { list-style: none; padding-left: 0; }
        .looks label { display: flex; gap: .5rem; }
        .source { color: #44555f; font-size: .9em; font-style: italic; }
        .done { color: #44555f; }
        table { width: 100%; margin: .6rem 0; border-collapse: collapse; font-size: .95em; }
        caption { text-align: left; font-weight: 600; padding: .2rem 0; }
        th, td { padding: .25rem .5rem; border-bottom: 1px solid #c9d5da; text-align: left; vertical-align: top; font-weight: 400; }
        thead th { font-weight: 600; background: var(--pale); }
        .labels { display: flex; flex-wrap: wrap; gap: 1rem; }
        .label { width: 7.5cm; padding: .35cm; border: 1px dashed var(--ink); font: 9pt/1.3 "Source Serif 4", Georgia, serif; }
        .label p { margin: 0; }
        footer { margin-top: 2rem; padding-top: .5rem; border-top: 1px solid var(--rule); font-size: .9em; }
        @page { size: A4; margin: 15mm; }
        @media print {
          body { max-width: none; padding: 0; font-size: 10pt; }
          .step, .label, tr, .findings li { break-inside: avoid; }
          h2, h3 { break-after: avoid; }
          .step, .findings li, thead th { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
        }
        """;
}
