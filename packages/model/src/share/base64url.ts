const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES = new Map([...DIGITS].map((digit, value) => [digit, value]));

/** Bytes as text that an address carries without escapes, without padding. @source RFC 4648, section 5 */
export function toBase64url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const left = Math.min(3, bytes.length - i);
    const group = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    for (let digit = 0; digit <= left; digit++) text += DIGITS[(group >> (18 - 6 * digit)) & 63];
  }
  return text;
}

/** The bytes of a text; undefined where it holds anything but its digits or ends in the middle of a byte. */
export function fromBase64url(text: string): Uint8Array | undefined {
  if (text.length % 4 === 1) return undefined;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let held = 0;
  let bits = 0;
  let count = 0;
  for (const digit of text) {
    const value = VALUES.get(digit);
    if (value === undefined) return undefined;
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes[count++] = (held >> bits) & 0xff;
    }
  }
  const isRestZero = (held & ((1 << bits) - 1)) === 0;
  return isRestZero ? bytes : undefined;
}
