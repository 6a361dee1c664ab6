/** A cook of one piece for tests and benches: nothing told but the cut and its stages. Invented, never evidence. */
import { type Cook, type CutId, type Piece, quantity, type Stage } from '@pitwright/model';

export function exampleCook(cut: CutId, stages: readonly Stage[], told: Partial<Piece> = {}): Cook {
  return {
    id: 'example',
    name: 'Example',
    isDemo: true,
    rules: 'home-us',
    rulesTold: false,
    zone: 'Europe/Lisbon',
    table: { at: '2027-09-12T12:30:00Z', until: '2027-09-12T13:00:00Z' },
    chanceAsked: 0.9,
    guests: { adults: 4, children: 0 },
    hands: [{ id: 'you', name: 'You' }],
    kitchen: { burners: 1, ovens: 1 },
    pit: {
      id: 'pit',
      name: 'Pit',
      type: 'unknown',
      temperature: quantity('temperature', 121, '°C'),
      gauge: 'grate',
    },
    pieces: [{ id: 'a', letter: 'A', cut, count: 1, bite: 'tender', stages, ...told }],
    formulas: [],
  };
}
