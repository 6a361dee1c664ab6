/** Words that change how a thing is cut or praised, not what it is; in the plain form of `plainWord`. */
const ALWAYS =
  'a an the of about approximately approx roughly around circa finely coarsely thinly very good best quality your ' +
  'favorite favourite preferred plain regular ordinary chopped minced diced sliced grated crushed peeled cracked ' +
  'squeezed strained sifted melted softened room temperature at large medium small packed firmly lightly loosely tightly ' +
  'level heaped heaping rounded scant generous optional divided needed deseeded seeded stemmed trimmed cored pitted ' +
  'drained rinsed rough more extra plus to taste if for serving garnish as desired';

/** Words that go without saying for things of a kind, and would change another. */
const BY_CATEGORY: Readonly<Record<string, string>> = {
  spice: 'ground dried dry powder powdered leaf whole seed freshly fresh-ground',
  vegetable: 'fresh raw ripe whole freshly',
  fruit: 'fresh raw ripe whole freshly pulp block',
  juice: 'fresh freshly bottled cold unsweetened pure 100%',
  liquid: 'cold warm hot brewed strong black unsweetened flat freshly',
  soft_drink: 'cold flat can bottle',
  tomato: 'canned tinned bottled prepared smooth',
  condiment: 'bottled prepared smooth jarred',
  sugar: 'soft granulated fine',
  syrup: 'pure runny clear dark light',
  vinegar: 'raw',
  salt: 'fine',
  fat: 'cold warm',
};

const asSet = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const always = asSet(ALWAYS);
const byCategory = new Map(Object.entries(BY_CATEGORY).map(([category, words]) => [category, asSet(words)]));

/** Dried herbs whose row is the leaf: ground weighs 1.4–1.9 times as much a spoon. */
export const LEAF_HERBS: ReadonlySet<string> = new Set([
  'oregano',
  'thyme_dried',
  'rosemary_dried',
  'basil_dried',
  'parsley_dried',
  'marjoram',
  'bay_leaf',
]);

export const isNeutral = (word: string, category?: string): boolean =>
  always.has(word) || (category !== undefined && (byCategory.get(category)?.has(word) ?? false));
