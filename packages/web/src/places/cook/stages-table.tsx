import type { PlannedPiece } from '@pitwright/engine';
import {
  BITES,
  type Cook,
  type Piece,
  quantity,
  readCookQuantity,
  STAGE_KINDS,
  type Stage,
  type StageEnd,
  type StageKind,
} from '@pitwright/model';
import { biteName, stageName } from '@pitwright/words';
import { useEffect, useState } from 'react';
import { Ask } from '../../parts/ask.tsx';
import { Key } from '../../parts/key.tsx';
import { useWords } from '../../words.tsx';
import { asKind, setStages } from './edit.ts';
import { useOrigins } from './origins.ts';

type EndWord = 'clock' | 'core' | 'surface' | 'loss' | 'bark' | 'table' | `bite:${(typeof BITES)[number]}`;
const wordOf = (end: StageEnd): EndWord => (end.by === 'bite' ? `bite:${end.bite}` : end.by);

/** What a stage ends by when that is first chosen: common practice, no source. */
function endFor(word: EndWord): StageEnd {
  switch (word) {
    case 'clock':
      return { by: 'clock', after: quantity('time', 60, 'min') };
    case 'core':
      return { by: 'core', temperature: quantity('temperature', 71, '°C') };
    case 'surface':
      return { by: 'surface', temperature: quantity('temperature', 70, '°C') };
    case 'loss':
      return { by: 'loss', share: quantity('fraction', 12, '%') };
    case 'bark':
    case 'table':
      return { by: word };
    default:
      return { by: 'bite', bite: word.slice('bite:'.length) as (typeof BITES)[number] };
  }
}

/** What another stage is, until it is told: the first of these that the piece has not yet. */
const ADDED: readonly StageKind[] = ['foil', 'paper', 'glazed'];

