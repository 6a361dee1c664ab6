import type { Entry } from '@pitwright/model';
import { type Peer, PeerFault, type PeerPage } from './peer.ts';

/** An answer that takes longer is given up [ms]. */
const ANSWER_MS = 20_000;
/** The server says something at least every 20 s; a stream that is silent for longer than this is dead [ms]. */
const SILENCE_MS = 50_000;

/** The server at an address, such as `location.origin`. */
export function httpPeer(base: string): Peer {
  const ask = async (path: string, init: RequestInit = {}): Promise<Response> => {
    const signal = init.signal ?? AbortSignal.timeout(ANSWER_MS);
    const answer = await fetch(new URL(path, base), { ...init, signal, cache: 'no-store' }).catch((cause) => {
      throw new PeerFault('away', cause);
    });
    if (answer.ok) return answer;
    const isOurs = answer.headers.get('content-type')?.includes('json') ?? false;
    if (answer.status >= 500) throw new PeerFault('away', answer.status);
    throw new PeerFault(isOurs && init.method === 'POST' ? 'refused' : 'none', answer.status);
  };

  return {
    async read(since) {
      const answer = await ask(`/api/entries?since=${since}`);
      const page = await answer.json().catch((cause) => {
        throw new PeerFault('none', cause);
      });
      return readPage(page);
    },

    async send(entries: readonly Entry[]) {
      await ask('/api/entries', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ entries }),
      });
    },

    async *follow(since, signal) {
      const silence = new AbortController();
      let timer = setTimeout(() => silence.abort(), SILENCE_MS);
      try {
        const answer = await ask(`/api/live?since=${since}`, {
          signal: AbortSignal.any([signal, silence.signal]),
          headers: { accept: 'text/event-stream' },
        });
        if (!answer.body) return;
        const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
        let text = '';
        for (;;) {
          const { done, value } = await reader.read();
          if (done) return;
          clearTimeout(timer);
          timer = setTimeout(() => silence.abort(), SILENCE_MS);
          const events = (text + value).split('\n\n');
          text = events.pop() ?? '';
          for (const event of events) {
            const data = event.split('\n').find((line) => line.startsWith('data: '));
            if (data) yield readPage(JSON.parse(data.slice('data: '.length)));
          }
        }
      } catch (cause) {
        throw cause instanceof PeerFault ? cause : new PeerFault('away', cause);
      } finally {
        clearTimeout(timer);
        silence.abort();
      }
    },
  };
}

function readPage(value: unknown): PeerPage {
  const page = value as Partial<PeerPage> | null;
  const isPage =
    typeof page?.storeId === 'string' &&
    Array.isArray(page.entries) &&
    Number.isSafeInteger(page.cursor) &&
    Number.isSafeInteger(page.last);
  if (!isPage) throw new PeerFault('none', value);
  return page as PeerPage;
}
