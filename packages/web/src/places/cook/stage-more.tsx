import {
  type CutId,
  FOIL_WRAPS,
  isWaiting,
  PAPER_WRAPS,
  quantity,
  STAGE_LIMITS,
  type Stage,
  type StageKind,
  type Wrap,
} from '@pitwright/model';
import { Key } from '../../parts/key.tsx';
import { useWords } from '../../words.tsx';
import { useRemarks } from '../remarks.ts';
import type { OfPieces, Tell, Telling } from './edit.ts';
import { OverCoals, useCoalsWords } from './over-coals.tsx';
import { Told } from './told.tsx';
import { WrittenFigure } from './written-figure.tsx';

type Place = NonNullable<Stage['in']>;

const isWrapped = ({ kind }: Stage): boolean => kind === 'foil' || kind === 'paper';

/** Where it waits when nothing is told, as the engine has it. */
const USUAL: Readonly<Partial<Record<StageKind, Place>>> = { rest: 'tray', chill: 'fridge' };
const usualPlace = ({ in: place, kind, at }: Stage): Place =>
  place ?? USUAL[kind] ?? (kind === 'hold' ? (at ? 'warmer' : 'box') : 'pit');
const HEAT: readonly Place[] = ['pit', 'oven'];
const WAIT: readonly Place[] = ['tray', 'box', 'warmer', 'oven'];
const CHILL: readonly Place[] = ['fridge', 'ice-bath'];
const placesOf = ({ kind }: Stage): readonly Place[] =>
  kind === 'chill' ? CHILL : isWaiting(kind) ? WAIT : HEAT;
/** The air there, as an example [°C]. */
const AIR_C: Readonly<Partial<Record<Place, number>>> = { warmer: 65, oven: 65, fridge: 4, 'ice-bath': 1 };

/** What is sprayed when that is first chosen: common practice, no source. */
const FIRST_SPRITZ = {
  amount: quantity('volume', 15, 'mL'),
  every: quantity('time', 45, 'min'),
} as const;
const SPRITZ_MASS = { min: 1, max: 1000, unit: 'g' } as const;
const SPRITZ_VOLUME = { min: 1, max: 1000, unit: 'mL' } as const;

/** What else a stage can be: how it is wrapped, what is poured or sprayed, where it happens and how hot it is there. */
export function StageMore(props: { cook: OfPieces; cut: CutId; stage: Stage; tell: Tell<Stage> }) {
  const { text } = useWords();
  const remarks = useRemarks();
  const { cook, stage, tell } = props;
  const wraps: readonly Wrap[] =
    stage.kind === 'foil' ? FOIL_WRAPS : stage.kind === 'paper' ? PAPER_WRAPS : [];
  const places = placesOf(stage);
  const place = usualPlace(stage);
  return (
    <div className="written-figures stage-more">
      {wraps.length > 0 ? (
        <Told label={text('web.stage.wrap')}>
          <select
            className="cell-pick"
            value={stage.wrap ?? ''}
            onChange={(event) => tell({ wrap: (event.target.value || undefined) as Wrap | undefined })}
          >
            {stage.kind === 'paper' ? <option value="">{text('web.wrap.any')}</option> : null}
            {wraps.map((wrap) => (
              <option key={wrap} value={stage.kind === 'foil' && wrap === 'tight' ? '' : wrap}>
                {text(`web.wrap.${wrap}`)}
              </option>
            ))}
          </select>
        </Told>
      ) : null}
      {isWrapped(stage) ? (
        <WrittenFigure
          label={text('web.stage.liquid')}
          kind="volume"
          value={stage.liquid}
          limits={STAGE_LIMITS.liquid}
          example={quantity('volume', 45, 'mL')}
          onKeep={(liquid) => tell({ liquid })}
        />
      ) : null}
      <Told label={text('web.stage.where')}>
        <select
          className="cell-pick"
          value={place}
          onChange={(event) => tell(atPlace(stage, event.target.value as Place))}
        >
          {places.map((one) => (
            <option key={one} value={one}>
              {text(`web.where.${one}`)}
            </option>
          ))}
        </select>
      </Told>
      {isWaiting(stage.kind) ? (
        <WrittenFigure
          label={text('web.stage.air')}
          kind="temperature"
          value={stage.at}
          limits={stage.kind === 'chill' ? STAGE_LIMITS.chillAt : STAGE_LIMITS.at}
          example={quantity('temperature', AIR_C[place] ?? 20, '°C')}
          onKeep={(at) => tell({ at })}
        />
      ) : (
        <WrittenFigure
          label={text(stage.in === 'oven' ? 'web.stage.oven-at' : 'web.stage.pit-at')}
          kind="temperature"
          value={stage.pit}
          limits={STAGE_LIMITS.pit}
          example={
            (stage.in === 'oven' ? cook.kitchen?.ovenTemperature : undefined) ??
            cook.pit?.temperature ??
            quantity('temperature', 121, '°C')
          }
          remark={remarks.ofHeat(stage.pit)}
          onKeep={(pit) => tell({ pit })}
        />
      )}
      {isWaiting(stage.kind) || place !== 'pit' ? null : (
        <OverCoals cut={props.cut} stage={stage} tell={tell} />
      )}
      {isWaiting(stage.kind) || isWrapped(stage) ? null : <Spritzing stage={stage} tell={tell} />}
    </div>
  );
}

