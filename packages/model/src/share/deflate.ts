/** What Node and browsers both have, as far as it is used here; this package is typed without either. */
interface ByteTransform {
  readonly readable: {
    getReader(): {
      read(): Promise<{ readonly done: boolean; readonly value?: Uint8Array }>;
      cancel(): Promise<void>;
    };
  };
  readonly writable: {
    getWriter(): { write(bytes: Uint8Array): Promise<void>; close(): Promise<void> };
  };
}
type Transform = new (format: 'deflate-raw') => ByteTransform;
declare const CompressionStream: Transform;
declare const DecompressionStream: Transform;

/** @source RFC 1951 */
export const deflate = (bytes: Uint8Array): Promise<Uint8Array> =>
  through(new CompressionStream('deflate-raw'), bytes, Number.POSITIVE_INFINITY);

/** @throws RangeError on more than `most` bytes, so that a small link cannot become a large text; TypeError on damage */
export const inflate = (bytes: Uint8Array, most: number): Promise<Uint8Array> =>
  through(new DecompressionStream('deflate-raw'), bytes, most);

async function through(transform: ByteTransform, bytes: Uint8Array, most: number): Promise<Uint8Array> {
  const writer = transform.writable.getWriter();
  // What goes wrong in writing is told by reading.
  writer.write(bytes).catch(() => undefined);
  writer.close().catch(() => undefined);
  const reader = transform.readable.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    if (!value) continue;
    length += value.length;
    if (length > most) {
      await reader.cancel().catch(() => undefined);
      throw new RangeError(`more than ${most} bytes`);
    }
    parts.push(value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
