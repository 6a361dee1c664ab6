import { existsSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { dirname, join } from 'node:path';
import { openSqliteStore } from '@pitwright/store/sqlite';
import manifest from '../package.json' with { type: 'json' };
import { buildApp } from './app.ts';
import { defaultDataDir, prepareDataDir } from './data-folder.ts';
import { layDownDemo } from './demo.ts';
import { ownHosts } from './guard.ts';
import { Refusal } from './refusal.ts';

export const DEFAULT_PORT = 4640;

export interface ServerOptions {
  /** 0 takes any free one. */
  readonly port?: number;
  readonly dataDir?: string;
  /** Folder of the built web app; missing or not built: the API alone. */
  readonly webDir?: string;
  /** Names under which a proxy on this machine passes requests on, as in their Host header. */
  readonly proxyHosts?: readonly string[];
}

export interface RunningServer {
  readonly url: string;
  readonly dataDir: string;
  /** Ends the streams, answers what is under way, closes the store. */
  close(): Promise<void>;
}

/**
 * Starts the server on loopback only, its store opened or made, the demo laid down in an empty one.
 * @throws Refusal or StoreFault, each with what to say, when it cannot
 */
export async function startServer(options: ServerOptions = {}): Promise<RunningServer> {
  const { port = DEFAULT_PORT, dataDir = defaultDataDir(), webDir, proxyHosts = [] } = options;
  const storeFile = prepareDataDir(dataDir);
  const store = await openSqliteStore(storeFile);
  let isOwnHost = (_host: string) => false;
  const isBuilt = webDir !== undefined && existsSync(join(webDir, 'index.html'));
  const app = await buildApp({
    store,
    isOwnHost: (host) => isOwnHost(host),
    version: manifest.version,
    ...(isBuilt ? { webDir } : {}),
  });
  const close = async () => {
    await app.close();
    await store.close();
  };
  try {
    await layDownDemo(store);
    await app.listen({ host: '127.0.0.1', port });
  } catch (cause) {
    await close();
    const isTaken = cause instanceof Error && 'code' in cause && cause.code === 'EADDRINUSE';
    throw isTaken ? new Refusal(500, { id: 'server.port-taken', params: { port } }) : cause;
  }
  const { port: bound } = app.server.address() as AddressInfo;
  isOwnHost = ownHosts(bound, proxyHosts);
  return { url: `http://127.0.0.1:${bound}/`, dataDir: dirname(storeFile), close };
}
