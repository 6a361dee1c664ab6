#!/usr/bin/env node
// The launcher is committed so that `npx pitwright` works right after `npm ci`: it runs the TypeScript sources.
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Pitwright needs Node 20.19 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}
const { register } = await import('tsx/esm/api');
register();
const { main } = await import('../src/main.ts');
process.exitCode = await main(process.argv.slice(2));
