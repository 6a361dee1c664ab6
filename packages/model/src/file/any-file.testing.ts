/** Arbitrary valid cook files for property tests, as plain data in the form's own keys. */
import fc from 'fast-check';
import {
  BITES,
  BODIES,
  CATALOGUE_CUTS,
  COALS,
  FIRE_SHIELDS,
  FIRE_SIDES,
  OWN_FATS,
  PIT_TYPES,
  RULES,
} from '../nouns.ts';

const numberText = (min: number, max: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.integer({ min: Math.ceil(min), max: Math.floor(max) }).map(String),
    fc
      .integer({ min: Math.ceil(min * 1000), max: Math.floor(max * 1000) })
      .map((thousandths) => String(thousandths / 1000)),
  );
const fractionText = fc
  .tuple(fc.integer({ min: 0, max: 3 }), fc.constantFrom('1/2', '1/3', '3/4', '5/8', '⅔', '½'))
  .map(([whole, part]) => (whole === 0 ? part : `${whole} ${part}`));
const withUnit = (numbers: fc.Arbitrary<string>, ...units: string[]): fc.Arbitrary<string> =>
  fc.tuple(numbers, fc.constantFrom(...units)).map(([number, unit]) => `${number} ${unit}`);

const mass = fc.oneof(
  withUnit(numberText(0.2, 19), 'kg'),
  withUnit(numberText(100, 9000), 'g'),
  withUnit(numberText(0.3, 40), 'lb', 'lbs'),
  fc.tuple(fc.integer({ min: 1, max: 40 }), numberText(0, 15.9)).map(([lb, oz]) => `${lb} lb ${oz} oz`),
);
const pitTemperature = fc.oneof(
  withUnit(numberText(60, 340), '°C', 'C'),
  withUnit(numberText(130, 600), '°F'),
  fc.tuple(numberText(200, 400), numberText(1, 30)).map(([value, sd]) => `${value} °F ± ${sd} °F`),
);
const length = fc.oneof(
  withUnit(numberText(6, 290), 'mm'),
  withUnit(fractionText, 'in', 'inches'),
  withUnit(numberText(1, 29), 'cm'),
);
const duration = fc.oneof(
  withUnit(numberText(1, 2000), 'min'),
  withUnit(numberText(0.1, 47), 'h', 'hours'),
  fc
    .tuple(fc.integer({ min: 0, max: 47 }), fc.integer({ min: 1, max: 59 }))
    .map(([h, min]) => `${h} h ${min} min`),
);
const amount = fc.oneof(
  withUnit(numberText(0, 5000), 'g', 'mL'),
  withUnit(fractionText, 'cup', 'cups', 'tsp', 'tbsp', 'fl oz', 'oz weight'),
  withUnit(numberText(0, 30), 'lb', 'L', 'cups', 'qt'),
);
const yesNo = fc.constantFrom('yes', 'no');
const text = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
  .map((raw) => raw.replace(/[\p{C}\p{Zl}\p{Zp}\n\t\ufffd-\uffff]/gu, '').trim())
  .filter((line) => line !== '' && line.length <= 100);
const paragraph = fc
  .array(fc.oneof(text, fc.constant('')), { minLength: 1, maxLength: 4 })
  .map((lines) => lines.join('\n'))
  .filter((all) => all.trim() !== '');

const sign = fc.oneof(
  fc.constantFrom('bark', ...BITES),
  withUnit(numberText(50, 100), '°C').map((temperature) => `core ${temperature}`),
  withUnit(numberText(120, 210), '°F').map((temperature) => `surface ${temperature}`),
  numberText(1, 70).map((share) => `loss ${share} %`),
);
const end = fc.oneof(
  duration.map((time) => ({ for: time })),
  sign.map((until) => ({ until })),
);
const surface = fc.oneof(
  fc.record({
    stage: fc.constantFrom('bare', 'glazed'),
    spritz: fc.record({
      amount: withUnit(numberText(0, 300), 'g', 'mL'),
      every: withUnit(numberText(5, 90), 'min'),
    }),
  }),
  fc.record({ stage: fc.constant('foil'), wrap: fc.constantFrom('tight', 'loose', 'torn', 'pan') }),
  fc.record({ stage: fc.constant('paper'), wrap: fc.constantFrom('clean', 'greasy') }),
  fc.record({ stage: fc.constantFrom('bare', 'foil', 'paper', 'glazed') }),
);
const cookingStage = fc
  .tuple(
    surface,
    end,
    fc.record(
      { pit: pitTemperature, in: fc.constantFrom('pit', 'oven'), note: paragraph },
      { requiredKeys: [] },
    ),
  )
  .map(([stage, how, more]) => ({ ...stage, ...how, ...more }));
