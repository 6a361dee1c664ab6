import { useLayoutEffect, useRef, useState } from 'react';
import { useWords } from '../../words.tsx';
import { contrast } from './contrast.ts';

const TOKENS = [
  'paper',
  'sheet',
  'ink',
  'ink2',
  'rule',
  'now',
  'info',
  'caut',
  'stop',
  'water',
  'heatLine',
  'pA',
  'pB',
  'pC',
  'pD',
  'pE',
  'pF',
  'pG',
  'pH',
] as const;
/** These two are grounds, and the rule carries no text. */
const NO_TEXT = new Set<string>(['paper', 'sheet', 'rule']);

/** The colours of the light this stands in, with their contrast computed as they are drawn. */
export function Colours() {
  const { text, print } = useWords();
  const ref = useRef<HTMLDivElement>(null);
  const [values, setValues] = useState<Readonly<Record<string, string>>>({});
  useLayoutEffect(() => {
    const style = getComputedStyle(ref.current!);
    setValues(
      Object.fromEntries(TOKENS.map((token) => [token, style.getPropertyValue(`--${token}`).trim()])),
    );
  }, []);
  const ratio = (token: string, ground: string) =>
    values[token] && values[ground] && !NO_TEXT.has(token)
      ? print.number(contrast(values[token], values[ground]), 1)
      : '';
  return (
    <div ref={ref}>
      <h3>{text('web.specimen.colour')}</h3>
      <table className="swatches">
        <thead>
          <tr>
            <th>{text('web.specimen.token')}</th>
            <th>{text('web.specimen.value')}</th>
            <th className="r">{text('web.specimen.on-paper')}</th>
            <th className="r">{text('web.specimen.on-sheet')}</th>
          </tr>
        </thead>
        <tbody>
          {TOKENS.map((token) => (
            <tr key={token}>
              <td>{token}</td>
              <td>
                <span className="swatch" style={{ background: `var(--${token})` }} />
                {values[token]}
              </td>
              <td className="r">{ratio(token, 'paper')}</td>
              <td className="r">{ratio(token, 'sheet')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