/** The stages of a piece, each with what ends it and when that is expected. All of it can be changed here. */
export function StagesTable(props: {
  cook: Cook;
  piece: Piece;
  /** Missing while nothing can be foreseen: the stages can be mended all the same. */
  planned: PlannedPiece | undefined;
  onKeep: (cook: Cook) => void;
}) {
  const { text, print } = useWords();
  const { cook, piece, planned, onKeep } = props;
  const keep = (stages: readonly Stage[]) => onKeep(setStages(cook, piece.id, stages));
  const change = (index: number, part: Partial<Stage>) =>
    keep(piece.stages.with(index, { ...piece.stages[index]!, ...part }));
  const isWaiting = (kind: StageKind) => kind === 'rest' || kind === 'hold';
  const newKind = ADDED.find((kind) => !piece.stages.some((stage) => stage.kind === kind)) ?? 'foil';
  const addBefore = piece.stages.findIndex((stage) => isWaiting(stage.kind));
  return (
    <>
      <table className="stages">
        <thead>
          <tr>
            <th>{text('web.stage.kind')}</th>
            <th>{text('web.stage.until')}</th>
            <th>
              <span className="vh">{text('web.stage.figure')}</span>
            </th>
            <th className="r">{text('web.stage.begins')}</th>
            {planned ? <th>{text('web.stage.at-its-end')}</th> : null}
            <th>
              <span className="vh">{text('web.stage.leave-out')}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {piece.stages.map((stage, index) => {
            const isLast = index === piece.stages.length - 1;
            const ends: EndWord[] = [
              'clock',
              'core',
              'surface',
              'loss',
              'bark',
              ...BITES.filter((bite) => bite !== 'raw').map((bite): EndWord => `bite:${bite}`),
              ...(isLast && isWaiting(stage.kind) ? (['table'] as const) : []),
            ];
            const begins = planned?.stages[index]?.startAt;
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: stages have no ids; their order is what they are
              <tr key={index}>
                <td>
                  <select
                    className="cell-pick"
                    aria-label={text('web.stage.kind-of', { number: index + 1 })}
                    value={stage.kind}
                    onChange={(event) =>
                      keep(piece.stages.with(index, asKind(stage, event.target.value as StageKind)))
                    }
                  >
                    {STAGE_KINDS.map((kind) => (
                      <option key={kind} value={kind}>
                        {stageName(kind)}
                      </option>
                    ))}
                  </select>
                </td>
                <td>
                  <select
                    className="cell-pick"
                    aria-label={text('web.stage.until-of', { number: index + 1 })}
                    value={wordOf(stage.until)}
                    onChange={(event) => change(index, { until: endFor(event.target.value as EndWord) })}
                  >
                    {ends.map((end) => (
                      <option key={end} value={end}>
                        {end.startsWith('bite:')
                          ? biteName(end.slice(5) as (typeof BITES)[number])
                          : text(
                              `web.until.${end as 'clock' | 'core' | 'surface' | 'loss' | 'bark' | 'table'}`,
                            )}
                      </option>
                    ))}
                  </select>
                </td>
                <td>
                  <EndFigure
                    end={stage.until}
                    label={text('web.stage.figure-of', { number: index + 1 })}
                    onChange={(until) => change(index, { until })}
                  />
                </td>
                <td className="r figure">{begins ? print.aboutClock(begins) : ''}</td>
                {planned ? (
                  <td className="stage-heat small">
                    <StageHeat stage={planned.stages[index]} />
                  </td>
                ) : null}
                <td className="r">
                  {piece.stages.length > 1 ? (
                    <Key
                      kind="plain"
                      aria-label={text('web.stage.leave-out-of', { number: index + 1 })}
                      onClick={() => keep(piece.stages.filter((_, at) => at !== index))}
                    >
                      {text('web.stage.leave-out')}
                    </Key>
                  ) : null}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <div className="keys">
        <Key
          onClick={() =>
            keep(
              piece.stages.toSpliced(addBefore < 0 ? piece.stages.length : addBefore, 0, {
                kind: newKind,
                until: endFor('clock'),
              }),
            )
          }
        >
          {text('web.stage.add')}
        </Key>
      </div>
    </>
  );
}

/** How hot it is inside and outside when the stage ends, 8 times in 10. */
function StageHeat(props: { stage: PlannedPiece['stages'][number] | undefined }) {
  const { text, print } = useWords();
  const origins = useOrigins();
  const figures = [
    { key: 'middle', range: props.stage?.coreC },
    { key: 'surface', range: props.stage?.surfaceC },
  ] as const;
  return figures.map(({ key, range }) =>
    range && Number.isFinite(range.p10) && Number.isFinite(range.p90) && range.p90 > 0 ? (
      <span key={key} className="stage-heat-line">
        {text(`web.stage.${key}`)}{' '}
        <Ask origin={origins[key]}>{print.temperatureRangeC(range.p10, range.p90)}</Ask>
      </span>
    ) : null,
  );
}

/** The figure of an end: a time or a temperature, written with its unit. Kept when it reads. */
function EndFigure(props: { end: StageEnd; label: string; onChange: (end: StageEnd) => void }) {
  const { text, print } = useWords();
  const { end } = props;
  const written =
    end.by === 'clock'
      ? print.quantity(end.after)
      : end.by === 'core' || end.by === 'surface'
        ? print.quantity(end.temperature)
        : end.by === 'loss'
          ? print.quantity(end.share)
          : undefined;
  const [draft, setDraft] = useState(written ?? '');
  useEffect(() => setDraft(written ?? ''), [written]);
  if (written === undefined) return null;
  const reading =
    end.by === 'clock'
      ? readCookQuantity(draft, 'time')
      : end.by === 'loss'
        ? readCookQuantity(draft, 'fraction')
        : readCookQuantity(draft, 'temperature');
  const keep = () => {
    if (draft === written || !reading.ok) return;
    if (end.by === 'clock' && reading.quantity.kind === 'time')
      props.onChange({ by: 'clock', after: reading.quantity });
    else if ((end.by === 'core' || end.by === 'surface') && reading.quantity.kind === 'temperature')
      props.onChange({ by: end.by, temperature: reading.quantity });
    else if (end.by === 'loss' && reading.quantity.kind === 'fraction')
      props.onChange({ by: 'loss', share: reading.quantity });
  };
  return (
    <>
      <input
        className="cell-write"
        aria-label={props.label}
        value={draft}
        aria-invalid={reading.ok ? undefined : true}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === 'Enter') keep();
        }}
      />
      {reading.ok ? null : (
        <span className="field-error small">
          {text(
            end.by === 'clock'
              ? 'web.stage.time-problem'
              : end.by === 'loss'
                ? 'web.stage.loss-problem'
                : 'web.ask.heat.problem',
          )}
        </span>
      )}
    </>
  );
}
