import { BITES, type Bite } from '@pitwright/model';
import { biteName } from '@pitwright/words';
import { useWords } from '../../words.tsx';

/** Chance of each word of the bite: a post per word, its height the chance; the asked one is boxed by dots. */
export function BiteChances(props: {
  chances: Readonly<Partial<Record<Bite, number>>>;
  asked: Bite;
  members: number;
}) {
  const { print } = useWords();
  const shown = BITES.filter((bite) => bite !== 'raw' || (props.chances.raw ?? 0) >= 0.025);
  return (
    <ol className="bites">
      {shown.map((bite) => {
        const share = props.chances[bite] ?? 0;
        return (
          <li key={bite} className={bite === props.asked ? 'asked-for' : undefined}>
            <span className="bite-post" aria-hidden="true">
              <span style={{ height: `${Math.round(share * 100)}%` }} />
            </span>
            <b>{share > 0 ? print.chance(share, props.members) : '–'}</b>
            <span className="small">{biteName(bite)}</span>
          </li>
        );
      })}
    </ol>
  );
}
