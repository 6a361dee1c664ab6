import { type Cook, changesBetween, type Kept, type Pit, setEntry } from '@pitwright/model';
import { pitName } from '@pitwright/words';
import { useLocation } from 'wouter';
import { Answer } from '../../parts/answer.tsx';
import { Key } from '../../parts/key.tsx';
import { useKeeper, useKept } from '../../use-keeping.tsx';
import { useWriter } from '../../use-writer.ts';
import { useWords } from '../../words.tsx';
import { CooksOf } from './cooks-of.tsx';
import { KeptKeys, Told } from './kept-keys.tsx';
import { ofKept } from './of-kept.tsx';
import { PitTold } from './pit-told.tsx';

export default ofKept('pit', PitSheet);

/** One pit: what was told of it, and the cooks on it. */
function PitSheet({ kept }: { kept: Kept<Pit> }) {
  const { text, rich, print } = useWords();
  const keeper = useKeeper();
  const state = useKept();
  const [, go] = useLocation();
  const pit = kept.document;
  const subject = { kind: 'pit' as const, id: kept.id };
  const keep = useWriter(subject, pit);
  const cooks = [...state.cooks.values()]
    .filter((one) => !one.isRemoved && one.document.pit.id === kept.id)
    .map((one) => one.document)
    .sort((a, b) => (a.table.at < b.table.at ? -1 : 1));
  const tell = (cook: Cook) => {
    const changes = changesBetween(cook, { ...cook, pit });
    void keeper.write(setEntry({ kind: 'cook', id: cook.id }, changes));
  };
  return (
    <>
      <Answer aside={<Told kept={kept} />}>
        {rich('web.pit.answer', {
          name: pit.name,
          type: pitName(pit.type),
          heat: print.quantity(pit.temperature),
          gauge: pit.gauge,
        })}
      </Answer>
      <div className="kept">
        <KeptKeys subject={subject} file={{ kind: 'pit', pit }} name={pit.name}>
          <Key kind="first" onClick={() => go(`/new?pit=${kept.id}`)}>
            {text('web.pit.cook-on')}
          </Key>
        </KeptKeys>
        <div className="kept-parts">
          <PitTold pit={pit} onKeep={(next) => void keep(next)} />
          <CooksOf
            cooks={cooks}
            none={text('web.pit.no-cooks')}
            beside={(cook) =>
              changesBetween(cook.pit, pit).length === 0 ? null : (
                <>
                  <span>{text('web.pit.as-then')}</span>
                  <Key onClick={() => tell(cook)}>{text('web.pit.take', { cook: cook.name })}</Key>
                </>
              )
            }
          />
        </div>
      </div>
    </>
  );
}
