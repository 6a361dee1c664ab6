import { PIECE_LIMITS } from '../limits.ts';
import { BITES, CATALOGUE_CUTS, type Piece } from '../nouns.ts';
import { byDefault, derived, type Fields, type Form, list, optional, record, required } from './form.ts';
import { localTime } from './local-time.ts';
import { checkOwnCut, ownCut } from './own-cut.ts';
import { stages } from './stage.ts';
import { id, letter, measure, name, note, number, word, yesNo } from './values.ts';

const pieceFields: Fields<Piece> = {
  letter: required('letter', letter),
  id: derived('id', id, ({ letter: own }) => own?.toLowerCase()),
  name: optional('name', name),
  cut: required('cut', word(CATALOGUE_CUTS)),
  count: byDefault('count', number(1, 200, { whole: true }), 1),
  mass: optional('mass', measure('mass', PIECE_LIMITS.mass)),
  thickness: optional('thickness', measure('length', PIECE_LIMITS.thickness)),
  own: optional('own-cut', ownCut),
  bone: optional('bone', yesNo),
  membrane: optional('membrane', yesNo),
  solution: optional('solution', measure('fraction', PIECE_LIMITS.solution)),
  fatCap: optional('fat-cap', measure('length', PIECE_LIMITS.fatCap)),
  start: optional('start', measure('temperature', PIECE_LIMITS.start)),
  place: optional('place', word(['hot', 'middle', 'cool'])),
  bite: required('bite', word(BITES)),
  forCamera: optional('camera', yesNo),
  nonIntact: optional('non-intact', yesNo),
  onAt: optional('on', localTime),
  after: optional('after', list(letter)),
  stages: required('stages', stages),
  note: optional('note', note),
};

/** A piece of a cook; `after` holds letters here, ids in memory (see references.ts). */
export const piece: Form<Piece> = record<Piece>(pieceFields, { check: checkOwnCut });

const { onAt: _onAt, ...timelessFields } = pieceFields;

/** A piece of a recipe, which knows no hour. */
export const timelessPiece: Form<Omit<Piece, 'onAt'>> = record<Omit<Piece, 'onAt'>>(timelessFields, {
  check: checkOwnCut,
});
