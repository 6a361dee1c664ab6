/** Where the figures of a piece lie in its state, one Float64Array, so that a checkpoint is a copy of it. */

/** Places in the state before the cells' own figures; masses per m² of raw outer face. */
export const AT = {
  /** m_f [kg/m²] */
  film: 0,
  /** m_o: water set aside for the front, or owed to it when negative [kg/m²] */
  front: 1,
  /** juice and liquid inside the foil [kg/m²] */
  pool: 2,
  /** [kg/m²] */
  evaporated: 3,
  /** [kg/m²] */
  dripped: 4,
  /** water added by spritz or poured into the foil [kg/m²] */
  added: 5,
  /** k: outermost wet cell */
  wetCell: 6,
  /** f: dried share of that cell */
  driedShare: 7,
  /** outer side of the bark [°C] */
  surfaceC: 8,
  /** T_f: where water evaporates [°C] */
  frontC: 9,
  /** heat into the meat behind the front, summed [J/m²] */
  heatIn: 10,
  /** enthalpy carried away by water leaving the cells, summed [J/m²] */
  waterEnthalpyOut: 11,
  /** heat that reached the surface, summed [J/m²] */
  heatFromAir: 12,
  /** heat spent on evaporation, summed [J/m²] */
  heatEvaporating: 13,
  /** thickness of dried glaze [m] */
  glazeM: 14,
  /** share of the renderable fat still solid [1] */
  solidFatShare: 15,
  /** browning of the dry surface, equivalent hours at 110 °C (colour.ts) [h] */
  browningH: 16,
  /** through the bark as the last step ended [kg/(m²·s)] */
  throughFront: 17,
  /** of T_s and T_f as the last step ended [K/s] */
  surfaceSlope: 18,
  frontSlope: 19,
  cells: 20,
} as const;

/** Temperatures, their slopes as the last step ended, water, heat capacity of dried cells moved inward, doses. */
export const FIGURES_PER_CELL = 5;
