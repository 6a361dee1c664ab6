import { Strip } from '../../parts/strip.tsx';
import { useWords } from '../../words.tsx';
import { Charts } from './charts.tsx';
import { Colours } from './colours.tsx';
import { Controls } from './controls.tsx';
import { Type } from './type.tsx';
import '../../styles/specimen.css';

const SHOWN = ['paper', 'lamp', 'sun'] as const;

/** Every part of the sheet in each light. Figures on this page are invented. */
export default function Specimen() {
  const { text } = useWords();
  return (
    <>
      <Strip
        name={text('web.place.specimen')}
        home="/specimen"
        places={[{ href: '/', name: text('web.place.shelf') }]}
      />
      <main className="page specimen" id="page">
        <h1 className="specimen-title">{text('web.place.specimen')}</h1>
        <p className="specimen-lead">{text('web.specimen.lead')}</p>
        {SHOWN.map((light) => (
          <section
            key={light}
            data-theme={light}
            className="specimen-light"
            aria-label={text(`web.light.${light}`)}
          >
            <h2>
              {text(`web.light.${light}`)}: {text(`web.light.${light}.for`)}
            </h2>
            <Colours />
            <Type />
            <Controls />
            <Charts />
          </section>
        ))}
      </main>
    </>
  );
}
