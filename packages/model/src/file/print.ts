import { Document, isMap, isSeq, type YAMLMap } from 'yaml';
import { cookForm } from './cook.ts';
import type { Plain } from './form.ts';
import type { CookDocument } from './read.ts';
import { pitForm, recipeForm } from './recipe.ts';

/** A recipe and a pit hold no local time. */
const NO_ZONE = { zone: 'UTC' };

function plainOf(document: CookDocument): Plain {
  switch (document.kind) {
    case 'cook':
      return cookForm.print(document.cook, { zone: document.cook.zone });
    case 'recipe':
      return recipeForm.print(document.recipe, NO_ZONE);
    case 'pit':
      return pitForm.print(document.pit, NO_ZONE);
  }
}

/** The canonical text of a document: one model, one text. Reading it gives the same document again. */
export function printCookFile(document: CookDocument): string {
  const yaml = new Document(plainOf(document), {
    version: '1.2',
    schema: 'core',
    // Two pieces may share one list of stages in memory; in the file each has its own.
    aliasDuplicateObjects: false,
  });
  spaceOut(yaml.contents as YAMLMap);
  return yaml.toString({ lineWidth: 0, indent: 2, indentSeq: true });
}

/** An empty line before each part, and between the items of a list of parts. */
function spaceOut(root: YAMLMap): void {
  for (const { key, value } of root.items as { key: { spaceBefore?: boolean }; value: unknown }[]) {
    if (!isMap(value) && !isSeq(value)) continue;
    key.spaceBefore = true;
    if (!isSeq(value)) continue;
    for (const [index, item] of value.items.entries()) if (index > 0 && isMap(item)) item.spaceBefore = true;
  }
}
