import type { PlannedPiece } from '@pitwright/engine';
import {
  BITES,
  isWaiting,
  type Piece,
  quantity,
  STAGE_KINDS,
  STAGE_LIMITS,
  type Stage,
  type StageEnd,
  type StageKind,
} from '@pitwright/model';
import { biteName, stageName } from '@pitwright/words';
import { Fragment, useState } from 'react';
import { Ask } from '../../parts/ask.tsx';
import { Key } from '../../parts/key.tsx';
import { useWords } from '../../words.tsx';
import { asKind, type OfPieces, setStages, withTold } from './edit.ts';
import { withNextStage } from './next-stage.ts';
import { useOrigins } from './origins.ts';
import { StageMore, useMoreWords } from './stage-more.tsx';
import { WrittenFigure } from './written-figure.tsx';

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

/** The stages of a piece, each with what ends it and when that is expected. All of it can be changed here. */
export function StagesTable<T extends OfPieces>(props: {
  /** A cook, or the recipe that it is made from. */
  cook: T;
  piece: Piece;
  /** Missing while nothing can be foreseen: the stages can be mended all the same. */
  planned: PlannedPiece | undefined;
  onKeep: (cook: T) => void;
}) {
  const { text, print } = useWords();
  const { cook, piece, planned, onKeep } = props;
  const keep = (stages: readonly Stage[]) => onKeep(setStages(cook, piece.id, stages));
  const change = (index: number, part: { readonly [Key in keyof Stage]?: Stage[Key] | undefined }) =>
    keep(piece.stages.with(index, withTold(piece.stages[index]!, part)));
  const [openIndex, setOpenIndex] = useState<number>();
  const moreWords = useMoreWords();
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
            {planned ? <th className="r">{text('web.stage.begins')}</th> : null}
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
              <Fragment key={index}>
                <tr className={openIndex === index ? 'stage-open' : undefined}>
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
                    {moreWords(stage) && openIndex !== index ? (
                      <span className="small quiet stage-told">{moreWords(stage)}</span>
                    ) : null}
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
                  {planned ? (
                    <td className="r figure">
                      {begins ? (
                        <>
                          <span className="narrow-head small quiet">{text('web.stage.begins')} </span>
                          {print.aboutClock(begins)}
                        </>
                      ) : null}
                    </td>
                  ) : null}
                  {planned ? (
                    <td className="stage-heat small">
                      {/* The table ends it: there is no heat that ends it as well. */}
                      <StageHeat stage={stage.until.by === 'table' ? undefined : planned.stages[index]} />
                    </td>
                  ) : null}
                  <td className="r stage-keys">
                    <Key
                      kind="plain"
                      aria-expanded={openIndex === index}
                      aria-label={text('web.stage.more-of', { number: index + 1 })}
                      onClick={() => setOpenIndex((open) => (open === index ? undefined : index))}
                    >
                      {text(openIndex === index ? 'web.stage.less' : 'web.stage.more')}
                    </Key>
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
                {openIndex === index ? (
                  <tr className="stage-more-row">
                    <td colSpan={planned ? 6 : 4}>
                      <StageMore
                        cook={cook}
                        cut={piece.cut}
                        stage={stage}
                        tell={(told) => change(index, told)}
                      />
                    </td>
                  </tr>
                ) : null}
              </Fragment>
            );
          })}
        </tbody>
      </table>
      <div className="keys">
        <Key onClick={() => keep(withNextStage(piece))}>{text('web.stage.add')}</Key>
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
  const lines = figures.map(({ key, range }) =>
    range && Number.isFinite(range.p10) && Number.isFinite(range.p90) && range.p90 > 0 ? (
      <span key={key} className="stage-heat-line">
        {text(`web.stage.${key}`)}{' '}
        <Ask origin={origins[key]}>{print.temperatureRangeC(range.p10, range.p90)}</Ask>
      </span>
    ) : null,
  );
  return lines.some(Boolean) ? (
    <>
      <span className="narrow-head quiet">{text('web.stage.at-its-end')}</span>
      {lines}
    </>
  ) : null;
}

/** The figure of an end, written with its unit; none where a sign, a bite or the table ends it. */
function EndFigure(props: { end: StageEnd; label: string; onChange: (end: StageEnd) => void }) {
  const { end, label, onChange } = props;
  const shared = { label, hideLabel: true, isNeeded: true } as const;
  if (end.by === 'clock')
    return (
      <WrittenFigure
        {...shared}
        kind="time"
        value={end.after}
        limits={STAGE_LIMITS.for}
        example={quantity('time', 90, 'min')}
        onKeep={(after) => after && onChange({ by: 'clock', after })}
      />
    );
  if (end.by === 'core' || end.by === 'surface')
    return (
      <WrittenFigure
        {...shared}
        kind="temperature"
        value={end.temperature}
        limits={STAGE_LIMITS.sign}
        example={quantity('temperature', 71, '°C')}
        onKeep={(temperature) => temperature && onChange({ by: end.by, temperature })}
      />
    );
  if (end.by === 'loss')
    return (
      <WrittenFigure
        {...shared}
        kind="fraction"
        value={end.share}
        limits={STAGE_LIMITS.loss}
        example={quantity('fraction', 12, '%')}
        onKeep={(share) => share && onChange({ by: 'loss', share })}
      />
    );
  return null;
}
