/**
 * Scoville units of the ingredient as it stands. Powders: middle of the usual span, from memory (cayenne 30–50 k,
 * flakes 15–30 k, chipotle 2.5–8 k, ancho 1–2 k, paprika 0–0.5 k); sauces as sold; fresh chiles × 0.085 of the dry
 * weight figure. A lot varies by a factor of two.
 */
export const SCOVILLE: Readonly<Record<string, number>> = {
  cayenne: 40_000,
  chile_flakes: 22_000,
  chipotle_ground: 5_000,
  chile_sun_dried: 15_000,
  ancho_dried: 1_500,
  pasilla_dried: 1_500,
  paprika: 250,
  smoked_paprika: 250,
  chili_powder: 1_000,
  hot_sauce_vinegar: 3_000,
  hot_sauce_aged_cayenne: 3_000,
  sriracha_type: 1_500,
  chipotle_in_adobo: 600,
  jalapeno_raw: 450,
  serrano_raw: 1_200,
  chile_red_raw: 2_500,
};

/** SHU per mg/kg of capsaicin. @source AOAC/ASTA conversion as told in The Analytical Scientist (older factor 15) */
export const SCOVILLE_PER_PPM = 16;
