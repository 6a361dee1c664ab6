import { DRAWING_STYLE, themeVariables } from '@pitwright/draw';

/** Both A4 and Letter take this box at 96 px an inch with the printer's own margins off [px]. */
export const PAGE = { width: 794, height: 1050, padding: 46 } as const;

/** Black alone; rules and white part the areas; no text under 13.5 px. */
export const sheetStyle = (): string => `
@page{margin:0}
:root{${themeVariables('print')}}
*{box-sizing:border-box}
html,body{margin:0;background:#fff;color:#000}
body{font:500 15px/1.25 "Ysabeau Office","Gill Sans","Lato","DejaVu Sans Condensed",sans-serif;font-variant-numeric:tabular-nums lining-nums}
.page{width:${PAGE.width}px;height:${PAGE.height}px;padding:34px ${PAGE.padding}px 26px;overflow:hidden;display:flex;flex-direction:column;break-after:page}
.page:last-child{break-after:auto}
header{display:flex;justify-content:space-between;align-items:flex-end;border-bottom:3px solid #000;padding-bottom:7px;margin-bottom:10px}
h1{font-size:25px;line-height:1.1;font-weight:800;margin:0} header p{margin:0;text-align:right;font-size:14px}
h2{font-size:15px;font-weight:700;margin:10px 0 3px} p{margin:0 0 5px}
table{border-collapse:collapse;width:100%} th{font-size:13.5px;font-weight:700;text-align:left;padding:2px 6px 3px 0;border-bottom:1.6px solid #000;vertical-align:bottom}
td{padding:var(--row,4px) 6px var(--row,4px) 0;border-bottom:1px solid #8a8a8a;vertical-align:top}
.clock{padding-right:10px;font-weight:800;white-space:nowrap;font-size:15px} .when{font-size:13.5px} td.when{width:190px} .day{white-space:nowrap;font-size:13.5px}
.write{border-left:1px solid #8a8a8a;width:64px;padding-left:5px} .night td{background:#dedede}
.box{display:inline-block;width:16px;height:16px;border:1.4px solid #000;vertical-align:-2px} .tick{width:26px}
.dense td{font-size:13.5px;line-height:18px} .walks td{line-height:18px} .walks .write{width:72px} .walks th.write{white-space:nowrap;padding-right:0}
.weigh{columns:3;column-gap:24px;font-size:13.5px} .weigh h3{font-size:13.5px;font-weight:700;margin:0;padding-top:5px;break-after:avoid} .weigh h3:first-child{padding-top:0} .weigh p{display:flex;gap:8px;margin:0;border-bottom:1px solid #bbb;line-height:17px;break-inside:avoid} .weigh p>:first-child{flex:1} .mass{font-weight:700;white-space:nowrap}
footer{margin-top:auto;border-top:3px solid #000;padding-top:7px;columns:2;column-gap:24px;font-size:13.5px;line-height:1.2} footer p{margin:0 0 3px;break-inside:avoid}
.notes{flex:1;min-height:20px;overflow:hidden} .notes i{display:block;height:27px;border-bottom:1px solid #8a8a8a}
@media print{html,body{-webkit-print-color-adjust:exact;print-color-adjust:exact}}
${DRAWING_STYLE}
`;
