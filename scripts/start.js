/** `npm start`: installs and builds what is missing, then serves the app on the demo. */
import { spawn } from 'node:child_process';
import { ensureBuilt, ensureInstalled, requireNode } from './prepare.js';

requireNode();
ensureInstalled();
ensureBuilt();

const { register } = await import('tsx/esm/api');
register();
const { serve } = await import('../packages/cli/src/store/serve.ts');
const url = await serve({
  port: process.env.PORT,
  data: process.env.PITWRIGHT_DATA,
  onClosed: () => process.exit(),
});
if (url === undefined) process.exitCode = 1;
else openBrowser(url);

/** Opens the page where a person sits in front of a screen; nothing depends on it. */
function openBrowser(url) {
  const { CI, DISPLAY, WAYLAND_DISPLAY } = process.env;
  if (CI || !process.stdout.isTTY) return;
  const opener = { darwin: 'open', linux: 'xdg-open' }[process.platform];
  if (!opener || (opener === 'xdg-open' && !DISPLAY && !WAYLAND_DISPLAY)) return;
  const child = spawn(opener, [url], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}
