/** What ingredients are called in recipes. Trade words and ordinary ones; no makes. */

/**
 * Catalogue id → names, parted by `|`; a name with several ids asks which was meant, in the order shown.
 * An id with a question mark is taken, and that it was taken is said.
 */
const NAMES: readonly (readonly [string, string])[] = [
  ['ketchup', 'ketchup|catsup|tomato ketchup'],
  ['ketchup_low_sodium', 'low sodium ketchup|no salt ketchup'],
  ['tomato_paste', 'tomato paste|double concentrate tomato puree|tomato concentrate'],
  ['tomatoes_crushed', 'crushed tomato|chopped tomato|tinned tomato|canned tomato'],
  ['tomato_juice', 'tomato juice'],
  ['tomato_raw', 'fresh tomato|ripe tomato|plum tomato'],
  ['tomato_sun_dried', 'sun dried tomato'],
  ['tomato_powder', 'tomato powder'],
  ['tomato_chili_sauce', 'tomato chili sauce|bottled chili sauce'],
  ['vinegar_white_5', 'white vinegar|distilled vinegar|distilled white vinegar|spirit vinegar'],
  ['vinegar_cider_5', 'cider vinegar|apple cider vinegar|acv'],
  ['vinegar_red_wine_6', 'red wine vinegar'],
  ['vinegar_balsamic_6', 'balsamic vinegar|balsamic'],
  ['vinegar_rice_4', 'rice vinegar|rice wine vinegar|unseasoned rice vinegar'],
  ['vinegar_malt_5', 'malt vinegar'],
  ['vinegar_sherry_7', 'sherry vinegar'],
  [
    'vinegar_cider_5 vinegar_white_5 vinegar_red_wine_6 vinegar_malt_5 vinegar_rice_4',
    'vinegar|wine vinegar|white wine vinegar',
  ],
  ['sugar_white', 'sugar|white sugar|granulated sugar|caster sugar|castor sugar|superfine sugar'],
  [
    'sugar_brown_packed',
    'brown sugar|light brown sugar|dark brown sugar|soft brown sugar|light brown soft sugar|dark brown soft sugar|soft light brown sugar|soft dark brown sugar|muscovado|muscovado sugar|dark muscovado sugar|light muscovado sugar',
  ],
  ['sugar_turbinado', 'turbinado|turbinado sugar|raw sugar|demerara|demerara sugar'],
  ['sugar_powdered', 'powdered sugar|icing sugar|confectioners sugar'],
  ['sugar_maple', 'maple sugar'],
  ['dextrose', 'dextrose'],
  ['molasses', 'molasses|unsulphured molasses|unsulfured molasses|dark molasses'],
  ['molasses?', 'treacle|black treacle|blackstrap molasses|blackstrap'],
  ['honey', 'honey|runny honey|clear honey'],
  ['maple_syrup', 'maple syrup'],
  ['corn_syrup_dark', 'dark corn syrup'],
  ['corn_syrup_light', 'light corn syrup'],
  ['corn_syrup_light corn_syrup_dark', 'corn syrup'],
  ['agave_syrup', 'agave|agave syrup|agave nectar'],
  ['sorghum_syrup', 'sorghum|sorghum syrup'],
  ['malt_syrup', 'malt syrup|malt extract|barley malt syrup'],
  ['pancake_syrup', 'pancake syrup|table syrup'],
  ['grenadine', 'grenadine'],
  ['jam_apricot', 'apricot jam|apricot preserves|apricot preserve'],
  [
    'jam_generic',
    'jam|preserves|raspberry jam|cherry jam|peach preserves|plum jam|strawberry jam|blackberry jam|cherry preserves|peach jam',
  ],
  ['mustard_yellow', 'yellow mustard|prepared yellow mustard|american mustard|ballpark mustard'],
  ['mustard_dijon', 'dijon mustard|dijon'],
  ['mustard_whole_grain', 'whole grain mustard|wholegrain mustard|grainy mustard|stone ground mustard'],
  ['mustard_ground', 'mustard powder|dry mustard|ground mustard|mustard flour|english mustard powder'],
  ['mustard_yellow mustard_dijon mustard_ground', 'mustard|prepared mustard|brown mustard|english mustard'],
  ['worcestershire_type', 'worcestershire sauce|worcestershire|worcester sauce'],
  ['soy_sauce', 'soy sauce|light soy sauce|dark soy sauce|soya sauce'],
  ['soy_sauce_low_na', 'low sodium soy sauce|reduced sodium soy sauce|reduced salt soy sauce'],
  ['tamari', 'tamari'],
  ['fish_sauce', 'fish sauce'],
  ['oyster_sauce', 'oyster sauce'],
  ['hoisin_sauce', 'hoisin|hoisin sauce'],
  ['teriyaki_sauce', 'teriyaki sauce'],
  ['plum_sauce', 'plum sauce'],
  ['steak_sauce_tomato', 'steak sauce|brown sauce'],
  ['bbq_sauce_generic', 'barbecue sauce|bbq sauce|barbeque sauce'],
  [
    'hot_sauce_vinegar hot_sauce_aged_cayenne',
    'hot sauce|hot pepper sauce|pepper sauce|louisiana style hot sauce',
  ],
  ['hot_sauce_aged_cayenne', 'cayenne hot sauce|cayenne pepper sauce'],
  ['sriracha_type', 'sriracha|chile garlic sauce|chili garlic sauce|chilli garlic sauce'],
  ['horseradish', 'horseradish|prepared horseradish'],
  ['mayonnaise', 'mayonnaise|mayo'],
  ['pickle_relish_sweet', 'sweet relish|pickle relish|sweet pickle relish'],
  ['pickles_dill', 'dill pickle|pickle'],
  ['capers', 'caper'],
  ['anchovy_canned', 'anchovy|anchovies'],
  ['miso', 'miso|miso paste'],
  ['peanut_butter', 'peanut butter|smooth peanut butter'],
  ['tahini', 'tahini'],
  ['butter_salted', 'salted butter'],
  ['butter_unsalted', 'unsalted butter'],
  ['butter_unsalted butter_salted', 'butter'],
  ['oil_canola', 'canola oil|rapeseed oil'],
  ['oil_olive', 'olive oil|extra virgin olive oil'],
  ['oil_soybean', 'soybean oil'],
  ['oil_peanut', 'peanut oil|groundnut oil'],
  ['oil_corn', 'corn oil'],
  ['oil_sesame', 'sesame oil|toasted sesame oil'],
  ['oil_canola?', 'oil|vegetable oil|neutral oil|cooking oil|sunflower oil'],
  ['lard', 'lard'],
  ['beef_tallow', 'beef tallow|tallow|beef dripping'],
  ['chicken_fat', 'chicken fat|schmaltz'],
  ['duck_fat', 'duck fat'],
  ['cream_heavy', 'heavy cream|double cream|whipping cream'],
  ['salt_table', 'table salt|iodized salt|fine salt'],
  ['salt_sea_fine', 'fine sea salt'],
  ['salt_sea_coarse', 'coarse sea salt|coarse salt|sea salt flake'],
  ['salt_sea_fine salt_sea_coarse', 'sea salt'],
  ['salt_kosher_flaky salt_kosher_dense', 'kosher salt|coarse kosher salt'],
  ['salt_table salt_kosher_dense salt_kosher_flaky salt_sea_fine', 'salt'],
  ['cure_6_25', 'curing salt|pink curing salt|cure|pink salt|cure no 1'],
  ['msg', 'msg|monosodium glutamate'],
  ['pepper_black', 'black pepper|ground black pepper|peppercorn|black peppercorn'],
  ['pepper_black?', 'pepper'],
  ['pepper_white', 'white pepper'],
  ['cayenne', 'cayenne|cayenne pepper|ground red pepper|red pepper powder'],
  ['paprika', 'paprika|sweet paprika|hungarian paprika'],
  ['smoked_paprika', 'smoked paprika|pimenton|sweet smoked paprika'],
  ['chili_powder cayenne', 'chili powder|chilli powder|chile powder'],
  ['ancho_dried', 'ancho|ancho chile|ancho powder|ancho chili powder|ancho chile powder'],
  ['pasilla_dried', 'pasilla|pasilla powder|pasilla chile'],
  [
    'chipotle_ground',
    'chipotle powder|ground chipotle|chipotle chili powder|chipotle chile powder|chipotle chilli powder',
  ],
  ['chipotle_in_adobo', 'chipotle in adobo|chipotles in adobo|chipotle pepper in adobo|adobo chipotle'],
  [
    'chile_flakes',
    'red pepper flake|chile flake|chili flake|chilli flake|crushed red pepper|red chile flake|crushed red pepper flake|dried chilli flake',
  ],
  ['curry_powder', 'curry powder'],
  ['garlic_powder', 'garlic powder|granulated garlic|garlic granule'],
  ['onion_powder', 'onion powder|granulated onion|onion granule'],
  ['cumin', 'cumin|ground cumin|cumin seed'],
  ['coriander_seed', 'ground coriander|coriander seed|coriander powder'],
  ['allspice', 'allspice|ground allspice'],
  ['cinnamon', 'cinnamon|ground cinnamon'],
  ['cloves', 'ground cloves|clove powder|ground clove|cloves'],
  ['nutmeg', 'nutmeg|ground nutmeg'],
  ['ginger_ground', 'ground ginger|ginger powder|dried ginger'],
  ['ginger_raw', 'fresh ginger|ginger root|root ginger|fresh ginger root|fresh root ginger'],
  ['ginger_raw ginger_ground', 'ginger'],
  ['celery_seed', 'celery seed|ground celery seed'],
  ['fennel_seed', 'fennel seed'],
  ['cardamom', 'cardamom|ground cardamom'],
  ['turmeric', 'turmeric|ground turmeric'],
  ['oregano', 'oregano|dried oregano|mexican oregano|oregano leaf'],
  ['thyme_dried', 'thyme|dried thyme|thyme leaf'],
  ['rosemary_dried', 'dried rosemary|rosemary'],
  ['sage_ground', 'ground sage|rubbed sage|dried sage|sage'],
  ['basil_dried', 'dried basil|basil'],
  ['parsley_dried', 'dried parsley|parsley flake'],
  ['bay_leaf', 'bay leaf|bay leaves|bay'],
  ['marjoram', 'marjoram|dried marjoram'],
  ['cocoa_powder', 'cocoa|cocoa powder|unsweetened cocoa powder'],
  ['coffee_instant', 'instant coffee|instant coffee powder|instant coffee granule|instant espresso powder'],
  ['vanilla_extract', 'vanilla|vanilla extract'],
  ['cola', 'cola|regular cola|flat cola'],
  ['pepper_cherry_soda', 'spiced cherry soda|pepper soda'],
  ['lemon_lime_soda', 'lemon lime soda|lemonade soda'],
  ['ginger_ale', 'ginger ale'],
  ['root_beer', 'root beer'],
  ['orange_soda', 'orange soda'],
  ['cream_soda', 'cream soda'],
  ['grape_soda', 'grape soda'],
  ['club_soda', 'club soda|soda water|sparkling water'],
  ['tonic_water', 'tonic water|tonic'],
  ['apple_juice', 'apple juice'],
  ['apple_juice_conc', 'apple juice concentrate'],
  ['apple_cider_cloudy', 'sweet cider|fresh apple cider|cloudy apple juice|unfermented cider'],
  ['orange_juice', 'orange juice'],
  ['pineapple_juice', 'pineapple juice'],
  ['lemon_juice', 'lemon juice'],
  ['lime_juice', 'lime juice'],
  ['grape_juice', 'grape juice'],
  ['cranberry_cocktail', 'cranberry juice cocktail|cranberry juice drink|cranberry cocktail'],
  ['pomegranate_juice', 'pomegranate juice'],
  ['prune_juice', 'prune juice'],
  ['peach_nectar', 'peach nectar'],
  ['apricot_nectar', 'apricot nectar'],
  ['cherry_juice_tart', 'tart cherry juice|sour cherry juice|cherry juice'],
  ['coffee_brewed', 'coffee|brewed coffee|black coffee|strong coffee|strong black coffee'],
  ['espresso', 'espresso'],
  ['tea_black', 'tea|black tea|brewed tea|strong tea|brewed black tea|strong black tea'],
  ['beer_regular', 'beer|lager|ale|pale ale'],
  ['stout', 'stout|dry stout'],
  ['stout_sweet', 'sweet stout|milk stout'],
  ['wine_red', 'red wine|dry red wine'],
  ['wine_white', 'white wine|dry white wine'],
  ['wine_dessert', 'port|sweet sherry|dessert wine|marsala'],
  ['bourbon_45?', 'bourbon|whiskey|whisky'],
  ['spirit_40', 'rum|dark rum|vodka|brandy|tequila'],
  ['stock_beef', 'homemade beef stock|beef stock'],
  ['stock_chicken', 'homemade chicken stock|chicken stock'],
  ['broth_beef_rts', 'beef broth'],
  ['broth_chicken_rts', 'chicken broth'],
  ['stock_beef stock_chicken', 'stock|broth'],
  ['water', 'water|cold water|warm water|hot water|boiling water|tap water'],
  ['buttermilk', 'buttermilk'],
  ['coconut_milk', 'coconut milk'],
  ['apple_raw', 'apple|cooking apple|grated apple'],
  ['applesauce', 'applesauce|apple sauce|unsweetened applesauce|apple puree'],
  ['peach_raw', 'peach|fresh peach'],
  ['pineapple_raw', 'pineapple|fresh pineapple'],
  ['mango_raw', 'mango|fresh mango'],
  ['cherry_sweet', 'cherry|sweet cherry|fresh cherry'],
  ['cherry_sour', 'sour cherry|tart cherry'],
  ['raspberry', 'raspberry'],
  ['strawberry', 'strawberry'],
  ['blackberry', 'blackberry'],
  ['blueberry', 'blueberry'],
  ['plum', 'plum|fresh plum'],
  ['prune', 'prune|dried plum'],
  ['raisin', 'raisin|sultana'],
  ['date', 'date|dried date|pitted date'],
  ['tamarind', 'tamarind|tamarind pulp|tamarind paste|tamarind block'],
  ['cranberry_raw', 'cranberry|fresh cranberry'],
  ['orange_peel', 'orange zest|orange peel|orange rind'],
  ['lemon_peel', 'lemon zest|lemon peel|lemon rind'],
  ['onion_raw', 'onion|yellow onion|white onion|brown onion|red onion|cooking onion'],
  ['onion_sweet', 'sweet onion'],
  ['scallion', 'scallion|green onion|spring onion'],
  ['shallot', 'shallot'],
  ['garlic_raw', 'garlic|fresh garlic|garlic clove|clove of garlic|cloves of garlic'],
  ['jalapeno_raw', 'jalapeno|jalapeno pepper|fresh jalapeno'],
  ['serrano_raw', 'serrano|serrano pepper|serrano chile'],
  ['chile_red_raw', 'red chile|red chilli|fresh red chilli|fresh red chile|red chili'],
  ['bell_pepper_red', 'red bell pepper|bell pepper|red pepper|sweet red pepper'],
  ['celery_raw', 'celery|celery stalk|celery rib'],
  ['carrot_raw', 'carrot'],
  ['cornstarch', 'cornstarch|corn starch|cornflour'],
  ['pectin_dry', 'pectin|powdered pectin'],
  ['gelatin_dry', 'gelatin|gelatine|powdered gelatin'],
  ['flour_wheat', 'flour|plain flour|all purpose flour|wheat flour'],
  ['baking_soda', 'baking soda|bicarbonate of soda|bicarb'],
  ['citric_acid', 'citric acid'],
  ['xanthan_gum', 'xanthan|xanthan gum'],
  ['smoke_condensate', 'liquid smoke|smoke condensate'],
];

