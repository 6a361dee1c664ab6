/** A server as its own process, which a test kills. Prints its address once it listens. */
import { writeSync } from 'node:fs';
import { startServer } from '../src/index.ts';

const [dataDir = '', port = '0'] = process.argv.slice(2);
const server = await startServer({ port: Number(port), dataDir });
writeSync(1, `${server.url}\n`);
