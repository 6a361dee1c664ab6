import type { ServerResponse } from 'node:http';
import type { Store } from '@pitwright/store';
import { problemSchema } from '@pitwright/store/wire';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { Refusal } from './refusal.ts';

const STREAMS_MAX = 64;
/** Often enough that nothing on the way takes the stream for dead [ms]. */
const HEARTBEAT_MS = 20_000;

const events = z.string().describe('Server-sent events; the data of each is a Page, as JSON');

/**
 * A stream of entries as they come to be held: server-sent events, written by hand. Each event's id is the cursor, so a
 * reader that comes back is given what it missed.
 * @source WHATWG HTML, section 9.2 "Server-sent events"
 */
export const liveRoute =
  (store: Store): FastifyPluginAsyncZod =>
  async (app) => {
    const streams = new Set<ServerResponse>();
    app.addHook('preClose', async () => {
      for (const stream of streams) stream.end();
    });

    app.get(
      '/api/live',
      {
        schema: {
          operationId: 'streamEntries',
          summary: 'Entries as they come: events named "entries" with a page each, their id its cursor',
          querystring: z.object({ since: z.coerce.number().int().min(0).default(0) }),
          headers: z.object({ 'last-event-id': z.coerce.number().int().min(0).optional().catch(undefined) }),
          response: {
            200: { content: { 'text/event-stream': { schema: events } } },
            '4xx': problemSchema,
            '5xx': problemSchema,
          },
        },
      },
      async (request, reply) => {
        if (streams.size >= STREAMS_MAX)
          throw new Refusal(503, { id: 'server.too-many-streams', params: { most: STREAMS_MAX } });
        const from = request.headers['last-event-id'] ?? request.query.since;
        reply.hijack();
        const stream = reply.raw;
        for (const [name, value] of Object.entries(reply.getHeaders()))
          if (value !== undefined) stream.setHeader(name, value);
        stream.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
        stream.write(`retry: 2000\n: ${store.storeId}\n\n`);
        streams.add(stream);
        follow(store, stream, from, (problem) => request.log.error(problem));
        stream.once('close', () => streams.delete(stream));
      },
    );
  };

/** Writes pages from `cursor` on until the reader is gone, no faster than it reads. */
function follow(store: Store, stream: ServerResponse, from: number, tell: (problem: unknown) => void): void {
  let cursor = from;
  let isReading = false;
  let isStale = true;

  const readOn = async () => {
    isStale = true;
    if (isReading) return;
    isReading = true;
    try {
      while (isStale && !stream.writableEnded && !stream.destroyed) {
        isStale = false;
        const page = await store.readSince(cursor);
        if (page.entries.length === 0) continue;
        cursor = page.cursor;
        isStale = page.cursor < page.last;
        const data = JSON.stringify({ storeId: store.storeId, ...page });
        const hasRoom = stream.write(`event: entries\nid: ${cursor}\ndata: ${data}\n\n`);
        if (!hasRoom)
          await new Promise<void>((resolve) => stream.once('drain', resolve).once('close', resolve));
      }
    } catch (problem) {
      tell(problem);
      stream.end();
    } finally {
      isReading = false;
    }
  };

  const endWatch = store.watch(() => void readOn());
  const heartbeat = setInterval(() => stream.write(': still here\n\n'), HEARTBEAT_MS);
  heartbeat.unref();
  stream.once('close', () => {
    endWatch();
    clearInterval(heartbeat);
  });
  void readOn();
}
