/** What must stand before anything runs: the right Node, the packages, the built web app. Node's own modules only. */
import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('..', import.meta.url));
export const WEB_DIR = join(ROOT, 'packages/web/dist');

const NODE_LEAST = [20, 19];

/** Ends the process with what to do where Node is too old. */
export function requireNode(version = process.versions.node) {
  const [major, minor] = version.split('.').map(Number);
  if (major > NODE_LEAST[0] || (major === NODE_LEAST[0] && minor >= NODE_LEAST[1])) return;
  console.error(
    `Pitwright needs Node ${NODE_LEAST.join('.')} or newer; this is ${version}.\n` +
      'Get a newer one from https://nodejs.org or with your version manager (nvm install 22), then run this again.',
  );
  process.exit(1);
}

/** Installs the packages where they are missing or older than the lock file. */
export function ensureInstalled() {
  const installed = modifiedMs(join(ROOT, 'node_modules/.package-lock.json'));
  if (installed >= modifiedMs(join(ROOT, 'package-lock.json'))) return;
  console.log('Installing the packages (npm ci) …');
  runNpm(['ci', '--no-audit', '--no-fund']);
}

/** Builds the web app where a source, or an example that it carries, is newer than the build. */
export function ensureBuilt() {
  const built = modifiedMs(join(WEB_DIR, 'index.html'));
  const sources = ['model', 'engine', 'words', 'draw', 'paper', 'store', 'web'].map((name) =>
    join(ROOT, 'packages', name),
  );
  sources.push(join(ROOT, 'examples'));
  if (built > 0 && sources.every((folder) => newestMs(folder) <= built)) return;
  console.log('Building the web app …');
  runNpm(['run', 'build']);
}

/** Runs npm, the one that started this script if there is one; ends the process where it fails. */
function runNpm(args) {
  const npm = process.env.npm_execpath;
  const [command, first] = npm?.endsWith('.js') ? [process.execPath, [npm]] : ['npm', []];
  const { status, error } = spawnSync(command, [...first, ...args], {
    cwd: ROOT,
    stdio: ['ignore', 'inherit', 'inherit'],
    // On Windows npm is a script of the shell.
    shell: command === 'npm' && process.platform === 'win32',
  });
  if (status === 0) return;
  console.error(`npm ${args.join(' ')} failed${error ? `: ${error.message}` : ''}.`);
  process.exit(1);
}

/** 0 where there is nothing. */
function modifiedMs(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

const NO_SOURCE = new Set(['node_modules', 'dist', 'test']);

function newestMs(folder) {
  let newest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (NO_SOURCE.has(entry.name) || entry.name.includes('.test.')) continue;
    const path = join(folder, entry.name);
    newest = Math.max(newest, entry.isDirectory() ? newestMs(path) : modifiedMs(path));
  }
  return newest;
}
