/**
 * `npm test`: installs and builds what is missing, runs the unit tests and the browser tests, and prints
 * `N passed, N failed` alone as the last line. The exit code tells the same.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findChromium, INSTALL_COMMAND } from './chromium.js';
import { ensureBuilt, ensureInstalled, ROOT, requireNode } from './prepare.js';

const SUITES = [
  { name: 'unit', config: 'vitest.config.ts' },
  { name: 'browser', config: 'vitest.browser.config.ts' },
];

const total = { passed: 0, failed: 0 };
// Whatever ends this process, the sum is its last line.
process.on('exit', (code) => {
  if (code !== 0 && total.failed === 0) total.failed = 1;
  console.log(`${total.passed} passed, ${total.failed} failed`);
});

requireNode();
ensureInstalled();
ensureChromium();
ensureBuilt();
const folder = mkdtempSync(join(tmpdir(), 'pitwright-results-'));
try {
  for (const suite of SUITES) {
    const { passed, failed } = runSuite(suite);
    total.passed += passed;
    total.failed += failed;
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
process.exitCode = total.failed > 0 ? 1 : 0;

function runSuite({ name, config }) {
  const results = join(folder, `${name}.json`);
  const vitest = join(ROOT, 'node_modules/vitest/vitest.mjs');
  const { status } = spawnSync(
    process.execPath,
    [vitest, 'run', '--config', config, '--reporter=dot', '--reporter=json', `--outputFile.json=${results}`],
    {
      cwd: ROOT,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ...(process.stdout.isTTY ? {} : { NO_COLOR: '1' }) },
    },
  );
  return readResults(results, status, name);
}

/** A runner that fails without a failed test, or leaves no results, is a failure of its own. */
function readResults(path, status, name) {
  try {
    const { numPassedTests, numPendingTests, testResults } = JSON.parse(readFileSync(path, 'utf8'));
    const failedTests = testResults
      .flatMap((file) => file.assertionResults)
      .filter((test) => test.status === 'failed');
    const brokenFiles = testResults.filter(
      (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
    );
    for (const file of brokenFiles) console.error(`${file.name}: ${file.message || 'could not be run'}`);
    if (numPendingTests > 0) console.error(`${numPendingTests} tests of the ${name} suite were skipped.`);
    const failed = failedTests.length + brokenFiles.length + numPendingTests;
    if (numPassedTests === 0) console.error(`The ${name} suite ran no test.`);
    return { passed: numPassedTests, failed: failed || (status === 0 && numPassedTests > 0 ? 0 : 1) };
  } catch (problem) {
    console.error(`The ${name} suite left no results (${problem.message}); its runner ended with ${status}.`);
    return { passed: 0, failed: 1 };
  }
}

/** Chromium for the browser tests: from Debian's packages when this runs as root, else told how. */
function ensureChromium() {
  if (findChromium()) return;
  const isRoot = process.getuid?.() === 0;
  const hasApt = spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status === 0;
  if (isRoot && hasApt) {
    console.log('Installing Chromium for the browser tests …');
    spawnSync('sh', ['-c', INSTALL_COMMAND], {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    if (findChromium()) return;
  }
  console.error(
    `The browser tests need Chromium, and none was found on the path. Install it with\n\n    sudo sh -c '${INSTALL_COMMAND}'\n\n` +
      'or point CHROMIUM_PATH to one, then run npm test again.',
  );
  process.exit(1);
}
