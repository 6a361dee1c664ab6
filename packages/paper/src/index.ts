export { answer } from './answer.ts';
export { bandData } from './bands.ts';
export { portionsSaid, type ShopLine, shopLines, thawSaid } from './buying.ts';
export {
  generalNotices,
  kitchenNotices,
  noticesOf,
  noticesOfFormula,
  ownNotices,
  sharedNotices,
} from './concerns.ts';
export type { EaterReport } from './eater.ts';
export { formulaReports, gatherReport, pinnedReport, previewReport } from './gather.ts';
export { type FormulaLineReport, type FormulaReport, type PlanReport, pieceOf } from './report.ts';
export { sheetHtml } from './sheet/html.ts';
export { lettersOf, pieceMass, pieceName, shortTaskSaid, signOf, taskSaid } from './task-words.ts';
