export { defaultDataDir, STORE_FILE } from './data-folder.ts';
export { Refusal } from './refusal.ts';
export { DEFAULT_PORT, type RunningServer, type ServerOptions, startServer } from './server.ts';
