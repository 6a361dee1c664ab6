import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import { Refusal } from './refusal.ts';

/** Serves the built web app; an address of its own that is no file gets the app's page. */
export async function serveWebApp(app: FastifyInstance, webDir: string): Promise<void> {
  await app.register(fastifyStatic, {
    root: webDir,
    wildcard: true,
    // The build lays packed copies beside its files.
    preCompressed: true,
    cacheControl: false,
    setHeaders(reply, path) {
      // Names under assets/ carry a hash of their contents; everything else is asked for anew.
      const isHashed = path.startsWith(join(webDir, 'assets'));
      reply.setHeader('cache-control', isHashed ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  });
  app.setNotFoundHandler((request, reply) => {
    const isPage =
      (request.method === 'GET' || request.method === 'HEAD') &&
      !request.url.startsWith('/api/') &&
      (request.headers.accept ?? '').includes('text/html');
    if (!isPage) throw new Refusal(404, { id: 'server.nothing-here' });
    return reply.sendFile('index.html');
  });
}
