import { pinnedReport } from '@pitwright/paper';
import type { SettleAnswer, SettleAsk } from './settle-messages.ts';

function settled({ report, cook }: SettleAsk): SettleAnswer {
  try {
    return { plan: pinnedReport(report, cook).plan };
  } catch (error) {
    return { fault: error instanceof Error ? error.message : String(error) };
  }
}

self.onmessage = (event: MessageEvent<SettleAsk>) => {
  self.postMessage(settled(event.data));
};
