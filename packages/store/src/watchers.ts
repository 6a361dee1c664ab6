/** Those who want to hear that entries came to be held. */
export class Watchers {
  readonly #listeners = new Set<() => void>();

  add(listener: () => void): () => void {
    // Each call has its own place, so that one function may listen twice.
    const own = () => listener();
    this.#listeners.add(own);
    return () => void this.#listeners.delete(own);
  }

  call(): void {
    for (const listener of [...this.#listeners]) listener();
  }
}
