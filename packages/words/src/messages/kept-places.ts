import { messages } from './message.ts';

type Kind = 'cook' | 'recipe' | 'pit' | 'setting';

const KINDS: Readonly<Record<Kind, string>> = {
  cook: 'Cook',
  recipe: 'Recipe',
  pit: 'Pit',
  setting: 'What is kept beside the cooks',
};

const GAUGES = {
  grate: 'at the grate',
  lid: 'on the lid',
  'set-point': 'at the controller’s set-point',
} as const;

/** Pits and recipes on pages of their own, and what undo takes back in words. */
export const keptPlacesMessages = messages({
  'web.undo.create': (p: { name: string }) => `Undo: ${p.name}, put on the shelf`,
  'web.undo.set': (p: { name: string }) => `Undo: the last change of ${p.name}`,
  'web.undo.remove': (p: { name: string }) => `Undo: ${p.name}, removed`,
  'web.undo.bring-back': (p: { name: string }) => `Undo: ${p.name}, brought back`,

  'web.place.pit': () => 'Pit',
  'web.place.recipe': () => 'Recipe',
  'web.kept.removed': (p: { kind: Kind; name: string }) => `${KINDS[p.kind]} removed: **${p.name}**.`,
  'web.kept.removed.more': () => 'What was written of it is still there.',
  'web.kept.told': (p: { created: string; changed: string }) =>
    p.created === p.changed ? `told ${p.created}` : `told ${p.created}, changed ${p.changed}`,
  'web.kept.cooks': () => 'Its cooks',
  'web.kept.note': () => 'Note',
  'web.kept.yes': () => 'yes',
  'web.kept.no': () => 'no',
  'web.kept.untold': () => 'not told',

  'web.pit.answer': (p: { name: string; type: string; heat: string; gauge: keyof typeof GAUGES }) =>
    `**${p.name}**: ${p.type}, held at **${p.heat}** ${GAUGES[p.gauge]}.`,
  'web.pit.told': () => 'What was told of it',
  'web.pit.type': () => 'Kind',
  'web.pit.heat': () => 'Held at',
  'web.pit.gauge': () => 'Read where',
  'web.pit.gauge.of': (p: { gauge: keyof typeof GAUGES }) => GAUGES[p.gauge],
  'web.pit.drift': () => 'Creeps up in an hour by',
  'web.pit.zones': () => 'Its ends',
  'web.pit.hot-end': () => 'The hot end is warmer by',
  'web.pit.cool-end': () => 'The cool end is colder by',
  'web.pit.size': () => 'Its size',
  'web.pit.grate': () => 'Grate',
  'web.pit.steel': () => 'Steel',
  'web.pit.pan': () => 'Water pan',
  'web.pit.fuel': () => 'Fuel',
  'web.pit.not-used': () => 'Steel and fuel are kept, and not used yet.',
  'web.pit.no-cooks': () => 'No cook on the shelf is on this pit.',
  'web.pit.cook-on': () => 'Cook on it',
  'web.pit.as-then': () => 'It has this pit as it was told then.',
  'web.pit.take': (p: { cook: string }) => `Tell it to ${p.cook} as it is now`,
  'web.pit.keep-of': () => 'Keep its pit',

  'web.recipe.answer': (p: { name: string; served: number }) =>
    p.served === 0 ? `**${p.name}** feeds nobody for sure.` : `**${p.name}** feeds **${p.served}**.`,
  'web.recipe.served.meaning': (p: { served: number }) =>
    `A table of ${p.served} grown people runs short of this meat less than once in ten.`,
  'web.recipe.served.source': () =>
    'Published yields of cuts and portions of catering tables: docs/models, guests.',
  'web.recipe.served.doubt': () =>
    'With other dishes beside it and an ordinary appetite. A cook counts your guests.',
  'web.recipe.version': (p: { version: number }) => `version ${p.version}`,
  'web.recipe.pieces': () => 'Pieces',
  'web.recipe.formulas': () => 'Formulas',
  'web.recipe.no-formulas': () => 'No sauce, rub, brine or spritz.',
  'web.recipe.on-bench': (p: { name: string }) => `${p.name}, on the Bench`,
  'web.recipe.formula.makes': () => 'makes',
  'web.recipe.formula.in-pan': () => 'in the pan',
  'web.recipe.formula.unread': () => 'A line of it cannot be weighed: its Bench says which.',
  'web.recipe.leave-out': (p: { letter: string }) => `Leave out ${p.letter}`,
  'web.recipe.no-cooks': () => 'Not cooked yet.',
  'web.recipe.again': () => 'Cook it again',
  'web.recipe.differs': () => 'Cooked otherwise than this recipe says.',
  'web.recipe.take': (p: { cook: string; version: number }) => `Make ${p.cook} version ${p.version}`,
});

/** Two cooks side by side. */
export const twoCooksMessages = messages({
  'web.two.place': () => 'Side by side',
  'web.two.key': () => 'Lay beside another',
  'web.two.first': () => 'This cook',
  'web.two.second': () => 'beside',
  'web.two.one-only': () =>
    'There is one cook on the shelf. Duplicate it, change the copy, and lay both side by side.',
  'web.two.looking': () => 'Looking ahead for both.',
  'web.two.answer': (p: { more: string; less: string; moreChance: string; lessChance: string }) =>
    `**${p.more}** is all on time in **${p.moreChance}** of days, **${p.less}** in **${p.lessChance}**.`,
  'web.two.even': (p: { a: string; b: string; chance: string }) =>
    `**${p.a}** and **${p.b}** are as sure as each other: **${p.chance}**.`,
  'web.two.told': () => 'Told otherwise',
  'web.two.comes': () => 'What comes of it',
  'web.two.same-told': () => 'Both are told the same.',
  'web.two.same-comes': () => 'The same comes of both.',
  'web.two.what': () => 'What',
  'web.two.table': () => 'On the table',
  'web.two.people': () => 'At table',
  'web.two.pit': () => 'Pit',
  'web.two.weather': () => 'Weather',
  'web.two.formulas': () => 'Mixed',
  'web.two.meat': (p: { letter: string }) => `${p.letter}, meat`,
  'web.two.bite': (p: { letter: string }) => `${p.letter}, bite asked`,
  'web.two.stages': (p: { letter: string }) => `${p.letter}, stages`,
  'web.two.on': (p: { letter: string }) => `${p.letter}, on the pit before the table`,
  'web.two.ready': (p: { letter: string }) => `${p.letter}, ready before the table`,
  'web.two.ready.value': (p: { early: string; late: string }) => `${p.early} to ${p.late}`,
  'web.two.never': () => 'not always',
  'web.two.chance': () => 'All on time',
  'web.two.chance-of': (p: { letter: string }) => `${p.letter}, on time`,
  'web.two.word': (p: { letter: string }) => `${p.letter}, likeliest bite`,
  'web.two.word.value': (p: { word: string; chance: string }) => `${p.word}, ${p.chance}`,
  'web.two.jobs': () => 'Jobs',
  'web.two.work': () => 'Work of hands',
  'web.two.night': () => 'Of it at night',
  'web.two.none': () => 'not there',
  'web.two.late': (p: { time: string }) => `${p.time} after`,
});
