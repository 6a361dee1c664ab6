// Names of the catalogue as one says them. Evidence: conformity.
import { expect, test } from 'vitest';
import { spokenIngredient } from './ingredients.ts';

test.each([
  ['Vinegar, apple cider, 5 % acidity', 'apple cider vinegar'],
  ['Sugar, brown, packed measure', 'brown sugar'],
  ['Pepper, red (cayenne), ground', 'cayenne pepper'],
  ['Tomato paste, canned, no salt', 'tomato paste'],
  ['Molasses, unsulphured table grade', 'molasses'],
  ['Cola soft drink (regular)', 'cola soft drink'],
  ['Salt, sea, fine', 'sea salt'],
  ['Harbour relish', 'harbour relish'],
])('%s is called %s', (name, spoken) => {
  expect(spokenIngredient(name)).toBe(spoken);
});
