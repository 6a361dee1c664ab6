import type { Cook } from '@pitwright/model';
import type { PrintSettings } from '@pitwright/words';

/**
 * How the plan of a cook is printed: in the units asked; else each figure as the file wrote it, the rest in the
 * system that the file tells its pit's temperature in. US units bring the twelve-hour clock.
 */
export function readerOf(cook: Cook, asked: 'us' | 'metric' | undefined): PrintSettings {
  const units = asked ?? (cook.pit.temperature.writtenIn === '°F' ? 'us' : 'metric');
  return {
    units,
    keepWritten: asked === undefined,
    clock: units === 'us' ? '12' : '24',
    zone: cook.zone,
    names: cook.rules === 'uk' ? 'uk' : 'us',
  };
}
