import type { NoticeLevel, Said, StageKind } from '@pitwright/model';

/** What a notice is about; empty: the whole cook. */
export interface Concern {
  readonly pieceId?: string;
  readonly formulaId?: string;
  readonly stage?: StageKind;
}

/** A safety statement: it informs, a person decides. Its level and source are never missing. */
export interface Notice extends Said {
  readonly level: NoticeLevel;
  readonly source: string;
  readonly concerns: Concern;
}

/** Declares a notice. */
export const notice = (
  id: string,
  level: NoticeLevel,
  source: string,
  params: Said['params'] = {},
  concerns: Concern = {},
): Notice => ({ id, level, source, params, concerns });

export const degrees = (celsius: number) => ({ kind: 'temperature', si: celsius + 273.15 }) as const;
export const seconds = (si: number) => ({ kind: 'time', si }) as const;
