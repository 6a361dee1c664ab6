import type { Said } from '@pitwright/model';

/** A store that could not do what was asked. What was stored before is as it was. */
export class StoreFault extends Error {
  readonly said: Said;

  constructor(said: Said, cause?: unknown) {
    super(said.id, { cause });
    this.name = 'StoreFault';
    this.said = said;
  }
}