const overCoals = fc
  .tuple(
    end,
    fc.record(
      {
        side: fc.constantFrom(...FIRE_SIDES),
        distance: withUnit(numberText(3, 120), 'cm'),
        across: withUnit(numberText(5, 70), 'in', 'cm'),
        coals: fc.constantFrom(...COALS),
        between: fc.constantFrom(...FIRE_SHIELDS),
        turn: withUnit(numberText(1, 60), 'min'),
      },
      { requiredKeys: ['side', 'distance'] },
    ),
  )
  .map(([how, direct]) => ({ stage: 'bare', ...how, direct }));
const lastStage = fc.constantFrom<object>(
  { stage: 'rest', until: 'table' },
  { stage: 'hold', until: 'table', at: '65 °C', in: 'warmer' },
  { stage: 'hold', for: '2 h' },
  { stage: 'chill', until: 'core 5 °C', in: 'ice-bath' },
  { stage: 'chill', for: '12 h', in: 'fridge', at: '4 °C' },
);

/** Sides in order, and no mass that could contradict them. */
const ownCut = fc
  .tuple(
    fc.integer({ min: 10, max: 150 }),
    fc.integer({ min: 0, max: 200 }),
    fc.integer({ min: 0, max: 300 }),
  )
  .chain(([thickness, more, longer]) =>
    fc.record({
      thickness: fc.constant(`${thickness} mm`),
      'own-cut': fc.record(
        {
          length: fc.constant(`${thickness + more + longer} mm`),
          width: fc.constant(`${thickness + more} mm`),
          skin: yesNo,
          fat: fc.constantFrom(...OWN_FATS),
        },
        { requiredKeys: ['length', 'width'] },
      ),
    }),
  );

const piece = fc
  .tuple(
    fc.record(
      {
        name: text,
        cut: fc.constantFrom(...CATALOGUE_CUTS),
        count: fc.integer({ min: 1, max: 30 }),
        mass,
        thickness: length,
        bone: yesNo,
        membrane: yesNo,
        solution: numberText(0, 30).map((share) => `${share} %`),
        'fat-cap': withUnit(numberText(0, 30), 'mm'),
        start: withUnit(numberText(0, 20), '°C'),
        place: fc.constantFrom('hot', 'middle', 'cool'),
        bite: fc.constantFrom(...BITES),
        camera: yesNo,
        'non-intact': yesNo,
        note: paragraph,
      },
      { requiredKeys: ['cut', 'bite'] },
    ),
    fc.option(ownCut, { nil: undefined, freq: 4 }),
    fc.array(fc.oneof({ arbitrary: cookingStage, weight: 4 }, overCoals), { minLength: 1, maxLength: 3 }),
    lastStage,
  )
  .map(([{ mass: kg, ...fields }, own, stages, last]) => ({
    ...fields,
    ...(own ?? (kg && { mass: kg })),
    stages: [...stages, last],
  }));
/** Lettered A, B, C …; each may wait for the first. */
const pieces = fc.array(fc.tuple(piece, fc.boolean()), { minLength: 1, maxLength: 4 }).map((all) =>
  all.map(([each, waits], index) => ({
    letter: 'ABCDEFGH'[index]!,
    ...each,
    ...(waits && index > 0 ? { after: ['A'] } : {}),
  })),
);

const formula = fc.record(
  {
    kind: fc.constantFrom('sauce', 'rub', 'brine', 'spritz'),
    for: fc.constant(['A']),
    lines: fc.array(
      fc.record(
        {
          ingredient: fc.constantFrom('ketchup', 'tea_black', 'salt_sea_fine'),
          amount,
          locked: yesNo,
          note: paragraph,
        },
        { requiredKeys: ['ingredient', 'amount'] },
      ),
      { minLength: 1, maxLength: 4 },
    ),
    simmer: fc.record(
      {
        evaporated: withUnit(numberText(0, 900), 'g', 'oz'),
        power: withUnit(numberText(0.1, 9), 'kW'),
        source: fc.constantFrom('gas', 'electric', 'induction'),
        'pan-diameter': withUnit(numberText(6, 50), 'cm', 'in'),
        lid: fc.constantFrom('open', 'ajar', 'tight'),
      },
      { requiredKeys: ['lid'] },
    ),
    note: paragraph,
  },
  { requiredKeys: ['kind', 'lines'] },
);
/** Some have a variant of every shape, the chosen one among them; only what simmers has lines that go in late. */
const formulas = fc.array(fc.tuple(formula, fc.boolean(), amount), { maxLength: 3 }).map((all) =>
  all.map(([each, hasVariants, other], index) => ({
    name: `Formula ${index}`,
    ...each,
    ...(hasVariants && variantsOf(each.lines[0]!.ingredient, other, 'simmer' in each)),
  })),
);
const variantsOf = (line: string, other: string, simmers: boolean) => ({
  variants: [
    {
      name: 'Hotter',
      changes: [
        { line, ingredient: 'honey', amount: other, ...(simmers && { late: 'yes' }) },
        { ingredient: 'cayenne', amount: '2 g' },
      ],
      note: 'For some.',
    },
    { name: 'Without', changes: [{ line, which: 1, out: 'yes' }], evaporated: '80 g' },
  ],
  variant: 'hotter',
});

