/** The grammar of marks holds at the width of a phone, of a printed sheet and of a desk, in colour and in black. */
import { describe, expect, test } from 'vitest';
import { stillIn } from '../src/bands/chance.ts';
import {
  type Axis,
  balanceLine,
  bandAxis,
  bandChart,
  type Drawing,
  depthTimeMap,
  heatLedger,
  hundredStrokes,
  type Mark,
  rangesChart,
  type Setting,
  simmerChart,
  timeAxis,
  toSvg,
} from '../src/index.ts';
import { flat } from '../src/mark.ts';
import { boxOf, SMALLEST } from '../src/text.ts';
import { foldedAxis } from '../src/time/axis.ts';
import { heatStep } from '../src/tokens/heat.ts';
import { balance, cook, inside, pieces, plainVoice, simmer, simmerWords, TABLE_S } from './sample.ts';

const WIDTHS = [390, 700, 1200];
const texts = (drawing: Drawing): Mark[] => flat(drawing.marks).filter((one) => one.tag === 'text');

const ledger = {
  letter: 'A',
  timesS: inside.timesS,
  heat: {
    convection: inside.timesS.map((_, i) => (i < 80 ? 120 - i / 2 : 0)),
    radiation: inside.timesS.map((_, i) => (i < 80 ? 100 - i / 2 : 0)),
    still: inside.timesS.map((_, i) => (i < 80 ? 0 : 20)),
    evaporation: inside.timesS.map((_, i) => (i < 80 ? Math.min(110, 4 * i) : 0)),
    warming: inside.timesS.map((_, i) => (i < 80 ? 210 - i - Math.min(110, 4 * i) : 18)),
    juice: inside.timesS.map((_, i) => (i < 80 ? 10 : 2)),
  },
};

const all = (setting: Setting): Record<string, Drawing> => {
  const axis = bandAxis(cook, setting);
  return {
    bands: bandChart({ ...cook, nowS: TABLE_S - 3 * 3600 }, setting, plainVoice),
    inside: depthTimeMap(inside, setting, plainVoice, { axis, nowS: TABLE_S - 3 * 3600 }),
    ledger: heatLedger(ledger, setting, plainVoice, { axis }),
    ranges: rangesChart(
      pieces.slice(1).map((piece) => ({ name: `${piece.letter} ${piece.name}`, range: piece.ready })),
      { tableS: cook.tableS, untilS: cook.untilS },
      setting,
      plainVoice,
    ),
    balance: balanceLine(balance, { sentence: 'Sour enough.', head: ['scale', 'now'] }, setting),
    simmer: simmerChart(simmer, simmerWords, setting),
    strokes: hundredStrokes(0.06, '6 run short', setting, plainVoice),
  };
};

describe.each(WIDTHS)('at %i px', (width) => {
  const drawings = { ...all({ width, id: 't' }) };
  const black = all({ width, id: 'p', ink: 'black' });

  test('no words are smaller than 13.5 px, none leave the drawing', () => {
    for (const [name, drawing] of [...Object.entries(drawings), ...Object.entries(black)])
      for (const words of texts(drawing)) {
        expect(Number(words.attributes.fontSize), name).toBeGreaterThanOrEqual(SMALLEST);
        const { x0, x1, y0, y1 } = boxOf(words);
        expect(x0, `${name}: ${words.text}`).toBeGreaterThanOrEqual(-1);
        expect(x1, `${name}: ${words.text}`).toBeLessThanOrEqual(width + 1);
        expect(y0, `${name}: ${words.text}`).toBeGreaterThanOrEqual(-2);
        expect(y1, `${name}: ${words.text}`).toBeLessThanOrEqual(drawing.height + 2);
      }
  });

  test('no two words lie on each other', () => {
    for (const [name, drawing] of Object.entries({ ...drawings, blackBands: black.bands! })) {
      const boxes = texts(drawing).map((words) => ({ words: words.text, ...boxOf(words) }));
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1)) {
          const isOver = a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;
          expect(isOver, `${name}: ${a.words} on ${b.words}`).toBe(false);
        }
      });
    }
  });

  test('every drawing says its sentence and carries its figures', () => {
    for (const [name, drawing] of Object.entries(drawings)) {
      expect(drawing.sentence.length, name).toBeGreaterThan(0);
      const svg = toSvg(drawing);
      expect(svg, name).toContain('role="img"');
      expect(svg, name).not.toMatch(/NaN|undefined|Infinity/);
    }
    expect(drawings.bands!.table.rows.length).toBe(pieces.length);
    expect(drawings.inside!.table.rows.length).toBeGreaterThan(5);
  });

  test('the same data give the same marks', () => {
    expect(JSON.stringify(all({ width, id: 't' }))).toBe(JSON.stringify(drawings));
  });

  test('black ink names no piece colour', () => {
    for (const one of flat(black.bands!.marks))
      expect(String(one.attributes.className ?? '')).not.toMatch(/\bp[A-H]\b/);
  });
});

