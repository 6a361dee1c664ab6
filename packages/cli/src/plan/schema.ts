/** The published form of `plan --json`. Figures are SI (temperatures °C), instants UTC; null where there is none. */
import { MEASURES } from '@pitwright/engine';
import { FIRE_SIDES } from '@pitwright/model';
import { z } from 'zod';

const instant = z.string().describe('UTC instant, ISO 8601 with a final Z');
const seconds = z.number().describe('s');
const share = z.number().min(0).max(1);
const figure = z.number().nullable().describe('null: never, or not known');

const saidForm = z.strictObject({
  id: z.string(),
  params: z.record(z.string(), z.unknown()),
  level: z.enum(['information', 'caution', 'stop']).nullable(),
  source: z.string().nullable(),
  text: z.string().describe('in the units asked'),
});

const rangeForm = z.strictObject({ p10: figure, p50: figure, p90: figure, neverShare: share });
const instantsForm = z.strictObject({
  p10: instant.nullable(),
  p50: instant.nullable(),
  p90: instant.nullable(),
  neverShare: share,
});

const stageForm = z.strictObject({
  kind: z.string(),
  startAt: instant,
  endAt: instant.nullable(),
  elapsedStartS: seconds,
  start: instantsForm,
  end: instantsForm,
  coreC: rangeForm,
  surfaceC: rangeForm,
  sign: saidForm.nullable(),
});

const chancesForm = z.record(z.string(), share).describe('chance of each word; sums to 1');
const faceForm = z.strictObject({
  bark: chancesForm,
  barkM: rangeForm.describe('dried layer, m'),
  colour: chancesForm,
  colourIndex: rangeForm.describe('1 raw pink-grey to 6 black-brown'),
});
const eaterForm = faceForm.extend({
  overCoals: faceForm
    .extend({ side: z.enum([...FIRE_SIDES, 'other']) })
    .nullable()
    .describe('the face that is not the open one, where it lay over coals'),
  juiciness: chancesForm,
  waterLeft: rangeForm.describe('water at the centre between raw (1) and fully cooked (0)'),
  lossKg: rangeForm.describe('of one item'),
  yieldShare: rangeForm.describe('left of the raw mass, bone counted'),
});

const saltForm = z.strictObject({
  words: chancesForm,
  perKg: rangeForm.describe('g in a kilogram as served'),
  parts: z.array(z.strictObject({ part: z.string(), share })).describe('the largest first'),
});

const zoneForm = z.strictObject({
  zone: z.string(),
  massKg: z.number(),
  offHeatS: rangeForm.describe('its stages end with the probe and the hand on it, s from meat-on'),
  readyS: rangeForm.describe('that, and its bite reached, s from meat-on'),
  coreC: rangeForm.describe('when the whole piece comes off'),
  biteChance: share.describe('of the bite asked or a softer one, when the whole piece comes off'),
});

const watts = z.number().describe('W; negative where the piece gives heat off');
const joules = z.number().describe('J');
const heatForm = <T extends z.ZodType>(figure: T) =>
  z
    .strictObject({
      convection: figure,
      radiation: figure,
      still: figure,
      evaporation: figure,
      warming: figure,
      juice: figure,
    })
    .describe(
      'of one item: convection + radiation + still (rest and hold, not parted) = evaporation + warming + juice (what leaves again with it)',
    );

const whyForm = z.strictObject({
  top: z.enum(['open-side', 'skin-side']).describe('the face that topC is of'),
  bottom: z
    .enum(['middle', 'bone-side', 'fat-side', 'skin-side', 'other-side'])
    .describe('what lies opposite the open face: middle where both faces are alike'),
  moments: z.array(
    z.strictObject({
      at: instant,
      elapsedS: seconds,
      said: saidForm,
      heatW: heatForm(watts),
      topC: z.number().describe('at the open face'),
      betweenC: z.number().describe('half way from there to the bottom'),
      bottomC: z.number(),
      dryM: z.number().describe('dry depth from the open face, m'),
      otherDryM: z.number().nullable().describe('from the other face, m; null: both are alike'),
    }),
  ),
  heatJ: heatForm(joules).describe('from meat-on to the serving hour'),
});