/** An ingredient of one's own by its label. */
const labels = fc
  .record(
    {
      law: fc.constantFrom('us', 'eu'),
      per: withUnit(numberText(1, 200), 'g'),
      'per-volume': fc.constantFrom('2 tbsp', '30 mL'),
      kcal: fc.integer({ min: 0, max: 900 }),
      fat: withUnit(numberText(0, 9), 'g'),
      carbohydrate: withUnit(numberText(0, 90), 'g'),
      sugars: withUnit(numberText(0, 90), 'g'),
      sodium: withUnit(numberText(0, 900), 'mg'),
      ph: fc.constantFrom(3.5, 4),
      'sugar-kind': fc.constantFrom('sucrose', 'inverted'),
      body: fc.constantFrom(...BODIES),
      allergens: fc.array(text, { maxLength: 2 }),
    },
    { requiredKeys: ['law', 'per'] },
  )
  .map((each) => [{ name: 'Harbour relish', ...each }]);

const pit = fc.record(
  {
    name: text,
    type: fc.constantFrom(...PIT_TYPES),
    fuel: text,
    steel: withUnit(numberText(1, 20), 'mm'),
    'water-pan': yesNo,
    temperature: pitTemperature,
    gauge: fc.constantFrom('grate', 'lid', 'set-point'),
    'hot-end': fc.tuple(numberText(0, 40), numberText(0, 9)).map(([value, sd]) => `${value} K ± ${sd} K`),
    'drift-per-hour': withUnit(numberText(-9, 9), 'K', '°F'),
    'cool-end': withUnit(numberText(0, 40), '°F', 'K'),
    'grate-area': withUnit(numberText(0.1, 3), 'm²', 'm2'),
    note: paragraph,
  },
  { requiredKeys: ['name', 'type', 'temperature'] },
);

/** Every hour of three years in a zone that changes its clock, but the hours that fall twice or not at all. */
const localTime = fc
  .integer({ min: 0, max: 3 * 365 * 24 * 60 })
  .map((minutes) =>
    new Date(Date.UTC(2026, 0, 1) + minutes * 60_000).toISOString().slice(0, 16).replace('T', ' '),
  )
  .filter((time) => !/-(?:03|10)-(?:2[4-9]|3[01]) 0[0-3]:/.test(time));

/** A valid cook file. */
export const anyCookFile = fc
  .record(
    {
      name: text,
      demo: yesNo,
      recipe: fc.constant({ id: 'racks', version: 3 }),
      rules: fc.constantFrom(...RULES),
      note: paragraph,
      chance: fc.integer({ min: 50, max: 99 }).map((share) => `${share} %`),
      table: fc.record(
        { at: localTime, window: fc.constantFrom('0 min', '45 min', '1 h', '90 s', '1 h 30 min', '1/3 h') },
        { requiredKeys: ['at'] },
      ),
      guests: fc.record(
        {
          adults: fc.integer({ min: 1, max: 400 }),
          children: fc.integer({ min: 0, max: 90 }),
          appetite: fc.constantFrom('small', 'ordinary', 'big'),
          'other-dishes': fc.integer({ min: 0, max: 9 }),
          'at-risk': yesNo,
          allergies: fc.array(text, { minLength: 1, maxLength: 3 }),
        },
        { requiredKeys: ['adults'] },
      ),
      place: fc.record({
        latitude: fc.integer({ min: -9000, max: 9000 }).map((hundredths) => hundredths / 100),
        altitude: withUnit(numberText(0, 4000), 'm', 'ft'),
      }),
      weather: fc.record(
        {
          air: withUnit(numberText(-20, 40), '°C'),
          humidity: numberText(0, 100).map((share) => `${share} %`),
          wind: withUnit(numberText(0, 60), 'km/h', 'mph', 'm/s'),
          words: text,
        },
        { requiredKeys: ['words'] },
      ),
      hands: fc.constant([
        {
          name: 'You',
          sleeps: { from: '23:00', to: '06:00' },
          away: [{ from: '2027-09-12 09:00', to: '2027-09-12 12:00' }],
        },
      ]),
      kitchen: fc
        .record(
          { burners: fc.integer({ min: 0, max: 6 }), ovens: fc.integer({ min: 0, max: 3 }) },
          { requiredKeys: [] },
        )
        .filter((kitchen) => Object.keys(kitchen).length > 0),
      pit,
      pieces,
      labels,
      formulas,
    },
    { requiredKeys: ['name', 'table', 'guests', 'pit', 'pieces'] },
  )
  .map((cook) => ({ kind: 'cook', version: 1, zone: 'Europe/Lisbon', ...cook }));
