export { openBrowserStore } from './store.ts';
