import { PIT_LIMITS, PIT_TYPES, type Pit, type PitType, quantity } from '@pitwright/model';
import { capital, pitName } from '@pitwright/words';
import { Choice } from '../../parts/choice.tsx';
import { Pick } from '../../parts/field.tsx';
import { useWords } from '../../words.tsx';
import { withTold } from '../cook/edit.ts';
import { WrittenFigure } from '../cook/written-figure.tsx';
import { useRemarks } from '../remarks.ts';
import { WrittenLine } from './written-line.tsx';

const GAUGES = ['grate', 'lid', 'set-point'] as const;

/** Everything that was told of a pit, each line to be written over where it stands. */
export function PitTold(props: { pit: Pit; onKeep: (pit: Pit) => void }) {
  const { text } = useWords();
  const remarks = useRemarks();
  const { pit, onKeep } = props;
  const set =
    <F extends keyof Pit>(field: F) =>
    (value: Pit[F] | undefined) =>
      onKeep(withTold(pit, { [field]: value }));
  const told = <F extends keyof Pit>(field: F) => ({ value: pit[field], onKeep: set(field) });
  return (
    <section className="pit-told">
      <h2>{text('web.pit.told')}</h2>
      <WrittenLine label={text('web.shelf.name')} isNeeded {...told('name')} />
      <Pick
        label={text('web.pit.type')}
        value={pit.type}
        onPick={(type) => onKeep({ ...pit, type: type as PitType })}
        options={PIT_TYPES.map((type) => ({ value: type, text: capital(pitName(type)) }))}
      />
      <WrittenFigure
        label={text('web.pit.heat')}
        kind="temperature"
        limits={PIT_LIMITS.temperature}
        example={quantity('temperature', 121, '°C')}
        isNeeded
        remark={remarks.ofHeat(pit.temperature)}
        {...told('temperature')}
      />
      <Choice
        legend={text('web.pit.gauge')}
        value={pit.gauge}
        onChoose={set('gauge')}
        options={GAUGES.map((gauge) => ({ value: gauge, text: text('web.pit.gauge.of', { gauge }) }))}
      />
      <WrittenFigure
        label={text('web.pit.drift')}
        kind="difference"
        limits={PIT_LIMITS.driftPerHour}
        example={quantity('difference', 2, 'K')}
        {...told('driftPerHour')}
      />
      <h3>{text('web.pit.zones')}</h3>
      <WrittenFigure
        label={text('web.pit.hot-end')}
        kind="difference"
        limits={PIT_LIMITS.end}
        example={quantity('difference', 25, 'K')}
        {...told('hotEnd')}
      />
      <WrittenFigure
        label={text('web.pit.cool-end')}
        kind="difference"
        limits={PIT_LIMITS.end}
        example={quantity('difference', 8, 'K')}
        {...told('coolEnd')}
      />
      <h3>{text('web.pit.size')}</h3>
      <WrittenFigure
        label={text('web.pit.grate')}
        kind="area"
        limits={PIT_LIMITS.grateArea}
        example={quantity('area', 0.4, 'm²')}
        {...told('grateArea')}
      />
      <WrittenFigure
        label={text('web.pit.steel')}
        kind="length"
        limits={PIT_LIMITS.steel}
        example={quantity('length', 6, 'mm')}
        {...told('steel')}
      />
      <Choice
        legend={text('web.pit.pan')}
        value={pit.waterPan === undefined ? 'untold' : pit.waterPan ? 'yes' : 'no'}
        onChoose={(told) => set('waterPan')(told === 'untold' ? undefined : told === 'yes')}
        options={(['yes', 'no', 'untold'] as const).map((value) => ({
          value,
          text: text(`web.kept.${value}`),
        }))}
      />
      <WrittenLine label={text('web.pit.fuel')} {...told('fuel')} />
      <p className="small quiet">{text('web.pit.not-used')}</p>
      <WrittenLine label={text('web.kept.note')} {...told('note')} />
    </section>
  );
}
