import type { CookPlan } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import type { PlanReport } from '@pitwright/paper';

/** Keep what `cook.pinned` names where it was put; the rest round it. */
export interface SettleAsk {
  readonly report: PlanReport;
  readonly cook: Cook;
}

export type SettleAnswer = { readonly plan: CookPlan } | { readonly fault: string };
