/**
 * A cook in the fragment of an address: the part after `#`, which a browser keeps to itself and sends to no server.
 * Form: `cook=1.CHECKSUM.TEXT`, the text of the cook file, deflated, in base64url; the checksum is of the deflated bytes.
 */
import { printCookFile } from '../file/print.ts';
import type { FileProblem } from '../file/problem.ts';
import { MOST_CHARACTERS, readCookFile } from '../file/read.ts';
import { type Private, withoutPrivate } from '../file/share.ts';
import type { Cook } from '../nouns.ts';
import type { Said } from '../said.ts';
import { fromBase64url, toBase64url } from './base64url.ts';
import { crc32 } from './crc32.ts';
import { deflate, inflate } from './deflate.ts';

declare const TextEncoder: new () => { encode(text: string): Uint8Array };
declare const TextDecoder: new (
  label: 'utf-8',
  options: { readonly fatal: boolean },
) => { decode(bytes: Uint8Array): string };

const KEY = 'cook=';
const FORM = '1';

/** Longest fragment that is made [characters]: what common messengers and readers of square codes still carry whole. */
export const SHARE_LINK_MOST = 8000;
/** Longest one that is read: somebody else may have made it. */
const READ_MOST = 100_000;

export type ShareLink =
  /** `said` tells what a person should look at before giving it away. */
  | { readonly ok: true; readonly fragment: string; readonly said: readonly Said[] }
  /** `share.too-long`: give the cook file away instead. */
  | { readonly ok: false; readonly said: readonly Said[] };

/** The fragment of a link that carries a cook, private fields left out unless ticked. */
export async function shareLink(cook: Cook, ticked: readonly Private[] = []): Promise<ShareLink> {
  const { cook: shared, said } = withoutPrivate(cook, ticked);
  const bytes = await deflate(new TextEncoder().encode(printCookFile({ kind: 'cook', cook: shared })));
  const fragment = `${KEY}${FORM}.${checksum(bytes)}.${toBase64url(bytes)}`;
  if (fragment.length > SHARE_LINK_MOST) {
    const params = { characters: fragment.length, most: SHARE_LINK_MOST };
    return { ok: false, said: [{ id: 'share.too-long', params }] };
  }
  return { ok: true, fragment, said };
}

export type SharedCook =
  | { readonly ok: true; readonly cook: Cook; readonly said: readonly Said[] }
  | { readonly ok: false; readonly problems: readonly (Said | FileProblem)[] };

/** Whether a fragment, with or without `#`, is meant to carry a cook. */
export function isShareLink(fragment: string): boolean {
  return withoutHash(fragment).startsWith(KEY);
}

/** The cook of a link, read as strictly as a cook file. Never throws on a text. */
export async function readShareLink(fragment: string): Promise<SharedCook> {
  const failure = (...problems: readonly (Said | FileProblem)[]): SharedCook => ({ ok: false, problems });
  if (!isShareLink(fragment)) return failure({ id: 'share.no-cook' });
  const [form, sum, body] = withoutHash(fragment).slice(KEY.length).split('.');
  if (form !== FORM)
    return failure(/^\d+$/.test(form ?? '') ? { id: 'share.newer' } : { id: 'share.damaged' });
  if (fragment.length > READ_MOST) return failure({ id: 'share.damaged' });
  const bytes = fromBase64url(body ?? '');
  if (!bytes || bytes.length === 0 || checksum(bytes) !== sum) return failure({ id: 'share.damaged' });
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(await inflate(bytes, 4 * MOST_CHARACTERS));
  } catch {
    return failure({ id: 'share.damaged' });
  }
  const reading = readCookFile(text);
  if (!reading.ok) return failure(...reading.problems);
  if (reading.document.kind !== 'cook') return failure({ id: 'share.no-cook' });
  return { ok: true, cook: reading.document.cook, said: reading.said };
}

const withoutHash = (fragment: string): string => (fragment.startsWith('#') ? fragment.slice(1) : fragment);

const checksum = (bytes: Uint8Array): string => crc32(bytes).toString(16).padStart(8, '0');