const pieceForm = z.strictObject({
  id: z.string(),
  letter: z.string(),
  name: z.string(),
  cut: z.string(),
  count: z.number().int(),
  massKg: z.number().nullable().describe('of one item'),
  bite: z.string(),
  onAt: instant,
  onAtPinned: z.boolean(),
  elapsedOnS: seconds,
  latestOnAt: instant.nullable(),
  ready: instantsForm,
  waitS: rangeForm,
  chanceOnTime: share,
  misses: z.strictObject({ late: share, heldTooLong: share, tooSoft: share, never: share }),
  stages: z.array(stageForm),
  lossKg: rangeForm.describe('of one item, by the end of its last stage on the heat'),
  biteChances: z.record(z.string(), share),
  eater: z
    .strictObject({ offHeat: eaterForm, table: eaterForm, salt: saltForm.nullable() })
    .nullable()
    .describe('what the eater gets, as the last stage on the heat ends and at the serving hour'),
  measuring: z
    .strictObject({
      widthS: figure.describe('10 to 90 % of the ready time as things are told, s'),
      narrowings: z.array(
        z.strictObject({ measure: z.enum(MEASURES), widthS: figure.describe('once it is known, s') }),
      ),
      said: saidForm.nullable(),
    })
    .describe('what could still be measured, the narrowest first'),
  zones: z
    .strictObject({
      decides: z.string().nullable().describe('the muscle that is ready last; null: both together'),
      zones: z.array(zoneForm),
      said: z.array(saidForm),
    })
    .nullable()
    .describe('the muscles of a whole brisket or a bird; null: of one muscle'),
  why: whyForm.describe('what holds it back and where its heat goes, in a typical member'),
  notices: z.array(saidForm),
});

const formulaForm = z.strictObject({
  id: z.string(),
  name: z.string(),
  kind: z.string(),
  for: z.array(z.string()).nullable().describe('letters of the pieces; null: all'),
  lines: z.array(
    z.strictObject({
      ingredient: z.string(),
      name: z.string(),
      massKg: z.number(),
      late: z.boolean().describe('stirred in after the simmer'),
    }),
  ),
  totalKg: z.number(),
  yieldKg: z.number().nullable(),
  yieldM3: z.number().nullable(),
  simmerS: rangeForm.nullable(),
  said: z.array(saidForm),
  notices: z.array(saidForm),
});

const jobForm = z.strictObject({
  id: z.string(),
  kind: z.string(),
  at: z.string().describe('kitchen, pit, table or shop'),
  pieces: z.array(z.string()).describe('letters'),
  formula: z.string().nullable(),
  startAt: instant,
  endAt: instant,
  toTableS: seconds.describe('s until the serving hour; negative after it'),
  elapsedS: seconds.describe('s since the first meat on; negative before it'),
  canStart: z.strictObject({ from: instant, to: instant }).nullable(),
  hands: z.array(z.string()),
  walk: z.number().int().nullable(),
  inNight: z.boolean(),
  sign: saidForm.nullable(),
  text: z.string(),
});

const alternativeForm = z.strictObject({
  id: z.string(),
  said: saidForm,
  buys: z.array(saidForm),
  costs: z.array(saidForm),
  chanceAllOnTime: share.nullable(),
  nightWorkS: seconds.nullable(),
  walks: z.number().int().nullable(),
  firstOnAt: instant.nullable(),
  isAdvised: z.boolean(),
});

export const planForm = z.strictObject({
  kind: z.literal('plan'),
  version: z.literal(1),
  cook: z.strictObject({
    id: z.string(),
    name: z.string(),
    isDemo: z.boolean(),
    zone: z.string().describe('IANA time zone'),
    rules: z.string(),
    rulesTold: z.boolean(),
    tableAt: instant,
    tableUntil: instant,
    adults: z.number().int(),
    children: z.number().int(),
  }),
  answer: z.array(saidForm),
  chance: z.strictObject({
    asked: share,
    allOnTime: share,
    members: z.number().int(),
    seed: z.number().int(),
    tightest: z.strictObject({ letter: z.string(), chance: share }).nullable(),
  }),
  firstOnAt: instant,
  lightAt: instant.nullable(),
  pieces: z.array(pieceForm),
  formulas: z.array(formulaForm),
  jobs: z.array(jobForm),
  fireWatch: z.strictObject({ fromAt: instant, toAt: instant, reachS: seconds, asleepS: seconds }).nullable(),
  nightWorkS: seconds,
  handWorkS: seconds,
  walks: z.number().int(),
  conflicts: z.array(
    z.strictObject({
      demands: z.array(z.strictObject({ id: z.string(), kind: z.string(), said: saidForm })),
      wayOut: z.array(z.strictObject({ demandId: z.string(), buys: saidForm })),
      giveUpId: z.string(),
    }),
  ),
  wouldReach: z.array(alternativeForm),
  alternatives: z.array(alternativeForm),
  notUsed: z.array(saidForm),
  notices: z.array(saidForm).describe('those of the whole cook'),
});

export type PlanJson = z.infer<typeof planForm>;

/** The JSON Schema that is published in `schema/plan.schema.json`. */
export const planJsonSchema = (): object => ({
  $id: 'plan.schema.json',
  title: 'Pitwright plan, version 1',
  ...z.toJSONSchema(planForm),
});
