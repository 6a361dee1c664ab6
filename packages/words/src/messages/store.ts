import { messages } from './message.ts';

type AtPath = { readonly path: string };

/** What the store says when it cannot do what was asked. What was kept before is kept. */
export const storeMessages = messages({
  'store.locked': (p: AtPath) =>
    `Another program is writing to ${p.path}. This change is not kept; what was kept before is. Try again in a moment.`,
  'store.damaged': (p: AtPath) =>
    `${p.path} is damaged and was left as it is. Put the last backup in its place, or move it away to start with an empty store; the devices that were in step with it send their entries again.`,
  'store.disk-full': (p: AtPath) =>
    `The disk that holds ${p.path} is full. This change is not kept; what was kept before is. Make room and do it again.`,
  'store.disk-refuses': (p: AtPath) =>
    `The disk does not take what is written to ${p.path}. This change is not kept; what was kept before is. Look at the disk before going on.`,
  'store.not-writable': (p: AtPath) =>
    `${p.path} cannot be opened for writing. Give it a folder that is yours, with --data.`,
  'store.newer': (p: AtPath & { readonly version: number; readonly known: number }) =>
    `${p.path} was written by a newer Pitwright (form ${p.version}; this one knows ${p.known}). It was left as it is. Start the newer one.`,
  'store.entry-too-large': (p: { readonly size: number; readonly sizeMax: number }) =>
    `This change is too large to keep: ${p.size} characters, at most ${p.sizeMax}. Nothing of it was kept.`,
  'store.quota': () =>
    'The browser has no more room for this site. This change is not kept; what was kept before is. Make room on the device and do it again.',
  'store.newer-tab': () =>
    'A newer Pitwright has been here with this browser. Load the page again to go on with it.',
  'store.no-site-data': () =>
    'The browser keeps nothing for this site. Allow it to store site data; until then nothing stays after the page is closed.',
  'store.closed': () =>
    'A newer Pitwright opened in another tab. Load this page again; what was kept is there.',
  'store.browser-failed': () =>
    'The browser could not reach what it keeps for this site. This change is not kept. Close the browser, open it again and look.',
});
