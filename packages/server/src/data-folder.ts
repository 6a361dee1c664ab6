import { chmodSync, closeSync, existsSync, mkdirSync, openSync, readdirSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { Refusal } from './refusal.ts';

export const STORE_FILE = 'pitwright.db';

/** Where everything is kept unless told otherwise. @source XDG Base Directory Specification 0.8: XDG_DATA_HOME */
export function defaultDataDir(
  environment: Readonly<Record<string, string | undefined>> = process.env,
): string {
  const base = environment.XDG_DATA_HOME;
  return join(base?.startsWith('/') ? base : join(homedir(), '.local', 'share'), 'pitwright');
}

/**
 * Makes the data folder and its store file so that nobody else can read them.
 * @returns path of the store file
 * @throws Refusal where it cannot be made, or is a folder of other things that others may read
 */
export function prepareDataDir(dataDir: string): string {
  const path = resolve(dataDir);
  const storeFile = join(path, STORE_FILE);
  try {
    mkdirSync(path, { recursive: true, mode: 0o700 });
    const isOpenToOthers = (statSync(path).mode & 0o077) !== 0;
    if (isOpenToOthers) {
      const isOurs = existsSync(storeFile) || readdirSync(path).length === 0;
      if (!isOurs) throw new Refusal(500, { id: 'server.folder-shared', params: { path } });
      chmodSync(path, 0o700);
    }
    // Made before the database opens it: its log files then take the same permissions.
    closeSync(openSync(storeFile, 'a', 0o600));
    chmodSync(storeFile, 0o600);
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw new Refusal(500, { id: 'server.folder-not-made', params: { path } });
  }
  return storeFile;
}
