import { Trail } from '../../meat/trail.ts';

/** At most 64 states of 2 kB for each: some 20 MB at the very worst, a fifth of that for racks. */
const MOST_TRAILS = 160;

/** What the first members of one piece left behind, so that a moved stage is not stepped from the beginning. */
export class PieceTrails {
  readonly #trails = new Map<string, Trail>();

  /** Of one item of one member; undefined when there is no more room. */
  of(member: number, item: number): Trail | undefined {
    const key = `${member}/${item}`;
    const held = this.#trails.get(key);
    if (held || this.#trails.size >= MOST_TRAILS) return held;
    const trail = new Trail();
    this.#trails.set(key, trail);
    return trail;
  }
}
