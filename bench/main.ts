/**
 * `npm run bench`: figures of speed in one run; `npm run bench -- drag load` only these parts. They are shown, never
 * asserted.
 */
import { cpus, loadavg } from 'node:os';
import { engineFigures } from './engine.ts';
import { report } from './measure.ts';
import { scheduleFigures } from './schedule.ts';
import { benchWeb } from './web.ts';
import { benchWetStage } from './wet-stage/wet-stage.ts';

const log = (line: string): void => console.log(line);

const PARTS: Readonly<Record<string, () => void | Promise<void>>> = {
  // First: once the loop has met every cover and face, its compiled form is slower, as any general code is beside C
  // written for one problem (docs/models/meat.md).
  'wet-stage': () => benchWetStage(log),
  engine: async () => log(report([...(await engineFigures()), ...(await scheduleFigures())])),
  drag: () => benchWeb('drag', log),
  load: () => benchWeb('load', log),
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in PARTS));
if (unknown.length > 0) {
  console.error(`No part ${unknown.join(', ')}; there are ${Object.keys(PARTS).join(', ')}.`);
  process.exit(1);
}

log(
  `Node ${process.versions.node}, ${cpus().length} processors, ${cpus()[0]?.model ?? 'unknown'}, ` +
    `load of the last minute ${loadavg()[0]!.toFixed(1)}`,
);
for (const name of asked.length > 0 ? asked : Object.keys(PARTS)) {
  log('');
  await PARTS[name]!();
}