/** Names whose meaning depends on whose recipe it is: US first, elsewhere second. */
export const BY_COUNTRY: Readonly<Record<string, readonly [string, string]>> = {
  'tomato sauce': ['tomato_sauce_canned', 'ketchup'],
  'tomato puree': ['tomato_puree', 'tomato_paste'],
  'apple cider': ['apple_cider_cloudy', 'apple_cider_cloudy'],
  passata: ['tomato_puree', 'tomato_puree'],
};

export interface Meaning {
  /** One or more catalogue ids; several ask which. */
  readonly ids: readonly string[];
  /** Taken for something near: said. */
  readonly isTaken: boolean;
}

/** One word in the form that names are compared in: small letters, no accents, singular. */
export function plainWord(word: string): string {
  const w = word
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f'’]/g, '');
  const irregular = IRREGULAR[w];
  if (irregular !== undefined) return irregular;
  if (w.length < 4 || /(ss|us|is)$/.test(w) || KEEP_PLURAL.has(w)) return w;
  if (/(ch|sh|x|o)es$/.test(w)) return w.slice(0, -2);
  if (/ies$/.test(w)) return `${w.slice(0, -3)}y`;
  return w.endsWith('s') ? w.slice(0, -1) : w;
}
const IRREGULAR: Readonly<Record<string, string>> = { chillies: 'chilli', chilies: 'chili', leaves: 'leaf' };
const KEEP_PLURAL = new Set(['molasses', 'hummus', 'bay leaves']);

