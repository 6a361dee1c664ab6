import type { Said } from '@pitwright/model';
import { StoreFault } from '@pitwright/store';
import type { FastifyError, FastifyInstance } from 'fastify';
import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod';

/** Something that is not done, with the status to answer. */
export class Refusal extends Error {
  readonly status: number;
  readonly said: Said;

  constructor(status: number, said: Said) {
    super(said.id);
    this.name = 'Refusal';
    this.status = status;
    this.said = said;
  }
}

/** Answers everything that is not done in one shape: `{problem: {id, params}}`. */
export function answerInOneShape(app: FastifyInstance, bodyMaxBytes: number): void {
  app.setErrorHandler((error: FastifyError, request, reply) => {
    const { status, said } = toRefusal(error, bodyMaxBytes);
    if (status >= 500) request.log.error(error);
    const { id, params } = said;
    return reply.status(status).send({ problem: params ? { id, params } : { id } });
  });
}

function toRefusal(error: FastifyError, bodyMaxBytes: number): Pick<Refusal, 'status' | 'said'> {
  if (error instanceof Refusal) return error;
  if (error instanceof StoreFault) return { status: STORE_STATUS[error.said.id] ?? 503, said: error.said };
  if (hasZodFastifySchemaValidationErrors(error)) {
    const first = error.validation[0];
    const where = `${error.validationContext ?? 'request'}${first?.instancePath ?? ''}`;
    return notUnderstood(where, first?.message ?? 'unknown');
  }
  if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE')
    return { status: 413, said: { id: 'server.too-large', params: { sizeMax: bodyMaxBytes } } };
  if (error.code === 'FST_ERR_CTP_INVALID_MEDIA_TYPE')
    return { status: 415, said: { id: 'server.only-json' } };
  if (error.statusCode !== undefined && error.statusCode >= 400 && error.statusCode < 500)
    return { ...notUnderstood('request', error.message), status: error.statusCode };
  return { status: 500, said: { id: 'server.failed' } };
}

const notUnderstood = (where: string, wanted: string) => ({
  status: 400,
  said: { id: 'server.not-understood', params: { where, wanted } },
});

const STORE_STATUS: Readonly<Record<string, number>> = {
  'store.entry-too-large': 413,
  'store.disk-full': 507,
};
