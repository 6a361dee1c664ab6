import {
  BARK_WORDS,
  COLOUR_WORDS,
  type EaterForecast,
  JUICINESS_WORDS,
  overCoalsSaid,
  SALT_WORDS,
  type SaltForecast,
} from '@pitwright/engine';
import { barkName, colourName, saltName } from '@pitwright/words';
import { Ask } from '../../parts/ask.tsx';
import { saidWords } from '../../said.ts';
import { useWords } from '../../words.tsx';
import { type Figure, useOrigins } from './origins.ts';

/** Rarer words are left out: so few days do not tell them from none. */
const WORTH_SHOWING = 0.025;

interface WordChance {
  readonly name: string;
  readonly share: number;
}

const chancesOf = <W extends string>(
  words: readonly W[],
  chances: Readonly<Partial<Record<W, number>>>,
  nameOf: (word: W) => string,
): WordChance[] =>
  words.flatMap((word) => {
    const share = chances[word] ?? 0;
    return share >= WORTH_SHOWING ? [{ name: nameOf(word), share }] : [];
  });

/** What the eater gets: bark, colour, juiciness and salt, each as chances of its words. */
export function Gets(props: { eater: EaterForecast; salt?: SaltForecast | undefined; members: number }) {
  const { text, print } = useWords();
  const origins = useOrigins(props.members);
  const { eater, salt, members } = props;
  const darker = overCoalsSaid(eater, members);
  const { p10, p90 } = eater.yieldShare;
  return (
    <div className="gets">
      <Axis figure="bark" members={members} words={chancesOf(BARK_WORDS, eater.bark, barkName)} />
      <Axis figure="colour" members={members} words={chancesOf(COLOUR_WORDS, eater.colour, colourName)} />
      <Axis
        figure="juiciness"
        members={members}
        words={chancesOf(JUICINESS_WORDS, eater.juiciness, (word) => text(`web.juiciness.${word}`))}
      />
      {darker ? <p className="small">{saidWords(darker, print)}</p> : null}
      {salt ? (
        <Axis figure="salt" members={members} words={chancesOf(SALT_WORDS, salt.words, saltName)} />
      ) : null}
      {Number.isFinite(p10) && Number.isFinite(p90) ? (
        <p className="small">
          <Ask origin={origins.yield}>
            {text('web.gets.yield', { low: Math.round(100 * p10), high: Math.round(100 * p90) })}
          </Ask>
        </p>
      ) : null}
    </div>
  );
}

function Axis(props: {
  figure: Extract<Figure, 'bark' | 'colour' | 'juiciness' | 'salt'>;
  members: number;
  words: readonly WordChance[];
}) {
  const { text, print } = useWords();
  const origins = useOrigins(props.members);
  if (props.words.length === 0) return null;
  return (
    <div className="gets-axis">
      <h4>{text(`web.gets.${props.figure}`)}</h4>
      <ul>
        {props.words.map(({ name, share }) => (
          <li key={name}>
            <span className="gets-bar" aria-hidden="true">
              <span style={{ width: `${Math.round(share * 100)}%` }} />
            </span>
            <Ask origin={origins[props.figure]}>
              <b>{print.chance(share, props.members)}</b>
            </Ask>{' '}
            {name}
          </li>
        ))}
      </ul>
    </div>
  );
}
