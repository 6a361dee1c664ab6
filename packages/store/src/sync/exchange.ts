import type { Entry } from '@pitwright/model';
import { entryJson } from '../stamp.ts';
import type { Store } from '../store.ts';
import { type Peer, PeerFault, type PeerPage } from './peer.ts';

/** Of one sending: entries, and characters of their JSON, well below what the server takes. */
const SENDING_MAX = { entries: 200, characters: 1_000_000 };

/**
 * Takes in what the peer holds and sends what it lacks. Each step is safe to repeat: an entry counts once by its id, and
 * a position or an acknowledgement is noted only after what it stands for is on the disk.
 *
 * @returns ids of entries that the peer does not take; they stay here and are not sent again
 */
export async function exchange(store: Store, peer: Peer): Promise<readonly string[]> {
  const position = await store.peer();
  let page = await peer.read(position?.cursor ?? 0);
  // Another store at the old address, or the old one brought back from a copy: it lacks what it once acknowledged.
  const isSame = position?.storeId === page.storeId && page.last >= position.cursor;
  if (!isSame) {
    await store.sendAllAgain();
    page = await peer.read(0);
  }
  await takeInAll(store, peer, page);
  const { sent, refused } = await sendOutbox(store, peer);
  // What was sent counts into the peer's cursor: the position must not stay behind it, or a lost one would go unseen.
  if (sent > 0) await takeInAll(store, peer, await peer.read((await store.peer())?.cursor ?? 0));
  return refused;
}

async function takeInAll(store: Store, peer: Peer, first: PeerPage): Promise<void> {
  for (let page = first; ; page = await peer.read(page.cursor)) {
    await takeIn(store, page);
    if (page.cursor >= page.last) return;
  }
}

export async function takeIn(store: Store, page: PeerPage): Promise<void> {
  if (page.entries.length > 0) await store.receive(page.entries);
  await store.setPeer({ storeId: page.storeId, cursor: page.cursor });
}

/** Sends what waits. @returns how many were sent, and ids of those that the peer does not take */
export async function sendOutbox(
  store: Store,
  peer: Peer,
): Promise<{ readonly sent: number; readonly refused: readonly string[] }> {
  const refused: string[] = [];
  let sent = 0;
  for (;;) {
    const waiting = await store.outbox(SENDING_MAX.entries);
    if (waiting.length === 0) return { sent, refused };
    const sending = portionOf(waiting);
    refused.push(...(await sendPortion(peer, sending)));
    await store.markSent(sending.map((entry) => entry.id));
    sent += sending.length;
  }
}

/** Sends a portion; where it is refused, one by one, so that one bad entry does not hold up the others. */
async function sendPortion(peer: Peer, entries: readonly Entry[]): Promise<readonly string[]> {
  try {
    await peer.send(entries);
    return [];
  } catch (fault) {
    if (!(fault instanceof PeerFault && fault.why === 'refused')) throw fault;
    if (entries.length === 1) return entries.map((entry) => entry.id);
    const refused: string[] = [];
    for (const entry of entries) refused.push(...(await sendPortion(peer, [entry])));
    return refused;
  }
}

function portionOf(waiting: readonly Entry[]): readonly Entry[] {
  let characters = 0;
  const end = waiting.findIndex((entry) => {
    characters += entryJson(entry).length;
    return characters > SENDING_MAX.characters;
  });
  return end < 0 ? waiting : waiting.slice(0, Math.max(1, end));
}
