/** A part that was asked for comes into sight by its head. */
export function intoView(part: HTMLElement | null): void {
  part?.scrollIntoView({ block: 'start' });
}
