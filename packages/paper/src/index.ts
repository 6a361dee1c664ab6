export { answer } from './answer.ts';
export { portionsSaid, type ShopLine, shopLines, thawSaid } from './buying.ts';
export { generalNotices, noticesOf, noticesOfFormula, ownNotices, sharedNotices } from './concerns.ts';
export { formulaReports, gatherReport, pinnedReport, previewReport } from './gather.ts';
export {
  type EaterReport,
  type FormulaLineReport,
  type FormulaReport,
  type PlanReport,
  pieceOf,
} from './report.ts';
export { sheetHtml } from './sheet/html.ts';
export { pieceMass, pieceName, signOf, taskSaid } from './task-words.ts';
