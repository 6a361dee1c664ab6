// A cook in the fragment of an address: round trip, what it leaves out, size, damage.
import { readdirSync, readFileSync } from 'node:fs';
import { deflateRawSync, crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printCookFile } from '../file/print.ts';
import { readCookFile } from '../file/read.ts';
import { withoutPrivate } from '../file/share.ts';
import type { Cook } from '../nouns.ts';
import { fromBase64url, toBase64url } from './base64url.ts';
import { crc32 } from './crc32.ts';
import { isShareLink, readShareLink, SHARE_LINK_MOST, shareLink } from './link.ts';

const EXAMPLES = new URL('../../../../examples/', import.meta.url);
const examples = readdirSync(EXAMPLES).filter((name) => name.endsWith('.pitwright.yaml'));

function cookOf(name: string): Cook {
  const reading = readCookFile(readFileSync(new URL(name, EXAMPLES), 'utf8'));
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error(`${name} is a cook`);
  return reading.document.cook;
}

async function fragmentOf(cook: Cook): Promise<string> {
  const link = await shareLink(cook);
  if (!link.ok) throw new Error('it fits');
  return link.fragment;
}

/** A link around any text, with a checksum that is right. */
function linkAround(text: string | Uint8Array): string {
  const bytes = new Uint8Array(deflateRawSync(text));
  return `cook=1.${crc32(bytes).toString(16).padStart(8, '0')}.${toBase64url(bytes)}`;
}

describe('what it carries', () => {
  test.each(examples)(
    '%s comes back as it was, without what is private, in a link that fits',
    async (name) => {
      const cook = cookOf(name);
      const fragment = await fragmentOf(cook);
      expect(fragment.length).toBeLessThanOrEqual(SHARE_LINK_MOST);
      expect(fragment).toMatch(/^cook=1\.[0-9a-f]{8}\.[A-Za-z0-9_-]+$/);
      expect(await readShareLink(`#${fragment}`)).toEqual({
        ok: true,
        cook: withoutPrivate(cook).cook,
        said: [],
      });
    },
  );

  test('coordinates, allergies and names stay behind unless they are ticked', async () => {
    const cook: Cook = {
      ...cookOf('two-racks.pitwright.yaml'),
      place: { latitude: 41.5, longitude: -8.25 },
      hands: [{ id: 'rosalind', name: 'Rosalind' }],
    };
    const plain = await readShareLink(await fragmentOf(cook));
    expect(plain.ok && JSON.stringify(plain.cook)).not.toMatch(/41\.5|8\.25|rosalind/i);
    const ticked = await shareLink(cook, ['names']);
    const read = await readShareLink(ticked.ok ? ticked.fragment : '');
    expect(read).toMatchObject({ ok: true, cook: { hands: [{ name: 'Rosalind' }] } });
    expect(read.ok && read.cook.place).toBeUndefined();
  });

  test('a cook that is too long for a link is refused with its length', async () => {
    // Words that hardly deflate: a long note of digits that do not repeat.
    const note = Array.from({ length: 3000 }, (_, i) => ((i * 2654435761) >>> 0).toString(36)).join(' ');
    const link = await shareLink({ ...cookOf('two-racks.pitwright.yaml'), note });
    expect(link).toMatchObject({
      ok: false,
      said: [{ id: 'share.too-long', params: { most: SHARE_LINK_MOST } }],
    });
  });
});

describe('damage', () => {
  test('a link that lost or changed any character is never read as a cook', async () => {
    const fragment = await fragmentOf(cookOf('two-racks.pitwright.yaml'));
    await fc.assert(
      fc.asyncProperty(
        fc.nat(fragment.length - 1),
        fc.constantFrom('cut', 'drop', 'change', 'double'),
        fc.constantFrom(...'Aa0-_.%#'),
        async (at, how, other) => {
          const damaged = {
            cut: fragment.slice(0, at),
            drop: fragment.slice(0, at) + fragment.slice(at + 1),
            change: fragment.slice(0, at) + other + fragment.slice(at + 1),
            double: fragment.slice(0, at) + fragment[at] + fragment.slice(at),
          }[how];
          fc.pre(damaged !== fragment);
          const read = await readShareLink(damaged);
          expect(read.ok).toBe(false);
          expect(read.ok || read.problems.map((each) => each.id)).toEqual([
            expect.stringMatching(/^share\.(damaged|no-cook|newer)$/),
          ]);
        },
      ),
      { numRuns: 500 },
    );
  });

  test.each([
    ['', 'share.no-cook'],
    ['#', 'share.no-cook'],
    ['section-2', 'share.no-cook'],
    ['cook=', 'share.damaged'],
    ['cook=2.00000000.AAAA', 'share.newer'],
    ['cook=1.00000000.', 'share.damaged'],
    [`cook=1.00000000.${'A'.repeat(200_000)}`, 'share.damaged'],
    [linkAround(new Uint8Array([0xff, 0xfe, 0xff])), 'share.damaged'],
    [linkAround(' '.repeat(20_000_000)), 'share.damaged'],
  ])('%.40s … is refused', async (fragment, id) => {
    const read = await readShareLink(fragment);
    expect(read.ok).toBe(false);
    expect(read.ok || read.problems.map((each) => each.id)).toEqual([id]);
  });

  test('a right link around a wrong file tells the file’s own problems, with their places', async () => {
    const text = printCookFile({ kind: 'cook', cook: cookOf('two-racks.pitwright.yaml') });
    const read = await readShareLink(linkAround(`${text}sermon: yes\n`));
    expect(read.ok || read.problems).toMatchObject([{ line: expect.any(Number) }]);
  });

  test('a fragment of another kind is no share link', () => {
    expect(isShareLink('#guests')).toBe(false);
    expect(isShareLink('#cook=1.x.y')).toBe(true);
  });
});

describe('its parts', () => {
  test('base64url agrees with Node’s on every length, and comes back', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const text = toBase64url(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64url(text)).toEqual(bytes);
      }),
    );
  });

  test('the checksum agrees with zlib’s', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(crc32(bytes)).toBe(zlibCrc32(bytes));
      }),
    );
  });
});
