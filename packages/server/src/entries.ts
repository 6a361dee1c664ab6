import type { Entry } from '@pitwright/model';
import type { Store } from '@pitwright/store';
import { BATCH_MAX, pageSchema, problemSchema, receiptSchema, sendingSchema } from '@pitwright/store/wire';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';

/** Reading and sending entries. */
export const entryRoutes =
  (store: Store): FastifyPluginAsyncZod =>
  async (app) => {
    app.get(
      '/api/entries',
      {
        schema: {
          operationId: 'readEntries',
          summary: 'Entries that came after a cursor, oldest first',
          querystring: z.object({
            since: z.coerce.number().int().min(0).default(0),
            limit: z.coerce.number().int().min(1).max(BATCH_MAX).default(BATCH_MAX),
          }),
          response: { 200: pageSchema, '4xx': problemSchema, '5xx': problemSchema },
        },
      },
      async (request) => {
        const page = await store.readSince(request.query.since, request.query.limit);
        return { storeId: store.storeId, ...page, entries: page.entries.map((entry) => ({ ...entry })) };
      },
    );

    app.post(
      '/api/entries',
      {
        schema: {
          operationId: 'sendEntries',
          summary: 'Keeps entries, each once; answers when they are on the disk',
          body: sendingSchema,
          response: { 200: receiptSchema, '4xx': problemSchema, '5xx': problemSchema },
        },
      },
      async (request) => {
        const kept = await store.receive(request.body.entries as readonly Entry[]);
        const { last } = await store.readSince(Number.MAX_SAFE_INTEGER, 1);
        return { storeId: store.storeId, kept: kept.length, last };
      },
    );
  };
