/** `npm run bench`: figures of speed in one run. They are shown, never asserted. */
import { cpus } from 'node:os';
import { engineFigures } from './engine.ts';
import { report } from './measure.ts';
import { scheduleFigures } from './schedule.ts';
import { benchWeb } from './web.ts';
import { benchWetStage } from './wet-stage/wet-stage.ts';

console.log(`Node ${process.versions.node}, ${cpus().length} processors, ${cpus()[0]?.model ?? 'unknown'}\n`);
console.log(report([...(await engineFigures()), ...(await scheduleFigures())]));
console.log('');
benchWetStage((line) => console.log(line));
console.log('');
await benchWeb((line) => console.log(line));