export const plainName = (name: string): string =>
  name
    .split(/[^\p{L}\p{N}'’]+/u)
    .filter((word) => word !== '')
    .map(plainWord)
    .join(' ');

/** Vocabulary names with their words apart, and all the words there are. */
export interface NameWords {
  readonly name: string;
  readonly parts: readonly string[];
}
let nameWords: ReadonlyMap<string, readonly NameWords[]> | undefined;
/** Names by their first word. */
export function namesByWord(): ReadonlyMap<string, readonly NameWords[]> {
  if (nameWords === undefined) {
    const map = new Map<string, NameWords[]>();
    for (const name of vocabulary().keys()) {
      const parts = name.split(' ');
      map.set(parts[0]!, [...(map.get(parts[0]!) ?? []), { name, parts }]);
    }
    nameWords = map;
  }
  return nameWords;
}
let allWords: ReadonlySet<string> | undefined;
export function vocabularyWords(): ReadonlySet<string> {
  allWords ??= new Set([...vocabulary().keys()].flatMap((name) => name.split(' ')));
  return allWords;
}
export const isVocabularyWord = (word: string): boolean => vocabularyWords().has(word);

let meanings: ReadonlyMap<string, Meaning> | undefined;
/** Plain name → meaning, built on first use. */
export function vocabulary(): ReadonlyMap<string, Meaning> {
  if (meanings === undefined) {
    const map = new Map<string, Meaning>();
    for (const [ids, names] of NAMES) {
      const meaning = { ids: ids.replaceAll('?', '').split(' '), isTaken: ids.includes('?') };
      for (const name of names.split('|')) map.set(plainName(name), meaning);
    }
    for (const name of Object.keys(BY_COUNTRY))
      map.set(plainName(name), { ids: [...new Set(BY_COUNTRY[name])], isTaken: false });
    meanings = map;
  }
  return meanings;
}
