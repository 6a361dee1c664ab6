/** How the classes of the marks look; colours come from the theme's custom properties. */
export const DRAWING_STYLE = `
svg{display:block;overflow:visible}
svg text{font-family:var(--sans,"Ysabeau Office","Gill Sans","Lato","DejaVu Sans Condensed",sans-serif);font-variant-numeric:tabular-nums lining-nums;font-weight:var(--w,500);fill:var(--ink)}
text.ink2{fill:var(--ink2)} text.strong{font-weight:var(--wb,700)} text.onHeat{fill:#fff;font-weight:650} text.onLight{fill:#14201c;font-weight:650} text.onMap{paint-order:stroke;stroke-width:4px;stroke-linejoin:round}
.halo{paint-order:stroke;stroke:var(--sheet);stroke-width:4px;stroke-linejoin:round}
.tick{stroke:var(--ink);stroke-width:1} .rule1{stroke:var(--ink);stroke-width:1.6} .rule0{stroke:var(--rule);stroke-width:1}
.grid1{stroke:var(--grid1);stroke-width:1} .grid0{stroke:var(--grid0);stroke-width:1}
.sheet{fill:var(--sheet)} .night{fill:var(--night)} .night2{fill:var(--night2)}
.fold{fill:none;stroke:var(--ink);stroke-width:1.4} .foldL{stroke:var(--ink2);stroke-width:1;stroke-dasharray:1.5 4}
.window{fill:var(--ink);opacity:.1} .tableA{stroke:var(--ink);stroke-width:3.4} .tableB{stroke:var(--ink);stroke-width:1}
.nowLine{stroke:var(--now);stroke-width:2.2} .nowCase{stroke:var(--sheet);stroke-width:5;opacity:.8} .nowFlag{fill:var(--now)} text.nowText{fill:var(--nowInk);font-weight:var(--wb,700)}
.pc{color:var(--ink)} .pA{color:var(--pA)} .pB{color:var(--pB)} .pC{color:var(--pC)} .pD{color:var(--pD)} .pE{color:var(--pE)} .pF{color:var(--pF)} .pG{color:var(--pG)} .pH{color:var(--pH)}
.laneBack{fill:var(--sheet)} .laneEdge{fill:none;stroke:currentColor;stroke-width:1.4} .stageEdge{stroke:currentColor;stroke-width:1.2} .stageOutline{fill:none;stroke:currentColor;stroke-width:1.2}
.median{stroke:var(--ink);stroke-width:1.6} .range{stroke:var(--ink);stroke-width:2.6} .range1{stroke:var(--ink);stroke-width:1.6}
.open{stroke:currentColor;stroke-width:1.4;stroke-dasharray:3 2} .was{fill:none;stroke:var(--ink);stroke-width:1.2;stroke-dasharray:5 4}
.meas{fill:var(--ink);stroke:var(--sheet);stroke-width:1} .badge{fill:currentColor} text.badgeT{fill:var(--sheet);font-weight:800}
.frame{fill:none;stroke:var(--ink);stroke-width:1} .aheadLine{fill:var(--sheet);opacity:.34}
.iso{fill:none;stroke-width:.8} .isoDark{stroke:#14201c;opacity:.45} .isoLight{stroke:#fff;opacity:.45}
.front{fill:none;stroke:var(--front);stroke-width:2} .frontCase{fill:none;stroke:var(--frontRim);stroke-width:4.5;opacity:.85}
.bite{fill:none;stroke:#14201c;stroke-width:3} .biteCase{fill:none;stroke:var(--frontRim);stroke-width:6} .biteBand{fill:#fff;opacity:.42}
.bracket{fill:none;stroke:#fff;stroke-width:1.6} .stageLine{stroke:#14201c;stroke-width:1.2;stroke-dasharray:3 3} .coldest{fill:none;stroke:#fff;stroke-width:1.4;stroke-dasharray:2 3}
.warms{fill:var(--heatBg);stroke:var(--heatLine);stroke-width:1.3} .dries{fill:var(--waterBg);stroke:var(--water);stroke-width:1.3}
.ledger-warming{fill:var(--heatBg);stroke:var(--heatLine);stroke-width:1.3} .ledger-evaporation{fill:var(--waterBg);stroke:var(--water);stroke-width:1.3} .ledger-juice{fill:var(--water);stroke:var(--water);stroke-width:1.3}
.ledger-convection{fill:var(--grid0);stroke:var(--ink2);stroke-width:1.3} .ledger-radiation{fill:var(--heatLine);fill-opacity:.55;stroke:var(--heatLine);stroke-width:1.3} .ledger-steam{fill:var(--water);fill-opacity:.4;stroke:var(--water);stroke-width:1.3} .ledger-own{fill:var(--heatBg);stroke:var(--heatLine);stroke-width:1.3} .ledger-still{fill:var(--sheet);stroke:var(--ink2);stroke-width:1.3;stroke-dasharray:3 2}
.heatBand{fill:var(--heatBg)} .hair{fill:none;stroke:var(--heatLine);stroke-width:1.3}
.jobBox{fill:var(--sheet);stroke:var(--ink);stroke-width:1.6} .jobOpen{fill:var(--ink);stroke:var(--ink);stroke-width:1.6} .useOwn{fill:currentColor;fill-opacity:.36;stroke:currentColor;stroke-width:1.2} .lit{fill:var(--heatLine)}
.hillHas{fill:var(--rule);fill-opacity:.4} .hillEdge{fill:none;stroke:var(--ink);stroke-width:1.6}
.strokeHeavy{stroke:var(--ink);stroke-width:3.4} .strokeFine{stroke:var(--rule);stroke-width:1}
.haloPaper{paint-order:stroke;stroke:var(--paper);stroke-width:4px;stroke-linejoin:round}
.wantedBox{fill:none;stroke:var(--ink);stroke-width:1.2;stroke-dasharray:2 2.5} .doubtBox{fill:var(--ink);opacity:.22}
.lineNow{fill:none;stroke:var(--ink);stroke-width:2.6} .lineOther{fill:none;stroke:var(--ink);stroke-width:2;stroke-dasharray:6 4} .dotNow{fill:var(--ink);stroke:var(--sheet);stroke-width:1.5} .dotOther{fill:var(--sheet);stroke:var(--ink);stroke-width:2}
.lookBand{fill:var(--grid0)} .lookDoubt{fill:var(--grid1);opacity:.8} .massBand{fill:var(--waterBg)} .massLine{fill:none;stroke:var(--water);stroke-width:2.4} .waterTick{stroke:var(--water);stroke-width:1} text.waterText{fill:var(--water);font-weight:var(--wb,700)}
.targetRange{stroke:var(--ink);stroke-width:6} .targetDrop{stroke:var(--ink);stroke-width:1.4;stroke-dasharray:2 3}
`.trim();
