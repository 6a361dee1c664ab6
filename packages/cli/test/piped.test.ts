/** What is printed into a reader that leaves early. Evidence: conformity. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const launcher = fileURLToPath(new URL('../bin/pitwright.js', import.meta.url));

test('a reader that has seen enough ends it quietly', () => {
  const { status, stderr } = spawnSync(
    'bash',
    ['-c', 'set -o pipefail; "$0" "$1" which-rack --bones 13 | true', process.execPath, launcher],
    { encoding: 'utf8' },
  );
  expect(stderr).toBe('');
  expect(status).toBe(0);
});
