import type { Cook } from '@pitwright/model';
import { memo, useEffect } from 'react';
import { followSun } from '../../light/light.ts';
import { Strip } from '../../parts/strip.tsx';
import { useWords } from '../../words.tsx';
import { isDarkAt } from './fold.ts';
import { cookPlaces } from './places.ts';

/** The title strip over every place of one cook. */
export const CookStrip = memo(function CookStrip(props: { cook: Cook }) {
  const { text } = useWords();
  const { cook } = props;
  // Lamp from sunset at the cook's own place.
  useEffect(() => {
    followSun(isDarkAt(cook));
    return () => followSun(undefined);
  }, [cook]);
  const people = cook.guests.adults + cook.guests.children;
  return (
    <Strip
      name={cook.name}
      home={`/cook/${cook.id}`}
      places={cookPlaces(cook.id, text)}
      cells={[
        text('web.cook.people', { people }),
        ...(cook.weather?.words ? [cook.weather.words] : []),
        ...(cook.isDemo
          ? [
              <span className="demo-mark" key="demo">
                {text('web.shelf.demo')}
              </span>,
            ]
          : []),
      ]}
    />
  );
});
