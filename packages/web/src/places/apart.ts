import type { Cook, Kept } from '@pitwright/model';
import { clock, date } from '@pitwright/words';
import { deviceZone, type Words } from '../words.tsx';

type KeptCook = Kept<Cook>;
type Telling = (kept: KeptCook) => string;

/** Tells cooks of one name apart by the day, by how many eat, by when they were last changed: by no more than it takes. */
export function tellingApart({ text, print }: Pick<Words, 'text' | 'print'>, cooks: readonly KeptCook[]) {
  const order = print.settings.clock === '12' ? 'us' : 'uk';
  const name: Telling = ({ document }) => document.name;
  const day: Telling = ({ document: { table, zone } }) => date(table.at, zone, order);
  const people: Telling = ({ document: { guests } }) =>
    text('web.apart.people', { people: guests.adults + guests.children });
  const changed: Telling = ({ changedAt }) =>
    text('web.apart.changed', {
      day: date(changedAt, deviceZone(), order),
      hour: clock(changedAt, { ...print.settings, zone: deviceZone() }),
    });
  const all =
    (...tellings: readonly Telling[]): Telling =>
    (kept) =>
      tellings.map((one) => one(kept)).join(', ');
  const isAlone = (kept: KeptCook, telling: Telling): boolean =>
    cooks.every((other) => other === kept || telling(other) !== telling(kept));

  const longer = [name, all(name, day), all(name, day, people)];
  return {
    /** The name, and what it takes beside it. */
    nameOf: (kept: KeptCook): string =>
      (longer.find((telling) => isAlone(kept, telling)) ?? all(name, day, people, changed))(kept),
    /** Where name, day and people stand already: when it was changed, if another reads alike. */
    besides: (kept: KeptCook): string | undefined =>
      isAlone(kept, all(name, day, people)) ? undefined : changed(kept),
  };
}
