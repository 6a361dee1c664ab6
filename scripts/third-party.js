// Writes THIRD_PARTY_NOTICES.md: every package that is installed to run Pitwright, with its licence.
// `--check` fails when the file is not what would be written.
import { readFileSync, writeFileSync } from 'node:fs';

const root = new URL('..', import.meta.url);
const lock = JSON.parse(readFileSync(new URL('package-lock.json', root), 'utf8'));

const rows = Object.entries(lock.packages)
  .filter(([path, entry]) => path.includes('node_modules/') && !entry.dev && !entry.link)
  .map(([path, entry]) => ({
    name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length),
    version: entry.version,
    licence: entry.license ?? 'see the package',
  }))
  .sort((a, b) => a.name.localeCompare(b.name, 'en') || a.version.localeCompare(b.version, 'en'));

const unique = rows.filter(
  (row, i) => i === 0 || row.name !== rows[i - 1].name || row.version !== rows[i - 1].version,
);

const text = `# Third-party notices

Pitwright is under the Apache License 2.0 (LICENSE). It runs with these packages, each under its own licence, whose
text lies in the package's folder under \`node_modules/\` after an install. Written by \`node scripts/third-party.js\`.

The typefaces Ysabeau Office and Source Serif 4 are under the SIL Open Font License 1.1.

| package | version | licence |
| --- | --- | --- |
${unique.map((row) => `| ${row.name} | ${row.version} | ${row.licence} |`).join('\n')}
`;

const target = new URL('THIRD_PARTY_NOTICES.md', root);
if (process.argv.includes('--check')) {
  if (readFileSync(target, 'utf8') !== text) {
    console.error('THIRD_PARTY_NOTICES.md is out of date: run node scripts/third-party.js');
    process.exit(1);
  }
} else writeFileSync(target, text);
