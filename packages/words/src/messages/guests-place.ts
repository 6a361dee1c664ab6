import { messages } from './message.ts';

/** The place of those who eat. `**…**` is set heavy. */
export const guestsPlaceMessages = messages({
  'web.place.guests': () => 'Guests',
});
