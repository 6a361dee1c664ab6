import { messages } from './message.ts';

/** What a link that carries a cook says. */
export const shareMessages = messages({
  'share.no-cook': () => 'This link carries no cook.',
  'share.newer': () => 'This link was made by a newer Pitwright. Open it there, or ask for the cook file.',
  'share.damaged': () =>
    'This link is damaged: a part is missing or changed on the way. Ask for it again, or for the cook file.',
  'share.too-long': (p: { readonly characters: number; readonly most: number }) =>
    `This cook is too long for a link: ${p.characters} characters, at most ${p.most}. Give the cook file away instead.`,
});
