/** Names of the graders' words that the engine gives for what the eater gets. */
const BARK_NAMES: Readonly<Record<string, string>> = {
  'wipes-off': 'wipes off',
  smears: 'smears',
  'holds-to-finger': 'holds to a finger',
  'nail-does-not-lift': 'a nail does not lift it',
  crusty: 'crusty',
  'hard-shell': 'a hard shell',
};

const COLOUR_NAMES: Readonly<Record<string, string>> = {
  'pink-grey': 'pink-grey',
  tan: 'tan',
  'red-brown': 'red-brown',
  mahogany: 'mahogany',
  'dark-mahogany': 'dark mahogany',
  'black-brown': 'black-brown',
};

const SALT_NAMES: Readonly<Record<string, string>> = {
  mild: 'mild',
  seasoned: 'seasoned',
  salty: 'salty',
};

const SALT_PART_NAMES: Readonly<Record<string, string>> = {
  rub: 'rub',
  spritz: 'spritz',
  glaze: 'glaze',
  brine: 'brine',
  solution: 'added solution',
};

function named(names: Readonly<Record<string, string>>, word: string): string {
  const name = names[word];
  if (name === undefined) throw new RangeError(`no name for ${word}`);
  return name;
}

export const barkName = (word: string): string => named(BARK_NAMES, word);
export const colourName = (word: string): string => named(COLOUR_NAMES, word);
export const saltName = (word: string): string => named(SALT_NAMES, word);
export const saltPartName = (part: string): string => named(SALT_PART_NAMES, part);
