import { cookForm } from './cook.ts';
import type { JsonSchema } from './form.ts';
import { pitForm, recipeForm } from './recipe.ts';

/**
 * The cook file as JSON Schema (2020-12), for editors: keys, words and the outer shape of quantities. The reader is
 * stricter; what passes here may still be told that a unit, a letter or an hour is wrong.
 */
export function cookFileSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'urn:pitwright:cook-file:1',
    title: 'Pitwright cook file, version 1',
    oneOf: [cookForm.schema, recipeForm.schema, pitForm.schema],
  };
}

/** The text of the published schema. */
export const cookFileSchemaText = (): string => `${JSON.stringify(cookFileSchema(), null, 2)}\n`;
