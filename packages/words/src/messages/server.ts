import { messages } from './message.ts';

/** What the server answers when it does not do what was asked, and what it prints when it starts. */
export const serverMessages = messages({
  'server.not-understood': (p: { readonly where: string; readonly wanted: string }) =>
    `The request was not understood at ${p.where}: ${p.wanted}.`,
  'server.too-large': (p: { readonly sizeMax: number }) =>
    `The request is larger than ${p.sizeMax} bytes. Send less at a time.`,
  'server.only-json': () => 'This address takes JSON only.',
  'server.nothing-here': () => 'There is nothing at this address.',
  'server.not-this-host': (p: { readonly host: string }) =>
    `This server does not answer for ${p.host}. Start it with --host ${p.host} if that name is yours.`,
  'server.not-this-origin': () => 'Pages of other sites may not ask this server.',
  'server.too-many-streams': (p: { readonly most: number }) =>
    `There are already ${p.most} live streams open. Close a page and try again.`,
  'server.failed': () =>
    'The server failed on this request. What was kept before is kept; its log says more.',
  'server.port-taken': (p: { readonly port: number }) =>
    `Port ${p.port} is taken by another program. Choose another one: PORT=${p.port + 1} npm start, or --port.`,
  'server.no-port': (p: { readonly port: string }) => `${p.port} is no port: a whole number up to 65535.`,
  'server.already-running': (p: { readonly url: string }) => `Pitwright is already running at ${p.url}`,
  'server.running': (p: { readonly url: string; readonly folder: string }) =>
    `Pitwright is at ${p.url}\nEverything is kept in ${p.folder}. Ctrl+C stops it.`,
  'server.folder-shared': (p: { readonly path: string }) =>
    `${p.path} holds other things and others may read it. Name a folder of its own with --data.`,
  'server.folder-not-made': (p: { readonly path: string }) =>
    `${p.path} could not be made. Name a folder that is yours with --data.`,
  'server.not-built': () => 'The web app is not built yet. Run npm start, which builds it.',
});
