import type { CookDocument } from '@pitwright/model';

const ENDING = '.pitwright.yaml';

const idOf = (document: CookDocument): string =>
  document.kind === 'cook'
    ? document.cook.id
    : document.kind === 'recipe'
      ? document.recipe.id
      : document.pit.id;

/** Saves a cook, a recipe or a pit as its file. The printer of files comes when it is first asked for. */
export async function giveFile(document: CookDocument): Promise<void> {
  const { printFile } = await import('../../file-door.ts');
  const address = URL.createObjectURL(new Blob([printFile(document)], { type: 'application/yaml' }));
  const link = window.document.createElement('a');
  link.href = address;
  link.download = `${idOf(document)}${ENDING}`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
