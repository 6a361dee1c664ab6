// A worker starts as plain JavaScript: it registers the TypeScript loader for itself, then becomes the forecast worker.
import { register } from 'tsx/esm/api';

register();
await import('./forecast-worker.ts');
