import { benchMessages } from './messages/bench.ts';
import { benchWaysMessages } from './messages/bench-ways.ts';
import { calcMessages } from './messages/calc.ts';
import { cutsMessages } from './messages/cuts.ts';
import { dayMessages } from './messages/day.ts';
import { drawMessages } from './messages/draw.ts';
import { eaterMessages } from './messages/eater.ts';
import { explainMessages } from './messages/explain.ts';
import { fileMessages } from './messages/file.ts';
import type { Messages } from './messages/message.ts';
import { narrowMessages } from './messages/narrow.ts';
import { planMessages } from './messages/plan.ts';
import { replayMessages } from './messages/replay.ts';
import { safetyMessages } from './messages/safety.ts';
import { sauceMessages } from './messages/sauce.ts';
import { scheduleMessages } from './messages/schedule.ts';
import { serverMessages } from './messages/server.ts';
import { shareMessages } from './messages/share.ts';
import { sheetMessages } from './messages/sheet.ts';
import { storeMessages } from './messages/store.ts';
import { shortTaskMessages, taskMessages } from './messages/tasks.ts';
import { webMessages } from './messages/web.ts';
import { zonesMessages } from './messages/zones.ts';

/** Every message of the tool, by id. An id stands in one subject only; a test holds that. */
export const SUBJECTS: readonly Messages[] = [
  benchMessages,
  benchWaysMessages,
  calcMessages,
  cutsMessages,
  dayMessages,
  drawMessages,
  eaterMessages,
  explainMessages,
  fileMessages,
  narrowMessages,
  planMessages,
  replayMessages,
  safetyMessages,
  sauceMessages,
  scheduleMessages,
  serverMessages,
  shareMessages,
  sheetMessages,
  storeMessages,
  shortTaskMessages,
  taskMessages,
  webMessages,
  zonesMessages,
];

export const CATALOGUE: Messages = Object.assign({}, ...SUBJECTS) as Messages;
