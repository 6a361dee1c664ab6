/** Trade names of the cuts on both sides of the water, as one rack or piece, and as several. */
interface CutName {
  readonly us: string;
  readonly uk: string;
  readonly many: { readonly us: string; readonly uk: string };
}

const name = (us: string, usMany: string, uk = us, ukMany = usMany): CutName => ({
  us,
  uk,
  many: { us: usMany, uk: ukMany },
});

/** @source USDA IMPS item names for the American column; British names: common practice, no source */
const CUT_NAMES: Readonly<Record<string, CutName>> = {
  'loin-back-ribs': name('loin back rack', 'loin back racks', 'loin rib rack', 'loin rib racks'),
  spareribs: name('whole spare rack', 'whole spare racks', 'belly rib rack', 'belly rib racks'),
  'st-louis-ribs': name(
    'St. Louis rack',
    'St. Louis racks',
    'squared belly rib rack',
    'squared belly rib racks',
  ),
  'brisket-whole': name('whole brisket', 'whole briskets'),
  'brisket-flat': name('brisket flat', 'brisket flats'),
  'brisket-point': name('brisket point', 'brisket points', 'brisket point end', 'brisket point ends'),
  'pork-shoulder': name('pork shoulder', 'pork shoulders', 'pork neck end', 'pork neck ends'),
  'beef-short-ribs': name('plate of short ribs', 'plates of short ribs', "Jacob's ladder", "Jacob's ladders"),
  'beef-back-ribs': name('beef back rack', 'beef back racks', 'beef rib rack', 'beef rib racks'),
  'chuck-roast': name('chuck roast', 'chuck roasts', 'chuck joint', 'chuck joints'),
  'rib-roast': name('rib roast', 'rib roasts', 'rib joint', 'rib joints'),
  'lamb-shoulder': name('lamb shoulder', 'lamb shoulders', 'shoulder of lamb', 'shoulders of lamb'),
  'lamb-leg': name('leg of lamb', 'legs of lamb'),
  'fresh-ham': name('fresh ham', 'fresh hams', 'leg of pork', 'legs of pork'),
  'chicken-whole': name('whole chicken', 'whole chickens'),
  'chicken-half': name('half chicken', 'half chickens'),
  'chicken-breast': name('chicken breast', 'chicken breasts'),
  'chicken-leg': name('chicken leg quarter', 'chicken leg quarters', 'chicken leg', 'chicken legs'),
  'turkey-whole': name('whole turkey', 'whole turkeys'),
  'turkey-breast': name('turkey breast', 'turkey breasts', 'turkey crown', 'turkey crowns'),
  'turkey-half': name('half turkey', 'half turkeys'),
  'spareribs-breast-off': name(
    'breast-off spare rack',
    'breast-off spare racks',
    'belly rib rack, breast off',
    'belly rib racks, breast off',
  ),
  'rib-tips': name('strip of rib tips', 'strips of rib tips', 'strip of rib ends', 'strips of rib ends'),
  'country-style-ribs': name(
    'country-style rib',
    'country-style ribs',
    'neck-end spare rib chop',
    'neck-end spare rib chops',
  ),
  'pork-picnic': name('pork picnic', 'pork picnics', 'hand of pork', 'hands of pork'),
  'pork-shoulder-whole': name('whole pork shoulder', 'whole pork shoulders'),
  'pork-belly': name('pork belly', 'pork bellies', 'belly of pork', 'bellies of pork'),
  'pork-loin': name('pork loin', 'pork loins', 'loin of pork', 'loins of pork'),
  'pork-loin-center': name('center-cut pork loin', 'center-cut pork loins', 'middle loin', 'middle loins'),
  'chuck-short-ribs': name(
    'plate of chuck short ribs',
    'plates of chuck short ribs',
    'chuck rib',
    'chuck ribs',
  ),
  'beef-clod': name('shoulder clod', 'shoulder clods', 'beef shoulder joint', 'beef shoulder joints'),
  'chuck-roll': name('chuck roll', 'chuck rolls', 'chuck eye joint', 'chuck eye joints'),
  'tri-tip': name('tri-tip', 'tri-tips', 'tri-tip of rump', 'tri-tips of rump'),
  'lamb-rack': name('rack of lamb', 'racks of lamb'),
  'lamb-breast': name('lamb breast', 'lamb breasts', 'breast of lamb', 'breasts of lamb'),
  'chicken-wing': name('chicken wing', 'chicken wings'),
  'chicken-thigh': name('chicken thigh', 'chicken thighs'),
  'chicken-drumstick': name('chicken drumstick', 'chicken drumsticks'),
};

/** A cut as the trade calls it; a cut unknown to us keeps the word it was given. */
export function cutName(cut: string, side: 'us' | 'uk', count = 1): string {
  const known = CUT_NAMES[cut];
  if (!known) return cut.replace(/-/g, ' ');
  return count === 1 ? known[side] : known.many[side];
}

export const KNOWN_CUT_NAMES: readonly string[] = Object.keys(CUT_NAMES);
