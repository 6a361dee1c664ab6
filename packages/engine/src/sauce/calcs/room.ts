/** What every calc of this room says of itself. */
export const room = 'sauce';
export const page = 'sauce.md';
