import { fileURLToPath } from 'node:url';
import { DEFAULT_PORT, defaultDataDir, Refusal, type RunningServer, startServer } from '@pitwright/server';
import { StoreFault } from '@pitwright/store';
import { METRIC, say } from '@pitwright/words';

const WEB_DIR = fileURLToPath(new URL('../../../web/dist', import.meta.url));

export interface ServeOptions {
  /** As typed; missing: the usual one. */
  readonly port?: string;
  /** Folder in which everything is kept. */
  readonly data?: string;
  /** Names of a proxy on this machine. */
  readonly host?: readonly string[];
  /** Called after a signal has stopped the server. */
  readonly onClosed?: () => void;
}

/**
 * Serves the app until a signal ends it, and prints where.
 * @returns the address, also of one that is already running; undefined where nothing runs, after saying why
 */
export async function serve(options: ServeOptions = {}): Promise<string | undefined> {
  const port = Number(options.port ?? DEFAULT_PORT);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    console.error(say({ id: 'server.no-port', params: { port: String(options.port) } }, METRIC));
    return undefined;
  }
  try {
    const server = await startServer({
      port,
      dataDir: options.data ?? defaultDataDir(),
      webDir: WEB_DIR,
      proxyHosts: options.host ?? [],
    });
    console.log(say({ id: 'server.running', params: { url: server.url, folder: server.dataDir } }, METRIC));
    closeOnSignal(server, options.onClosed);
    return server.url;
  } catch (cause) {
    if (!(cause instanceof Refusal || cause instanceof StoreFault)) throw cause;
    const url = `http://127.0.0.1:${port}/`;
    if (cause.said.id === 'server.port-taken' && (await isPitwright(url))) {
      console.log(say({ id: 'server.already-running', params: { url } }, METRIC));
      return url;
    }
    console.error(say(cause.said, METRIC));
    return undefined;
  }
}

function closeOnSignal(server: RunningServer, onClosed?: () => void): void {
  const close = () => {
    // A second signal ends at once what hangs.
    for (const signal of SIGNALS) process.removeListener(signal, close);
    void server.close().finally(onClosed);
  };
  for (const signal of SIGNALS) process.once(signal, close);
}

const SIGNALS = ['SIGINT', 'SIGTERM'] as const;

async function isPitwright(url: string): Promise<boolean> {
  try {
    const answer = await fetch(`${url}api/about`, { signal: AbortSignal.timeout(1000) });
    return ((await answer.json()) as { name?: unknown }).name === 'pitwright';
  } catch {
    return false;
  }
}