describe('the bench', () => {
  test('a scale that nobody knows parts the line, and is said', () => {
    const [first, unknown, ...rest] = balance;
    const { value: _, ...without } = unknown!;
    const drawing = balanceLine(
      [first!, without, ...rest],
      { sentence: '', head: [] },
      { width: 700, id: 't' },
    );
    expect(flat(drawing.marks).filter((one) => one.attributes.className === 'dotNow')).toHaveLength(2);
    expect(drawing.table.rows[1]![1]).toBe('?');
  });

  test('the axis shows the looks that the simmer passes through, three at least, so that its climb is seen', () => {
    const namesOn = (moments: typeof simmer.moments): string[] => {
      const drawn = JSON.stringify(
        simmerChart({ ...simmer, moments }, simmerWords, { width: 700, id: 't' }).marks,
      );
      return simmerWords.looks.filter((look) => drawn.includes(look));
    };
    const level = (at: number) =>
      simmer.moments.map((moment) => ({ ...moment, level: at, lowLevel: at, highLevel: at }));
    // From 0.8 to 3.86.
    expect(namesOn(simmer.moments)).toEqual(['runs', 'pours', 'coats a spoon', 'holds a line']);
    expect(namesOn(level(2.5))).toEqual(['coats a spoon', 'holds a line', 'spreads']);
    expect(namesOn(level(5.9))).toEqual(['holds a line', 'spreads', 'stands']);
    expect(namesOn(level(0))).toEqual(['runs', 'pours', 'coats a spoon']);
  });

  test('the grip’s scales go there and back, and the foot of the stop is inside the drawing', () => {
    const drawing = simmerChart(simmer, simmerWords, { width: 700, id: 't' });
    for (const timeS of [0, 600, simmer.target.timeS])
      expect(drawing.timeAt(drawing.x(timeS))).toBeCloseTo(timeS, 6);
    expect(drawing.y(2)).toBeLessThan(drawing.y(1));
    expect(drawing.x(simmer.target.timeS * simmer.slow)).toBeLessThan(700);
  });
});

describe('the band of a piece', () => {
  const end = { p10: 100, p50: 200, p90: 400, neverShare: 0 };
  test('its height passes 90, 50 and 10 % at the three points and only falls', () => {
    expect(stillIn(100, end, 1000)).toBeCloseTo(0.9, 6);
    expect(stillIn(200, end, 1000)).toBeCloseTo(0.5, 6);
    expect(stillIn(400, end, 1000)).toBeCloseTo(0.1, 6);
    let last = 1;
    for (let t = 0; t <= 1000; t += 5) {
      const chance = stillIn(t, end, 1000);
      expect(chance).toBeLessThanOrEqual(last + 1e-12);
      last = chance;
    }
  });

  test('a share that never gets there stays to the edge of the page', () => {
    const never = { p10: 100, p50: 200, p90: Infinity, neverShare: 0.15 };
    expect(stillIn(1000, never, 1000)).toBeCloseTo(0.15, 6);
    expect(stillIn(90, { p10: Infinity, p50: Infinity, p90: Infinity, neverShare: 1 }, 1000)).toBe(1);
    const chart = bandChart(cook, { width: 1200, id: 't' }, plainVoice);
    expect(flat(chart.marks).filter((one) => one.attributes.className === 'open').length).toBe(2);
  });

  test('a change to come leans, one that is done stands upright', () => {
    const edges = (drawing: Drawing) =>
      flat(drawing.marks).filter((one) => one.attributes.className === 'stageEdge');
    const ahead = edges(bandChart(cook, { width: 1200, id: 't' }, plainVoice));
    expect(ahead.length).toBeGreaterThan(0);
    for (const edge of ahead) expect(Number(edge.attributes.x2)).toBeGreaterThan(Number(edge.attributes.x1));
    const done = {
      ...cook,
      pieces: pieces.map((piece) => ({
        ...piece,
        stages: piece.stages.map((stage) => ({
          ...stage,
          start: { ...stage.start, p10: stage.start.p50, p90: stage.start.p50 },
        })),
      })),
    };
    for (const edge of edges(bandChart(done, { width: 1200, id: 't' }, plainVoice)))
      expect(edge.attributes.x2).toBe(edge.attributes.x1);
  });
});

