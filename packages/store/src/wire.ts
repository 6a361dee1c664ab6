/** What stores say to each other, over HTTP and in files: the schemas that the server checks and publishes. */
import { z } from 'zod';
import { ENTRY_SIZE_MAX } from './stamp.ts';

/** Far beyond any real count, and still exact in every number type along the way. */
const COUNT_MAX = 2 ** 48;

const id = z.string().min(1).max(200);
const instant = z.iso.datetime().describe('Instant in UTC, ISO 8601 with a final Z');

export const entrySchema = z
  .looseObject({
    id,
    device: id,
    seq: z.int().min(1).max(COUNT_MAX).describe('Counts up by one on its device'),
    clock: z
      .int()
      .min(1)
      .max(COUNT_MAX)
      .describe('Lamport clock: greater than every clock its device had written or seen'),
    at: instant.describe('When it was written down'),
    happenedAt: instant.optional().describe('When it happened, where that is another moment'),
    by: id.optional(),
    subject: z.object({
      kind: id.describe('cook, recipe, pit or setting; other kinds are kept and not applied'),
      id,
    }),
    what: id.describe(
      'create, set, remove, bring-back, undo, log.<kind>; other kinds are kept and not applied',
    ),
    schema: z.int().min(0).max(COUNT_MAX).describe('Version of the form of the body'),
    body: z.unknown(),
    undoes: id.optional().describe('Id of the entry that this one hides'),
    act: id
      .optional()
      .describe('Shared by the entries of one deed, where it took several: they are undone as one'),
  })
  .describe(`One change, never edited; at most ${ENTRY_SIZE_MAX} characters of JSON`)
  .meta({ id: 'Entry' });

/** Most entries in one request or answer. */
export const BATCH_MAX = 500;

export const pageSchema = z
  .object({
    storeId: id.describe('Identity of the store; another one means starting over from cursor 0'),
    entries: z.array(entrySchema),
    cursor: z.int().min(0).describe('Where to read on'),
    last: z.int().min(0).describe('Cursor of the last entry held'),
  })
  .meta({ id: 'Page' });

export const sendingSchema = z
  .object({ entries: z.array(entrySchema).max(BATCH_MAX) })
  .meta({ id: 'Sending' });

export const receiptSchema = z
  .object({
    storeId: id,
    kept: z.int().min(0).describe('How many of the entries were new here; all of them are held now'),
    last: z.int().min(0),
  })
  .meta({ id: 'Receipt' });

export const problemSchema = z
  .object({
    problem: z.object({
      id: id.describe('Id of the message'),
      params: z.record(z.string(), z.unknown()).optional(),
    }),
  })
  .describe('The one shape of everything that is not done')
  .meta({ id: 'Problem' });
