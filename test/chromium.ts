import { spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { findChromium, INSTALL_COMMAND } from '../scripts/chromium.js';

/** Quiet, without the network's help, and able to run as root. */
const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

function executablePath(): string {
  const path = findChromium();
  if (!path) throw new Error(`The browser tests need Chromium: ${INSTALL_COMMAND} (or set CHROMIUM_PATH)`);
  return path;
}

/** A headless Chromium with an empty profile. */
export function launchChromium(): Promise<Browser> {
  return chromium.launch({ executablePath: executablePath(), args: ARGUMENTS });
}

export interface KillableBrowser {
  readonly context: BrowserContext;
  /** SIGKILL to the browser and all its processes at once. */
  kill(): Promise<void>;
}

/** A headless Chromium whose profile stays in `folder`, for tests that kill it and open it again. */
export async function launchKillable(folder: string): Promise<KillableBrowser> {
  const portFile = join(folder, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  const child = spawn(
    executablePath(),
    [...ARGUMENTS, '--headless', `--user-data-dir=${folder}`, '--remote-debugging-port=0', 'about:blank'],
    { detached: true, stdio: 'ignore' },
  );
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const port = await portOf(portFile);
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  const [context] = browser.contexts();
  if (!context) throw new Error('the browser has no profile open');
  return {
    context,
    async kill() {
      // Its own process group: nothing but this browser.
      if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
      await ended;
      await browser.close();
    },
  };
}

async function portOf(portFile: string): Promise<string> {
  for (let tries = 0; tries < 300; tries++) {
    if (existsSync(portFile)) {
      const [port] = readFileSync(portFile, 'utf8').split('\n');
      if (port) return port;
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('Chromium did not open its control port in 30 s');
}
