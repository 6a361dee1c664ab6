import { BITES, type Bite } from '@pitwright/model';
import { biteName } from '@pitwright/words';
import { Ask } from '../../parts/ask.tsx';
import { useWords } from '../../words.tsx';
import { useOrigins } from './origins.ts';

/** Chance of each word of the bite: a post per word, its height the chance; the asked one is boxed by dots. */
export function BiteChances(props: {
  chances: Readonly<Partial<Record<Bite, number>>>;
  asked: Bite;
  members: number;
}) {
  const { print } = useWords();
  const origins = useOrigins(props.members);
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
            {share > 0 ? (
              <Ask origin={origins.bite}>
                <b>{print.chance(share, props.members)}</b>
              </Ask>
            ) : (
              <b>–</b>
            )}
            <span className="small">{biteName(bite)}</span>
          </li>
        );
      })}
    </ol>
  );
}
