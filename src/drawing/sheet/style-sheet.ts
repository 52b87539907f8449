import { FONT_FAMILY } from "../canvas/text-size.js";
import { PAPER_MARGIN, type Print } from "./paper.js";

/** The style of a document: its own sizes are multiples of the smallest type. Tables and lists break as seldom as they can. */
export function styleSheet({ paper, words, brush, leastType }: Print): string {
  const { digits = "0123456789" } = words;
  const symbols = Array.from(digits, (digit) => `"\\${digit.codePointAt(0)?.toString(16)}"`);
  const { ink, quiet, backdrop } = brush.palette;
  return `
@counter-style pages{system:numeric;symbols:${symbols.join(" ")}}
@page{size:${paper};background:${backdrop};margin:9mm ${PAPER_MARGIN}mm 11mm;@bottom-center{direction:ltr;font:${leastType}pt ${FONT_FAMILY};color:${quiet};vertical-align:top;padding-top:1mm;content:counter(page,pages) " / " counter(pages,pages)}}
:root{background:${backdrop};color:${ink};font:15px/1.2 ${FONT_FAMILY};-webkit-print-color-adjust:exact;print-color-adjust:exact}
body{margin:0 auto;max-width:192mm}
h1,h2,p,ul,dl,dd,figure{margin:0;padding:0}
h1{font-size:1.8em;line-height:1.15}
h2{font-size:1.25em;margin-top:.7em;break-after:avoid}
h1,h2{text-wrap:balance;overflow-wrap:anywhere}
p,li,td,bdi{text-wrap:pretty;overflow-wrap:anywhere;orphans:2;widows:2}
table{border-collapse:collapse;width:100%}
th,td{padding:0;text-align:start;vertical-align:top}
th{vertical-align:bottom}
thead{break-after:avoid}
tr,li,figure{break-inside:avoid}
.pages>*>tr{break-inside:auto}
.figures tr:nth-child(-n+2){break-after:avoid}
.figures tr:nth-last-child(-n+4){break-before:avoid}
.figures td,.figures th{border-bottom:.15mm solid ${quiet};padding:.08em .3em}
.number{text-align:end;white-space:nowrap}
.figures th{white-space:normal;text-wrap:balance}
ul{list-style:none}
.said li{padding-inline-start:1em;text-indent:-1em}
.said li::before{content:"•";display:inline-block;width:1em;text-indent:0}
.keyed li{padding-inline-start:2.4em;text-indent:-2.4em}
.keyed b{display:inline-block;min-width:2.1em;margin-inline-end:.3em;text-indent:0;text-align:end}
.two{columns:2;column-gap:6mm}
.cautions{border:.4mm solid ${ink};padding:.5mm 2mm 1mm;margin:1.5mm 0}
.cautions h2{margin-top:0}
header{display:grid;grid-template-columns:fit-content(45%) 1fr;gap:0 8mm;align-items:end;margin-bottom:2mm}
.fields{display:grid;grid-template-columns:repeat(3,1fr);gap:1mm 5mm}
.fields dt{color:${quiet}}
.fields dd{min-height:1.6em;border-bottom:.15mm solid ${quiet};font-size:1.2em}
.legend{columns:3 48mm;column-gap:4mm}
.legend li{display:grid;grid-template-columns:10mm 1fr}
.legend .note{display:block}
.legend svg{width:9mm;height:1.2em}
.legend b{text-align:end;padding-inline-end:1mm}
svg{display:block;max-width:100%;height:auto}
.choice{break-inside:avoid;border-bottom:.15mm solid ${quiet};padding-bottom:1mm}
.weighed{display:grid;grid-template-columns:29% 29% 1fr;gap:0 2%}
.weighed svg{width:100%}
.weighed td{border:0}
figcaption{text-align:center;color:${quiet}}
.work{table-layout:fixed}
.work th{border-bottom:.15mm solid ${quiet}}
.work .number{width:8.5em}
.work th:nth-child(3),.work td:nth-child(3),.work .step+.step{padding-inline-start:3mm}
.work tbody{break-inside:avoid}
.work tbody.long{break-inside:auto}
figure+p{margin:1.5mm 0}
.blank td{height:6.6mm;vertical-align:bottom}
.blank .number{border-bottom:.15mm solid ${quiet}}
.step{font-weight:bold;padding-top:.35em}
.tick{display:inline-block;width:.8em;height:.8em;border:.2mm solid ${ink};vertical-align:-.1em;margin-inline-end:.5em}
footer{display:grid;grid-template-columns:auto 1fr;gap:1mm 4mm;align-items:center;border-top:.15mm solid ${quiet};margin-top:2mm;padding-top:1.5mm;color:${quiet};break-inside:avoid}
.law{grid-column:1/-1}
@media print{:root{font-size:${leastType}pt}body{max-width:none}svg{max-width:none}}
@media screen{body{padding:1em}}
@media screen and (max-width:50em){.two{columns:auto}header,.fields{grid-template-columns:1fr}footer{display:block}.weighed{grid-template-columns:1fr 1fr}.weighed table{grid-column:1/-1}.wide{overflow-x:auto}}
`;
}
