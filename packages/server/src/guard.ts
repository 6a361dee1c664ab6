import type { FastifyInstance } from 'fastify';
import { Refusal } from './refusal.ts';

/**
 * Lets in only those who asked for this server by a name of its own, so that a page of another site cannot reach it by
 * pointing its own name at this machine, and only pages that came from it.
 *
 * @param isOwn whether a Host header, `name:port`, is one of this server's
 */
export function guardHostAndOrigin(app: FastifyInstance, isOwn: (host: string) => boolean): void {
  app.addHook('onRequest', async (request) => {
    const host = request.headers.host ?? '';
    if (!isOwn(host.toLowerCase())) throw new Refusal(421, { id: 'server.not-this-host', params: { host } });
    const { origin } = request.headers;
    const isOwnOrigin =
      origin === undefined || (URL.canParse(origin) && isOwn(new URL(origin).host) && origin !== 'null');
    const site = request.headers['sec-fetch-site'];
    const isForeign = site !== undefined && site !== 'same-origin' && site !== 'none';
    // A link on another site may open the app; it may not ask for what is kept.
    if (!isOwnOrigin || (isForeign && request.url.startsWith('/api/')))
      throw new Refusal(403, { id: 'server.not-this-origin' });
  });
}

/** The names of a server on loopback, with those of a proxy in front of it. Browsers leave out the port of a scheme. */
export function ownHosts(port: number, proxyHosts: readonly string[]): (host: string) => boolean {
  const loopback = ['127.0.0.1', 'localhost', '[::1]'];
  const own = new Set([
    ...loopback.map((name) => `${name}:${port}`),
    ...(port === 80 ? loopback : []),
    ...proxyHosts.map((name) => name.toLowerCase()),
  ]);
  return (host) => own.has(host);
}
