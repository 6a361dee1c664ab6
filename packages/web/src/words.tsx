import {
  benchMessages,
  benchWaysMessages,
  keepingUnits,
  METRIC,
  type MessageParams,
  type Printer,
  type PrintSettings,
  printer,
  US,
  unbroken,
  webMessages,
} from '@pitwright/words';
import { createContext, Fragment, type ReactNode, use, useMemo } from 'react';

/** How this person writes things; the zone is the cook's, added where one is open. */
export type Writing = Pick<PrintSettings, 'units' | 'clock' | 'names'>;

/** A first guess from the device's language, to be confirmed by the person. */
export function guessedWriting(language: string): Writing {
  const region = /-([A-Z]{2})\b/.exec(language)?.[1];
  const base = region === 'US' || region === 'LR' ? US : METRIC;
  return {
    units: base.units,
    clock: ['US', 'CA', 'AU', 'NZ', 'IN', 'PH'].includes(region ?? '') ? '12' : '24',
    names: ['GB', 'IE'].includes(region ?? '') ? 'uk' : 'us',
  };
}

export const deviceZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';

const Reader = createContext<Printer>(printer(METRIC));

export function ReaderProvider(props: { writing: Writing; zone: string; children: ReactNode }) {
  const { units, clock, names } = props.writing;
  const { zone } = props;
  const value = useMemo(
    () => keepingUnits(printer({ units, clock, names, zone, keepWritten: false })),
    [units, clock, names, zone],
  );
  return <Reader value={value}>{props.children}</Reader>;
}

export const usePrinter = (): Printer => use(Reader);

/** What the places say around their answers. */
const appMessages = { ...webMessages, ...benchMessages, ...benchWaysMessages };

type WebId = keyof typeof appMessages;
type ParamsOf<Id extends WebId> = Parameters<(typeof appMessages)[Id]>[0];
type Given<Id extends WebId> =
  undefined extends ParamsOf<Id>
    ? []
    : Parameters<(typeof appMessages)[Id]> extends []
      ? []
      : [params: ParamsOf<Id>];

export interface Words {
  /** A message of the app, as plain text. */
  readonly text: <Id extends WebId>(id: Id, ...given: Given<Id>) => string;
  /** The same with its heavy parts set heavy. */
  readonly rich: <Id extends WebId>(id: Id, ...given: Given<Id>) => ReactNode;
  readonly print: Printer;
}

const plain = (marked: string): string => marked.replaceAll('**', '');

/** Sets what stands between double asterisks heavy. */
export function heavy(marked: string): ReactNode {
  // The parts of a fixed sentence never change places: their index is their identity.
  return marked.split('**').map((part, index) =>
    // biome-ignore lint/suspicious/noArrayIndexKey: see above
    index % 2 === 1 ? <b key={index}>{part}</b> : <Fragment key={index}>{part}</Fragment>,
  );
}

export function useWords(): Words {
  const print = usePrinter();
  return useMemo(() => {
    const marked = (id: WebId, params?: MessageParams): string =>
      unbroken((appMessages[id] as (p: MessageParams, print: Printer) => string)(params ?? {}, print));
    return {
      text: (id, ...given) => plain(marked(id, given[0] as MessageParams | undefined)),
      rich: (id, ...given) => heavy(marked(id, given[0] as MessageParams | undefined)),
      print,
    };
  }, [print]);
}