describe('the axis', () => {
  const axis: Axis = foldedAxis(0, 1000, 0, 36000, [{ fromS: 7200, toS: 21600 }], 1 / 3);
  test('goes and comes back, and only runs right', () => {
    for (let t = 0; t <= 36000; t += 600) expect(axis.at(axis.x(t))).toBeCloseTo(t, 6);
    expect(axis.x(0)).toBe(0);
    expect(axis.x(36000)).toBeCloseTo(1000, 9);
  });
  test('the night is drawn at the stated fraction', () => {
    const night = axis.x(10800) - axis.x(7200);
    const day = axis.x(25200) - axis.x(21600);
    expect(night / day).toBeCloseTo(1 / 3, 9);
  });
  test('refuses gaps and empty stretches', () => {
    expect(() => timeAxis(0, 10, [{ fromS: 5, toS: 5, scale: 1 }])).toThrow(RangeError);
    expect(() =>
      timeAxis(0, 10, [
        { fromS: 0, toS: 5, scale: 1 },
        { fromS: 6, toS: 9, scale: 1 },
      ]),
    ).toThrow(RangeError);
  });
});

describe('the ledger of heat', () => {
  const areaOf = (drawing: Drawing, name: string) =>
    flat(drawing.marks).filter((one) => one.tag === 'path' && one.attributes.className === `ledger-${name}`);
  /** Least and greatest y of an area. */
  const spanOf = (drawing: Drawing, name: string): [number, number] => {
    const ys = areaOf(drawing, name).flatMap((one) =>
      [...String(one.attributes.d).matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map((pair) => Number(pair[2])),
    );
    return [Math.min(...ys), Math.max(...ys)];
  };
  const setting = { width: 1200, id: 't' };
  const axis = bandAxis(cook, setting);

  test('stands as high above its line as it hangs below it, also where steam condenses or meat cools', () => {
    const constant = (watts: number) => inside.timesS.map(() => watts);
    const some = {
      ...ledger,
      heat: {
        convection: constant(30),
        radiation: constant(20),
        still: constant(0),
        evaporation: inside.timesS.map((_, i) => (i < 9 ? -40 : 70)),
        warming: inside.timesS.map((_, i) => (i < 9 ? 85 : -25)),
        juice: constant(5),
      },
    };
    const drawing = heatLedger(some, setting, plainVoice, { axis });
    const heights = ['convection', 'radiation', 'steam', 'own'].map((name) => spanOf(drawing, name)[0]);
    const depths = ['evaporation', 'warming', 'juice'].map((name) => spanOf(drawing, name)[1]);
    const [, middle] = spanOf(drawing, 'convection');
    expect(middle - Math.min(...heights)).toBeCloseTo(Math.max(...depths) - middle, 0);
    expect(areaOf(drawing, 'still')).toHaveLength(0);
  });

  test('off the heat it does not part the two ways, and says so', () => {
    const { rows } = heatLedger(ledger, setting, plainVoice, { axis }).table;
    expect(rows[0]!.slice(2, 5)).toEqual(['draw.watts 120', 'draw.watts 100', '']);
    expect(rows.at(-1)!.slice(2, 5)).toEqual(['draw.not-parted', 'draw.not-parted', 'draw.watts 20']);
  });
});

describe('the depth–time map', () => {
  const setting = { width: 1200, id: 't' };
  const axis = bandAxis(cook, setting);
  const both: typeof inside = {
    ...inside,
    bottom: 'bone-side',
    otherFrontM: inside.timesS.map((_, i) => 0.002 * Math.min(1, i / 40)),
  };

  test('of unlike faces has a front from either, and names both in sentence, table and margin', () => {
    const fronts = (field: typeof inside) =>
      flat(depthTimeMap(field, setting, plainVoice, { axis }).marks).filter(
        (one) => one.attributes.className === 'front',
      );
    expect(fronts(inside)).toHaveLength(1);
    expect(fronts(both)).toHaveLength(2);
    const map = depthTimeMap(both, setting, plainVoice, { axis });
    expect(map.sentence).toMatch(/^draw\.inside-both .*draw\.head-open-side draw\.head-bone-side/);
    expect(map.table.head).toEqual(
      ['time', 'open-side', 'middle', 'bone-side', 'dry-open-side', 'dry-bone-side'].map(
        (column) => `draw.head-${column}`,
      ),
    );
    for (const row of map.table.rows) expect(row).toHaveLength(6);
    expect(texts(map).some(({ text }) => text?.startsWith('draw.bone-side'))).toBe(true);
  });

  test('draws one region per step of 5 °C between its coldest and hottest', () => {
    const setting = { width: 1200, id: 't' };
    const map = depthTimeMap(inside, setting, plainVoice, { axis: bandAxis(cook, setting) });
    const steps = flat(map.marks).filter((one) => one.attributes.className === 'heat');
    const values = inside.temperaturesC.flatMap((row) => Array.from(row));
    expect(steps.length).toBe(heatStep(Math.max(...values)) - heatStep(Math.min(...values)) + 1);
  });
  test('is small enough for a printed page and for a phone', () => {
    const setting = { width: 1200, id: 't' };
    const map = toSvg(depthTimeMap(inside, setting, plainVoice, { axis: bandAxis(cook, setting) }));
    expect(map.length).toBeLessThan(200_000);
  });
});
