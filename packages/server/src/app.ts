import helmet from '@fastify/helmet';
import swagger from '@fastify/swagger';
import type { Store } from '@pitwright/store';
import { problemSchema } from '@pitwright/store/wire';
import fastify, { type FastifyInstance } from 'fastify';
import {
  jsonSchemaTransform,
  jsonSchemaTransformObject,
  serializerCompiler,
  validatorCompiler,
} from 'fastify-type-provider-zod';
import { z } from 'zod';
import { entryRoutes } from './entries.ts';
import { guardHostAndOrigin } from './guard.ts';
import { liveRoute } from './live.ts';
import { answerInOneShape, Refusal } from './refusal.ts';
import { serveWebApp } from './web-app.ts';

const BODY_MAX_BYTES = 4 * 1024 * 1024;

export interface AppOptions {
  readonly store: Store;
  /** Whether a Host header is one of this server's own. */
  readonly isOwnHost: (host: string) => boolean;
  /** Folder of the built web app; missing: the API alone. */
  readonly webDir?: string;
  readonly version: string;
}

/** The server without its socket: who may ask, what, and in which form the answer comes. */
export async function buildApp({ store, isOwnHost, webDir, version }: AppOptions): Promise<FastifyInstance> {
  const app = fastify({
    bodyLimit: BODY_MAX_BYTES,
    requestTimeout: 30_000,
    forceCloseConnections: true,
    logger: { level: 'error', stream: process.stderr },
  });
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  // A form of another site may send plain text without being asked first: JSON alone is understood.
  app.removeContentTypeParser('text/plain');
  answerInOneShape(app, BODY_MAX_BYTES);
  guardHostAndOrigin(app, isOwnHost);
  await app.register(helmet, {
    contentSecurityPolicy: { useDefaults: false, directives: CONTENT_POLICY },
    // Loopback speaks plain HTTP; a proxy with a certificate says this for itself.
    strictTransportSecurity: false,
  });
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Pitwright',
        version,
        description:
          'Exchange of entries between a device and the server. Everything that is not done answers with a Problem.',
      },
    },
    transform: jsonSchemaTransform,
    transformObject: jsonSchemaTransformObject,
  });
  await app.register(entryRoutes(store));
  await app.register(liveRoute(store));
  await app.register(aboutRoutes(store, version));
  if (webDir) await serveWebApp(app, webDir);
  else
    app.setNotFoundHandler((request) => {
      const isPage = !request.url.startsWith('/api/');
      throw new Refusal(404, { id: isPage ? 'server.not-built' : 'server.nothing-here' });
    });
  await app.ready();
  return app;
}

const aboutRoutes = (store: Store, version: string) => async (app: FastifyInstance) => {
  const about = z.object({ name: z.literal('pitwright'), version: z.string(), storeId: z.string() });
  app.get(
    '/api/about',
    {
      schema: {
        operationId: 'about',
        summary: 'Who answers here',
        response: { 200: about, '4xx': problemSchema, '5xx': problemSchema },
      },
    },
    async () => ({ name: 'pitwright', version, storeId: store.storeId }),
  );
  app.get('/api/openapi.json', { schema: { hide: true } }, async () => app.swagger());
};

/** Nothing from elsewhere, nothing inline; WebAssembly for the solver, workers for the engine. */
const CONTENT_POLICY = {
  defaultSrc: ["'none'"],
  scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
  styleSrc: ["'self'"],
  fontSrc: ["'self'"],
  imgSrc: ["'self'", 'data:', 'blob:'],
  mediaSrc: ["'self'", 'blob:'],
  connectSrc: ["'self'"],
  workerSrc: ["'self'"],
  manifestSrc: ["'self'"],
  baseUri: ["'none'"],
  formAction: ["'none'"],
  frameAncestors: ["'none'"],
};