/** Another place; the coals are in the pit alone, and what an oven is set to says nothing of a box. */
const atPlace = ({ direct, at }: Stage, place: Place): Telling<Stage> => ({
  in: place,
  ...(at && place !== 'oven' && place !== 'warmer' && { at: undefined }),
  ...(direct && place !== 'pit' && { direct: undefined }),
});

/** How much is sprayed on one item, and how often. */
function Spritzing({ stage, tell }: { stage: Stage; tell: Tell<Stage> }) {
  const { text } = useWords();
  const { spritz } = stage;
  if (!spritz)
    return (
      <Key kind="plain" onClick={() => tell({ spritz: FIRST_SPRITZ })}>
        {text('web.stage.spritz-it')}
      </Key>
    );
  const { amount, every } = spritz;
  return (
    <>
      {amount.kind === 'mass' ? (
        <WrittenFigure
          label={text('web.stage.spritz')}
          kind="mass"
          value={amount}
          limits={SPRITZ_MASS}
          example={quantity('mass', 15, 'g')}
          isNeeded
          onKeep={(kept) => kept && tell({ spritz: { amount: kept, every } })}
        />
      ) : (
        <WrittenFigure
          label={text('web.stage.spritz')}
          kind="volume"
          value={amount}
          limits={SPRITZ_VOLUME}
          example={FIRST_SPRITZ.amount}
          isNeeded
          onKeep={(kept) => kept && tell({ spritz: { amount: kept, every } })}
        />
      )}
      <WrittenFigure
        label={text('web.stage.spritz-every')}
        kind="time"
        value={every}
        limits={STAGE_LIMITS.every}
        example={FIRST_SPRITZ.every}
        isNeeded
        onKeep={(kept) => kept && tell({ spritz: { amount, every: kept } })}
      />
      <Key kind="plain" onClick={() => tell({ spritz: undefined })}>
        {text('web.stage.spritz-none')}
      </Key>
    </>
  );
}

/** What is told beyond kind and end, in a few words: stands under the kind while the rest is closed. */
export function useMoreWords(): (stage: Stage) => string {
  const { text, print } = useWords();
  const coalsWords = useCoalsWords();
  return (stage) =>
    [
      stage.wrap && text(`web.wrap.${stage.wrap}`),
      stage.liquid && text('web.more.liquid', { amount: print.quantity(stage.liquid) }),
      stage.in && stage.in !== 'pit' && text(`web.more.${stage.in}`),
      stage.pit && print.quantity(stage.pit),
      stage.direct && coalsWords(stage.direct),
      stage.at && print.quantity(stage.at),
      stage.spritz &&
        text('web.more.spritz', {
          amount: print.quantity(stage.spritz.amount),
          every: print.quantity(stage.spritz.every),
        }),
    ]
      .filter(Boolean)
      .join(', ');
}
