/** Rules refuse rather than extrapolate; integrals are exact; verdicts keep their limits. Figures are in validation/. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../calc/answer.ts';
import { CalcProblem } from '../calc/spec.ts';
import { comeUpVerdict } from './comeUp.ts';
import { COOLING_RULES, coolingVerdict } from './cooling.ts';
import { GROWING, growthLog10, growthModel, MATRICES } from './growth.ts';
import { firstPrintedC, holdIsMet, holdTimeS } from './hold.ts';
import { KINETICS, lethalRatePerS, logReduction, ORGANISMS } from './lethality.ts';
import { HOLD_TABLES } from './rules/holdTables.ts';
import { celsiusOf, hundredthsF } from './ruleTemperature.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyCurve = (lowC: number, highC: number) =>
  fc
    .array(fc.record({ stepS: between(30, 7200), temperatureC: between(lowC, highC) }), {
      minLength: 2,
      maxLength: 12,
    })
    .map((points) => {
      const timesS = [0];
      for (const { stepS } of points.slice(1)) timesS.push(timesS[timesS.length - 1]! + stepS);
      return { timesS, temperaturesC: points.map((p) => p.temperatureC) };
    });

describe('hold tables', () => {
  it('never ask a longer time at a higher printed temperature', () => {
    for (const { lines, rule } of HOLD_TABLES)
      for (let i = 1; i < lines.length; i++) {
        expect(lines[i]![0], rule).toBeGreaterThan(lines[i - 1]![0]);
        expect(lines[i]![1], rule).toBeLessThan(lines[i - 1]![1]);
      }
  });

  it('print nothing below their first temperature, to a hundredth of a degree', () => {
    for (const table of HOLD_TABLES) {
      const first = firstPrintedC(table);
      expect(holdTimeS(table.rule, first)).toBe(table.lines[0]![1]);
      expect(holdTimeS(table.rule, first - 0.02 / 1.8)).toBeUndefined();
      expect(holdIsMet(table.rule, first - 1, 1e9, 0)).toBe(false);
    }
    // 54.444 °C is 130 °F, 54.4 °C is not.
    expect(holdTimeS('fsis-meat-6.5', 54.444)).toBe(112 * 60);
    expect(holdTimeS('fsis-meat-6.5', 54.4)).toBeUndefined();
  });

  it('never shorten for a thermometer’s error', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...HOLD_TABLES),
        between(50, 90),
        between(0, 9000),
        between(0, 10),
        (t, c, s, e) => {
          if (holdIsMet(t.rule, c, s, e)) expect(holdIsMet(t.rule, c, s, 0)).toBe(true);
        },
      ),
    );
  });

  // FSIS Appendix A against the kinetics that reproduce it: the printed time is never less than 0.997 of 6.5 D.
  it('agree with 6.5 D of the default kinetics below 158 °F', () => {
    for (const [f, timeS] of HOLD_TABLES[0]!.lines.filter(([f]) => f < 158)) {
      const needed = 6.5 / lethalRatePerS(KINETICS.salmonella, celsiusOf(f));
      expect(timeS / needed).toBeGreaterThan(0.997);
      // Printed in whole minutes up to 145 °F, in seconds above.
      expect(timeS - needed).toBeLessThan(f < 146 ? 60 : 2);
    }
  });
});

describe('lethality', () => {
  const counting = { cutoffC: celsiusOf(130), capC: celsiusOf(165) };
  const anyKinetics = fc.constantFrom(...ORGANISMS.map((organism) => KINETICS[organism]));

  it('is the fine sum of its own rate', () => {
    fc.assert(
      fc.property(anyKinetics, anyCurve(40, 90), (kinetics, curve) => {
        let sum = 0;
        const n = 4000;
        for (let i = 1; i < curve.timesS.length; i++) {
          const [t0, t1] = [curve.temperaturesC[i - 1]!, curve.temperaturesC[i]!];
          const dt = (curve.timesS[i]! - curve.timesS[i - 1]!) / n;
          for (let k = 0; k < n; k++)
            sum += dt * lethalRatePerS(kinetics, t0 + ((t1 - t0) * (k + 0.5)) / n, counting);
        }
        expect(Math.abs(logReduction(kinetics, curve, counting) - sum)).toBeLessThan(2e-3 * (1 + sum));
      }),
      { numRuns: 30 },
    );
  });

  it('of a level piece is time over D', () => {
    const level = { timesS: [0, 600], temperaturesC: [60, 60] };
    expect(logReduction(KINETICS.salmonella, level)).toBeCloseTo(
      600 * lethalRatePerS(KINETICS.salmonella, 60),
      10,
    );
    expect(
      logReduction(KINETICS.salmonella, { timesS: [0, 600], temperaturesC: [80, 80] }, counting),
    ).toBeCloseTo(600 * lethalRatePerS(KINETICS.salmonella, celsiusOf(165)), 8);
  });

  it('adds over time and is the same warming and cooling', () => {
    fc.assert(
      fc.property(anyKinetics, anyCurve(40, 90), (kinetics, curve) => {
        const endS = curve.timesS[curve.timesS.length - 1]!;
        const mirrored = {
          timesS: curve.timesS.map((t) => endS - t).reverse(),
          temperaturesC: [...curve.temperaturesC].reverse(),
        };
        const there = logReduction(kinetics, curve, counting);
        expect(Math.abs(logReduction(kinetics, mirrored, counting) - there)).toBeLessThan(1e-9 * (1 + there));
      }),
    );
  });
});

describe('growth', () => {
  const models = GROWING.flatMap((organism) =>
    organism === 'staphylococcus-aureus'
      ? [growthModel(organism)]
      : MATRICES.map((matrix) => growthModel(organism, matrix)),
  );

  it('equals the stepped integral of Baranyi and Roberts', () => {
    fc.assert(
      fc.property(fc.constantFrom(...models), anyCurve(2, 60), (model, curve) => {
        let q = model.q0;
        let y = 0;
        const n = 2000;
        for (let i = 1; i < curve.timesS.length; i++) {
          const [t0, t1] = [curve.temperaturesC[i - 1]!, curve.temperaturesC[i]!];
          const dt = (curve.timesS[i]! - curve.timesS[i - 1]!) / n;
          for (let k = 0; k < n; k++) {
            const step = model.ratePerS(t0 + ((t1 - t0) * (k + 0.5)) / n) * dt;
            const next = q * Math.exp(step);
            y += q === Infinity ? step : Math.log((1 + next) / (1 + q));
            q = next;
          }
        }
        expect(Math.abs(growthLog10(model, curve) - y / Math.LN10)).toBeLessThan(1e-4 * (1 + y));
      }),
      { numRuns: 30 },
    );
  });

  it('never falls when the same course takes longer', () => {
    fc.assert(
      fc.property(fc.constantFrom(...models), anyCurve(2, 60), between(1, 3), (model, curve, longer) => {
        const slow = { ...curve, timesS: curve.timesS.map((t) => t * longer) };
        expect(growthLog10(model, slow)).toBeGreaterThanOrEqual(growthLog10(model, curve) - 1e-9);
      }),
    );
  });
});

describe('cooling', () => {
  const rule = COOLING_RULES['food-code'];
  const curve = (...points: [hours: number, fahrenheit: number][]) => ({
    timesS: points.map(([h]) => h * 3600),
    temperaturesC: points.map(([, f]) => celsiusOf(f)),
  });

  it('allows the limit itself, and no second more', () => {
    expect(coolingVerdict(rule, curve([0, 135], [2, 70], [6, 41]), 0)).toEqual({
      verdict: 'pass',
      slackS: 0,
    });
    expect(coolingVerdict(rule, curve([0, 135], [2 + 1 / 3600, 70], [6, 41]), 0).verdict).toBe('fail');
  });

  it('starts each leg where the curve passes its first temperature', () => {
    const late = curve([0, 200], [3, 135], [4.9, 70], [8.9, 41]);
    expect(coolingVerdict(rule, late, 0)).toMatchObject({ verdict: 'pass' });
    expect(coolingVerdict(rule, late, 0).slackS).toBeCloseTo(0.1 * 3600, 6);
  });

  it('is undecided only while a limit may still be kept', () => {
    expect(coolingVerdict(rule, curve([0, 135], [1, 100]), 0).verdict).toBe('undecided');
    expect(coolingVerdict(rule, curve([0, 135], [2, 100]), 0).verdict).toBe('fail');
    expect(coolingVerdict(rule, curve([0, 180], [9, 140]), 0).verdict).toBe('undecided');
  });

  it('counts a piece that starts lower from its start', () => {
    expect(coolingVerdict(rule, curve([0, 120], [1.9, 70], [5, 41]), 0).verdict).toBe('pass');
    expect(coolingVerdict(rule, curve([0, 60], [6.5, 41]), 0).verdict).toBe('fail');
  });

  it('asks option 2 to begin within 90 minutes', () => {
    const quick = curve([0, 120], [0.9, 80], [5, 55]);
    expect(coolingVerdict(COOLING_RULES['fsis-option-2'], quick, 90 * 60).verdict).toBe('pass');
    expect(coolingVerdict(COOLING_RULES['fsis-option-2'], quick, 91 * 60)).toMatchObject({
      verdict: 'fail',
      slackS: -60,
    });
  });
});

describe('come-up', () => {
  const h = (hours: number) => hours * 3600;
  const intact = {
    isNonIntact: false,
    centreS: h(8),
    hasEarlyProbe: false,
    earlierS: 0,
    earlierWasLethal: false,
  };
  it.each([
    ['surface in time', { ...intact, surfaceS: h(2) }, 'information'],
    ['surface late', { ...intact, surfaceS: h(7) }, 'fail'],
    ['surface late, probe in', { ...intact, surfaceS: h(7), hasEarlyProbe: true }, 'fail'],
    ['surface unknown', intact, 'fail'],
    ['probe in', { ...intact, surfaceS: h(2), hasEarlyProbe: true }, 'caution'],
    ['six hours to the second', { ...intact, centreS: h(6) }, 'pass'],
    ['non-intact', { ...intact, isNonIntact: true, surfaceS: h(1) }, 'fail'],
    ['earlier warming adds', { ...intact, centreS: h(3), earlierS: h(4), isNonIntact: true }, 'fail'],
    [
      'a lethal hold resets',
      { ...intact, centreS: h(3), earlierS: h(4), isNonIntact: true, earlierWasLethal: true },
      'pass',
    ],
  ] as const)('%s', (_, given, verdict) => expect(comeUpVerdict(given)).toBe(verdict));
});

describe('by name', () => {
  it.each([
    ['keeping-verdict', 'case=out; air-temperature=91 °F; time=61 min', 'discard'],
    ['keeping-verdict', 'case=out; air-temperature=90 °F; time=2 h', 'pass'],
    ['keeping-verdict', 'case=out; time=121 min', 'discard'],
    ['keeping-verdict', 'case=hot-hold; temperature=130 °F', 'caution'],
    ['keeping-verdict', 'case=hot-hold; temperature=125 °F; time=3 h', 'discard'],
    ['keeping-verdict', 'case=hot-hold; temperature=125 °F; time=1 h', 'pass'],
    ['keeping-verdict', 'case=hot-hold; profile=cater-us; temperature=135 °F', 'pass'],
    ['keeping-verdict', 'case=hot-hold; profile=cater-us; temperature=131 °F; roast-table=yes', 'pass'],
    ['keeping-verdict', 'case=hot-hold; profile=cater-us; temperature=131 °F', 'fail'],
    ['keeping-verdict', 'case=hot-hold; profile=uk; temperature=61 °C; time=2.5 h', 'discard'],
    ['keeping-verdict', 'case=leftovers; temperature=38 °F; time=97 h', 'discard'],
    ['keeping-verdict', 'case=leftovers; temperature=45 °F; time=1 d', 'discard'],
    ['keeping-verdict', 'case=reheat; profile=uk; temperature=70 °C', 'pass'],
    ['keeping-verdict', 'case=reheat; temperature=73.89 °C', 'pass'],
    ['acidity-class', 'ph=4.601; water-activity=0.85', 'low-water-activity'],
    ['acidity-class', 'ph=4.601; water-activity=0.851', 'low-acid'],
    ['acidity-class', 'ph=4.69; water-activity=0.98; tomato=yes', 'acid-tomato'],
  ])('%s %s is %s', (calc, inputs, verdict) => expect(answer(calc, inputs).value).toBe(verdict));

  it.each([
    ['keeping-verdict', 'case=out'],
    ['keeping-verdict', 'case=hot-hold'],
    ['keeping-verdict', 'case=hot-hold; temperature=120 °F'],
    ['keeping-verdict', 'case=leftovers; time=1 d'],
    ['microbial-growth', 'organism=staphylococcus-aureus; matrix=beef; temperature=30 °C; time=1 h'],
    ['microbial-growth', 'organism=staphylococcus-aureus; curve=0 h 10 °C | 1 h 20 °C; temperature=30 °C'],
    ['log-reduction', 'temperature=60 °C; time=10 min'],
    ['log-reduction', 'd-reference=1 min; z-value=10 °F; temperature=60 °C; time=10 min'],
    ['log-reduction', 'd-value=0 min; time=10 min'],
    ['z-value', 'd-values=55 °C 21 min'],
    ['z-value', 'd-values=55 °C 2 min | 60 °C 3 min'],
    ['roast-oven-temperature', 'oven=high-humidity; mass=8 lb'],
    ['allergens', 'law=us'],
  ])('%s refuses %s', (calc, inputs) => expect(() => answer(calc, inputs)).toThrow(CalcProblem));

  it('reads ten pounds as ten pounds in any unit', () => {
    for (const mass of ['10 lb', '160 oz', '4.5359237 kg'])
      expect(answer('roast-oven-temperature', `oven=still-dry; mass=${mass}`).value).toBeCloseTo(
        celsiusOf(250),
        9,
      );
    expect(answer('roast-oven-temperature', 'oven=still-dry; mass=9.999 lb').value).toBeCloseTo(
      celsiusOf(350),
      9,
    );
  });

  it('counts 54.444 °C as the cutoff of 130 °F, 54.4 °C as below it', () => {
    const at = (celsius: number) =>
      answer('log-reduction', `organism=salmonella; temperature=${celsius} °C; time=112 min`).value;
    expect(at(54.444)).toBeCloseTo(6.5116, 3);
    expect(at(54.4)).toBe(0);
  });

  it('takes the explicit parameter in place of the organism’s', () => {
    const plain = answer('log-reduction', 'organism=salmonella; temperature=60 °C; time=10 min').value;
    const told = answer(
      'log-reduction',
      'organism=salmonella; d-reference=10.32 s; temperature=60 °C; time=10 min',
    ).value;
    expect(told).toBeCloseTo(plain as number, 9);
  });
});

it('counts temperatures of rules in hundredths of °F', () => {
  expect(hundredthsF(54.444)).toBe(13000);
  expect(hundredthsF(54.4)).toBe(12992);
  expect(hundredthsF(70)).toBe(15800);
});
